#pragma once

#include "core/entries/entry.h"
#include "core/entries/evidence.h"
#include "core/journal/chain.h"
#include "core/journal/lease.h"
#include "core/journal/people.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <span>

namespace treadwell::journal {

enum class Access : std::uint8_t { write, read };

/// How a file is looked at: every entry and every page, or whether its pages hang together.
enum class Look : std::uint8_t { whole, quick };

/// A season's file: entries that are only ever added, each durable before append() returns. One process
/// writes; others read. Not thread-safe: one thread owns it.
class Journal {
  public:
    /// Makes a new file, whole or not at all, and opens it for writing. Errors: journalExists,
    /// fileUnwritable, journalHeld.
    [[nodiscard]] static Result<Journal> create(const std::filesystem::path& path, Instant now);

    /// Opens for reading alone where writing was asked for and cannot be, and where the file is damaged;
    /// `readOnlyReason` then says why. An older layout is brought to this one when it is opened for writing;
    /// a copy of the old file stays beside it under its name and `.v1`. Errors: fileUnreadable,
    /// journalForeign, journalDamaged where no entry can be found in it, journalTooNew, journalNeedsFolder,
    /// journalOnNetwork, fileUnwritable.
    [[nodiscard]] static Result<Journal> open(const std::filesystem::path& path, Access access, Instant now);

    Journal(Journal&&) noexcept;
    Journal& operator=(Journal&&) noexcept;
    ~Journal();

    [[nodiscard]] const std::filesystem::path& path() const noexcept;
    [[nodiscard]] bool isWritable() const noexcept;
    /// Why it cannot be written although that was asked for: journalHeld, or journalLeft once readNew() has
    /// found that the other program has ended; journalNewer, journalMediumReadOnly, journalOpenedDamaged, or
    /// journalWriteFailed after a disk's failure.
    [[nodiscard]] const std::optional<Message>& readOnlyReason() const noexcept;

    /// All of them or none, on the disk before this returns. Each must follow the last of its device by
    /// sequence and hash. Evidence that is there already is left as it is. Errors: journalReadOnly,
    /// entryOutOfOrder, journalWriteFailed.
    [[nodiscard]] Result<void> append(std::span<const entries::StoredEntry> entries,
                                      std::span<const entries::Evidence> evidence = {});

    /// Lets go of the file after a disk's failure and opens it anew, for writing. Errors: those of open(),
    /// why it cannot be written, and journalBehind where entries are missing that had been appended or read.
    [[nodiscard]] Result<void> reopen(Instant now);

    /// Hands over every entry that can be read, in the order of arrival, and holds each to its device's
    /// chain; gives the first broken place, if any. A file that has one is left as it is from then on.
    std::optional<BrokenPlace> read(const std::function<void(entries::StoredEntry&&)>& take);

    /// The same for what has been committed since the last read().
    std::optional<BrokenPlace> readNew(const std::function<void(entries::StoredEntry&&)>& take);

    /// Looks at the file; gives the first broken place, if any. A file that has one is left as it is.
    [[nodiscard]] std::optional<BrokenPlace> verify(Look look = Look::whole);

    /// The last entry of every device.
    [[nodiscard]] const Heads& heads() const noexcept;

    /// The hash of one entry; none where there is no such entry. Error: journalDamaged.
    [[nodiscard]] Result<std::optional<Hash>> hashAt(entries::DeviceId device, std::int64_t sequence) const;

    /// What an entry was read from; none where it was never here or was erased. Error: journalDamaged.
    [[nodiscard]] Result<std::optional<std::string>> evidence(const Hash& hash) const;

    /// The names of people.
    [[nodiscard]] PeopleTable people();

    /// A copy of all that is committed, checked as a whole before it gets its name; never over another file.
    /// Errors: journalExists, fileUnwritable, journalDamaged.
    [[nodiscard]] Result<void> backupTo(const std::filesystem::path& copy) const;

  private:
    struct State;
    explicit Journal(std::unique_ptr<State> state);

    static Result<Journal> openSound(const std::filesystem::path& path, std::int64_t version,
                                     std::optional<Lease> lease);
    [[nodiscard]] Result<void> bringUpToDate();
    static Result<Journal> openBroken(const std::filesystem::path& path, const Error& error);

    std::unique_ptr<State> m_state;
};

}  // namespace treadwell::journal
