#pragma once

#include "core/quantity/mass.h"

namespace treadwell::density {

/// How unsure the size of a change is, as a part of it: 40 % (assumed). The survey's own standard error of
/// the slope is 16 % (Muck & Holmes 2000: R2 = 18.2 %, n = 175), but six equal Norwegian bunkers realised
/// only 0.35 of what the equation predicts for a heavier tractor.
inline constexpr double kEffectSpread = 0.40;

/// What a change would do. The level of the estimate, which is most of its band, is in both sides and
/// cancels.
struct Effect {
    DryDensity change;  ///< after - before; below 0 for a loss
    DryDensity sd;
    DryDensity low80;
    DryDensity high80;
};

/// `before` and `after` are the medians of two cases of one silo.
[[nodiscard]] Effect effectOf(DryDensity before, DryDensity after) noexcept;

}  // namespace treadwell::density
