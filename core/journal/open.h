#pragma once

#include "core/base/error.h"

#include <SQLiteCpp/Database.h>

#include <filesystem>

namespace treadwell::journal {

/// What a file lies on. SQLite's WAL needs memory that all its users share, which no network gives.
enum class Medium : std::uint8_t { local, network };

[[nodiscard]] Medium mediumOf(const std::filesystem::path& path);

/// What the file's own header says, found without leaving a trace beside it. Errors: fileUnreadable,
/// journalForeign.
[[nodiscard]] Result<std::int64_t> layoutVersionOf(const std::filesystem::path& path);

/// Leaves the file as it is until prepareToWrite, and its WAL where it is at closing until keepTidy.
[[nodiscard]] SQLite::Database openForWriting(const std::filesystem::path& path, Medium medium);

/// Makes a commit durable before it returns: WAL and FULL, or on a network the rollback journal.
void prepareToWrite(SQLite::Database& database, Medium medium);

/// Lets the WAL be taken into the file at closing.
void keepTidy(SQLite::Database& database);

/// Never checkpoints. Where the folder cannot be written SQLite can keep no index of the WAL, so the file is
/// read as one that does not change. Errors, where a WAL with entries is left: journalNeedsFolder,
/// journalOnNetwork.
[[nodiscard]] Result<SQLite::Database> openForReading(const std::filesystem::path& path, Medium medium);

/// Opens what SQLite would refuse for being too short or for its schema; for reading alone.
[[nodiscard]] SQLite::Database openDamaged(const std::filesystem::path& path);

/// Whether the file of this name is still the one that is open.
[[nodiscard]] bool isInPlace(SQLite::Database& database);

/// Whether another file would get in the way of a new one called `path`: error journalExists. A stale WAL
/// would be replayed into the new file.
[[nodiscard]] Result<void> nothingAt(const std::filesystem::path& path);

[[nodiscard]] bool mayWrite(const std::filesystem::path& path);

[[nodiscard]] std::filesystem::path folderOf(const std::filesystem::path& path);

[[nodiscard]] Unexpected damaged(const std::filesystem::path& path, const SQLite::Exception& exception);

}  // namespace treadwell::journal
