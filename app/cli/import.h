#pragma once

#include "app/cli/command.h"

#include <optional>

namespace treadwell::cli {

/// The options as typed.
struct ImportOptions {
    std::string file;
    std::optional<std::string> tickets, tractors, samples, heights, layers, cores;
    std::optional<std::string> silo;
    std::optional<std::string> decimalSign;
    std::optional<std::string> dateOrder;
    std::optional<std::string> massUnit;
};

/// Takes over what files hold. Every row is accounted for: added, there already, voided, or listed with line,
/// column, reason and text. All files are read before anything is recorded.
[[nodiscard]] Outcome import(const ImportOptions& options, const Answer& answer);

}  // namespace treadwell::cli
