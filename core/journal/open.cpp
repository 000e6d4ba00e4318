#include "core/journal/open.h"

#include "core/base/codes.h"
#include "core/base/descriptor.h"
#include "core/journal/codes.h"
#include "core/journal/schema.h"

#include <SQLiteCpp/Column.h>
#include <fcntl.h>
#include <linux/magic.h>
#include <sqlite3.h>
#include <sys/vfs.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <system_error>

namespace treadwell::journal {

namespace {

/// One thread at a time has a journal: SQLite need not lock it for every column that is read.
constexpr int kOneThread = SQLITE_OPEN_NOMUTEX;

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
    return {uriOf(path, "?immutable=1"), SQLite::OPEN_READONLY | SQLite::OPEN_URI | kOneThread};
}

bool hasWalWithEntries(const std::filesystem::path& path) {
    std::error_code absent;
    const auto size = std::filesystem::file_size(path.string() + "-wal", absent);
    return !absent && size > 0;
}

// The first bytes of an SQLite file, big-endian numbers (sqlite.org/fileformat2.html, "The database header").
constexpr std::size_t kHeaderSize = 100;
constexpr std::size_t kReadVersionAt = 19;  // 2: a WAL
constexpr std::size_t kUserVersionAt = 60;
constexpr std::size_t kApplicationIdAt = 68;
constexpr std::string_view kMagic{"SQLite format 3", 16};

using FileHeader = std::array<std::uint8_t, kHeaderSize>;

std::int32_t numberAt(const FileHeader& header, std::size_t at) {
    std::uint32_t number = 0;
    for (std::size_t i = 0; i < 4; ++i) number = number << 8 | header[at + i];
    return static_cast<std::int32_t>(number);
}

Result<FileHeader> headerOf(const std::filesystem::path& path) {
    const auto unreadable = [&path] {
        return fail(code::fileUnreadable, "file", path.string(), std::generic_category().message(errno));
    };
    const Descriptor file{::open(path.c_str(), O_RDONLY | O_CLOEXEC)};
    if (!file.isOpen()) return unreadable();
    FileHeader header{};
    const ssize_t size = ::pread(file.get(), header.data(), header.size(), 0);
    if (size < 0) return unreadable();
    if (size < static_cast<ssize_t>(header.size()) ||
        !std::equal(kMagic.begin(), kMagic.end(), header.begin())) {
        return fail(code::journalForeign, "file", path.string());
    }
    return header;
}

bool usesWal(const std::filesystem::path& path) {
    const auto header = headerOf(path);
    return header && (*header)[kReadVersionAt] == 2;
}

void leaveWalAtClosing(SQLite::Database& database, bool leave) {
    sqlite3_db_config(database.getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, leave ? 1 : 0, nullptr);
}

SQLite::Database openReadOnly(const std::filesystem::path& path) {
    SQLite::Database database(path.string(), SQLite::OPEN_READONLY | kOneThread, 5000);
    leaveWalAtClosing(database, true);
    return database;
}

}  // namespace

std::filesystem::path folderOf(const std::filesystem::path& path) {
    return path.has_parent_path() ? path.parent_path() : std::filesystem::path{"."};
}

Unexpected damaged(const std::filesystem::path& path, const SQLite::Exception& exception) {
    return fail(code::journalDamaged, "file", path.string(), std::string{exception.what()});
}

bool mayWrite(const std::filesystem::path& path) {
    return ::access(path.c_str(), W_OK) == 0;
}

Medium mediumOf(const std::filesystem::path& path) {
    // Of those without a line in linux/magic.h.
    constexpr std::array kOthers{0xFF534D42L, 0xFE534D42L};  // cifs, smb2
    struct statfs status {};
    if (::statfs(folderOf(path).c_str(), &status) != 0) return Medium::local;
    const auto type = static_cast<std::int64_t>(static_cast<std::uint32_t>(status.f_type));
    const std::array kKnown{std::int64_t{NFS_SUPER_MAGIC}, std::int64_t{SMB_SUPER_MAGIC},
                            std::int64_t{AFS_SUPER_MAGIC}, std::int64_t{CODA_SUPER_MAGIC},
                            std::int64_t{V9FS_MAGIC},      std::int64_t{kOthers[0]},
                            std::int64_t{kOthers[1]}};
    const bool network = std::find(kKnown.begin(), kKnown.end(), type) != kKnown.end();
    return network ? Medium::network : Medium::local;
}

Result<std::int64_t> layoutVersionOf(const std::filesystem::path& path) {
    if (std::filesystem::is_directory(path)) {
        return fail(code::fileUnreadable, "file", path.string(), std::generic_category().message(EISDIR));
    }
    const auto header = headerOf(path);
    if (!header) return tl::unexpected(header.error());
    if (numberAt(*header, kApplicationIdAt) != kApplicationId) {
        return fail(code::journalForeign, "file", path.string());
    }
    return numberAt(*header, kUserVersionAt);
}

SQLite::Database openForWriting(const std::filesystem::path& path, Medium medium) {
    SQLite::Database database(path.string(), SQLite::OPEN_READWRITE | kOneThread, 5000);
    leaveWalAtClosing(database, true);
    if (medium == Medium::network && usesWal(path)) {
        // Alone with the file SQLite needs no shared memory for what the WAL still holds.
        database.execAndGet("PRAGMA locking_mode = EXCLUSIVE");
        database.execAndGet("PRAGMA journal_mode = DELETE");
        database.execAndGet("PRAGMA locking_mode = NORMAL");
    }
    database.exec("PRAGMA foreign_keys = ON");
    // Else INSERT OR REPLACE would delete a row past the trigger that forbids it.
    database.exec("PRAGMA recursive_triggers = ON");
    return database;
}

void prepareToWrite(SQLite::Database& database, Medium medium) {
    const bool local = medium == Medium::local;
    database.execAndGet(local ? "PRAGMA journal_mode = WAL" : "PRAGMA journal_mode = DELETE");
    // EXTRA also syncs the folder once the rollback journal is gone.
    database.exec(local ? "PRAGMA synchronous = FULL" : "PRAGMA synchronous = EXTRA");
}

void keepTidy(SQLite::Database& database) {
    leaveWalAtClosing(database, false);
}

Result<SQLite::Database> openForReading(const std::filesystem::path& path, Medium medium) {
    const bool folderIsWritable = mayWrite(folderOf(path));
    const bool walIsOutOfReach = !folderIsWritable || (medium == Medium::network && usesWal(path));
    if (!walIsOutOfReach) return openReadOnly(path);
    if (!hasWalWithEntries(path)) return openUnchanging(path);
    return fail(folderIsWritable ? code::journalOnNetwork : code::journalNeedsFolder, "file", path.string());
}

SQLite::Database openDamaged(const std::filesystem::path& path) {
    SQLite::Database database = hasWalWithEntries(path) ? openReadOnly(path) : openUnchanging(path);
    // Lets SQLite begin with a file that is shorter than its header says.
    database.exec("PRAGMA writable_schema = ON");
    return database;
}

bool isInPlace(SQLite::Database& database) {
    int moved = 0;
    sqlite3_file_control(database.getHandle(), "main", SQLITE_FCNTL_HAS_MOVED, &moved);
    return moved == 0;
}

Result<void> nothingAt(const std::filesystem::path& path) {
    for (const char* suffix : {"", "-wal", "-journal", "-shm"}) {
        const std::string name = path.string() + suffix;
        std::error_code ignored;
        if (std::filesystem::exists(std::filesystem::symlink_status(name, ignored))) {
            return fail(code::journalExists, "file", name);
        }
    }
    return {};
}

}  // namespace treadwell::journal
