#pragma once

#include "app/cli/command.h"

#include <optional>
#include <vector>

namespace treadwell::cli {

/// The options as typed.
struct EstimateOptions {
    std::optional<std::string> rate;
    std::optional<std::string> minutesPerTonne;
    std::string dryMatter;
    std::optional<std::string> layer;
    std::string depth;
    std::vector<std::string> tractors;
    std::optional<std::string> minimum;
    std::string crop = "maize";
    bool working = false;
};

/// Density, porosity and the chance of the target for one packing situation.
[[nodiscard]] Outcome estimate(const EstimateOptions& options, const Answer& answer);

}  // namespace treadwell::cli
