#pragma once

#include "core/base/error.h"

#include <filesystem>

namespace treadwell::session {

/// Where this machine keeps what belongs to no season's file: `treadwell` in $XDG_STATE_HOME, or in
/// ~/.local/state (XDG base directories; a relative value counts as none). Made where it is absent. Error:
/// fileUnwritable.
[[nodiscard]] Result<std::filesystem::path> stateFolder();

}  // namespace treadwell::session
