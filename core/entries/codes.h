#pragma once

#include "core/base/code.h"

// The columns must not move when a line is added.
// clang-format off
#define TREADWELL_ENTRIES_CODES(X) \
    X(payloadUnreadable) \
    X(payloadFieldMissing) \
    X(payloadFieldWrong) \
    X(targetMissing) \
    X(spanEmpty) \
    X(dishDisagrees) \
    X(coreHeightUnclear) \
    X(coreDensityUnclear) \
    X(stretchEmpty) \
    X(documentUnreadable) \
    X(documentForeign) \
    X(documentNewer) \
    X(fieldUnknown) \
    X(planDaysUnordered)
// clang-format on

namespace treadwell::code {

TREADWELL_ENTRIES_CODES(TREADWELL_CODE)

}  // namespace treadwell::code
