#pragma once

#include "app/cli/command.h"
#include "core/intake/preview.h"
#include "core/season/day.h"

namespace treadwell::cli {

/// What one file came to.
struct ImportedFile {
    std::string_view kind;  ///< `tickets`
    std::string path;
    intake::Intake intake;
    std::optional<intake::Preview> preview;  ///< instead, where it was asked for
};

/// A row that was set aside, with its header, as far as it is still there.
struct KeptRow {
    season::Dated<entries::RowSetAside> aside;
    std::optional<std::string> raw;
};

void writeRows(const std::vector<KeptRow>& rows, const Answer& answer);
void printRows(const std::vector<KeptRow>& rows, const Answer& answer);

/// A preview's own members, within an object.
void writePreview(JsonWriter& json, const intake::Preview& preview, const words::Style& style);
void printPreview(const ImportedFile& file, const Answer& answer);

void writeImport(const std::vector<ImportedFile>& files, const Answer& answer);
void printImport(const std::vector<ImportedFile>& files, const Answer& answer);

}  // namespace treadwell::cli
