#include "core/journal/schema.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>

#include <array>
#include <map>
#include <string>
#include <string_view>
#include <utility>

namespace treadwell::journal {

namespace {

// Names of people and raw evidence stand apart from the entries, which are never erased.
constexpr const char* kTables = R"sql(
CREATE TABLE entry(
    seq INTEGER PRIMARY KEY,
    id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
    device BLOB NOT NULL CHECK (length(device) = 16),
    device_seq INTEGER NOT NULL CHECK (device_seq > 0),
    lamport INTEGER NOT NULL CHECK (lamport > 0),
    author BLOB NOT NULL CHECK (length(author) = 16),
    kind TEXT NOT NULL CHECK (kind <> ''),
    kind_version INTEGER NOT NULL CHECK (kind_version > 0),
    happened_us INTEGER NOT NULL,
    recorded_us INTEGER NOT NULL,
    utc_offset_min INTEGER NOT NULL CHECK (utc_offset_min BETWEEN -1080 AND 1080),
    target BLOB CHECK (length(target) = 16),
    payload TEXT NOT NULL CHECK (json_valid(payload)),
    hash BLOB NOT NULL CHECK (length(hash) = 32),
    UNIQUE (device, device_seq)
) STRICT;
CREATE TRIGGER entry_never_changes BEFORE UPDATE ON entry
BEGIN SELECT RAISE(ABORT, 'entries are never changed'); END;
CREATE TRIGGER entry_never_goes BEFORE DELETE ON entry
BEGIN SELECT RAISE(ABORT, 'entries are never deleted'); END;
CREATE TABLE person(id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16), name TEXT NOT NULL) STRICT;
CREATE TABLE evidence(hash BLOB NOT NULL PRIMARY KEY CHECK (length(hash) = 32), content BLOB NOT NULL) STRICT;
)sql";

// Without it INSERT OR REPLACE deletes a row past entry_never_goes wherever a program leaves
// recursive_triggers off, which is SQLite's default.
constexpr const char* kNeverReplaced = R"sql(
CREATE TRIGGER entry_never_replaced BEFORE INSERT ON entry
WHEN EXISTS (SELECT 1 FROM entry WHERE seq = NEW.seq)
  OR EXISTS (SELECT 1 FROM entry WHERE id = NEW.id)
  OR EXISTS (SELECT 1 FROM entry WHERE device = NEW.device AND device_seq = NEW.device_seq)
BEGIN SELECT RAISE(ABORT, 'entries are never replaced'); END;
)sql";

/// What leads from version i + 1 to i + 2.
constexpr std::array<const char*, kLayoutVersion - 1> kSteps{kNeverReplaced};

void setVersion(SQLite::Database& database, std::int64_t version) {
    database.exec("PRAGMA user_version = " + std::to_string(version));
}

constexpr std::array<std::pair<std::string_view, std::string_view>, 14> kColumns{{
    {"seq", "INTEGER"},
    {"id", "BLOB"},
    {"device", "BLOB"},
    {"device_seq", "INTEGER"},
    {"lamport", "INTEGER"},
    {"author", "BLOB"},
    {"kind", "TEXT"},
    {"kind_version", "INTEGER"},
    {"happened_us", "INTEGER"},
    {"recorded_us", "INTEGER"},
    {"utc_offset_min", "INTEGER"},
    {"target", "BLOB"},
    {"payload", "TEXT"},
    {"hash", "BLOB"},
}};

}  // namespace

void makeTables(SQLite::Database& database) {
    SQLite::Transaction transaction(database);
    database.exec(kTables);
    for (const char* step : kSteps) database.exec(step);
    database.exec("PRAGMA application_id = " + std::to_string(kApplicationId));
    setVersion(database, kLayoutVersion);
    transaction.commit();
}

std::int64_t layoutVersionIn(SQLite::Database& database) {
    return database.execAndGet("PRAGMA user_version").getInt64();
}

void migrate(SQLite::Database& database) {
    SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
    for (auto version = layoutVersionIn(database); version < kLayoutVersion; ++version) {
        database.exec(kSteps.at(static_cast<std::size_t>(version - 1)));
        setVersion(database, version + 1);
    }
    transaction.commit();
}

bool hasOurColumns(SQLite::Database& database) {
    std::map<std::string, std::string, std::less<>> found;
    SQLite::Statement columns(database, "SELECT name, type FROM pragma_table_info('entry')");
    while (columns.executeStep()) found[columns.getColumn(0).getString()] = columns.getColumn(1).getString();
    for (const auto& [name, type] : kColumns) {
        const auto column = found.find(name);
        if (column == found.end() || column->second != type) return false;
    }
    return true;
}

}  // namespace treadwell::journal
