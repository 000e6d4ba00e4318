#pragma once

#include "core/base/code.h"

// The columns must not move when a line is added.
// clang-format off
#define TREADWELL_FACE_CODES(X) \
    X(faceNoCores) \
    X(faceTooFewCores) \
    X(faceNotSeen) \
    X(feedNotSampled)
// clang-format on

namespace treadwell::code {

TREADWELL_FACE_CODES(TREADWELL_CODE)

}  // namespace treadwell::code
