#include "app/words/document.h"
#include "app/words/document_table.h"
#include "app/words/table_fit.h"

#include <algorithm>
#include <cstddef>

namespace treadwell::words {

namespace {

constexpr std::size_t kGap = 2;
constexpr std::size_t kLongestWord = 16;  ///< a longer one may be broken to keep a table together
constexpr std::size_t kNarrowestCell = 4;

void addLines(std::string& out, const std::string& text, std::size_t width) {
    for (const std::string& line : wrapped(text, width)) out += line + '\n';
}

std::size_t longestWord(const std::string& text) {
    std::size_t longest = 0;
    for (const std::string& word : wrapped(text, 1'000)) {
        std::size_t begin = 0;
        while (begin < word.size()) {
            const std::size_t end = std::min(word.find(' ', begin), word.size());
            longest = std::max(longest, columnsOf(word.substr(begin, end - begin)));
            begin = end + 1;
        }
    }
    return longest;
}

/// A table set in columns: headings and words are broken over lines before a table is, and a table that is
/// still too wide goes on below, each part with the columns that name its rows.
class TableText final {
  public:
    TableText(const review::Table& table, const Style& style, std::size_t width)
        : m_table{inWords(table, style)},
          m_width{width},
          m_needs{.least = {}, .most = {}, .names = m_table.names, .gap = kGap, .narrowest = kNarrowestCell} {
        for (std::size_t c = 0; c < m_table.headings.size(); ++c) {
            std::size_t least = std::max(longestWord(m_table.headings[c]), columnsOf(m_table.units[c]));
            std::size_t most = std::max(columnsOf(m_table.headings[c]), least);
            for (const auto& row : m_table.rows) {
                const std::size_t whole = columnsOf(row[c]);
                least =
                    std::max(least, m_table.numbers[c] ? whole : std::min(longestWord(row[c]), kLongestWord));
                most = std::max(most, whole);
            }
            m_needs.least.push_back(least);
            m_needs.most.push_back(most);
        }
    }

    void appendTo(std::string& out) const {
        bool first = true;
        for (const Band& band : fittedBands(m_needs, m_width)) {
            if (!first) out += '\n';
            first = false;
            appendBand(out, band);
        }
    }

  private:
    void appendBand(std::string& out, const Band& band) const {
        appendRow(out, band, m_table.headings, true);
        if (std::any_of(band.columns.begin(), band.columns.end(),
                        [&](std::size_t c) { return !m_table.units[c].empty(); })) {
            appendRow(out, band, m_table.units, false);
        }
        for (const auto& row : m_table.rows) appendRow(out, band, row, false);
    }

    /// Headings stand on their units, so that the last of their lines are beside each other.
    void appendRow(std::string& out, const Band& band, const std::vector<std::string>& texts,
                   bool atBottom) const {
        std::vector<std::vector<std::string>> cells;
        std::size_t height = 1;
        for (std::size_t i = 0; i < band.columns.size(); ++i) {
            cells.push_back(wrapped(texts[band.columns[i]], band.widths[i]));
            height = std::max(height, cells.back().size());
        }
        for (std::size_t y = 0; y < height; ++y) {
            std::string line;
            for (std::size_t i = 0; i < cells.size(); ++i) {
                const std::size_t above = atBottom ? height - cells[i].size() : 0;
                const std::string text = y >= above && y - above < cells[i].size() ? cells[i][y - above] : "";
                const std::string blanks(band.widths[i] - columnsOf(text), ' ');
                if (i > 0) line.append(kGap, ' ');
                line += m_table.numbers[band.columns[i]] ? blanks + text : text + blanks;
            }
            line.erase(line.find_last_not_of(' ') + 1);
            out += line + '\n';
        }
    }

    TableInWords m_table;
    std::size_t m_width;
    TableNeeds m_needs;
};

}  // namespace

std::string plainText(const review::Document& document, const Style& style, int width) {
    const auto columns = static_cast<std::size_t>(std::max(width, 40));
    std::string out;
    addLines(out, inWords(document.title, style), columns);
    for (const review::Section& section : document.sections) {
        const std::string title = inWords(Message{section.title, {}}, style);
        out += '\n';
        addLines(out, title, columns);
        out += std::string(std::min(columnsOf(title), columns), '-') + '\n';
        bool afterTable = false;
        for (const review::Block& block : section.blocks) {
            if (const auto* table = std::get_if<review::Table>(&block)) {
                if (afterTable) out += '\n';
                TableText{*table, style, columns}.appendTo(out);
                afterTable = true;
            } else if (const auto* message = std::get_if<Message>(&block)) {
                addLines(out, inWords(*message, style), columns);
            }
        }
    }
    return out;
}

std::string messageText(const review::Document& document, const Style& style) {
    std::string out = inWords(document.title, style) + '\n';
    for (const review::Section& section : document.sections) {
        if (section.key != review::kSummary) continue;
        for (const review::Block& block : section.blocks) {
            if (const auto* message = std::get_if<Message>(&block)) out += inWords(*message, style) + '\n';
        }
    }
    return out;
}

}  // namespace treadwell::words
