#pragma once

#include "app/cli/import.h"
#include "app/cli/intake_output.h"
#include "core/season/season.h"

namespace treadwell::cli {

/// Reads the files that are named against what the season already holds; records nothing.
[[nodiscard]] tl::expected<std::vector<ImportedFile>, Failure> readFiles(const ImportOptions& options,
                                                                         const season::Season& season,
                                                                         const words::Style& style);

}  // namespace treadwell::cli
