#pragma once

#include "core/base/code.h"

// The columns must not move when a line is added.
// clang-format off
#define TREADWELL_PASSES_CODES(X) \
    X(trackWithoutFixes) \
    X(trackAttachedAlready) \
    X(trackGone) \
    X(trackChanged) \
    X(trackTractorUnknown) \
    X(siloNotPlaced)
// clang-format on

namespace treadwell::code {

TREADWELL_PASSES_CODES(TREADWELL_CODE)

}  // namespace treadwell::code
