#pragma once

#include "core/base/code.h"

// The columns must not move when a line is added.
// clang-format off
#define TREADWELL_FARM_CODES(X) \
    X(nameEmpty) \
    X(crownTooWide) \
    X(rampLongerThanSilo) \
    X(pileDoesNotClose)
// clang-format on

namespace treadwell::code {

TREADWELL_FARM_CODES(TREADWELL_CODE)

}  // namespace treadwell::code
