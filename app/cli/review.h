#pragma once

#include "app/cli/season_file.h"

#include <string>
#include <vector>

namespace treadwell::cli {

/// The options of `batch`, as typed.
struct BatchOptions {
    std::vector<std::string> files;
    std::optional<std::string> at;
};

/// A season looked back upon.
[[nodiscard]] Outcome review(const SeasonOptions& options, const Answer& answer);

/// Many seasons in one CSV, a row a silo; a file that stops is named with its reason and does not stop the
/// others.
[[nodiscard]] Outcome batch(const BatchOptions& options, const Answer& answer);

}  // namespace treadwell::cli
