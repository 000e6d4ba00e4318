#pragma once

#include "core/base/code.h"

// The columns must not move when a line is added.
// clang-format off
#define TREADWELL_SESSION_CODES(X) \
    X(seasonEmpty) \
    X(entryVoided) \
    X(correctionChangesKind) \
    X(deviceRenewed) \
    X(entryUnreadable) \
    X(entryKeptAside) \
    X(entryKeptInMemory) \
    X(entryWaitsForClock) \
    X(keptEntriesRecorded) \
    X(keptTimesGuessed) \
    X(keptEntriesUnreadable) \
    X(clockBehind) \
    X(clockMoved) \
    X(secondPlaceFailed) \
    X(copiesNone) \
    X(copiesGo) \
    X(copiesNewest) \
    X(copiesNotYet) \
    X(copiesAway) \
    X(copiesRefused) \
    X(personNamedTwice) \
    X(documentHeadDiffers)
// clang-format on

namespace treadwell::code {

TREADWELL_SESSION_CODES(TREADWELL_CODE)

}  // namespace treadwell::code
