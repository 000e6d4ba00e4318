#pragma once

#include "core/entries/evidence.h"
#include "core/season/season.h"

#include <optional>
#include <string>

namespace treadwell::session {

/// What somebody wants recorded; not yet an entry.
struct Proposal {
    entries::Body body;
    Instant happened;
    std::optional<entries::EntryId> target;  ///< the entry that it corrects or takes back
    std::optional<entries::Evidence> evidence = {};
    /// On Clock::elapsed(), where `happened` is nobody's word but what the machine showed at a touch: such an
    /// entry waits while the clock is in question, and gets the time that was right then.
    std::optional<std::chrono::microseconds> touched = {};

    friend bool operator==(const Proposal&, const Proposal&) = default;
};

/// The proposal as it can be recorded: a target that is a change of a fact becomes the fact itself. Errors:
/// those of entries::validate, targetMissing, entryVoided, correctionChangesKind.
[[nodiscard]] Result<Proposal> accepted(const season::Season& season, Proposal proposal);

/// What takes the effect of `id` back: a void for a fact; for a correction, what spoke before it; for a void,
/// the fact stated anew. Errors: targetMissing, entryVoided.
[[nodiscard]] Result<Proposal> undoing(const season::Season& season, entries::EntryId id, std::string reason,
                                       Instant now);

}  // namespace treadwell::session
