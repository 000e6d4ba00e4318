#pragma once

#include "core/base/error.h"
#include "core/base/hash.h"

#include <filesystem>
#include <string>
#include <string_view>

namespace treadwell::session {

/// What a document carries of the people whose ids stand in the entries.
enum class PeoplesNames : std::uint8_t { leftOut, included };

/// The whole season in a file as one JSON document (core/entries/season_document.h). Errors: those of opening
/// it for reading, and what the first broken place in it is, as such a document could not be read back.
[[nodiscard]] Result<std::string> exportDocument(const std::filesystem::path& season, PeoplesNames names,
                                                 Instant now);

/// Makes the season's file anew from such a document, equal entry by entry and hash by hash, and gives its
/// head; whole or not at all, never over another file. Errors: those of entries::readDocument, journalExists,
/// fileUnwritable, entryOutOfOrder, documentHeadDiffers.
[[nodiscard]] Result<Hash> restoreDocument(std::string_view document, const std::filesystem::path& season);

}  // namespace treadwell::session
