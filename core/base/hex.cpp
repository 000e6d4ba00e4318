#include "core/base/hex.h"

#include <charconv>

namespace treadwell {

std::string toHex(std::span<const std::uint8_t> bytes) {
    static constexpr std::string_view kDigits = "0123456789abcdef";
    std::string text;
    text.reserve(bytes.size() * 2);
    for (const std::uint8_t byte : bytes) {
        text += kDigits[byte >> 4];
        text += kDigits[byte & 0x0f];
    }
    return text;
}

bool fromHex(std::string_view text, std::span<std::uint8_t> bytes) {
    if (text.size() != bytes.size() * 2) return false;
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        const char* first = text.data() + 2 * i;
        const auto [stop, code] = std::from_chars(first, first + 2, bytes[i], 16);
        if (code != std::errc{} || stop != first + 2) return false;
    }
    return true;
}

}  // namespace treadwell
