#pragma once

#include "core/base/error.h"

#include <filesystem>
#include <string>
#include <string_view>

namespace treadwell {

/// Replaces `path` as a whole or not at all: writes beside it, syncs, renames, syncs the folder. Mode 0600.
[[nodiscard]] Result<void> writeFileAtomically(const std::filesystem::path& path, std::string_view content);

[[nodiscard]] Result<std::string> readFile(const std::filesystem::path& path);

}  // namespace treadwell
