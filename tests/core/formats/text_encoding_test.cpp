#include "core/formats/text_encoding.h"

#include "core/formats/codes.h"

#include <gtest/gtest.h>

namespace treadwell::formats {
namespace {

TEST(DecodeText, DropsTheByteOrderMark) {
    const auto decoded = decodeText("\xEF\xBB\xBFsilo");
    ASSERT_TRUE(decoded);
    EXPECT_EQ(decoded->text, "silo");
    EXPECT_EQ(decoded->encoding, Encoding::utf8);
}

// Windows-1252: E9 is e acute, 80 the euro sign (The Unicode Standard's mapping CP1252).
TEST(DecodeText, FallsBackToWindows1252) {
    const auto decoded = decodeText("caf\xE9 \x80");
    ASSERT_TRUE(decoded);
    EXPECT_EQ(decoded->text, "caf\u00E9 \u20AC");
    EXPECT_EQ(decoded->encoding, Encoding::windows1252);
}

TEST(DecodeText, LosesNoByteThatWindows1252LeavesOpen) {
    const auto decoded = decodeText("\x81\xFF");
    ASSERT_TRUE(decoded);
    EXPECT_EQ(decoded->text, "\u0081\u00FF");
}

TEST(DecodeText, AsksForAnotherEncodingThanUtf16) {
    for (const char* mark : {"\xFF\xFE", "\xFE\xFF"}) {
        const auto decoded = decodeText(mark);
        ASSERT_FALSE(decoded);
        EXPECT_EQ(decoded.error().code(), code::textIsUtf16);
    }
}

// ISO/IEC 8859-15:1999 differs from ISO 8859-1, and so from Windows-1252 there, in eight characters.
TEST(DecodeText, AsksWhereTwoEncodingsReadOtherwise) {
    for (const char* doubtful : {"\xA4", "\xA6", "\xA8", "\xB4", "\xB8", "\xBC", "\xBD", "\xBE"}) {
        const auto decoded = decodeText(doubtful);
        ASSERT_FALSE(decoded);
        EXPECT_EQ(decoded.error().code(), code::encodingAmbiguous);
        EXPECT_EQ(decoded.error().field, "encoding");
    }
    EXPECT_EQ(decodeText("12 \xA4", Encoding::latin9)->text, "12 \u20AC");
    EXPECT_EQ(decodeText("12 \xA4", Encoding::windows1252)->text, "12 \u00A4");
    EXPECT_EQ(decodeText("12 \xA4 \x80")->text, "12 \u00A4 \u20AC");  // 80 is a letter in Windows-1252 alone
    EXPECT_EQ(decodeText("M\xFCller")->encoding, Encoding::windows1252);
}

TEST(DecodeText, HoldsAFileToTheEncodingThatIsGiven) {
    EXPECT_EQ(decodeText("M\xC3\xBCller", Encoding::windows1252)->text, "M\u00C3\u00BCller");
    EXPECT_EQ(decodeText("M\xC3\xBCller", Encoding::utf8)->text, "M\u00FCller");
    EXPECT_EQ(decodeText("M\xFCller", Encoding::utf8).error().code(), code::encodingWrong);
}

// RFC 3629: overlong forms, surrogates, code points above 10FFFF and cut sequences are not UTF-8.
TEST(IsUtf8, RefusesWhatTheStandardRefuses) {
    EXPECT_TRUE(isUtf8(""));
    EXPECT_TRUE(isUtf8("a\u00E9\u20AC\U0001F69C"));
    for (const char* bad : {"\xC0\xAF", "\xE0\x80\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xF5",
                            "\xE2\x82", "\x80", "\xC3("}) {
        EXPECT_FALSE(isUtf8(bad));
    }
}

TEST(TakeCodePoint, TakesOneAtATimeAndGetsPastABadByte) {
    std::string_view text = "a\u20AC\xFFz";
    EXPECT_EQ(takeCodePoint(text), U'a');
    EXPECT_EQ(takeCodePoint(text), U'\u20AC');
    EXPECT_EQ(takeCodePoint(text), U'\uFFFD');
    EXPECT_EQ(text, "z");
}

TEST(AppendUtf8, WritesOneToFourBytes) {
    std::string text;
    for (const char32_t codePoint : {U'a', U'\u00E9', U'\u20AC', U'\U0001F69C'}) appendUtf8(text, codePoint);
    EXPECT_EQ(text, "a\u00E9\u20AC\U0001F69C");
}

}  // namespace
}  // namespace treadwell::formats
