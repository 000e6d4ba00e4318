#include "core/outcome/effluent.h"

#include "core/quantity/range.h"

#include <algorithm>

namespace treadwell::outcome {

Result<double> effluent_L_per_t(DryMatter dryMatter) {
    constexpr double kDriest_g_kg = 285.0;
    return within(dryMatter, DryMatter::fromPercent(10), DryMatter::fromPercent(100), "dryMatter")
        .map([](DryMatter held) {
            const double d = held.fraction() * 1000.0;
            if (d > kDriest_g_kg) return 0.0;
            return std::max(0.0, 767.0 - 5.34 * d + 0.00936 * d * d);
        });
}

}  // namespace treadwell::outcome
