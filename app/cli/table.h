#pragma once

#include "app/words/words.h"
#include "core/base/json_writer.h"

#include <iosfwd>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace treadwell::cli {

/// Nothing, a word of ours, somebody's own words, a count, a plain number, a quantity or a time.
struct Name {
    std::string text;
};
using Cell = std::variant<std::monostate, std::string, Name, std::int64_t, double, Amount, Instant>;

struct Column {
    std::string key;                          ///< for CSV, `thickness`; the unit is put behind it
    std::string heading;                      ///< for people
    std::optional<Dimension> dimension = {};  ///< of a column of quantities
};

/// What a command lists, to be read by people or by a spreadsheet. Every row has a cell for each column.
struct Table {
    std::vector<Column> columns;
    std::vector<std::vector<Cell>> rows;
};

/// In columns, quantities with their units, times on the farm's clock.
void printTable(std::ostream& out, const Table& table, const words::Style& style);

/// RFC 4180 in UTF-8: metric units in the header, times in UTC as ISO 8601, and no cell that a spreadsheet
/// would take for a formula.
[[nodiscard]] std::string csvOf(const Table& table);

/// An array of objects, a row each, by the columns' keys: metric units in the key, times in UTC, null for
/// nothing.
void writeTable(JsonWriter& json, const Table& table);

}  // namespace treadwell::cli
