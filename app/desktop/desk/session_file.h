#pragma once

#include "app/desktop/desk/season_file.h"

#include <filesystem>

namespace treadwell::desk {

/// Opens the season for writing, or for reading alone where another holds it; the clock must outlive it.
/// Errors: those of session::Session::open.
[[nodiscard]] Result<std::unique_ptr<SeasonFile>> openSeason(const std::filesystem::path& season,
                                                             const std::filesystem::path& stateFolder,
                                                             const Clock& clock);

/// Leaves the file as it is, whoever holds it.
[[nodiscard]] Result<std::unique_ptr<SeasonFile>> openSeasonForReading(
    const std::filesystem::path& season, const std::filesystem::path& stateFolder, const Clock& clock);

}  // namespace treadwell::desk
