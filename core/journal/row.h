#pragma once

#include "core/entries/entry.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <array>
#include <functional>

namespace treadwell::journal {

/// Takes the fourteen columns but the first, in the order of the table; bindRow fills them.
constexpr const char* kInsertRow =
    "INSERT INTO entry(id, device, device_seq, lamport, author, kind, kind_version, happened_us, recorded_us,"
    " utc_offset_min, target, payload, hash) VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?)";

/// The row refers to `entry` until it has been executed.
void bindRow(SQLite::Statement& insert, const entries::StoredEntry& entry);

/// Every entry in order of seq. SQLite::Exception where a row cannot be read.
void readRows(SQLite::Database& database, const std::function<void(entries::StoredEntry&&)>& take);

/// A column of exactly as many bytes as `bytes` holds; SQLite::Exception otherwise.
template <std::size_t size>
void readBytes(const SQLite::Column& column, std::array<std::uint8_t, size>& bytes) {
    if (column.getBytes() != static_cast<int>(size)) throw SQLite::Exception("a column has the wrong size");
    std::copy_n(static_cast<const std::uint8_t*>(column.getBlob()), size, bytes.begin());
}

}  // namespace treadwell::journal
