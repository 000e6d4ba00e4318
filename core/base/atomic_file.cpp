#include "core/base/atomic_file.h"

#include "core/base/codes.h"
#include "core/base/descriptor.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <sstream>
#include <system_error>

namespace treadwell {

namespace {

std::string reason(int error) {
    return std::generic_category().message(error);
}

bool writeAll(int fd, std::string_view content) {
    while (!content.empty()) {
        const ssize_t written = ::write(fd, content.data(), content.size());
        if (written < 0 && errno == EINTR) continue;
        if (written < 0) return false;
        content.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

}  // namespace

Result<void> writeFileAtomically(const std::filesystem::path& path, std::string_view content) {
    std::string beside = path.string() + ".XXXXXX";
    int error = 0;
    {
        const Descriptor file{::mkstemp(beside.data())};
        if (file.get() < 0) return fail(code::fileUnwritable, "file", path.string(), reason(errno));
        if (!writeAll(file.get(), content) || ::fsync(file.get()) != 0) error = errno;
    }
    if (error == 0 && ::rename(beside.c_str(), path.c_str()) != 0) error = errno;
    if (error != 0) {
        ::unlink(beside.c_str());
        return fail(code::fileUnwritable, "file", path.string(), reason(error));
    }
    return syncFolderOf(path);
}

Result<void> syncFolderOf(const std::filesystem::path& path) {
    const auto folder = path.has_parent_path() ? path.parent_path() : std::filesystem::path{"."};
    const Descriptor directory{::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC)};
    if (!directory.isOpen() || ::fsync(directory.get()) != 0) {
        return fail(code::fileUnwritable, "file", path.string(), reason(errno));
    }
    return {};
}

Result<void> publishFile(const std::filesystem::path& made, const std::filesystem::path& path) {
    const Descriptor file{::open(made.c_str(), O_RDONLY | O_CLOEXEC)};
    if (!file.isOpen() || ::fsync(file.get()) != 0 ||
        ::renameat2(AT_FDCWD, made.c_str(), AT_FDCWD, path.c_str(), RENAME_NOREPLACE) != 0) {
        return fail(code::fileUnwritable, "file", path.string(), reason(errno));
    }
    return syncFolderOf(path);
}

Result<std::string> readFile(const std::filesystem::path& path) {
    std::error_code isFolder;
    std::ifstream file(path, std::ios::binary);
    if (!file || std::filesystem::is_directory(path, isFolder)) {
        return fail(code::fileUnreadable, "file", path.string(), reason(file ? EISDIR : errno));
    }
    std::ostringstream content;
    content << file.rdbuf();
    if (file.bad()) return fail(code::fileUnreadable, "file", path.string(), reason(errno));
    return std::move(content).str();
}

}  // namespace treadwell
