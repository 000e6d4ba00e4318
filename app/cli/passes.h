#pragma once

#include "app/cli/season_file.h"

namespace treadwell::cli {

/// The options of a replay beside those of a season's view, as typed.
struct ReplayOptions {
    std::string pattern = "wholeWidth";
    std::string seed = "1";
};

/// The simulation's answer for what lies in a silo, beside the regression's.
[[nodiscard]] Outcome replay(const SeasonOptions& options, const ReplayOptions& how, const Answer& answer);

}  // namespace treadwell::cli
