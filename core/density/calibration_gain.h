#pragma once

#include "core/density/calibration.h"

namespace treadwell::density {

/// What evidence did to a band: half its width before and after, as it is shown.
struct BandGain {
    std::int64_t cores = 0;
    std::int64_t balances = 0;
    std::int64_t surveys = 0;
    DryDensity before;
    DryDensity after;
};

/// Of the band of a silo with evidence, about its own density.
[[nodiscard]] BandGain gainOf(const SiloPosterior& silo);

/// Of the band of the farm's next silo, about the mean density of those with evidence; all evidence counts.
[[nodiscard]] BandGain gainOfNext(const Calibration& calibration);

/// "24 cores narrowed the band from +-48 to +-24", as a code.
[[nodiscard]] Message messageOf(const BandGain& gain);

}  // namespace treadwell::density
