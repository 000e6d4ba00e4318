#pragma once

#include "app/cli/command.h"
#include "core/intake/intake.h"

namespace treadwell::cli {

/// What one file came to.
struct ImportedFile {
    std::string_view kind;  ///< `tickets`
    std::string path;
    intake::Intake intake;
};

void writeImport(const std::vector<ImportedFile>& files, const Answer& answer);
void printImport(const std::vector<ImportedFile>& files, const Answer& answer);

}  // namespace treadwell::cli
