#pragma once

#include "core/base/error.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace treadwell::session {

/// How an open season stands at a moment: whether it can be written, and what must be told and asked.
struct Standing {
    bool writable = false;
    /// Who else writes it, or why it cannot be written; none where it can, or was opened for reading.
    std::optional<Message> readOnlyReason;
    /// In the order in which they arose: of the file at opening (a broken place, entryUnreadable,
    /// deviceRenewed, keptEntriesUnreadable), and later keptEntriesRecorded, keptTimesGuessed and
    /// secondPlaceFailed.
    std::vector<Message> cautions;
    std::int64_t unsaved = 0;  ///< entries that are kept and not recorded
    /// Where they are kept and why: entryKeptAside, entryKeptInMemory, entryWaitsForClock, or why they still
    /// cannot be recorded.
    std::optional<Message> unsavedReason;
    /// What must be asked about the clock of a machine that records: clockBehind, clockMoved.
    std::optional<Message> clockQuestion;

    friend bool operator==(const Standing&, const Standing&) = default;
};

}  // namespace treadwell::session
