#pragma once

#include "app/cli/command.h"

#include <optional>
#include <vector>

namespace treadwell::cli {

/// The options as typed.
struct ImportOptions {
    std::string file;
    std::optional<std::string> tickets, tractors, samples, heights, layers, cores;
    std::optional<std::string> sieves, kernels, temperatures, fields, chop, removals, faceTemperatures;
    std::optional<std::string> silo;
    std::optional<std::string> encoding;
    std::optional<std::string> delimiter;
    std::optional<std::string> decimalSign;
    std::optional<std::string> dateOrder;
    std::optional<std::string> massUnit;
    std::vector<std::string> columns;  ///< `net=Gewicht 2`
    std::optional<std::string> at;
    bool preview = false;
};

/// Takes over what files hold. Every row is accounted for: added, there already, voided, or listed with line,
/// column, reason and text, and kept as an open question. All files are read before anything is recorded;
/// what a file leaves open is answered by options once and remembered for files with the same header. A
/// preview records and remembers nothing.
[[nodiscard]] Outcome import(const ImportOptions& options, const Answer& answer);

/// Lists the rows that imports have set aside and that are still open, as they stood.
[[nodiscard]] Outcome setAside(const std::string& file, const Answer& answer);

}  // namespace treadwell::cli
