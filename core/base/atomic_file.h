#pragma once

#include "core/base/error.h"

#include <filesystem>
#include <string>
#include <string_view>

namespace treadwell {

/// Replaces `path` as a whole or not at all: writes beside it, syncs, renames, syncs the folder. Mode 0600.
[[nodiscard]] Result<void> writeFileAtomically(const std::filesystem::path& path, std::string_view content);

/// Gives a file that was made beside `path` its name, synced, and never over another file.
[[nodiscard]] Result<void> publishFile(const std::filesystem::path& made, const std::filesystem::path& path);

/// Makes the names in the folder that holds `path` survive a power cut.
[[nodiscard]] Result<void> syncFolderOf(const std::filesystem::path& path);

[[nodiscard]] Result<std::string> readFile(const std::filesystem::path& path);

}  // namespace treadwell
