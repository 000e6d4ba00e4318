// A session's doubts about the machine's clock, and the times of what was touched meanwhile.
#include "core/quantity/work.h"
#include "core/session/codes.h"
#include "core/session/state.h"

#include <algorithm>

namespace treadwell::session {

using entries::EntryId;
using entries::PersonId;
using entries::StoredEntry;

namespace {

/// What a network's time service moves a clock by without anybody's doing.
constexpr std::chrono::minutes kClockTolerance{2};

}  // namespace

/// By how much it shows another time than it would, had nobody set it since the session began.
std::chrono::microseconds Session::State::clockMoved() const {
    return (clock->now() - openedAt) - (clock->elapsed() - openedElapsed);
}

std::optional<Message> Session::State::clockQuestion() const {
    const Instant now = clock->now();
    if (now + kClockTolerance < lastRecorded) return Message{code::clockBehind, {now, lastRecorded}};
    const auto moved = clockMoved();
    if (std::chrono::abs(moved) > kClockTolerance) {
        return Message{code::clockMoved, {durationAmount(Seconds{moved})}};
    }
    return std::nullopt;
}

/// While the clock is in question a touch gets the time that the clock would have shown, had nobody set it:
/// once it is right, all of them are off by one and the same.
Kept Session::State::draftsOf(std::vector<Proposal> checked, PersonId author) {
    const bool isAsked = clockQuestion().has_value();
    const auto sinceBoot = isAsked ? openedAt - openedElapsed : clock->now() - clock->elapsed();
    Kept drafts;
    for (Proposal& proposal : checked) {
        if (proposal.touched) proposal.happened = sinceBoot + *proposal.touched;
        const EntryId id{ids.next(clock->now())};
        drafts.entries.push_back(draftOf(proposal, id, author));
        if (proposal.touched && isAsked) drafts.untimed.push_back(id);
        if (proposal.evidence) drafts.evidence.push_back(std::move(*proposal.evidence));
    }
    return drafts;
}

/// What an earlier run left untimed came before this one began; how long before, no clock has seen.
void Session::State::takeTimesFromRun() {
    std::optional<Instant> latest;
    for (const StoredEntry& entry : unsaved.entries) {
        if (isUntimed(entry, unsaved))
            latest = std::max(latest.value_or(entry.header.happened), entry.header.happened);
    }
    if (!latest) return;
    timesAreGuessed = true;
    for (StoredEntry& entry : unsaved.entries) {
        if (isUntimed(entry, unsaved)) entry.header.happened += openedAt - *latest;
    }
}

void Session::State::clockIsRight() {
    const auto moved = clockMoved();
    for (StoredEntry& entry : unsaved.entries) {
        if (isUntimed(entry, unsaved)) entry.header.happened += moved;
    }
    openedAt = lastRecorded = clock->now();
    openedElapsed = clock->elapsed();
    if (unsaved.untimed.empty()) return;
    unsaved.untimed.clear();
    // Memory holds them too: where this fails they are recorded all the same.
    static_cast<void>(keepInstead(keptFile(), unsaved));
    resumeAndTell();
}

}  // namespace treadwell::session
