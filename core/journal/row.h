#pragma once

#include "core/entries/entry.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <array>
#include <functional>
#include <optional>
#include <string>

namespace treadwell::journal {

/// Takes the fourteen columns but the first, in the order of the table; bindRow fills them.
constexpr const char* kInsertRow =
    "INSERT INTO entry(id, device, device_seq, lamport, author, kind, kind_version, happened_us, recorded_us,"
    " utc_offset_min, target, payload, hash) VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?)";

/// The row refers to `entry` until it has been executed.
void bindRow(SQLite::Statement& insert, const entries::StoredEntry& entry);

struct UnreadableRow {
    std::int64_t row;
    std::string reason;
};

/// Every entry that can be read after row `after`, in order of seq; gives the first row that cannot. Looks
/// for rows up to `farthest` where some before cannot be read.
std::optional<UnreadableRow> readRows(
    SQLite::Database& database, std::int64_t after, std::int64_t farthest,
    const std::function<void(std::int64_t row, entries::StoredEntry&&)>& take);

/// A column of exactly as many bytes as `bytes` holds; SQLite::Exception otherwise.
template <std::size_t size>
void readBytes(const SQLite::Column& column, std::array<std::uint8_t, size>& bytes) {
    if (column.getBytes() != static_cast<int>(size)) throw SQLite::Exception("a column has the wrong size");
    std::copy_n(static_cast<const std::uint8_t*>(column.getBlob()), size, bytes.begin());
}

}  // namespace treadwell::journal
