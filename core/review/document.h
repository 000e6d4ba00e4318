#pragma once

#include "core/base/error.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace treadwell::review {

/// A stable name of an enumeration, or `yes` and `no`: a literal.
struct Word {
    std::string_view name;
    friend bool operator==(const Word&, const Word&) = default;
};

/// What a table's cell holds, before it is put into words: nothing, a quantity, a count, a plain number,
/// somebody's own words, a time, a sentence or a word of ours.
using Cell = std::variant<std::monostate, Amount, std::int64_t, double, std::string, Instant, Message, Word>;

struct Column {
    std::string_view key;  ///< stable, lowerCamel, for JSON and CSV; a literal
    Code heading;
    friend bool operator==(const Column&, const Column&) = default;
};

/// Every row has a cell for each column.
struct Table {
    std::string_view key;  ///< stable, within its section
    std::vector<Column> columns;
    std::vector<std::vector<Cell>> rows;
    std::size_t names = 1;  ///< leading columns that tell a row from the others
    friend bool operator==(const Table&, const Table&) = default;
};

/// Something over time, to be drawn.
struct Series {
    std::string_view key;
    Code name;
    Dimension dimension;
    std::vector<std::pair<Instant, double>> points;  ///< SI
    friend bool operator==(const Series&, const Series&) = default;
};

using Block = std::variant<Message, Table, Series>;

struct Section {
    std::string_view key;  ///< stable, within its document
    Code title;
    std::vector<Block> blocks;
    friend bool operator==(const Section&, const Section&) = default;
};

/// The key of the section whose sentences say most in the fewest words.
inline constexpr std::string_view kSummary = "summary";

/// What is printed, exported or shown of a day or a season: one model, several renderers.
struct Document {
    std::string_view key;
    Message title;
    std::vector<Section> sections;
    friend bool operator==(const Document&, const Document&) = default;
};

}  // namespace treadwell::review
