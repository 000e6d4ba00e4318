#pragma once

#include "core/base/error.h"

#include <SQLiteCpp/Database.h>

#include <filesystem>

namespace treadwell::journal {

/// What the file's own header says, found without leaving a trace beside it. Errors: fileUnreadable,
/// journalForeign, journalDamaged.
[[nodiscard]] Result<std::int64_t> layoutVersionOf(const std::filesystem::path& path);

[[nodiscard]] SQLite::Database openForWriting(const std::filesystem::path& path);

/// Never checkpoints. Where the folder cannot be written SQLite can keep no index of the WAL, so the file is
/// read as one that does not change; error journalNeedsFolder, where a WAL with entries is left there.
[[nodiscard]] Result<SQLite::Database> openForReading(const std::filesystem::path& path);

/// Whether another file would get in the way of a new one called `path`: error journalExists. A stale WAL
/// would be replayed into the new file.
[[nodiscard]] Result<void> nothingAt(const std::filesystem::path& path);

[[nodiscard]] bool mayWrite(const std::filesystem::path& path);

[[nodiscard]] std::filesystem::path folderOf(const std::filesystem::path& path);

[[nodiscard]] Unexpected damaged(const std::filesystem::path& path, const SQLite::Exception& exception);

}  // namespace treadwell::journal
