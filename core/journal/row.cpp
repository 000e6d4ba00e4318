#include "core/journal/row.h"

#include <sqlite3.h>

#include <algorithm>
#include <memory>
#include <utility>

namespace treadwell::journal {

namespace {

struct Finalize {
    void operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }
};

/// Reads the columns of one row from left to right. SQLiteCpp's Column counts references to its statement,
/// which would cost as much as reading the row.
class RowReader {
  public:
    explicit RowReader(sqlite3_stmt* statement) : m_statement(statement) {}

    std::int64_t integer() { return sqlite3_column_int64(m_statement, m_column++); }
    void text(std::string& target) {
        const auto* begin = reinterpret_cast<const char*>(sqlite3_column_text(m_statement, m_column));
        const int size = sqlite3_column_bytes(m_statement, m_column++);
        target.assign(begin == nullptr ? "" : begin, static_cast<std::size_t>(size));
    }
    template <std::size_t size>
    void bytes(std::array<std::uint8_t, size>& target) {
        const auto* begin = static_cast<const std::uint8_t*>(sqlite3_column_blob(m_statement, m_column));
        if (sqlite3_column_bytes(m_statement, m_column) == static_cast<int>(size)) {
            std::copy_n(begin, size, target.begin());
        } else {
            m_whole = false;
        }
        ++m_column;
    }
    [[nodiscard]] bool isNull() const { return sqlite3_column_type(m_statement, m_column) == SQLITE_NULL; }

    /// Whether every column read so far had its size.
    [[nodiscard]] bool isWhole() const { return m_whole; }

  private:
    sqlite3_stmt* m_statement;
    bool m_whole = true;
    int m_column = 1;  // after seq
};

bool readInto(entries::StoredEntry& entry, sqlite3_stmt* statement) {
    RowReader row{statement};
    entries::Header& header = entry.header;
    row.bytes(header.id.value.bytes);
    row.bytes(header.device.value.bytes);
    header.deviceSequence = row.integer();
    header.lamport = row.integer();
    row.bytes(header.author.value.bytes);
    row.text(header.kind);
    header.kindVersion = static_cast<int>(row.integer());
    header.happened = instantFromMicroseconds(row.integer());
    header.recorded = instantFromMicroseconds(row.integer());
    header.utcOffsetMinutes = static_cast<int>(row.integer());
    if (row.isNull()) {
        row.integer();
        header.target.reset();
    } else {
        row.bytes(header.target.emplace().value.bytes);
    }
    row.text(entry.payload);
    row.bytes(entry.hash);
    return row.isWhole();
}

}  // namespace

void bindRow(SQLite::Statement& insert, const entries::StoredEntry& entry) {
    int column = 0;
    const auto bytes = [&](const auto& array) {
        insert.bindNoCopy(++column, array.data(), static_cast<int>(array.size()));
    };
    const auto integer = [&](std::int64_t number) { insert.bind(++column, number); };
    const entries::Header& header = entry.header;
    bytes(header.id.value.bytes);
    bytes(header.device.value.bytes);
    integer(header.deviceSequence);
    integer(header.lamport);
    bytes(header.author.value.bytes);
    insert.bindNoCopy(++column, header.kind);
    integer(header.kindVersion);
    integer(toMicroseconds(header.happened));
    integer(toMicroseconds(header.recorded));
    integer(header.utcOffsetMinutes);
    if (header.target) {
        bytes(header.target->value.bytes);
    } else {
        insert.bind(++column);
    }
    insert.bindNoCopy(++column, entry.payload);
    bytes(entry.hash);
}

std::optional<UnreadableRow> readRows(
    SQLite::Database& database, std::int64_t after, std::int64_t farthest,
    const std::function<void(std::int64_t row, entries::StoredEntry&&)>& take) {
    std::optional<UnreadableRow> first;
    const auto note = [&](std::int64_t row, const char* reason) {
        if (!first) first = {row, reason};
    };
    sqlite3_stmt* prepared = nullptr;
    const int ready =
        sqlite3_prepare_v2(database.getHandle(),
                           "SELECT seq, id, device, device_seq, lamport, author, kind, kind_version,"
                           " happened_us, recorded_us, utc_offset_min, target, payload, hash"
                           " FROM entry WHERE seq > ? ORDER BY seq",
                           -1, &prepared, nullptr);
    const std::unique_ptr<sqlite3_stmt, Finalize> statement{prepared};
    if (ready != SQLITE_OK) return UnreadableRow{after + 1, sqlite3_errstr(ready)};

    entries::StoredEntry entry;  // its strings keep their room from row to row
    for (std::int64_t last = after;; ++last) {
        sqlite3_reset(prepared);
        sqlite3_bind_int64(prepared, 1, last);
        int code = sqlite3_step(prepared);
        for (; code == SQLITE_ROW; code = sqlite3_step(prepared)) {
            const std::int64_t row = sqlite3_column_int64(prepared, 0);
            if (row <= last) {
                code = SQLITE_CORRUPT;
                break;
            }
            last = row;
            if (readInto(entry, prepared)) {
                take(row, std::move(entry));
            } else {
                note(row, "a column has the wrong size");
            }
        }
        if (code == SQLITE_DONE) return first;
        note(last + 1, sqlite3_errstr(code));
        // Beyond a damaged page others may be whole: on from the next row number, until one can be read.
        const bool isDamage = (code & 0xff) == SQLITE_CORRUPT || (code & 0xff) == SQLITE_IOERR;
        if (!isDamage || last >= farthest) return first;
    }
}

}  // namespace treadwell::journal
