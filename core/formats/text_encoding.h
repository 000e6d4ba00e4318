#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace treadwell::formats {

/// `latin9` is ISO-8859-15.
enum class Encoding : std::uint8_t { utf8, windows1252, latin9 };

constexpr std::array<std::string_view, 3> enumTexts(Encoding /*encoding*/) noexcept {
    return {"utf8", "windows1252", "latin9"};
}

struct DecodedText {
    std::string text;  ///< UTF-8, without a byte order mark
    Encoding encoding;
};

[[nodiscard]] bool isUtf8(std::string_view bytes);

/// As `given`, or else as the bytes tell: UTF-8 where they are valid UTF-8; otherwise Windows-1252 where a
/// byte is a letter in that one alone, or where it and ISO-8859-15 read the same. Errors: textIsUtf16,
/// encodingWrong, encodingAmbiguous.
[[nodiscard]] Result<DecodedText> decodeText(std::string_view bytes, std::optional<Encoding> given = {});

/// Takes the first code point off a text that is not empty; U+FFFD for a byte that is not UTF-8.
[[nodiscard]] char32_t takeCodePoint(std::string_view& text);

/// Appends one code point as UTF-8.
void appendUtf8(std::string& text, char32_t codePoint);

}  // namespace treadwell::formats
