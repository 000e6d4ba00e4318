#include "core/formats/scale_frames.h"

#include "core/base/codes.h"
#include "core/base/number_text.h"
#include "core/formats/codes.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace treadwell::formats {
namespace {

std::vector<ScaleFrame> framesOf(std::string_view profile, std::string_view bytes) {
    ScaleFrames frames{*scaleProfileNamed(profile)};
    return frames.take(bytes);
}

/// The last frame; those before it end what a line may have begun in the middle.
ScaleFrame lastFrame(std::string_view profile, const std::string& bytes) {
    const auto frames = framesOf(profile, "\r\n" + bytes);
    if (frames.empty()) throw std::runtime_error("no frame");
    return frames.back();
}

ScaleReading readingOf(std::string_view profile, const std::string& bytes) {
    const ScaleFrame frame = lastFrame(profile, bytes);
    EXPECT_TRUE(frame.reading) << frame.raw;
    return frame.reading.value_or(ScaleReading{});
}

Code codeOf(std::string_view profile, const std::string& bytes) {
    const ScaleFrame frame = lastFrame(profile, bytes);
    return frame.reading ? code::valueMissing : frame.reading.error().code();
}

ScaleReading stable(WeightKind kind, double kilograms) {
    return {ScaleState::stable, kind, AsFedMass::fromKilograms(kilograms), {}};
}

/// A block as a scale sends it: decimals 2 is a whole number.
std::string block(unsigned decimals, unsigned state, const std::string& weight,
                  const std::string& tare = "000000") {
    std::string bytes{'\x02'};
    bytes += static_cast<char>(0x20U | decimals);
    bytes += static_cast<char>(0x20U | state);
    bytes += ' ';
    return bytes + weight + tare + '\r';
}

std::string summed(std::string bytes) {
    unsigned sum = 0;
    for (const char byte : bytes) sum += static_cast<unsigned char>(byte);
    return bytes + static_cast<char>((128 - sum % 128) % 128);
}

// The lines of text are the printed examples of such frames; 1 lb = 0.45359237 kg exactly.
TEST(ScaleFrames, ReadsEachShape) {
    EXPECT_EQ(readingOf("commas", "ST,GS,+  12340,kg\r\n"), stable(WeightKind::gross, 12340));
    EXPECT_EQ(readingOf("commas", "ST,NT,-   12.5,t \r\n"), stable(WeightKind::net, -12500));
    EXPECT_EQ(readingOf("commas", "ST,NT,+  123.4,g \r\n"), stable(WeightKind::net, 123.4 / 1000.0))
        << "a bench scale";
    EXPECT_EQ(readingOf("commas", "US,GS,+  12340,kg\r\n").state, ScaleState::motion);
    EXPECT_EQ(readingOf("commasShort", "ST,GS+  5.12kg\r\n"), stable(WeightKind::gross, 5.12));
    EXPECT_EQ(readingOf("commasNumbered", "01ST,GS, 12340,kg\r\n"), stable(WeightKind::gross, 12340));
    const ScaleReading longer = readingOf("commasLong", "ST,1, 12340,PT 11860, 0,kg,01/02/26 11:12:13\r\n");
    EXPECT_EQ(longer.weight, AsFedMass::fromKilograms(12340));
    EXPECT_EQ(longer.tare, AsFedMass::fromKilograms(11860));
    EXPECT_EQ(longer.kind, WeightKind::untold);
    EXPECT_EQ(readingOf("rightAligned", "      12340 kg G \r\n"), stable(WeightKind::gross, 12340));
    EXPECT_EQ(readingOf("rightAligned", "      12340 lb N?\r\n").state, ScaleState::motion);
    EXPECT_NEAR(readingOf("rightAligned", "  12340 lb N \r\n").weight->kilograms(), 12340 * 0.45359237, 1e-9);
    const ScaleReading fed = readingOf("lineFeedFirst", "\n 012340 kg GR\r\x03");
    EXPECT_EQ(fed,
              (ScaleReading{ScaleState::untold, WeightKind::gross, AsFedMass::fromKilograms(12340), {}}));
}

TEST(ScaleFrames, ReadsTheBlock) {
    EXPECT_EQ(readingOf("block", block(2, 0x10, "012340")), stable(WeightKind::gross, 12340));
    EXPECT_EQ(readingOf("block", block(2, 0x10, " 12340")), stable(WeightKind::gross, 12340));
    EXPECT_EQ(readingOf("block", block(1, 0x11, "001234")), stable(WeightKind::net, 12340));
    EXPECT_EQ(readingOf("block", block(3, 0x12, "123400")), stable(WeightKind::gross, -12340));
    EXPECT_EQ(readingOf("block", block(2, 0x10, "012340", "011860")).tare, AsFedMass::fromKilograms(11860));
    EXPECT_NEAR(readingOf("block", block(2, 0, "012340")).weight->kilograms(), 12340 * 0.45359237, 1e-9);
    EXPECT_EQ(readingOf("block", block(2, 0x18, "012340")).state, ScaleState::motion);
    EXPECT_EQ(readingOf("block", block(2, 0x14, "------")).state, ScaleState::overload);
    EXPECT_EQ(readingOf("block", block(2, 0x16, "000000")).state, ScaleState::underload);
    EXPECT_EQ(readingOf("blockSummed", summed(block(2, 0x10, "012340"))), stable(WeightKind::gross, 12340));
    std::string wrong = summed(block(2, 0x10, "012340"));
    wrong[6] = '9';
    ScaleFrames frames{*scaleProfileNamed("blockSummed")};
    EXPECT_TRUE(frames.take(wrong).empty());
    const auto after = frames.take(summed(block(2, 0x10, "023450")));
    ASSERT_EQ(after.size(), 2u);
    EXPECT_EQ(after[0].reading.error().code(), code::frameSumWrong);
    EXPECT_EQ(after[0].raw, wrong);
    EXPECT_EQ(after[1].reading.value(), stable(WeightKind::gross, 23450));
}

TEST(ScaleFrames, BeyondTheRangeThereIsNoWeight) {
    for (const auto& [profile, line, state] :
         {std::tuple{"commas", "OL,GS,+  99999,kg", ScaleState::overload},
          std::tuple{"commas", "UL,GS,-    120,kg", ScaleState::underload},
          std::tuple{"lineFeedFirst", " ^^^^^^ kg GR", ScaleState::overload},
          std::tuple{"lineFeedFirst", " ------ kg GR", ScaleState::underload},
          std::tuple{"lineFeedFirst", " ______ kg GR", ScaleState::underload}}) {
        const ScaleReading reading = readingOf(profile, std::string{line} + "\r\n");
        EXPECT_EQ(reading.state, state) << line;
        EXPECT_FALSE(reading.weight) << line;
    }
}

TEST(ScaleFrames, WhatHoldsToNoPatternIsKeptAndTold) {
    EXPECT_EQ(codeOf("commas", "ST,GS,+  12340\r\n"), code::frameUnreadable);
    EXPECT_EQ(codeOf("commas", "ST,GS,+  12,340,kg\r\n"), code::frameUnreadable);
    EXPECT_EQ(codeOf("commas", "ST,GS,,kg\r\n"), code::frameUnreadable);
    EXPECT_EQ(codeOf("rightAligned", "kg G\r\n"), code::frameUnreadable);
    EXPECT_EQ(codeOf("rightAligned", "12340 st G\r\n"), code::frameUnreadable);
    // Even parity read as none sets the highest bit of some characters.
    const ScaleFrame parity = lastFrame("commas",
                                        "\xD3T,GS,+  12\xB3"
                                        "40,kg\r\n");
    EXPECT_EQ(parity.reading.error().code(), code::frameUnreadable);
    EXPECT_EQ(std::get<std::string>(parity.reading.error().message.arguments[0]), "<D3>T,GS,+  12<B3>40,kg");
}

TEST(ScaleFrames, TheTailOfAFrameIsNoFrame) {
    const auto joined = framesOf("rightAligned", "340 kg G \r\n   12340 kg G \r\n");
    ASSERT_EQ(joined.size(), 2u);
    EXPECT_EQ(joined[0].reading.error().code(), code::frameCut);
    EXPECT_EQ(joined[1].reading.value(), stable(WeightKind::gross, 12340));

    const std::string noise(kLongestFrame + 1, 'x');
    const auto late = framesOf("rightAligned", "\r" + noise + "340 kg G \r12340 kg G \r");
    ASSERT_EQ(late.size(), 3u);
    EXPECT_EQ(late[0].reading.error().code(), code::frameTooLong);
    EXPECT_EQ(late[1].reading.error().code(), code::frameCut);
    EXPECT_TRUE(late[2].reading);
}

TEST(ScaleFrames, EveryProfileHasAnExampleThatItReads) {
    for (const ScaleProfile& profile : scaleProfiles()) {
        EXPECT_EQ(scaleProfileNamed(profile.name), &profile);
        if (profile.isBlock()) continue;
        EXPECT_TRUE(lastFrame(profile.name, std::string{profile.example} + "\r\n").reading) << profile.name;
    }
    EXPECT_EQ(scaleProfileNamed("unheard"), nullptr);
}

/// A line, a block or noise, any of them perhaps broken off.
std::string anyBytes() {
    const auto value = std::to_string(*rc::gen::inRange(0, 99999));
    const std::string padded = std::string(6 - value.size(), '0') + value;
    const std::vector<std::string> pieces{
        "ST,GS,+ " + padded + ",kg\r\n", "US,NT,- " + padded + ",lb\r\n",
        "  " + value + " kg G \r\n",     "\n " + padded + " kg GR\r\x03",
        block(2, 0x10, padded),          summed(block(3, 0x11, padded)),
        *rc::gen::string<std::string>(), std::string(*rc::gen::inRange(0, 80), '~')};
    std::string bytes = *rc::gen::elementOf(pieces);
    if (*rc::gen::inRange(0, 4) == 0) bytes.resize(*rc::gen::inRange<std::size_t>(0, bytes.size() + 1));
    return bytes;
}

RC_GTEST_PROP(ScaleFramesProperty, TheSameHoweverTheBytesArrive, ()) {
    const ScaleProfile& profile = scaleProfiles()[*rc::gen::inRange<std::size_t>(0, scaleProfiles().size())];
    std::string bytes;
    const int count = *rc::gen::inRange(0, 8);
    for (int i = 0; i < count; ++i) bytes += anyBytes();

    ScaleFrames atOnce{profile};
    const auto whole = atOnce.take(bytes);
    ScaleFrames inPieces{profile};
    std::vector<ScaleFrame> parts;
    for (std::size_t at = 0; at < bytes.size();) {
        const auto size = *rc::gen::inRange<std::size_t>(1, bytes.size() - at + 1);
        for (ScaleFrame& frame : inPieces.take(std::string_view{bytes}.substr(at, size)))
            parts.push_back(std::move(frame));
        at += size;
    }
    RC_ASSERT(parts.size() == whole.size());
    std::string kept;
    for (std::size_t i = 0; i < whole.size(); ++i) {
        RC_ASSERT(parts[i].raw == whole[i].raw);
        RC_ASSERT(bool{parts[i].reading == whole[i].reading});
        kept += whole[i].raw;
    }
    kept += atOnce.pending();
    RC_ASSERT(inPieces.pending() == atOnce.pending());
    if (!profile.isBlock())
        std::erase_if(bytes, [](char c) { return c == '\r' || c == '\n' || c == 2 || c == 3; });
    RC_ASSERT(kept == bytes);
}

RC_GTEST_PROP(ScaleFramesProperty, AWeightComesBackAsItWasSent, (bool isNegative)) {
    const int value = *rc::gen::inRange(0, 999999);
    const std::string digits = std::to_string(value);
    const std::string padded = std::string(6 - digits.size(), '0') + digits;
    const double kilograms = isNegative ? -value : value;
    const std::string sign = isNegative ? "-" : "+";
    const ScaleReading expected = stable(WeightKind::gross, kilograms);
    RC_ASSERT(readingOf("commas", "ST,GS," + sign + padded + ",kg\r\n") == expected);
    RC_ASSERT(readingOf("commasShort", "ST,GS" + sign + " " + padded + "kg\r\n") == expected);
    RC_ASSERT(readingOf("commasNumbered", "07ST,GS," + sign + padded + ",kg\r\n") == expected);
    RC_ASSERT(readingOf("rightAligned", "   " + sign + digits + " kg G \r\n") == expected);
    RC_ASSERT(readingOf("block", block(2, isNegative ? 0x12 : 0x10, padded)) == expected);
    RC_ASSERT(readingOf("blockSummed", summed(block(2, isNegative ? 0x12 : 0x10, padded))) == expected);
}

RC_GTEST_PROP(ScaleFramesProperty, ABlockAfterNoiseIsFound, (const std::string& noise)) {
    ScaleFrames frames{*scaleProfileNamed("block")};
    (void)frames.take(noise);
    const std::string good = block(2, 0x10, "012340");
    std::vector<ScaleFrame> found = frames.take(good + good + good);
    const auto reads = [](const ScaleFrame& frame) { return frame.reading.has_value(); };
    RC_ASSERT(std::count_if(found.begin(), found.end(), reads) >= 2);
}

}  // namespace
}  // namespace treadwell::formats
