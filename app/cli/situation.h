#pragma once

#include "app/cli/estimate.h"
#include "core/density/situation.h"

namespace treadwell::cli {

/// Reads the options; the failure names the option and what it understands.
[[nodiscard]] tl::expected<density::Situation, Failure> situationFrom(const EstimateOptions& options,
                                                                      const words::Style& style);

/// The option from which a field of density::Situation came: `machines[1].mass` is `--tractor 2`.
[[nodiscard]] std::string optionOf(std::string_view field);

}  // namespace treadwell::cli
