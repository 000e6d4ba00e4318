#pragma once

#include "core/base/code.h"

// The columns must not move when a line is added.
// clang-format off
#define TREADWELL_CROP_CODES(X) \
    X(densityImpossible)
// clang-format on

namespace treadwell::code {

TREADWELL_CROP_CODES(TREADWELL_CODE)

}  // namespace treadwell::code
