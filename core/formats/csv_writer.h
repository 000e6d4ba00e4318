#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace treadwell::formats {

/// Writes RFC 4180 for machines and spreadsheets: UTF-8 without byte order mark, comma, CRLF, '.' as decimal
/// sign.
class CsvWriter {
  public:
    /// Somebody's own words. A text that a spreadsheet would take for a formula (it begins with = + - @, tab
    /// or CR) gets an apostrophe before it.
    CsvWriter& text(std::string_view content);
    /// A word of ours: an id, a time, a stable name, a column's header.
    CsvWriter& word(std::string_view content);
    /// The shortest text that reads back the same. Not for NaN or infinity (std::invalid_argument).
    CsvWriter& number(double value);
    CsvWriter& number(std::int64_t value);
    CsvWriter& empty() { return word({}); }
    CsvWriter& endRow();

    [[nodiscard]] const std::string& content() const noexcept { return m_content; }

  private:
    std::string m_content;
    bool m_rowBegun = false;
};

}  // namespace treadwell::formats
