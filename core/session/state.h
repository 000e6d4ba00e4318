#pragma once

#include "core/journal/journal.h"
#include "core/session/device_memory.h"
#include "core/session/kept_aside.h"
#include "core/session/session.h"

#include <mutex>

namespace treadwell::session {

/// The part of an entry that its author decides; commit() adds what the device adds.
[[nodiscard]] entries::StoredEntry draftOf(const Proposal& proposal, entries::EntryId id,
                                           entries::PersonId author);

/// What a session is made of; seen by session.cpp and state.cpp alone.
struct Session::State {
    State(journal::Journal opened, const Files& where, const Clock& time)
        : journal(std::move(opened)),
          files(where),
          clock(&time),
          openedAt(time.now()),
          openedElapsed(time.elapsed()) {}

    Result<void> load();
    void warnOf(const std::optional<journal::BrokenPlace>& broken);
    void refresh();
    void lookAtStructure();
    void clockIsRight();
    Result<void> becomeDevice();
    void takeKept();
    Result<void> reopen();
    Result<void> resume();
    void resumeAndTell();
    Result<std::vector<entries::Header>> commit(std::vector<entries::StoredEntry>& drafts,
                                                std::span<const entries::Evidence> evidence);
    Result<std::vector<entries::Header>> record(std::span<const Proposal> proposals,
                                                entries::PersonId author);
    Error keep(const Kept& drafts, const Error& error);
    Error hold(const Kept& drafts);
    Result<void> setAside(const Kept& drafts);
    void takeTimesFromRun();
    [[nodiscard]] Kept draftsOf(std::vector<Proposal> checked, entries::PersonId author);
    Result<void> copyToSecondPlace(Instant now) const;
    void publish(season::Season folded);
    season::EntryPointer seen(const entries::StoredEntry& stored);
    [[nodiscard]] std::optional<Message> clockQuestion() const;
    [[nodiscard]] std::chrono::microseconds clockMoved() const;

    [[nodiscard]] std::filesystem::path stateFile(const char* suffix) const {
        return files.stateFolder / (seasonId.value.text() + suffix);
    }
    [[nodiscard]] std::filesystem::path keptFile() const { return stateFile(".kept.jsonl"); }

    journal::Journal journal;
    Files files;
    const Clock* clock;
    Instant openedAt;  ///< or when the clock was said to be right
    std::chrono::microseconds openedElapsed;
    UuidSource ids;
    entries::EntryId seasonId;  ///< of the first entry
    std::int64_t lamport = 0;
    Instant lastRecorded;                ///< by anybody; or when the clock was said to be right
    std::optional<DeviceMemory> memory;  ///< there while this session is the file's writer
    Kept unsaved;                        ///< in the order in which it was proposed
    std::optional<Message> unsavedReason;
    bool keptIsReadable = true;     ///< the file of what was kept
    bool timesAreGuessed = false;   ///< of what an earlier run kept while the clock was in question
    bool structureIsKnown = false;  ///< since opening
    std::vector<Message> cautions;

    mutable std::mutex guard;  ///< of `season` alone
    std::shared_ptr<const season::Season> season = std::make_shared<const season::Season>();
};

}  // namespace treadwell::session
