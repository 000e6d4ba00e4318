#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace treadwell::formats {

enum class Encoding : std::uint8_t { utf8, windows1252 };

constexpr std::array<std::string_view, 2> enumTexts(Encoding /*encoding*/) noexcept {
    return {"utf8", "windows1252"};
}

struct DecodedText {
    std::string text;  ///< UTF-8, without a byte order mark
    Encoding encoding;
};

[[nodiscard]] bool isUtf8(std::string_view bytes);

/// UTF-8 where the bytes are valid UTF-8, otherwise Windows-1252. Errors: textIsUtf16.
[[nodiscard]] Result<DecodedText> decodeText(std::string_view bytes);

/// Takes the first code point off a text that is not empty; U+FFFD for a byte that is not UTF-8.
[[nodiscard]] char32_t takeCodePoint(std::string_view& text);

/// Appends one code point as UTF-8.
void appendUtf8(std::string& text, char32_t codePoint);

}  // namespace treadwell::formats
