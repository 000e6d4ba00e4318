#include "app/words/document_table.h"

#include "app/words/entry.h"
#include "core/base/number_text.h"

#include <algorithm>
#include <optional>

namespace treadwell::words {

namespace {

struct CellInWords {
    const Style& style;

    std::string operator()(std::monostate /*nothing*/) const { return "-"; }
    std::string operator()(Amount amount) const { return inWords(amount, style); }
    std::string operator()(std::int64_t count) const { return std::to_string(count); }
    std::string operator()(double number) const {
        std::string text = fixedText(number, 1);
        std::replace(text.begin(), text.end(), '.', style.decimalSign);
        return text;
    }
    std::string operator()(const std::string& text) const { return text; }
    std::string operator()(Instant at) const { return clockText(style.zone, at); }
    std::string operator()(const Message& message) const { return inWords(message, style); }
    std::string operator()(review::Word word) const { return wordInWords(word.name, style); }
};

bool isNumber(const review::Cell& cell) {
    return std::holds_alternative<Amount>(cell) || std::holds_alternative<std::int64_t>(cell) ||
           std::holds_alternative<double>(cell);
}

/// How far the word that begins at `begin` reaches within `most` columns, in bytes.
std::size_t piece(std::string_view text, std::size_t begin, std::size_t most) {
    std::size_t used = 0;
    for (std::size_t i = begin; i < text.size(); ++i) {
        if ((static_cast<unsigned char>(text[i]) & 0xC0U) == 0x80U) continue;
        if (text[i] == ' ' || text[i] == '\n' || used == most) return i - begin;
        ++used;
    }
    return text.size() - begin;
}

/// The unit behind all of a column's quantities, with the blank before it; none where they differ.
std::optional<std::string> commonUnit(const review::Table& table, std::size_t column, const Style& style) {
    std::optional<std::string> unit;
    for (const auto& row : table.rows) {
        const auto* amount = std::get_if<Amount>(&row[column]);
        if (amount == nullptr) continue;
        const std::string text = inWords(*amount, style);
        const std::size_t number = text.find_first_of("0123456789");
        const std::string behind =
            text.substr(std::min(text.find_first_not_of("0123456789.,", number), text.size()));
        if (unit && *unit != behind) return std::nullopt;
        unit = behind;
    }
    return unit;
}

}  // namespace

std::size_t columnsOf(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

std::vector<std::string> wrapped(std::string_view text, std::size_t width) {
    std::vector<std::string> lines(1);
    std::size_t used = 0;
    bool apart = false;
    for (std::size_t i = 0; i < text.size();) {
        if (text[i] == ' ' || text[i] == '\n') {
            apart = used > 0;
            ++i;
            continue;
        }
        const std::size_t bytes = piece(text, i, width);
        const std::string_view word = text.substr(i, bytes);
        i += bytes;
        const std::size_t wide = columnsOf(word);
        if (used > 0 && used + (apart ? 1 : 0) + wide > width) {
            lines.emplace_back();
            used = 0;
        }
        if (used > 0 && apart) {
            lines.back() += ' ';
            ++used;
        }
        lines.back() += word;
        used += wide;
        apart = false;
    }
    return lines;
}

std::string inWords(const review::Cell& cell, const Style& style) {
    std::string text = std::visit(CellInWords{style}, cell);
    std::replace(text.begin(), text.end(), '\n', ' ');
    return text;
}

TableInWords inWords(const review::Table& table, const Style& style) {
    TableInWords words;
    words.names = table.names;
    std::vector<std::optional<std::string>> common;
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
        words.headings.push_back(inWords(Message{table.columns[c].heading, {}}, style));
        common.push_back(commonUnit(table, c, style));
        std::string unit = common.back().value_or("");
        words.units.push_back(unit.substr(std::min(unit.find_first_not_of(' '), unit.size())));
        words.numbers.push_back(std::any_of(table.rows.begin(), table.rows.end(),
                                            [&](const auto& row) { return isNumber(row[c]); }));
    }
    for (const auto& row : table.rows) {
        std::vector<std::string>& texts = words.rows.emplace_back();
        for (std::size_t c = 0; c < row.size(); ++c) {
            std::string text = inWords(row[c], style);
            if (common[c] && std::holds_alternative<Amount>(row[c]))
                text.resize(text.size() - common[c]->size());
            texts.push_back(std::move(text));
        }
    }
    return words;
}

}  // namespace treadwell::words
