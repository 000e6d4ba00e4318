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
    json.key("matches").beginArray();
    for (const intake::Proposal& proposal : intake.proposals) {
        if (!proposal.match) continue;
        json.beginObject().member("line", proposal.line).member("load", proposal.match->load.value.text());
        json.member("tapped", toIso8601(proposal.match->at));
        json.member("tapped_kg", proposal.match->mass.kilograms());
        json.member("ticket_kg", std::get<entries::Load>(proposal.body).mass.kilograms());
        json.member("apart_s", proposal.match->apart.count()).endObject();
    }
    json.endArray();
    writeMessages(json, "remarks", intake.remarks, style);
}

void writeFile(JsonWriter& json, const ImportedFile& file, const words::Style& style) {
    json.beginObject().member("kind", file.kind).member("file", file.path);
    if (file.preview) writePreview(json, *file.preview, style);
    if (file.preview && !file.preview->intake) {
        json.endObject();
        return;
    }
    const intake::Intake& intake = file.preview ? *file.preview->intake : file.intake;
    json.member("rows", intake.rows)
        .member("added", countOf(intake.proposals))
        .member("used", intake.used)
        .member("already_there", intake.alreadyImported)
        .member("duplicates", intake.duplicates)
        .member("voided", intake.voided)
        .member("totals", intake.totals)
        .member("settled", countOf(intake.settled));
    writeQuarantine(json, intake, style);
    writeNotes(json, intake, style);
    json.key("ignored_columns").beginArray();
    for (const std::string& column : intake.ignoredColumns) json.value(column);
    json.endArray().endObject();
}

void printCount(std::ostream& out, std::string_view what, std::int64_t count) {
    if (count > 0) out << ", " << count << ' ' << what;
}

void printFile(const ImportedFile& file, const Answer& answer) {
    if (file.preview) printPreview(file, answer);
    if (file.preview && !file.preview->intake) return;
    const intake::Intake& intake = file.preview ? *file.preview->intake : file.intake;
    std::ostream& out = answer.out;
    out << file.path << ": " << intake.rows << (intake.rows == 1 ? " row" : " rows");
    out << ", " << intake.proposals.size() << (file.preview ? " would be added" : " added");
    printCount(out, "already there", intake.alreadyImported);
    printCount(out, "twice in the file", intake.duplicates);
    printCount(out, "voided", intake.voided);
    printCount(out, "sums", intake.totals);
    printCount(out, "not used", countOf(intake.quarantine));
    printCount(out, "of those set aside earlier now read", countOf(intake.settled));
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
    for (const Message& remark : intake.remarks) out << "  " << inWords(remark, answer.style) << '\n';
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
        if (!file.preview) added += countOf(file.intake.proposals);
    }
    json.endArray().member("added", added).endObject();
    answer.out << json.text() << '\n';
}

void printImport(const std::vector<ImportedFile>& files, const Answer& answer) {
    for (const ImportedFile& file : files) printFile(file, answer);
}

}  // namespace treadwell::cli
