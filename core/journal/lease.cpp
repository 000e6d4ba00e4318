#include "core/journal/lease.h"

#include "core/base/codes.h"
#include "core/base/number_text.h"

#include <fcntl.h>
#include <pwd.h>
#include <sys/file.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <chrono>
#include <system_error>
#include <thread>

namespace treadwell::journal {

namespace {

// Whoever asks for the owner holds the lock for a moment, and a writer must not take that for another writer.
constexpr int kTrials = 5;
constexpr std::chrono::milliseconds kBetweenTrials{2};

std::string pathOf(const std::filesystem::path& journal) {
    return journal.string() + ".lease";
}

std::string userName() {
    std::array<char, 1024> room{};
    passwd entry{};
    passwd* found = nullptr;
    ::getpwuid_r(::geteuid(), &entry, room.data(), room.size(), &found);
    return found == nullptr ? std::to_string(::geteuid()) : found->pw_name;
}

// Four lines: process, host, microseconds, user.
std::string ownText(Instant now) {
    std::array<char, 256> host{};
    ::gethostname(host.data(), host.size() - 1);
    return std::to_string(::getpid()) + '\n' + host.data() + '\n' + std::to_string(toMicroseconds(now)) +
           '\n' + userName() + '\n';
}

/// What can be read of it: an owner that was killed while it wrote its name is still the owner.
LeaseOwner ownerFrom(std::string_view text) {
    const auto line = [&text] {
        const auto end = text.find('\n');
        const auto found = text.substr(0, end);
        text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
        return found;
    };
    LeaseOwner owner;
    owner.pid = integerFromText(line()).value_or(0);
    owner.host = line();
    owner.since = instantFromMicroseconds(integerFromText(line()).value_or(0));
    owner.user = line();
    return owner;
}

std::string readAll(int fd) {
    std::array<char, 512> text{};
    const ssize_t size = ::pread(fd, text.data(), text.size(), 0);
    return {text.data(), static_cast<std::size_t>(std::max<ssize_t>(size, 0))};
}

}  // namespace

Result<std::variant<Lease, LeaseOwner>> Lease::take(const std::filesystem::path& journal, Instant now) {
    const std::string path = pathOf(journal);
    Descriptor file{::open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600)};
    const auto failed = [&path] {
        return fail(code::fileUnwritable, "file", path, std::generic_category().message(errno));
    };
    if (!file.isOpen()) return failed();
    for (int trial = 0; ::flock(file.get(), LOCK_EX | LOCK_NB) != 0; ++trial) {
        if (errno != EWOULDBLOCK) return failed();
        if (trial == kTrials) return ownerFrom(readAll(file.get()));
        std::this_thread::sleep_for(kBetweenTrials);
    }
    const std::string text = ownText(now);
    if (::ftruncate(file.get(), 0) != 0 ||
        ::pwrite(file.get(), text.data(), text.size(), 0) != static_cast<ssize_t>(text.size())) {
        return failed();
    }
    return Lease{std::move(file)};
}

std::optional<LeaseOwner> Lease::ownerOf(const std::filesystem::path& journal) {
    const Descriptor file{::open(pathOf(journal).c_str(), O_RDONLY | O_CLOEXEC)};
    if (!file.isOpen()) return std::nullopt;
    if (::flock(file.get(), LOCK_SH | LOCK_NB) == 0 || errno != EWOULDBLOCK) return std::nullopt;
    return ownerFrom(readAll(file.get()));
}

}  // namespace treadwell::journal
