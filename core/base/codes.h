#pragma once

#include "core/base/code.h"

// The columns must not move when a line is added.
// clang-format off
#define TREADWELL_BASE_CODES(X) \
    X(valueMissing) \
    X(valueNotFinite) \
    X(valueOutOfRange) \
    X(textEmpty) \
    X(textNotNumber) \
    X(unitMissing) \
    X(unitUnknown) \
    X(timeUnreadable) \
    X(zoneUnknown) \
    X(fileUnreadable) \
    X(fileUnwritable)
// clang-format on

namespace treadwell::code {

TREADWELL_BASE_CODES(TREADWELL_CODE)

}  // namespace treadwell::code
