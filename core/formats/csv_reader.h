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

/// What the reader cannot know, or what the file hides; what is not given is found out.
struct CsvOptions {
    std::optional<char> delimiter;
    std::optional<DecimalSign> decimalSign;
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
/// or Windows-1252; a first line `sep=;`; semicolon, comma, tab or bar; CRLF, LF or CR. Blank lines are no
/// records; surplus empty cells at a row's end are dropped; blanks around an unquoted cell are not part of
/// it. Errors, each with its line: textIsUtf16, headerMissing, quoteOpen, decimalAmbiguous, decimalMixed.
[[nodiscard]] Result<CsvTable> readCsv(std::string_view bytes, const CsvOptions& options = {});

}  // namespace treadwell::formats
