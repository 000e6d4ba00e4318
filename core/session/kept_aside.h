#pragma once

#include "core/base/error.h"
#include "core/entries/entry.h"

#include <filesystem>
#include <span>
#include <vector>

namespace treadwell::session {

/// Adds entries that the journal could not take to a file of JSON lines, synced before this returns. Error:
/// fileUnwritable.
[[nodiscard]] Result<void> keepAside(const std::filesystem::path& file,
                                     std::span<const entries::StoredEntry> entries);

/// What was kept, none where there is no file: id, author, kind, happened, target and payload are as they
/// were; the rest of the header belongs to the attempt that failed and is left out. Errors: fileUnreadable,
/// and payloadUnreadable or payloadFieldMissing with the line.
[[nodiscard]] Result<std::vector<entries::StoredEntry>> keptIn(const std::filesystem::path& file);

}  // namespace treadwell::session
