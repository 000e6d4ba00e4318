#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace treadwell {

[[nodiscard]] std::string toHex(std::span<const std::uint8_t> bytes);

/// Fills `bytes` from exactly twice as many hexadecimal digits; false where the text is anything else.
[[nodiscard]] bool fromHex(std::string_view text, std::span<std::uint8_t> bytes);

}  // namespace treadwell
