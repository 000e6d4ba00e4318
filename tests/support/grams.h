#pragma once

#include "core/quantity/mass.h"

namespace treadwell::testing_support {

[[nodiscard]] inline AsFedMass grams(double g) {
    return AsFedMass::fromKilograms(g / 1000.0);
}
[[nodiscard]] inline DryMass dryGrams(double g) {
    return DryMass::fromKilograms(g / 1000.0);
}

}  // namespace treadwell::testing_support
