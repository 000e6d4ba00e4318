#pragma once

#include "core/base/descriptor.h"

#include <arpa/inet.h>
#include <fcntl.h>
#include <netinet/in.h>
#include <sys/socket.h>
#include <termios.h>
#include <unistd.h>

#include <chrono>
#include <cstdlib>
#include <stdexcept>
#include <string>
#include <string_view>
#include <thread>
#include <utility>

namespace treadwell::testing_support {

inline void sendAll(int descriptor, std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t sent = ::write(descriptor, bytes.data(), bytes.size());
        if (sent <= 0) return;  // the other end has gone, which is for it to tell
        bytes.remove_prefix(static_cast<std::size_t>(sent));
    }
}

/// A pseudo-terminal: what is played into it comes out of the device `place`.
class PseudoTerminal {
  public:
    PseudoTerminal() : m_scale{::posix_openpt(O_RDWR | O_NOCTTY)}, m_device{-1} {
        if (!m_scale.isOpen() || ::grantpt(m_scale.get()) != 0 || ::unlockpt(m_scale.get()) != 0)
            throw std::runtime_error("no pseudo-terminal");
        m_place = ::ptsname(m_scale.get());
        // Held open and raw, so that what is played before somebody listens waits as it is.
        m_device = Descriptor{::open(m_place.c_str(), O_RDWR | O_NOCTTY)};
        termios terms{};
        if (::tcgetattr(m_device.get(), &terms) != 0) throw std::runtime_error("no terminal");
        ::cfmakeraw(&terms);
        ::tcsetattr(m_device.get(), TCSANOW, &terms);
    }

    [[nodiscard]] const std::string& place() const noexcept { return m_place; }
    void play(std::string_view bytes) { sendAll(m_scale.get(), bytes); }
    /// What was asked of the scale.
    [[nodiscard]] std::string asked() {
        std::string bytes(64, '\0');
        const ssize_t size = ::read(m_scale.get(), bytes.data(), bytes.size());
        bytes.resize(size > 0 ? static_cast<std::size_t>(size) : 0);
        return bytes;
    }
    /// Pulls the plug.
    void cut() {
        m_device = Descriptor{-1};
        m_scale = Descriptor{-1};
    }

  private:
    Descriptor m_scale;
    Descriptor m_device;
    std::string m_place;
};

/// A scale behind a port of this machine, for one who listens.
class ScalePort {
  public:
    ScalePort() : m_listening{::socket(AF_INET, SOCK_STREAM, 0)} {
        sockaddr_in address{};
        address.sin_family = AF_INET;
        address.sin_addr.s_addr = ::htonl(INADDR_LOOPBACK);
        socklen_t size = sizeof address;
        auto* any = reinterpret_cast<sockaddr*>(&address);
        if (::bind(m_listening.get(), any, size) != 0 || ::listen(m_listening.get(), 1) != 0 ||
            ::getsockname(m_listening.get(), any, &size) != 0)
            throw std::runtime_error("no port");
        m_place = "127.0.0.1:" + std::to_string(::ntohs(address.sin_port));
    }

    [[nodiscard]] const std::string& place() const noexcept { return m_place; }
    /// Waits for the listener, sends, and hangs up.
    void playOnce(std::string_view bytes) {
        const Descriptor listener{::accept(m_listening.get(), nullptr, nullptr)};
        sendAll(listener.get(), bytes);
    }

  private:
    Descriptor m_listening;
    std::string m_place;
};

}  // namespace treadwell::testing_support
