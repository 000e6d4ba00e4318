#include "core/density/effect.h"

#include "core/stats/normal.h"

#include <cmath>

namespace treadwell::density {

Effect effectOf(DryDensity before, DryDensity after) noexcept {
    const DryDensity change = after - before;
    const DryDensity sd = DryDensity::fromSi(kEffectSpread * std::abs(change.si()));
    const DryDensity half = sd * stats::kHalfBand80;
    return {.change = change, .sd = sd, .low80 = change - half, .high80 = change + half};
}

}  // namespace treadwell::density
