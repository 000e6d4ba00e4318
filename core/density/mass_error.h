#pragma once

#include "core/season/day.h"

#include <span>

namespace treadwell::density {

/// How well a scale weighs (value from memory, OIML R 76, class III, a truck scale of e = 20 kg in use): its
/// common error for a load, two scale intervals / sqrt(3); and that of one load beside the others, two
/// readings each rounded to e, e / sqrt(6).
inline constexpr AsFedMass kScaleInterval = AsFedMass::fromKilograms(20);
inline constexpr double kScaleCommonIntervals = 1.1547;
inline constexpr double kScaleLoadIntervals = 0.40825;

/// Variances of ln(mass as fed) of loads together, by how the mass of each came to be known. Common errors do
/// not shrink with the number of loads.
struct MassError {
    double weighed = 0.0;
    double notWeighed = 0.0;  ///< usual loads and box volumes
    [[nodiscard]] double total() const noexcept { return weighed + notWeighed; }
};

/// Of loads with more than 0 kg together: weighed ones by the scale; of the others 8.6 % in common and 5.1 %
/// each (crop::kLooseCommonLogSd, kLooseLoadLogSd), where a truck's usual load with n weighed ones of the
/// same truck beside it errs 5.1/sqrt(n) % in common, if that is less.
[[nodiscard]] MassError massErrorOf(std::span<const season::LoadTipped* const> loads);

/// On how many samples the dry matter of the loads stands; 1 where there is none.
[[nodiscard]] double samplesBehind(std::span<const season::LoadTipped* const> loads);

}  // namespace treadwell::density
