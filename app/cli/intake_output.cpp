#include "app/cli/intake_output.h"

#include <ostream>

namespace treadwell::cli {

namespace {

using words::inWords;

std::int64_t countOf(const auto& list) {
    return static_cast<std::int64_t>(list.size());
}

void writeQuarantine(JsonWriter& json, const intake::Intake& intake, const words::Style& style) {
    json.key("quarantine").beginArray();
    for (const intake::Quarantined& row : intake.quarantine) {
        json.beginObject()
            .member("line", row.reason.place.line)
            .member("column", row.reason.place.column)
            .member("field", row.reason.field)
            .member("code", toText(row.reason.code()))
            .member("text", inWords(row.reason.message, style))
            .member("raw", row.raw)
            .endObject();
    }
    json.endArray();
}

void writeNotes(JsonWriter& json, const intake::Intake& intake, const words::Style& style) {
    json.key("notes").beginArray();
    for (const intake::Proposal& proposal : intake.proposals) {
        for (const Message& note : proposal.notes) {
            json.beginObject()
                .member("line", proposal.line)
                .member("code", toText(note.code))
                .member("text", inWords(note, style))
                .endObject();
        }
    }
    json.endArray();
}

void writeFile(JsonWriter& json, const ImportedFile& file, const words::Style& style) {
    const intake::Intake& intake = file.intake;
    json.beginObject()
        .member("kind", file.kind)
        .member("file", file.path)
        .member("rows", intake.rows)
        .member("added", countOf(intake.proposals))
        .member("used", intake.used)
        .member("already_there", intake.alreadyImported)
        .member("duplicates", intake.duplicates)
        .member("voided", intake.voided)
        .member("totals", intake.totals);
    writeQuarantine(json, intake, style);
    writeNotes(json, intake, style);
    json.key("ignored_columns").beginArray();
    for (const std::string& column : intake.ignoredColumns) json.value(column);
    json.endArray().endObject();
}

void printRows(std::ostream& out, std::string_view what, std::int64_t count) {
    if (count > 0) out << ", " << count << ' ' << what;
}

void printFile(const ImportedFile& file, const Answer& answer) {
    const intake::Intake& intake = file.intake;
    std::ostream& out = answer.out;
    out << file.path << ": " << intake.rows << (intake.rows == 1 ? " row" : " rows");
    out << ", " << intake.proposals.size() << " added";
    printRows(out, "already there", intake.alreadyImported);
    printRows(out, "twice in the file", intake.duplicates);
    printRows(out, "voided", intake.voided);
    printRows(out, "sums", intake.totals);
    printRows(out, "not used", countOf(intake.quarantine));
    out << '\n';
    for (const intake::Quarantined& row : intake.quarantine) {
        Error reason = row.reason;
        reason.place.file = file.path;
        out << "  " << inWords(reason, answer.style) << "\n    " << row.raw << '\n';
    }
    for (const intake::Proposal& proposal : intake.proposals) {
        for (const Message& note : proposal.notes) {
            out << "  " << file.path << ':' << proposal.line << ": " << inWords(note, answer.style) << '\n';
        }
    }
    for (const std::string& column : intake.ignoredColumns) {
        out << "  Column \"" << column << "\" says nothing here and was not read\n";
    }
}

}  // namespace

void writeImport(const std::vector<ImportedFile>& files, const Answer& answer) {
    JsonWriter json{2};
    json.beginObject().key("files").beginArray();
    std::int64_t added = 0;
    for (const ImportedFile& file : files) {
        writeFile(json, file, answer.style);
        added += countOf(file.intake.proposals);
    }
    json.endArray().member("added", added).endObject();
    answer.out << json.text() << '\n';
}

void printImport(const std::vector<ImportedFile>& files, const Answer& answer) {
    for (const ImportedFile& file : files) printFile(file, answer);
}

}  // namespace treadwell::cli
