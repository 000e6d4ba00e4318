#pragma once

#include "core/base/error.h"
#include "core/formats/csv_number.h"
#include "core/formats/csv_record.h"
#include "core/formats/text_encoding.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace treadwell::formats {

enum class Delimiter : std::uint8_t { comma, semicolon, tab, bar };

constexpr std::array<std::string_view, 4> enumTexts(Delimiter /*delimiter*/) noexcept {
    return {"comma", "semicolon", "tab", "bar"};
}

[[nodiscard]] constexpr char signOf(Delimiter delimiter) noexcept {
    constexpr std::string_view kSigns = ",;\t|";
    return kSigns[static_cast<std::size_t>(delimiter)];
}

/// From a line `sep=;`, which some spreadsheet programs write before the header; none on any other line.
[[nodiscard]] std::optional<char> declaredDelimiter(std::string_view line);

/// What the reader cannot know, or what the file hides; what is not given is found out.
struct CsvOptions {
    std::optional<char> delimiter = {};
    std::optional<DecimalSign> decimalSign = {};
    std::optional<Encoding> encoding = {};
};

/// A file with a header row. A record may have fewer or more cells than the header: `isRagged`.
struct CsvTable {
    CsvRecord header;
    std::vector<CsvRecord> records;
    char delimiter = ',';
    DecimalSign decimalSign = DecimalSign::point;
    Encoding encoding = Encoding::utf8;

    [[nodiscard]] bool isRagged(const CsvRecord& record) const noexcept {
        return record.cells.size() != header.cells.size();
    }
};

/// Reads RFC 4180 and the dialects that scales and spreadsheets write: UTF-8 with or without byte order mark,
/// Windows-1252 or ISO-8859-15; a first line `sep=;`; semicolon, comma, tab or bar; CRLF, LF or CR. Blank
/// lines are no records; surplus empty cells at a row's end are dropped; blanks around an unquoted cell are
/// not part of it. Errors, each with its line: those of decodeText, delimiterAmbiguous, headerMissing,
/// quoteOpen, decimalAmbiguous, decimalMixed.
[[nodiscard]] Result<CsvTable> readCsv(std::string_view bytes, const CsvOptions& options = {});

}  // namespace treadwell::formats
