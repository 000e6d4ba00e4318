#pragma once

#include "core/base/error.h"

#include <SQLiteCpp/Database.h>

#include <filesystem>
#include <functional>

namespace treadwell::journal {

/// Fills a file beside `path` and gives it its name when it is whole; never over another file. Errors:
/// journalExists, fileUnwritable, and those of `fill`.
[[nodiscard]] Result<void> makeWhole(const std::filesystem::path& path,
                                     const std::function<Result<void>(const std::filesystem::path&)>& fill);

/// A copy of all that is committed, checked as a whole before it gets its name; never over another file.
/// Errors: journalExists, fileUnwritable, journalDamaged.
[[nodiscard]] Result<void> copyTo(SQLite::Database& database, const std::filesystem::path& copy);

}  // namespace treadwell::journal
