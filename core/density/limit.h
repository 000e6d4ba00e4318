#pragma once

#include "core/crop/crop.h"
#include "core/crop/porosity.h"
#include "core/crop/saturation.h"
#include "core/density/field_equation.h"

#include <algorithm>

namespace treadwell::density {

/// What no packing gets beyond.
struct Limit {
    DryDensity density;
    bool saturation;  ///< the saturation limit; otherwise, outside its range, the density without any pores
};

[[nodiscard]] inline Limit limitOf(DryMatter dryMatter, crop::Crop crop) {
    if (const auto saturation = crop::saturationLimit(dryMatter)) return {*saturation, true};
    const auto solids = crop::Solids::fromOrganicMatter(crop::factsOf(crop).organicMatter);
    return {crop::poreFreeDensity(dryMatter, solids), false};
}

/// For single layers (rule B2): the density where the depth factor is 1, and the local density of a layer of
/// that bracket at a depth below the surface of the opened silo: min(bracket * f(depth), limit).
[[nodiscard]] constexpr DryDensity bracketOf(PackingFactor packing) noexcept {
    return DryDensity::fromKilogramsPerCubicMetre(FieldEquation::bracket(packing.si));
}
[[nodiscard]] constexpr DryDensity densityAt(DryDensity bracket, Length depth, DryDensity limit) noexcept {
    return std::min(bracket * FieldEquation::factor(depth.metres()), limit);
}

}  // namespace treadwell::density
