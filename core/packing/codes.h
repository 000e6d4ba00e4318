#pragma once

#include "core/base/code.h"

// The columns must not move when a line is added.
// clang-format off
#define TREADWELL_PACKING_CODES(X) \
    X(yardstickNorthAmerica) \
    X(yardstickThirdOfHourlyMass) \
    X(yardstickQuarterOfHourlyMass) \
    X(yardstickFrance) \
    X(yardstickBrittany)
// clang-format on

namespace treadwell::code {

TREADWELL_PACKING_CODES(TREADWELL_CODE)

}  // namespace treadwell::code
