#include "core/intake/names.h"

#include "core/formats/text_encoding.h"

#include <array>

namespace treadwell::intake {

namespace {

struct Accented {
    char32_t composed;
    char32_t base;
    char32_t mark;
};

// The small letters of German, Portuguese, Spanish, French and Scandinavian names.
constexpr std::array kAccented{Accented{U'\u00E0', U'a', U'\u0300'}, Accented{U'\u00E1', U'a', U'\u0301'},
                               Accented{U'\u00E2', U'a', U'\u0302'}, Accented{U'\u00E3', U'a', U'\u0303'},
                               Accented{U'\u00E4', U'a', U'\u0308'}, Accented{U'\u00E5', U'a', U'\u030A'},
                               Accented{U'\u00E7', U'c', U'\u0327'}, Accented{U'\u00E8', U'e', U'\u0300'},
                               Accented{U'\u00E9', U'e', U'\u0301'}, Accented{U'\u00EA', U'e', U'\u0302'},
                               Accented{U'\u00EB', U'e', U'\u0308'}, Accented{U'\u00EC', U'i', U'\u0300'},
                               Accented{U'\u00ED', U'i', U'\u0301'}, Accented{U'\u00EE', U'i', U'\u0302'},
                               Accented{U'\u00EF', U'i', U'\u0308'}, Accented{U'\u00F1', U'n', U'\u0303'},
                               Accented{U'\u00F2', U'o', U'\u0300'}, Accented{U'\u00F3', U'o', U'\u0301'},
                               Accented{U'\u00F4', U'o', U'\u0302'}, Accented{U'\u00F5', U'o', U'\u0303'},
                               Accented{U'\u00F6', U'o', U'\u0308'}, Accented{U'\u00F9', U'u', U'\u0300'},
                               Accented{U'\u00FA', U'u', U'\u0301'}, Accented{U'\u00FB', U'u', U'\u0302'},
                               Accented{U'\u00FC', U'u', U'\u0308'}, Accented{U'\u00FD', U'y', U'\u0301'}};

// Latin letters, with and without accents (The Unicode Standard, blocks 0000 to 017F).
char32_t lowered(char32_t c) {
    if ((c >= U'A' && c <= U'Z') || (c >= 0xC0 && c <= 0xDE && c != 0xD7)) return c + 0x20;
    if (c == 0x178) return 0xFF;
    const bool evenIsCapital = (c >= 0x100 && c <= 0x137) || (c >= 0x14A && c <= 0x177);
    const bool oddIsCapital = (c >= 0x139 && c <= 0x148) || (c >= 0x179 && c <= 0x17E);
    if ((evenIsCapital && c % 2 == 0) || (oddIsCapital && c % 2 == 1)) return c + 1;
    return c;
}

bool isBlank(char32_t c) {
    return c == U' ' || c == U'\t' || c == U'\r' || c == U'\n' || c == 0xA0 || c == 0x202F;
}

// Small letters, each accent joined with its letter.
std::u32string composed(std::string_view text) {
    std::u32string result;
    while (!text.empty()) {
        const char32_t c = lowered(formats::takeCodePoint(text));
        const auto* pair = kAccented.begin();
        while (pair != kAccented.end() && (result.empty() || pair->mark != c || pair->base != result.back()))
            ++pair;
        if (pair == kAccented.end()) {
            result += c;
        } else {
            result.back() = pair->composed;
        }
    }
    return result;
}

// Joins words by single blanks: `put` appends what a code point becomes, or says that it parts words.
template <class Put>
std::string joined(const std::u32string& letters, Put put) {
    std::string text;
    bool parted = false;
    for (const char32_t c : letters) {
        std::string piece;
        if (!put(c, piece)) {
            parted = !text.empty();
            continue;
        }
        if (parted) text += ' ';
        parted = false;
        text += piece;
    }
    return text;
}

}  // namespace

std::string foldedName(std::string_view name) {
    return joined(composed(name), [](char32_t c, std::string& piece) {
        if (isBlank(c)) return false;
        formats::appendUtf8(piece, c);
        return true;
    });
}

std::string plainWords(std::string_view text) {
    std::string spelled;
    for (const char c : text) spelled += c == '%' ? " percent " : std::string(1, c);
    return joined(composed(spelled), [](char32_t c, std::string& piece) {
        for (const Accented& accented : kAccented) {
            if (accented.composed == c) c = accented.base;
        }
        const bool letter = (c >= U'a' && c <= U'z') || (c >= U'0' && c <= U'9') || c > 0xBF;
        if (letter && c == 0xDF) {
            piece = "ss";
        } else if (letter) {
            formats::appendUtf8(piece, c);
        }
        return letter;
    });
}

}  // namespace treadwell::intake
