#include "app/words/document.h"
#include "app/words/entry.h"
#include "core/base/number_text.h"

#include <algorithm>
#include <cstddef>

namespace treadwell::words {

namespace {

using review::Cell;

/// Columns on the screen: code points of UTF-8 text.
std::size_t widthOf(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

std::string plainNumber(double value, const Style& style) {
    std::string text = fixedText(value, 1);
    std::replace(text.begin(), text.end(), '.', style.decimalSign);
    return text;
}

struct CellInWords {
    const Style& style;

    std::string operator()(std::monostate /*nothing*/) const { return "-"; }
    std::string operator()(Amount amount) const { return inWords(amount, style); }
    std::string operator()(std::int64_t count) const { return std::to_string(count); }
    std::string operator()(double number) const { return plainNumber(number, style); }
    std::string operator()(const std::string& text) const { return text; }
    // A sheet is of one day, which stands in its title.
    std::string operator()(Instant at) const { return clockText(style.zone, at); }
    std::string operator()(const Message& message) const { return inWords(message, style); }
    std::string operator()(review::Word word) const { return wordInWords(word.name, style); }
};

bool isNumber(const Cell& cell) {
    return std::holds_alternative<Amount>(cell) || std::holds_alternative<std::int64_t>(cell) ||
           std::holds_alternative<double>(cell);
}

/// Breaks at blanks; a word longer than a line stands alone and whole.
void wrap(std::string& out, const std::string& text, std::size_t width) {
    std::size_t used = 0;
    for (std::size_t i = 0; i < text.size();) {
        const std::size_t end = std::min(text.find_first_of(" \n", i), text.size());
        const std::string word = text.substr(i, end - i);
        i = end + 1;
        if (word.empty()) continue;
        const std::size_t wide = widthOf(word);
        if (used > 0 && used + 1 + wide > width) {
            out += '\n';
            used = 0;
        }
        if (used > 0) out += ' ';
        out += word;
        used += wide + (used > 0 ? 1 : 0);
    }
    out += '\n';
}

class TableText final {
  public:
    TableText(const review::Table& table, const Style& style, std::size_t width)
        : m_table{table}, m_width{width} {
        for (const review::Column& column : table.columns) {
            m_headings.push_back(inWords(Message{column.heading, {}}, style));
            m_widths.push_back(widthOf(m_headings.back()));
        }
        for (const auto& row : table.rows) {
            std::vector<std::string>& texts = m_rows.emplace_back();
            for (std::size_t i = 0; i < row.size(); ++i) {
                texts.push_back(std::visit(CellInWords{style}, row[i]));
                std::replace(texts.back().begin(), texts.back().end(), '\n', ' ');
                m_widths[i] = std::max(m_widths[i], widthOf(texts.back()));
            }
        }
    }

    void appendTo(std::string& out) const {
        std::size_t needed = 0;
        for (const std::size_t width : m_widths) needed += width + kGap;
        if (needed <= m_width + kGap) {
            appendColumns(out);
        } else {
            appendList(out);
        }
    }

  private:
    static constexpr std::size_t kGap = 2;

    void appendColumns(std::string& out) const {
        appendRow(out, m_headings,
                  [&](std::size_t i) { return !m_table.rows.empty() && isNumber(m_table.rows.front()[i]); });
        for (std::size_t r = 0; r < m_rows.size(); ++r) {
            appendRow(out, m_rows[r], [&](std::size_t i) { return isNumber(m_table.rows[r][i]); });
        }
    }

    template <class Right>
    void appendRow(std::string& out, const std::vector<std::string>& texts, const Right& right) const {
        std::string line;
        for (std::size_t i = 0; i < texts.size(); ++i) {
            if (i > 0) line.append(kGap, ' ');
            const std::string blanks(m_widths[i] - widthOf(texts[i]), ' ');
            line += right(i) ? blanks + texts[i] : texts[i] + blanks;
        }
        line.erase(line.find_last_not_of(' ') + 1);
        out += line + '\n';
    }

    void appendList(std::string& out) const {
        for (std::size_t r = 0; r < m_rows.size(); ++r) {
            if (r > 0) out += '\n';
            for (std::size_t i = 0; i < m_headings.size(); ++i) {
                wrap(out, m_headings[i] + ": " + m_rows[r][i], m_width);
            }
        }
    }

    const review::Table& m_table;
    std::size_t m_width;
    std::vector<std::string> m_headings;
    std::vector<std::vector<std::string>> m_rows;
    std::vector<std::size_t> m_widths;
};

}  // namespace

std::string plainText(const review::Document& document, const Style& style, int width) {
    const auto columns = static_cast<std::size_t>(std::max(width, 40));
    std::string out;
    wrap(out, inWords(document.title, style), columns);
    for (const review::Section& section : document.sections) {
        const std::string title = inWords(Message{section.title, {}}, style);
        out += '\n' + title + '\n' + std::string(widthOf(title), '-') + '\n';
        bool afterTable = false;
        for (const review::Block& block : section.blocks) {
            if (const auto* table = std::get_if<review::Table>(&block)) {
                if (afterTable) out += '\n';
                TableText{*table, style, columns}.appendTo(out);
                afterTable = true;
            } else if (const auto* message = std::get_if<Message>(&block)) {
                wrap(out, inWords(*message, style), columns);
            }
        }
    }
    return out;
}

}  // namespace treadwell::words
