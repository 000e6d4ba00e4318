#include "core/samples/chop.h"

#include "core/samples/codes.h"
#include "tests/support/brief.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace treadwell::samples {
namespace {

using testing::ElementsAre;
using testing_support::mm;

SieveParts sample(double on19, double on8, double on4, double below) {
    return *partsOfPercent(openingsOf(SieveStack::threeTo4), std::array{on19, on8, on4, below});
}

const ChopRanges kMaize = usualRanges(crop::Crop::maize, Processor::rolls);

std::vector<Code> codesOf(const std::vector<Message>& messages) {
    std::vector<Code> codes;
    for (const Message& message : messages) codes.push_back(message.code);
    return codes;
}

std::vector<Message> adviceFor(const SieveParts& parts, double cut_mm) {
    return chopAdvice(parts, kMaize, ChopSetting{mm(cut_mm)});
}

TEST(Judge, EachPartAgainstItsRange) {
    const JudgedChop judged = judge(sample(2, 60, 26, 12), kMaize);
    EXPECT_EQ(judged.parts[0].side, RangeSide::below);
    EXPECT_EQ(judged.parts[1].side, RangeSide::within);
    EXPECT_EQ(judged.parts[2].side, RangeSide::within);
    EXPECT_EQ(judged.parts[3].side, RangeSide::above);
    EXPECT_NEAR(judged.parts[3].part.percent(), 12, 1e-9);
    EXPECT_FALSE(judged.interpolated);
}

TEST(Judge, OtherStacksAreReadBetweenTheirSieves) {
    const auto parts = partsOfPercent(openingsOf(SieveStack::threeTo118), std::array{6.0, 55.0, 35.0, 4.0});
    const JudgedChop judged = judge(*parts, kMaize);
    EXPECT_TRUE(judged.interpolated);
    EXPECT_NEAR(judged.parts[1].part.percent(), 55, 1e-9);
    EXPECT_GT(judged.parts[3].part, Share::fromPercent(4));
}

// Fine at 16 mm: longer by two, and the knives, as a cut of 16 mm should not be fine.
TEST(ChopAdvice, FineAtAUsualCut) {
    const auto advice = adviceFor(sample(2, 36, 50, 12), 16);
    EXPECT_THAT(codesOf(advice),
                ElementsAre(code::chopFine, code::chopDusty, code::chopLengthen, code::chopCheckKnives));
    EXPECT_EQ(advice[0].arguments[0], Argument{Share::fromPercent(62).amount()});
    EXPECT_EQ(advice[2].arguments[0], Argument{mm(16).chopAmount()});
    EXPECT_EQ(advice[2].arguments[1], Argument{mm(18).chopAmount()});
}

TEST(ChopAdvice, FineAtAShortCutIsTheCutsDoing) {
    EXPECT_THAT(codesOf(adviceFor(sample(2, 36, 53, 9), 10)),
                ElementsAre(code::chopFine, code::chopLengthen));
    EXPECT_THAT(codesOf(chopAdvice(sample(2, 36, 53, 9), kMaize, {})), ElementsAre(code::chopFine));
}

TEST(ChopAdvice, CoarseIsShortened) {
    const auto advice = adviceFor(sample(18, 55, 20, 7), 22);
    ASSERT_THAT(codesOf(advice), ElementsAre(code::chopCoarse, code::chopShorten));
    const auto to = std::get<Amount>(advice[1].arguments[1]);
    EXPECT_LT(to.si, 0.022);
    EXPECT_GE(to.si, 0.006);
}

TEST(ChopAdvice, UnevenAsksForTheKnivesOnly) {
    EXPECT_THAT(codesOf(adviceFor(sample(15, 30, 40, 15), 17)),
                ElementsAre(code::chopFine, code::chopDusty, code::chopCoarse, code::chopUneven,
                            code::chopCheckKnives));
}

TEST(ChopAdvice, WithinAsksForNothing) {
    EXPECT_THAT(codesOf(adviceFor(sample(5, 58, 28, 9), 17)), ElementsAre(code::chopWithin));
    EXPECT_THAT(codesOf(adviceFor(sample(0, 0, 0, 100), 30)),  // cannot be longer than the longest
                ElementsAre(code::chopFine, code::chopDusty, code::chopCheckKnives));
}

TEST(ChopRanges, AreTheUsersOwnWithinReason) {
    for (const crop::Facts& facts : crop::crops()) {
        for (const Processor processor : {Processor::none, Processor::rolls, Processor::longChop})
            EXPECT_TRUE(validate(usualRanges(facts.crop, processor)));
    }
    ChopRanges ranges = kMaize;
    ranges.on8.low = Share::fromPercent(80);
    EXPECT_EQ(validate(ranges).error().field, "on8.low");
    ranges.on8.high = Share::fromPercent(180);
    EXPECT_EQ(validate(ranges).error().field, "on8.high");
}

TEST(ChopTrend, ByDay) {
    const auto day = [](const char* text) { return *dayFromIso8601(text); };
    const std::vector<DayLength> days{
        {day("2026-09-15"), mm(9)}, {day("2026-09-16"), mm(8.6)}, {day("2026-09-18"), mm(7.8)}};
    const auto trend = chopTrend(days);
    ASSERT_TRUE(trend);
    EXPECT_NEAR(trend->perDay.millimetres(), -0.4, 1e-9);
    EXPECT_NEAR(trend->low80->millimetres(), -0.4, 1e-6);
    EXPECT_FALSE(chopTrend(std::span{days}.first(1)));
}

}  // namespace
}  // namespace treadwell::samples
