#pragma once

#include "core/passes/pad.h"

namespace treadwell::passes {

inline const Spread kMaize{DryMatter::fromPercent(35), DryDensity::fromKilogramsPerCubicMetre(112)};

inline Pad padOf(double length_m, double width_m) {
    return makePad({Length::fromMetres(length_m), Length::fromMetres(width_m)}).value();
}

}  // namespace treadwell::passes
