#pragma once

#include "core/entries/entry.h"
#include "core/entries/evidence.h"
#include "core/journal/lease.h"

#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <span>

namespace treadwell::journal {

enum class Access : std::uint8_t { write, read };

/// The last entry of a device.
struct Head {
    std::int64_t sequence = 0;
    Hash hash{};

    friend bool operator==(const Head&, const Head&) = default;
};

/// The first entry that does not follow from those before it: it, or one before it, is not as it was written.
struct ChainBreak {
    entries::DeviceId device;
    std::int64_t sequence = 0;

    [[nodiscard]] Message message() const;
    friend bool operator==(const ChainBreak&, const ChainBreak&) = default;
};

/// A season's file: entries that are only ever added, each durable before append() returns. One process
/// writes; others read. Not thread-safe: one thread owns it.
class Journal {
  public:
    /// Makes a new file, whole or not at all, and opens it for writing. Errors: journalExists,
    /// fileUnwritable, journalHeld.
    [[nodiscard]] static Result<Journal> create(const std::filesystem::path& path, Instant now);

    /// Opens for reading alone where writing was asked for and cannot be; `readOnlyReason` then says why.
    /// Errors: fileUnreadable, journalForeign, journalDamaged, journalTooNew, journalNeedsFolder.
    [[nodiscard]] static Result<Journal> open(const std::filesystem::path& path, Access access, Instant now);

    Journal(Journal&&) noexcept;
    Journal& operator=(Journal&&) noexcept;
    ~Journal();

    [[nodiscard]] const std::filesystem::path& path() const noexcept;
    [[nodiscard]] bool isWritable() const noexcept;
    /// Why it cannot be written although that was asked for: journalHeld, journalNewer,
    /// journalMediumReadOnly, or journalWriteFailed after a disk's failure.
    [[nodiscard]] const std::optional<Message>& readOnlyReason() const noexcept;

    /// All of them or none, on the disk before this returns. Each must follow the last of its device by
    /// sequence and hash. Evidence that is there already is left as it is. Errors: journalReadOnly,
    /// entryOutOfOrder, journalWriteFailed.
    [[nodiscard]] Result<void> append(std::span<const entries::StoredEntry> entries,
                                      std::span<const entries::Evidence> evidence = {});

    /// Hands over every entry in the order of arrival and holds each to its device's chain; gives the first
    /// break, if any. Error: journalDamaged.
    [[nodiscard]] Result<std::optional<ChainBreak>> read(
        const std::function<void(entries::StoredEntry&&)>& take) const;

    /// SQLite's own look at the structure of the file. Error: journalDamaged.
    [[nodiscard]] Result<void> quickCheck() const;

    /// The last entry of every device.
    [[nodiscard]] const std::map<entries::DeviceId, Head>& heads() const noexcept;

    /// The hash of one entry; none where there is no such entry. Error: journalDamaged.
    [[nodiscard]] Result<std::optional<Hash>> hashAt(entries::DeviceId device, std::int64_t sequence) const;

    /// What an entry was read from; none where it was never here or was erased. Error: journalDamaged.
    [[nodiscard]] Result<std::optional<std::string>> evidence(const Hash& hash) const;

    /// A copy of all that is committed, checked as a whole before it gets its name; never over another file.
    /// Errors: journalExists, fileUnwritable, journalDamaged.
    [[nodiscard]] Result<void> backupTo(const std::filesystem::path& copy) const;

  private:
    struct State;
    explicit Journal(std::unique_ptr<State> state);

    std::unique_ptr<State> m_state;
};

/// What a printed sheet carries so that it can be held against the file: SHA-256 over the sorted
/// (device, sequence, hash) of each device's last entry, which stands for its whole chain.
[[nodiscard]] Hash headHash(const std::map<entries::DeviceId, Head>& heads);

}  // namespace treadwell::journal
