#include "core/session/state_folder.h"

#include "core/base/codes.h"

#include <cstdlib>
#include <system_error>

namespace treadwell::session {

namespace {

std::filesystem::path absoluteFrom(const char* variable) {
    const char* value = std::getenv(variable);
    const std::filesystem::path path{value == nullptr ? "" : value};
    return path.is_absolute() ? path : std::filesystem::path{};
}

}  // namespace

Result<std::filesystem::path> stateFolder() {
    std::filesystem::path base = absoluteFrom("XDG_STATE_HOME");
    if (base.empty()) base = absoluteFrom("HOME") / ".local" / "state";
    const std::filesystem::path folder = base / "treadwell";
    std::error_code failure;
    std::filesystem::create_directories(folder, failure);
    if (failure) return fail(code::fileUnwritable, "state folder", folder.string(), failure.message());
    return folder;
}

}  // namespace treadwell::session
