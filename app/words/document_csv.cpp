#include "app/words/document.h"
#include "core/formats/csv_writer.h"
#include "core/quantity/unit_table.h"

namespace treadwell::words {

namespace {

struct CellInCsv {
    formats::CsvWriter& csv;
    const Style& style;

    void operator()(std::monostate /*nothing*/) const { csv.empty(); }
    void operator()(Amount amount) const {
        csv.number(unitOf(amount.dimension, UnitSystem::metric).fromSi(amount.si));
    }
    void operator()(std::int64_t count) const { csv.number(count); }
    void operator()(double number) const { csv.number(number); }
    void operator()(const std::string& text) const { csv.text(text); }
    void operator()(Instant at) const { csv.word(toIso8601(at)); }
    void operator()(const Message& message) const { csv.text(inWords(message, style)); }
    void operator()(review::Word word) const { csv.word(word.name); }
};

/// The column's key and, where it holds quantities, the key of their metric unit.
std::string headerOf(const review::Table& table, std::size_t column) {
    std::string header{table.columns[column].key};
    for (const auto& row : table.rows) {
        const auto* amount = std::get_if<Amount>(&row[column]);
        if (amount == nullptr) continue;
        return header + '_' + std::string{unitOf(amount->dimension, UnitSystem::metric).key};
    }
    return header;
}

struct BlockInCsv {
    formats::CsvWriter& csv;
    const Style& style;
    std::string_view section;

    void operator()(const Message& message) const {
        csv.word(section).word("sentence").word(toText(message.code)).text(inWords(message, style)).endRow();
    }

    void operator()(const review::Table& table) const {
        csv.word(section).word(table.key);
        for (std::size_t c = 0; c < table.columns.size(); ++c) csv.word(headerOf(table, c));
        csv.endRow();
        for (const auto& row : table.rows) {
            csv.word(section).word(table.key);
            for (const review::Cell& cell : row) std::visit(CellInCsv{csv, style}, cell);
            csv.endRow();
        }
    }

    void operator()(const review::Series& series) const {
        const Unit& unit = unitOf(series.dimension, UnitSystem::metric);
        csv.word(section).word(series.key).word("at").word("value_" + std::string{unit.key}).endRow();
        for (const auto& [at, si] : series.points) {
            csv.word(section).word(series.key).word(toIso8601(at)).number(unit.fromSi(si)).endRow();
        }
    }
};

}  // namespace

std::string csvText(const review::Document& document, const Style& style) {
    formats::CsvWriter csv;
    csv.word("title").word(document.key).text(inWords(document.title, style)).endRow();
    for (const review::Section& section : document.sections) {
        for (const review::Block& block : section.blocks) {
            std::visit(BlockInCsv{csv, style, section.key}, block);
        }
    }
    return csv.content();
}

}  // namespace treadwell::words
