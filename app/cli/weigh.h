#pragma once

#include "app/cli/command.h"

#include <optional>

namespace treadwell::cli {

/// The options as typed.
struct WeighOptions {
    std::string file;
    std::string line;
    std::string profile;
    std::optional<std::string> baud, characters, ask, wait;
    std::optional<std::string> silo, truck, field, ticket, tare, at;
};

/// Shows what a scale sends, frame by frame with its bytes, for a while.
[[nodiscard]] Outcome listen(const WeighOptions& options, const Answer& answer);

/// Waits for a weight that stands still and records it as a load; the frames are kept as evidence.
[[nodiscard]] Outcome weigh(const WeighOptions& options, const Answer& answer);

}  // namespace treadwell::cli
