#include "app/scale/line.h"

#include "core/intake/codes.h"

#include <fcntl.h>
#include <netdb.h>
#include <poll.h>
#include <sys/socket.h>
#include <termios.h>
#include <unistd.h>

#include <cerrno>
#include <memory>
#include <system_error>
#include <utility>

namespace treadwell::scale {

namespace {

// In the order of kBauds.
constexpr std::array<speed_t, kBauds.size()> kSpeeds{B1200,  B2400,  B4800,  B9600,
                                                     B19200, B38400, B57600, B115200};

Unexpected unreachable(const std::string& place, std::string reason) {
    return fail(code::scaleUnreachable, "line", place, std::move(reason));
}

std::string reasonOf(int error) {
    return std::generic_category().message(error);
}

Result<Descriptor> openDevice(const LineSettings& settings) {
    speed_t speed = B0;
    for (std::size_t i = 0; i < kBauds.size(); ++i) {
        if (kBauds[i] == settings.baud) speed = kSpeeds[i];
    }
    if (speed == B0) return unreachable(settings.place, std::to_string(settings.baud) + " baud");
    Descriptor device{::open(settings.place.c_str(), O_RDWR | O_NOCTTY | O_NONBLOCK | O_CLOEXEC)};
    if (!device.isOpen()) return unreachable(settings.place, reasonOf(errno));
    termios terms{};
    if (::tcgetattr(device.get(), &terms) != 0) return unreachable(settings.place, reasonOf(errno));
    ::cfmakeraw(&terms);
    terms.c_cflag |= CLOCAL | CREAD;
    if (settings.characters == Characters::sevenEven) {
        terms.c_cflag = (terms.c_cflag & ~static_cast<tcflag_t>(CSIZE | PARODD)) | CS7 | PARENB;
        terms.c_iflag |= INPCK;  // a character whose parity is wrong arrives as zero
    }
    ::cfsetispeed(&terms, speed);
    ::cfsetospeed(&terms, speed);
    if (::tcsetattr(device.get(), TCSANOW, &terms) != 0) return unreachable(settings.place, reasonOf(errno));
    return device;
}

Result<Descriptor> openConnection(const std::string& place) {
    const std::size_t split = place.rfind(':');
    addrinfo wanted{};
    wanted.ai_socktype = SOCK_STREAM;
    addrinfo* found = nullptr;
    const int failed =
        ::getaddrinfo(place.substr(0, split).c_str(), place.substr(split + 1).c_str(), &wanted, &found);
    if (failed != 0) return unreachable(place, ::gai_strerror(failed));
    const std::unique_ptr<addrinfo, decltype(&::freeaddrinfo)> addresses{found, &::freeaddrinfo};
    int error = 0;
    for (const addrinfo* address = found; address != nullptr; address = address->ai_next) {
        Descriptor connection{
            ::socket(address->ai_family, address->ai_socktype | SOCK_CLOEXEC, address->ai_protocol)};
        if (!connection.isOpen() || ::connect(connection.get(), address->ai_addr, address->ai_addrlen) != 0) {
            error = errno;
            continue;
        }
        return connection;
    }
    return unreachable(place, reasonOf(error));
}

}  // namespace

Result<Line> Line::open(const LineSettings& settings) {
    const bool isDevice = settings.place.find(':') == std::string::npos || settings.place.front() == '/';
    auto opened = isDevice ? openDevice(settings) : openConnection(settings.place);
    if (!opened) return Unexpected{opened.error()};
    return Line{std::move(*opened), settings.place};
}

Result<std::string> Line::read(std::chrono::milliseconds wait) {
    pollfd waiting{m_descriptor.get(), POLLIN, 0};
    const int ready = ::poll(&waiting, 1, static_cast<int>(wait.count()));
    if (ready == 0 || (ready < 0 && errno == EINTR)) return std::string{};
    std::array<char, 512> bytes{};
    const ssize_t size = ::read(m_descriptor.get(), bytes.data(), bytes.size());
    if (size < 0 && (errno == EAGAIN || errno == EINTR)) return std::string{};
    if (size <= 0) return fail(code::scaleLineEnded, "line", m_place);
    return std::string{bytes.data(), static_cast<std::size_t>(size)};
}

Result<void> Line::ask(std::string_view question) {
    // A connection that is gone must be an error here, not a signal.
    ssize_t sent = ::send(m_descriptor.get(), question.data(), question.size(), MSG_NOSIGNAL);
    if (sent < 0 && errno == ENOTSOCK) sent = ::write(m_descriptor.get(), question.data(), question.size());
    if (sent != static_cast<ssize_t>(question.size())) return fail(code::scaleLineEnded, "line", m_place);
    return {};
}

}  // namespace treadwell::scale
