#pragma once

#include "core/journal/journal.h"

#include <filesystem>
#include <optional>

namespace treadwell::session {

/// A checked copy in `folder`, named by the season's file and the time; of such copies the newest `keep`
/// stay. Errors: those of Journal::backupTo, valueOutOfRange for `keep` below 1.
[[nodiscard]] Result<std::filesystem::path> backUpInto(const journal::Journal& journal,
                                                       const std::filesystem::path& folder, Instant now,
                                                       int keep);

/// Makes a season's file of a copy that is whole; never over another file. Whoever opens it goes on as a new
/// device where it is behind. Errors: those of Journal::open and Journal::backupTo, and the copy's first
/// broken place.
[[nodiscard]] Result<void> restore(const std::filesystem::path& copy, const std::filesystem::path& season,
                                   Instant now);

/// Where this machine puts a copy after each day's close; none where none was chosen.
[[nodiscard]] std::optional<std::filesystem::path> secondPlace(const std::filesystem::path& stateFolder);
/// An empty place: none. Error: fileUnwritable.
[[nodiscard]] Result<void> chooseSecondPlace(const std::filesystem::path& stateFolder,
                                             const std::filesystem::path& place);

/// How the copies after each day's close stand now, of `season` where it is given: copiesNone, copiesGo,
/// copiesNewest, copiesNotYet, or what is wrong with the place, copiesAway or copiesRefused.
[[nodiscard]] Message copiesStand(const std::filesystem::path& stateFolder,
                                  const std::optional<std::filesystem::path>& season);

}  // namespace treadwell::session
