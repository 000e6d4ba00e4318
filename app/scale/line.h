#pragma once

#include "core/base/descriptor.h"
#include "core/base/enum_text.h"
#include "core/base/error.h"

#include <array>
#include <chrono>
#include <string>
#include <string_view>

namespace treadwell::scale {

/// How characters travel: 8 data bits without parity, or 7 with even parity.
enum class Characters : std::uint8_t { eightNone, sevenEven };

constexpr std::array<std::string_view, 2> enumTexts(Characters /*characters*/) noexcept {
    return {"8N1", "7E1"};
}

inline constexpr std::array kBauds{1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200};

struct LineSettings {
    std::string place;  ///< a serial device, `/dev/ttyUSB0`, or host and port, `127.0.0.1:4001`
    int baud = 9600;    ///< one of kBauds
    Characters characters = Characters::eightNone;
};

/// The wire to a scale: bytes and nothing else.
class Line {
  public:
    /// Errors: scaleUnreachable.
    [[nodiscard]] static Result<Line> open(const LineSettings& settings);

    /// What has come, after waiting at most so long; empty where nothing came. Errors: scaleLineEnded.
    [[nodiscard]] Result<std::string> read(std::chrono::milliseconds wait);

    /// Errors: scaleLineEnded.
    [[nodiscard]] Result<void> ask(std::string_view question);

  private:
    Line(Descriptor descriptor, std::string place)
        : m_descriptor(std::move(descriptor)), m_place(std::move(place)) {}

    Descriptor m_descriptor;
    std::string m_place;
};

}  // namespace treadwell::scale
