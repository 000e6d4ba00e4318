#pragma once

#include "core/base/error.h"
#include "core/entries/entry.h"
#include "core/entries/evidence.h"

#include <filesystem>
#include <vector>

namespace treadwell::session {

/// Entries that could not be recorded, with what they were read from.
struct Kept {
    std::vector<entries::StoredEntry> entries;
    std::vector<entries::Evidence> evidence;
    std::vector<entries::EntryId> untimed = {};  ///< entries of these whose times are by a clock in question
};

[[nodiscard]] bool isUntimed(const entries::StoredEntry& entry, const Kept& kept);

/// Adds what the journal could not take to a file of JSON lines, synced before this returns. Error:
/// fileUnwritable.
[[nodiscard]] Result<void> keepAside(const std::filesystem::path& file, const Kept& kept);

/// The same in the place of all that the file held.
[[nodiscard]] Result<void> keepInstead(const std::filesystem::path& file, const Kept& kept);

/// What was kept, nothing where there is no file: id, author, kind, happened, target and payload are as they
/// were, and whether the time was in question; the rest of the header belongs to the attempt that failed and
/// is left out. Errors: fileUnreadable, and payloadUnreadable, payloadFieldMissing or payloadFieldWrong with
/// the line.
[[nodiscard]] Result<Kept> keptIn(const std::filesystem::path& file);

}  // namespace treadwell::session
