#pragma once

#include "app/cli/import.h"
#include "app/cli/intake_output.h"
#include "core/season/season.h"

#include <filesystem>

namespace treadwell::cli {

/// What a file leaves open, and the option that answers it.
[[nodiscard]] std::string questionInWords(const Error& error, const words::Style& style);

/// Reads the files that are named against what the season already holds; records nothing. New answers are put
/// into `maps`.
[[nodiscard]] tl::expected<std::vector<ImportedFile>, Failure> readFiles(const ImportOptions& options,
                                                                         const season::Season& season,
                                                                         intake::ImportMaps& maps,
                                                                         const words::Style& style);

}  // namespace treadwell::cli
