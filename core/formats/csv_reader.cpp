#include "core/formats/csv_reader.h"

#include "core/formats/codes.h"

#include <csv.h>

#include <algorithm>
#include <new>
#include <utility>

namespace treadwell::formats {

namespace {

struct Line {
    std::string_view withEnd;
    std::int64_t number;
};

// Lines end with LF, CRLF or a lone CR.
std::vector<Line> linesOf(std::string_view text) {
    std::vector<Line> lines;
    std::int64_t number = 0;
    while (!text.empty()) {
        std::size_t end = text.find_first_of("\r\n");
        if (end == std::string_view::npos) {
            end = text.size();
        } else {
            end += text.substr(end, 2) == "\r\n" ? 2 : 1;
        }
        lines.push_back({text.substr(0, end), ++number});
        text.remove_prefix(end);
    }
    return lines;
}

std::string_view withoutLineEnd(std::string_view text) {
    while (!text.empty() && (text.back() == '\n' || text.back() == '\r')) text.remove_suffix(1);
    return text;
}

bool isBlank(std::string_view text) {
    return text.find_first_not_of(" \t\r\n") == std::string_view::npos;
}

// Delimiters outside quotes; a quoted cell may run over several lines.
std::vector<std::size_t> countsPerRow(const std::vector<Line>& lines, char delimiter) {
    constexpr std::size_t kEnough = 50;
    std::vector<std::size_t> counts;
    bool quoted = false;
    std::size_t count = 0;
    for (const Line& line : lines) {
        if (!quoted && isBlank(line.withEnd)) continue;
        for (const char c : line.withEnd) {
            if (c == '"') quoted = !quoted;
            if (c == delimiter && !quoted) ++count;
        }
        if (quoted) continue;
        counts.push_back(count);
        count = 0;
        if (counts.size() == kEnough) break;
    }
    return counts;
}

// The candidate that stands in the header and as often in the most other rows. Errors: delimiterAmbiguous.
Result<char> sniffedDelimiter(const std::vector<Line>& lines) {
    constexpr std::array kCandidates{Delimiter::semicolon, Delimiter::comma, Delimiter::tab, Delimiter::bar};
    std::vector<Delimiter> best;
    std::pair<std::ptrdiff_t, std::size_t> bestScore{0, 0};
    for (const Delimiter candidate : kCandidates) {
        const auto counts = countsPerRow(lines, signOf(candidate));
        if (counts.empty() || counts.front() == 0) continue;
        const std::pair score{std::count(counts.begin(), counts.end(), counts.front()), counts.front()};
        if (score < bestScore) continue;
        if (score > bestScore) best.clear();
        best.push_back(candidate);
        bestScore = score;
    }
    if (best.size() > 1) {
        return fail(code::delimiterAmbiguous, "delimiter", std::string{enumText(best[0])},
                    std::string{enumText(best[1])});
    }
    return signOf(best.empty() ? Delimiter::comma : best.front());
}

// libcsv splits into cells and rows; it is fed line by line, so that each row knows where it began.
class RowSplitter {
  public:
    explicit RowSplitter(char delimiter) {
        if (csv_init(&m_parser, 0) != 0) throw std::bad_alloc{};
        csv_set_delim(&m_parser, static_cast<unsigned char>(delimiter));
    }
    RowSplitter(const RowSplitter&) = delete;
    RowSplitter& operator=(const RowSplitter&) = delete;
    ~RowSplitter() { csv_free(&m_parser); }

    /// True where a row ended in `text`, which holds at most one line end.
    bool feed(std::string_view text) {
        m_rowEnded = false;
        if (csv_parse(&m_parser, text.data(), text.size(), &onCell, &onRow, this) != text.size())
            throw std::bad_alloc{};  // the only failure without strict mode
        return m_rowEnded;
    }
    std::vector<std::string> takeCells() { return std::exchange(m_cells, {}); }

  private:
    static void onCell(void* text, std::size_t size, void* self) {
        static_cast<RowSplitter*>(self)->m_cells.emplace_back(static_cast<const char*>(text), size);
    }
    static void onRow(int /*end*/, void* self) { static_cast<RowSplitter*>(self)->m_rowEnded = true; }

    csv_parser m_parser{};
    std::vector<std::string> m_cells;
    bool m_rowEnded = false;
};

Result<std::vector<CsvRecord>> recordsOf(const std::vector<Line>& lines, char delimiter) {
    std::vector<CsvRecord> records;
    RowSplitter splitter{delimiter};
    CsvRecord record;
    for (const Line& line : lines) {
        if (record.line == 0) {
            if (isBlank(line.withEnd) && delimiter != '\t') continue;
            record.line = line.number;
        }
        record.raw += line.withEnd;
        bool ended = splitter.feed(line.withEnd);
        const bool last = &line == &lines.back();
        if (last && !ended) ended = splitter.feed("\n");  // the last row may lack its line end
        if (ended) {
            record.cells = splitter.takeCells();
            record.raw = withoutLineEnd(record.raw);
            records.push_back(std::exchange(record, {}));
        } else if (isBlank(record.raw)) {
            record = {};
        }
    }
    if (record.line != 0) {
        return Unexpected{Error{{code::quoteOpen, {}}, "file", {{}, record.line, 0}}};
    }
    return records;
}

void dropSurplusEmptyCells(CsvTable& table) {
    const std::size_t width = table.header.cells.size();
    for (CsvRecord& record : table.records) {
        while (record.cells.size() > width && record.cells.back().empty()) record.cells.pop_back();
    }
}

}  // namespace

std::optional<char> declaredDelimiter(std::string_view line) {
    line = withoutLineEnd(line);
    if (line.size() == 7 && line.front() == '"' && line.back() == '"') line = line.substr(1, 5);
    if (line.size() != 5) return std::nullopt;
    std::string key{line.substr(0, 4)};
    for (char& c : key) c = static_cast<char>(c | 0x20);
    constexpr std::string_view kDelimiters = ";,\t|:";
    if (key != "sep=" || kDelimiters.find(line[4]) == std::string_view::npos) return std::nullopt;
    return line[4];
}

Result<CsvTable> readCsv(std::string_view bytes, const CsvOptions& options) {
    const auto decoded = decodeText(bytes, options.encoding);
    if (!decoded) return Unexpected{decoded.error()};
    std::vector<Line> lines = linesOf(decoded->text);
    std::optional<char> delimiter = options.delimiter;
    if (!lines.empty()) {
        if (const auto declared = declaredDelimiter(lines.front().withEnd)) {
            if (!delimiter) delimiter = declared;
            lines.erase(lines.begin());
        }
    }
    if (!delimiter) {
        const auto sniffed = sniffedDelimiter(lines);
        if (!sniffed) return Unexpected{sniffed.error()};
        delimiter = *sniffed;
    }
    CsvTable table;
    table.encoding = decoded->encoding;
    table.delimiter = *delimiter;
    auto records = recordsOf(lines, table.delimiter);
    if (!records) return Unexpected{records.error()};
    if (records->empty()) return fail(code::headerMissing, "file");
    table.header = std::move(records->front());
    while (table.header.cells.size() > 1 && table.header.cells.back().empty()) table.header.cells.pop_back();
    table.records.assign(std::make_move_iterator(records->begin() + 1),
                         std::make_move_iterator(records->end()));
    dropSurplusEmptyCells(table);
    if (options.decimalSign) {
        table.decimalSign = *options.decimalSign;
    } else {
        const auto sign = decimalSignOf(table.records);
        if (!sign) return Unexpected{sign.error()};
        table.decimalSign = *sign;
    }
    return table;
}

}  // namespace treadwell::formats
