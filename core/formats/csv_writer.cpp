#include "core/formats/csv_writer.h"

#include "core/base/number_text.h"

#include <csv.h>

namespace treadwell::formats {

namespace {

bool needsQuotes(std::string_view cell) {
    if (cell.empty()) return false;
    const auto blank = [](char c) { return c == ' ' || c == '\t'; };
    return cell.find_first_of(",\"\r\n") != std::string_view::npos || blank(cell.front()) ||
           blank(cell.back());
}

}  // namespace

CsvWriter& CsvWriter::text(std::string_view content) {
    constexpr std::string_view kFormulaBegins = "=+-@\t\r";
    if (content.empty() || kFormulaBegins.find(content.front()) == std::string_view::npos)
        return word(content);
    return word('\'' + std::string{content});
}

CsvWriter& CsvWriter::word(std::string_view content) {
    if (m_rowBegun) m_content += ',';
    m_rowBegun = true;
    if (!needsQuotes(content)) {
        m_content += content;
        return *this;
    }
    std::string quoted(content.size() * 2 + 2, '\0');
    quoted.resize(csv_write(quoted.data(), quoted.size(), content.data(), content.size()));
    m_content += quoted;
    return *this;
}

CsvWriter& CsvWriter::number(double value) {
    return word(shortestText(value));
}

CsvWriter& CsvWriter::number(std::int64_t value) {
    return word(std::to_string(value));
}

CsvWriter& CsvWriter::endRow() {
    m_content += "\r\n";
    m_rowBegun = false;
    return *this;
}

}  // namespace treadwell::formats
