#pragma once

#include "core/base/code.h"

// The columns must not move when a line is added.
// clang-format off
#define TREADWELL_JOURNAL_CODES(X) \
    X(journalExists) \
    X(journalForeign) \
    X(journalDamaged) \
    X(journalNewer) \
    X(journalTooNew) \
    X(journalHeld) \
    X(journalLeft) \
    X(journalMediumReadOnly) \
    X(journalNeedsFolder) \
    X(journalReadOnly) \
    X(journalOnNetwork) \
    X(journalOpenedDamaged) \
    X(journalBehind) \
    X(journalWriteFailed) \
    X(entryAltered) \
    X(entriesMissing) \
    X(rowUnreadable) \
    X(structureBroken) \
    X(entryOutOfOrder)
// clang-format on

namespace treadwell::code {

TREADWELL_JOURNAL_CODES(TREADWELL_CODE)

}  // namespace treadwell::code
