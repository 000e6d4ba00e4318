#include "app/cli/table.h"

#include "core/formats/csv_writer.h"

#include <algorithm>
#include <ostream>

namespace treadwell::cli {

namespace {

struct InWords {
    const words::Style& style;

    std::string operator()(std::monostate /*nothing*/) const { return "-"; }
    std::string operator()(const std::string& word) const { return word; }
    std::string operator()(const Name& name) const { return name.text; }
    std::string operator()(std::int64_t count) const { return std::to_string(count); }
    std::string operator()(double number) const { return words::inWords(number, style); }
    std::string operator()(Amount amount) const { return words::inWords(amount, style); }
    std::string operator()(Instant at) const { return words::inWords(at, style); }
};

struct InCsv {
    formats::CsvWriter& csv;

    void operator()(std::monostate /*nothing*/) const { csv.empty(); }
    void operator()(const std::string& word) const { csv.word(word); }
    void operator()(const Name& name) const { csv.text(name.text); }
    void operator()(std::int64_t count) const { csv.number(count); }
    void operator()(double number) const { csv.number(number); }
    void operator()(Amount amount) const {
        csv.number(unitOf(amount.dimension, UnitSystem::metric).fromSi(amount.si));
    }
    void operator()(Instant at) const { csv.word(toIso8601(at)); }
};

struct InJson {
    JsonWriter& json;

    void operator()(std::monostate /*nothing*/) const { json.null(); }
    void operator()(const std::string& word) const { json.value(word); }
    void operator()(const Name& name) const { json.value(name.text); }
    void operator()(std::int64_t count) const { json.value(count); }
    void operator()(double number) const { json.value(number); }
    void operator()(Amount amount) const {
        json.value(unitOf(amount.dimension, UnitSystem::metric).fromSi(amount.si));
    }
    void operator()(Instant at) const { json.value(toIso8601(at)); }
};

/// With the metric unit of a column of quantities.
std::string keyOf(const Column& column) {
    if (!column.dimension) return column.key;
    return column.key + '_' + std::string{unitOf(*column.dimension, UnitSystem::metric).key};
}

bool isNumber(const Cell& cell) {
    return std::holds_alternative<Amount>(cell) || std::holds_alternative<std::int64_t>(cell) ||
           std::holds_alternative<double>(cell);
}

/// Columns on the screen: code points of UTF-8 text.
std::size_t widthOf(const std::string& text) {
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

}  // namespace

void printTable(std::ostream& out, const Table& table, const words::Style& style) {
    std::vector<std::vector<std::string>> lines(1);
    for (const Column& column : table.columns) lines.front().push_back(column.heading);
    for (const auto& row : table.rows) {
        auto& line = lines.emplace_back();
        for (const Cell& cell : row) line.push_back(std::visit(InWords{style}, cell));
    }
    std::vector<std::size_t> widths(table.columns.size(), 0);
    for (const auto& line : lines) {
        for (std::size_t i = 0; i < line.size(); ++i) widths[i] = std::max(widths[i], widthOf(line[i]));
    }
    for (std::size_t r = 0; r < lines.size(); ++r) {
        std::string text;
        for (std::size_t i = 0; i < widths.size(); ++i) {
            const std::string blanks(widths[i] - widthOf(lines[r][i]), ' ');
            const bool right = !table.rows.empty() && isNumber(table.rows[r == 0 ? 0 : r - 1][i]);
            text += (i > 0 ? "  " : "") + (right ? blanks + lines[r][i] : lines[r][i] + blanks);
        }
        text.erase(text.find_last_not_of(' ') + 1);
        out << text << '\n';
    }
}

std::string csvOf(const Table& table) {
    formats::CsvWriter csv;
    for (const Column& column : table.columns) csv.text(keyOf(column));
    csv.endRow();
    for (const auto& row : table.rows) {
        for (const Cell& cell : row) std::visit(InCsv{csv}, cell);
        csv.endRow();
    }
    return csv.content();
}

void writeTable(JsonWriter& json, const Table& table) {
    json.beginArray();
    for (const auto& row : table.rows) {
        json.beginObject();
        for (std::size_t i = 0; i < row.size(); ++i) {
            json.key(keyOf(table.columns[i]));
            std::visit(InJson{json}, row[i]);
        }
        json.endObject();
    }
    json.endArray();
}

}  // namespace treadwell::cli
