#include "app/cli/intake_files.h"
#include "app/cli/intake_output.h"

#include <ostream>

namespace treadwell::cli {

namespace {

constexpr std::size_t kFirstRows = 5;

std::string_view delimiterName(char sign) {
    for (const auto delimiter : {formats::Delimiter::comma, formats::Delimiter::semicolon,
                                 formats::Delimiter::tab, formats::Delimiter::bar}) {
        if (signOf(delimiter) == sign) return enumText(delimiter);
    }
    return {};
}

/// The row itself, without the header that makes it a file.
std::string rowOf(const entries::Evidence& evidence) {
    formats::CsvOptions options;
    options.decimalSign = formats::DecimalSign::point;  // the numbers do not matter here
    const auto table = formats::readCsv(evidence.content, options);
    return table && !table->records.empty() ? table->records.front().raw : evidence.content;
}

}  // namespace

void writePreview(JsonWriter& json, const intake::Preview& preview, const words::Style& style) {
    json.member("encoding", enumText(preview.encoding)).member("delimiter", delimiterName(preview.delimiter));
    if (preview.decimalSign) json.member("decimal_sign", enumText(*preview.decimalSign));
    json.key("columns").beginArray();
    for (const intake::PreviewColumn& column : preview.columns) {
        json.beginObject().member("header", column.header);
        if (column.meaning) json.member("meaning", enumText(*column.meaning));
        if (!column.unit.empty()) json.member("unit", column.unit);
        json.endObject();
    }
    json.endArray().key("open").beginArray();
    for (const Error& question : preview.open) {
        json.beginObject().member("field", question.field).member("code", toText(question.code()));
        json.member("text", questionInWords(question, style)).endObject();
    }
    json.endArray();
}

void printPreview(const ImportedFile& file, const Answer& answer) {
    const intake::Preview& preview = *file.preview;
    std::ostream& out = answer.out;
    out << file.path << ": a preview, nothing is recorded\n  " << enumText(preview.encoding) << ", parted by "
        << delimiterName(preview.delimiter);
    if (preview.decimalSign) out << ", decimal " << enumText(*preview.decimalSign);
    out << '\n';
    for (const intake::PreviewColumn& column : preview.columns) {
        out << "  \"" << column.header << "\": " << (column.meaning ? enumText(*column.meaning) : "not read");
        if (!column.unit.empty()) out << " in " << column.unit;
        out << '\n';
    }
    for (const Error& question : preview.open) {
        out << "  Open, " << question.field << ": " << questionInWords(question, answer.style) << '\n';
    }
    if (!preview.intake) return;
    std::size_t shown = 0;
    for (const intake::Proposal& proposal : preview.intake->proposals) {
        const auto* load = std::get_if<entries::Load>(&proposal.body);
        if (load == nullptr || ++shown > kFirstRows) continue;
        out << "  " << proposal.line << ": " << words::inWords(proposal.happened, answer.style) << ", "
            << words::inWords(load->mass.amount(), answer.style) << "   <- " << rowOf(*proposal.evidence)
            << '\n';
    }
}

void writeRows(const std::vector<KeptRow>& rows, const Answer& answer) {
    JsonWriter json{2};
    json.beginObject().key("rows").beginArray();
    for (const KeptRow& row : rows) {
        const entries::RowSetAside& aside = row.aside.what;
        json.beginObject().member("id", row.aside.entry.value.text()).member("file", aside.file);
        json.member("list", aside.list).member("line", aside.line).member("column", aside.column);
        json.member("field", aside.field).member("code", aside.code).member("text", aside.reason);
        if (row.raw) json.member("raw", *row.raw);
        json.endObject();
    }
    json.endArray().endObject();
    answer.out << json.text() << '\n';
}

void printRows(const std::vector<KeptRow>& rows, const Answer& answer) {
    if (rows.empty()) answer.out << "No row is set aside\n";
    for (const KeptRow& row : rows) {
        const entries::RowSetAside& aside = row.aside.what;
        answer.out << aside.file << ':' << aside.line;
        if (aside.column > 0) answer.out << ':' << aside.column;
        answer.out << ": " << aside.reason << "\n    "
                   << (row.raw ? rowOf({aside.evidence, *row.raw})
                               : std::string{"The row itself has been erased"})
                   << '\n';
    }
}

}  // namespace treadwell::cli
