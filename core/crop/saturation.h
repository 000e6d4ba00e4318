#pragma once

#include "core/quantity/fraction.h"
#include "core/quantity/mass.h"

#include <optional>

namespace treadwell::crop {

/// The range of dry matter over which the saturation limit is used.
inline constexpr DryMatter kSaturationFrom = DryMatter::fromPercent(10);
inline constexpr DryMatter kSaturationTo = DryMatter::fromPercent(50);

/// The density above which the pores hold no gas and effluent runs [kg DM/m3]: 961 - 9.92 M, M the moisture
/// in % of the fresh mass. None outside 10-50 % dry matter, where the line has no data behind it. Source:
/// Tang, Jofriet & LeLievre 1988, Canadian Agricultural Engineering 30(1):93-98, 63 tests.
[[nodiscard]] constexpr std::optional<DryDensity> saturationLimit(DryMatter dryMatter) noexcept {
    if (!(dryMatter >= kSaturationFrom && dryMatter <= kSaturationTo)) return std::nullopt;
    return DryDensity::fromKilogramsPerCubicMetre(961.0 - 992.0 * (1.0 - dryMatter.fraction()));
}

}  // namespace treadwell::crop
