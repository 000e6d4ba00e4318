#include "core/intake/preview.h"

#include "core/formats/codes.h"
#include "core/intake/row.h"
#include "core/intake/tickets.h"

#include <algorithm>

namespace treadwell::intake {

namespace {

/// Answers what a reader asks with anything that lets it go on, so that the rest of the file can be shown.
bool answer(Code question, ImportMap& map) {
    if (question == code::encodingAmbiguous || question == code::encodingWrong) {
        map.encoding = formats::Encoding::windows1252;
    } else if (question == code::delimiterAmbiguous) {
        map.delimiter = formats::Delimiter::semicolon;
    } else if (question == code::decimalAmbiguous || question == code::decimalMixed) {
        map.decimalSign = formats::DecimalSign::point;
    } else {
        return false;
    }
    return true;
}

std::optional<formats::CsvTable> tableOf(std::string_view bytes, ImportMap map, Preview& preview) {
    // Each question is answered once, so that this ends.
    for (int questions = 0; questions < 4; ++questions) {
        auto table = formats::readCsv(bytes, csvOptionsOf(map));
        if (table) return *std::move(table);
        preview.open.push_back(table.error());
        if (!answer(table.error().code(), map)) break;
    }
    return std::nullopt;
}

bool isAsked(const Preview& preview, Code code) {
    return std::any_of(preview.open.begin(), preview.open.end(),
                       [code](const Error& error) { return error.code() == code; });
}

void showColumns(Preview& preview, const formats::CsvTable& table, const Context& context) {
    const auto columns = Columns::of(table.header, kTicketColumns, context.map.columns);
    for (std::size_t i = 0; i < table.header.cells.size(); ++i) {
        PreviewColumn column{table.header.cells[i], {}, {}};
        if (columns) column.meaning = columns->meaningOf(i);
        if (column.meaning) column.unit = columns->unitOf(*column.meaning);
        preview.columns.push_back(std::move(column));
    }
    if (!columns) {
        preview.open.push_back(columns.error());
        return;
    }
    for (Error& question : openTicketQuestions(*columns, table, context))
        preview.open.push_back(std::move(question));
}

}  // namespace

Preview previewOf(const FileKind& kind, std::string_view bytes, const Context& context) {
    Preview preview;
    const auto table = tableOf(bytes, context.map, preview);
    if (!table) return preview;
    preview.encoding = table->encoding;
    preview.delimiter = table->delimiter;
    if (!isAsked(preview, code::decimalAmbiguous) && !isAsked(preview, code::decimalMixed))
        preview.decimalSign = table->decimalSign;
    if (kind.read == readTickets) showColumns(preview, *table, context);
    if (!preview.open.empty()) return preview;
    auto intake = kind.read(bytes, context);
    if (intake) {
        preview.intake = *std::move(intake);
    } else {
        preview.open.push_back(intake.error());
    }
    return preview;
}

}  // namespace treadwell::intake
