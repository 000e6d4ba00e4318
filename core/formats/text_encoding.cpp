#include "core/formats/text_encoding.h"

#include "core/formats/codes.h"

#include <algorithm>
#include <utility>

namespace treadwell::formats {

namespace {

// 0x80-0x9F of Windows-1252; the five bytes that it leaves open stay control characters, so that none is
// lost.
constexpr std::array<char32_t, 32> kWindows1252{
    0x20AC, 0x0081, 0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0x008D, 0x017D, 0x008F, 0x0090, 0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0x009D, 0x017E, 0x0178};

struct Lead {
    std::size_t length;  // bytes of the sequence, 0 where none begins so
    char32_t bits;
    char32_t smallest;  // a smaller code point would be an overlong form
};

Lead leadOf(unsigned char byte) {
    if (byte < 0x80) return {1, byte, 0};
    if ((byte & 0xE0) == 0xC0) return {2, byte & 0x1FU, 0x80};
    if ((byte & 0xF0) == 0xE0) return {3, byte & 0x0FU, 0x800};
    if ((byte & 0xF8) == 0xF0) return {4, byte & 0x07U, 0x10000};
    return {0, 0, 0};
}

struct Sequence {
    std::size_t length;  // 0 where the text does not begin with UTF-8
    char32_t codePoint;
};

Sequence firstOf(std::string_view bytes) {
    const Lead lead = leadOf(static_cast<unsigned char>(bytes.front()));
    if (lead.length == 0 || lead.length > bytes.size()) return {0, 0};
    char32_t codePoint = lead.bits;
    for (std::size_t i = 1; i < lead.length; ++i) {
        const auto byte = static_cast<unsigned char>(bytes[i]);
        if ((byte & 0xC0) != 0x80) return {0, 0};
        codePoint = codePoint << 6 | (byte & 0x3FU);
    }
    const bool surrogate = codePoint >= 0xD800 && codePoint <= 0xDFFF;
    if (codePoint < lead.smallest || codePoint > 0x10FFFF || surrogate) return {0, 0};
    return {lead.length, codePoint};
}

// Where ISO-8859-15 differs from Windows-1252 above its control characters (ISO/IEC 8859-15:1999).
constexpr std::array<std::pair<unsigned char, char32_t>, 8> kLatin9{{{0xA4, 0x20AC},
                                                                     {0xA6, 0x0160},
                                                                     {0xA8, 0x0161},
                                                                     {0xB4, 0x017D},
                                                                     {0xB8, 0x017E},
                                                                     {0xBC, 0x0152},
                                                                     {0xBD, 0x0153},
                                                                     {0xBE, 0x0178}}};

bool isControl(unsigned char byte) {
    return byte >= 0x80 && byte < 0xA0;
}

char32_t codePointOf(unsigned char byte, Encoding encoding) {
    if (encoding == Encoding::windows1252)
        return isControl(byte) ? kWindows1252[byte - 0x80U] : char32_t{byte};
    for (const auto& [own, codePoint] : kLatin9) {
        if (own == byte) return codePoint;
    }
    return byte;
}

// The question that the bytes leave open; none where both encodings read the same, or where a control
// character of the one is a letter of the other.
std::optional<Error> doubtfulByte(std::string_view content) {
    std::optional<unsigned char> doubtful;
    for (const char c : content) {
        const auto byte = static_cast<unsigned char>(c);
        if (isControl(byte)) return std::nullopt;
        if (!doubtful && codePointOf(byte, Encoding::latin9) != codePointOf(byte, Encoding::windows1252))
            doubtful = byte;
    }
    if (!doubtful) return std::nullopt;
    std::string one;
    std::string other;
    appendUtf8(one, codePointOf(*doubtful, Encoding::windows1252));
    appendUtf8(other, codePointOf(*doubtful, Encoding::latin9));
    return fail(code::encodingAmbiguous, "encoding", one, other).value();
}

bool startsWith(std::string_view bytes, std::string_view mark) {
    return bytes.substr(0, mark.size()) == mark;
}

}  // namespace

bool isUtf8(std::string_view bytes) {
    while (!bytes.empty()) {
        const auto first = firstOf(bytes);
        if (first.length == 0) return false;
        bytes.remove_prefix(first.length);
    }
    return true;
}

char32_t takeCodePoint(std::string_view& text) {
    const auto first = firstOf(text);
    text.remove_prefix(std::max<std::size_t>(1, first.length));
    return first.length == 0 ? U'\uFFFD' : first.codePoint;
}

void appendUtf8(std::string& text, char32_t codePoint) {
    const auto put = [&text](char32_t byte) { text += static_cast<char>(byte); };
    const auto tail = [&](int shift) { put(0x80 | (codePoint >> shift & 0x3F)); };
    if (codePoint < 0x80) {
        put(codePoint);
    } else if (codePoint < 0x800) {
        put(0xC0 | codePoint >> 6);
        tail(0);
    } else if (codePoint < 0x10000) {
        put(0xE0 | codePoint >> 12);
        tail(6);
        tail(0);
    } else {
        put(0xF0 | codePoint >> 18);
        tail(12);
        tail(6);
        tail(0);
    }
}

Result<DecodedText> decodeText(std::string_view bytes, std::optional<Encoding> given) {
    if (startsWith(bytes, "\xFF\xFE") || startsWith(bytes, "\xFE\xFF"))
        return fail(code::textIsUtf16, "file");
    constexpr std::string_view kMark = "\xEF\xBB\xBF";
    const std::string_view content = startsWith(bytes, kMark) ? bytes.substr(kMark.size()) : bytes;
    if (!given || *given == Encoding::utf8) {
        if (isUtf8(content)) return DecodedText{std::string{content}, Encoding::utf8};
        if (given) return fail(code::encodingWrong, "encoding");
    }
    if (!given) {
        if (const auto doubtful = doubtfulByte(content)) return Unexpected{*doubtful};
    }
    DecodedText decoded{{}, given.value_or(Encoding::windows1252)};
    for (const char c : content)
        appendUtf8(decoded.text, codePointOf(static_cast<unsigned char>(c), decoded.encoding));
    return decoded;
}

}  // namespace treadwell::formats
