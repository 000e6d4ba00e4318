#pragma once

#include "core/base/code.h"

// The columns must not move when a line is added.
// clang-format off
#define TREADWELL_INTAKE_CODES(X) \
    X(columnMissing) \
    X(columnTwice) \
    X(columnNotThere) \
    X(rowRagged) \
    X(numberUnreadable) \
    X(wordUnknown) \
    X(nameUnknown) \
    X(nameShared) \
    X(wallTimeUnreadable) \
    X(dateOrderAmbiguous) \
    X(clockChanged) \
    X(massUnitMissing) \
    X(massUnitUnknown) \
    X(weighingsSwapped) \
    X(netDisagrees) \
    X(ticketRepeated) \
    X(ticketMeetsLoad) \
    X(loadWithoutTicket) \
    X(ticketSumDiffers) \
    X(importMapsUnreadable) \
    X(scaleShowsTare) \
    X(scaleTareNeeded) \
    X(scaleNetNegative) \
    X(scaleUnreachable) \
    X(scaleLineEnded) \
    X(scaleSilent) \
    X(scaleUnsteady) \
    X(temperatureUnitMissing) \
    X(farmFileVersion) \
    X(typedFieldUnknown) \
    X(typedFieldTwice) \
    X(kindUnknown) \
    X(caughtUpCount) \
    X(caughtUpSpan) \
    X(caughtUpAhead)
// clang-format on

namespace treadwell::code {

TREADWELL_INTAKE_CODES(TREADWELL_CODE)

}  // namespace treadwell::code
