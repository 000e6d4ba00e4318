#pragma once

#include "core/quantity/work.h"

namespace treadwell::practice {

// From where on something is told.

/// Of the surface, without a tyre (assumed).
inline constexpr double kUnrolled = 0.10;
/// The last layers' passes over the first ones' (assumed).
inline constexpr double kOutrun = 0.65;
/// About 4 km/h is advised (published practice); told from 5.5 on (assumed).
inline constexpr Speed kHurried = Speed::fromKilometresPerHour(5.5);

}  // namespace treadwell::practice
