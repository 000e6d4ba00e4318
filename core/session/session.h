#pragma once

#include "core/session/people.h"
#include "core/session/proposal.h"
#include "core/session/standing.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace treadwell::session {

struct Files {
    std::filesystem::path season;
    /// Of this machine, outside the season's file: which device it is, and what could not be recorded.
    std::filesystem::path stateFolder;
};

enum class Purpose : std::uint8_t { writing, reading };

/// A season that is open: what is proposed is checked, made an entry, put on the disk, folded, and shown in
/// the next snapshot, in this order; nothing is acknowledged before its commit. One thread owns it; only
/// snapshot() is for any thread.
class Session {
  public:
    /// Starts a season in a new file, as of `begins` or else of now. Errors: those of entries::validate,
    /// journalExists, fileUnwritable.
    [[nodiscard]] static Result<Session> create(const Files& files, const entries::SeasonStarted& start,
                                                entries::PersonId author, const Clock& clock,
                                                std::optional<Instant> begins = {});

    /// Opens for reading alone where the file cannot be written, and its standing says why. Who then opens
    /// it once more, when it can, goes on writing. The clock must outlive the session. Errors:
    /// fileUnreadable, fileUnwritable, journalForeign, journalDamaged, journalTooNew, journalNeedsFolder,
    /// seasonEmpty.
    [[nodiscard]] static Result<Session> open(const Files& files, const Clock& clock,
                                              Purpose purpose = Purpose::writing);

    Session(Session&&) noexcept;
    Session& operator=(Session&&) noexcept;
    ~Session();

    [[nodiscard]] Standing standing() const;

    /// The season as committed. It never changes; a later entry makes another.
    [[nodiscard]] std::shared_ptr<const season::Season> snapshot() const;

    /// Where the disk fails the entry is kept in memory and in a file of the state folder, and is recorded
    /// once, in its order, as soon as a later call finds the disk well again. Errors: those of accepted(),
    /// journalReadOnly, entryKeptAside, or entryKeptInMemory where that file cannot be written either;
    /// entryWaitsForClock for what was touched (Proposal::touched) while the clock is in question.
    [[nodiscard]] Result<entries::Header> propose(entries::Body body, Instant happened,
                                                  entries::PersonId author,
                                                  std::optional<entries::EntryId> target = {});

    /// All of them in one transaction, or none; the error's place names the first that is wrong, from 1.
    [[nodiscard]] Result<std::vector<entries::Header>> importAll(std::span<const Proposal> proposals,
                                                                 entries::PersonId author);

    /// See undoing().
    [[nodiscard]] Result<entries::Header> undo(entries::EntryId id, std::string reason,
                                               entries::PersonId author);

    /// What an entry was read from; none where it was never here or was erased. Error: journalDamaged.
    [[nodiscard]] Result<std::optional<std::string>> evidence(const Hash& hash) const;

    /// As long as the session lives.
    [[nodiscard]] People people();

    /// What a printed sheet carries so that it can be held against the file.
    [[nodiscard]] Hash head() const;

    /// Looks at the whole file; gives the first broken place.
    [[nodiscard]] std::optional<Message> check();

    /// Takes in what another program has committed since, where this session reads; records what was kept,
    /// where the disk is well again; the first time looks whether the file's pages hang together. What comes
    /// of it is in the standing.
    void lookAgain();

    /// Somebody has looked: the machine's clock is right as it is, and is not asked about until it is moved.
    /// What was touched meanwhile is recorded at the times that were right then.
    void clockIsRight();

    /// The copy that follows a day's close, made now; nothing where no second place was chosen. Error:
    /// secondPlaceFailed.
    [[nodiscard]] Result<void> copyToSecondPlace() const;

    /// A checked copy under a new name. Errors: journalExists, fileUnwritable, journalDamaged.
    [[nodiscard]] Result<void> backupTo(const std::filesystem::path& copy) const;

  private:
    struct State;
    explicit Session(std::unique_ptr<State> state);

    std::unique_ptr<State> m_state;
};

}  // namespace treadwell::session
