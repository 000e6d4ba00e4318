#pragma once

#include "core/base/code.h"

// The columns must not move when a line is added.
// clang-format off
#define TREADWELL_FORMATS_CODES(X) \
    X(textIsUtf16) \
    X(encodingAmbiguous) \
    X(encodingWrong) \
    X(delimiterAmbiguous) \
    X(headerMissing) \
    X(quoteOpen) \
    X(decimalAmbiguous) \
    X(decimalMixed) \
    X(frameUnreadable) \
    X(frameCut) \
    X(frameTooLong) \
    X(frameSumWrong) \
    X(gpxUnreadable) \
    X(gpxDoctype) \
    X(gpxRootWrong)
// clang-format on

namespace treadwell::code {

TREADWELL_FORMATS_CODES(TREADWELL_CODE)

}  // namespace treadwell::code
