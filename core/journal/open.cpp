#include "core/journal/open.h"

#include "core/journal/schema.h"

#include <SQLiteCpp/Column.h>
#include <sqlite3.h>
#include <unistd.h>

#include <string>
#include <system_error>

namespace treadwell::journal {

namespace {

std::string uriOf(const std::filesystem::path& path, const char* options) {
    std::string uri = "file:";
    for (const char c : std::filesystem::absolute(path).string()) {
        if (c == '%') {
            uri += "%25";
        } else if (c == '?') {
            uri += "%3f";
        } else if (c == '#') {
            uri += "%23";
        } else {
            uri += c;
        }
    }
    return uri + options;
}

SQLite::Database openUnchanging(const std::filesystem::path& path) {
    return {uriOf(path, "?immutable=1"), SQLite::OPEN_READONLY | SQLite::OPEN_URI};
}

std::filesystem::path walOf(const std::filesystem::path& path) {
    return path.string() + "-wal";
}

}  // namespace

std::filesystem::path folderOf(const std::filesystem::path& path) {
    return path.has_parent_path() ? path.parent_path() : std::filesystem::path{"."};
}

Unexpected damaged(const std::filesystem::path& path, const SQLite::Exception& exception) {
    return fail(Code::journalDamaged, "file", path.string(), std::string{exception.what()});
}

bool mayWrite(const std::filesystem::path& path) {
    return ::access(path.c_str(), W_OK) == 0;
}

Result<std::int64_t> layoutVersionOf(const std::filesystem::path& path) {
    if (::access(path.c_str(), R_OK) != 0 || std::filesystem::is_directory(path)) {
        const int reason = std::filesystem::is_directory(path) ? EISDIR : errno;
        return fail(Code::fileUnreadable, "file", path.string(), std::generic_category().message(reason));
    }
    try {
        SQLite::Database database = openUnchanging(path);
        if (database.execAndGet("PRAGMA application_id").getInt64() != kApplicationId) {
            return fail(Code::journalForeign, "file", path.string());
        }
        return database.execAndGet("PRAGMA user_version").getInt64();
    } catch (const SQLite::Exception& exception) {
        if (exception.getErrorCode() == SQLITE_NOTADB) {
            return fail(Code::journalForeign, "file", path.string());
        }
        return damaged(path, exception);
    }
}

SQLite::Database openForWriting(const std::filesystem::path& path) {
    SQLite::Database database(path.string(), SQLite::OPEN_READWRITE, 5000);
    database.execAndGet("PRAGMA journal_mode = WAL");
    database.exec("PRAGMA synchronous = FULL");
    database.exec("PRAGMA foreign_keys = ON");
    // Else INSERT OR REPLACE would delete a row past the trigger that forbids it.
    database.exec("PRAGMA recursive_triggers = ON");
    return database;
}

Result<SQLite::Database> openForReading(const std::filesystem::path& path) {
    if (!mayWrite(folderOf(path))) {
        std::error_code absent;
        const auto left = std::filesystem::file_size(walOf(path), absent);
        if (!absent && left > 0) return fail(Code::journalNeedsFolder, "file", path.string());
        return openUnchanging(path);
    }
    SQLite::Database database(path.string(), SQLite::OPEN_READONLY, 5000);
    sqlite3_db_config(database.getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
    return database;
}

Result<void> nothingAt(const std::filesystem::path& path) {
    for (const char* suffix : {"", "-wal", "-journal", "-shm"}) {
        const std::string name = path.string() + suffix;
        std::error_code ignored;
        if (std::filesystem::exists(std::filesystem::symlink_status(name, ignored))) {
            return fail(Code::journalExists, "file", name);
        }
    }
    return {};
}

}  // namespace treadwell::journal
