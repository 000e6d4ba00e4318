#include "core/season/sampled.h"

#include "core/samples/codes.h"
#include "tests/support/brief.h"
#include "tests/support/season_maker.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace treadwell::season {
namespace {

using namespace testing_support;

const auto kField = idOf<farm::FieldTag>(3);

entries::SieveTest sieves(std::vector<double> percent, std::optional<farm::FieldId> field = kField) {
    entries::SieveTest test;
    test.field = field;
    const auto openings = samples::openingsOf(samples::SieveStack::threeTo4);
    test.openings.assign(openings.begin(), openings.end());
    for (const double each : percent) test.parts.push_back(Share::fromPercent(each));
    return test;
}

entries::ChopSet cut(double millimetres) {
    entries::ChopSet set;
    set.length = mm(millimetres);
    return set;
}

SeasonMaker farmStart() {
    SeasonMaker maker;
    maker.add(entries::SeasonStarted{"Farm", "UTC"}, at("2026-08-01T06:00:00Z"));
    maker.add(entries::FieldDefined{{kField, "Quornstieg"}}, at("2026-08-01T06:00:00Z"));
    return maker;
}

const Instant kEvening = at("2026-09-15T20:00:00Z");

const Day& today(const Season& season) {
    return *season.day(*dayFromIso8601("2026-09-15"));
}

TEST(ChopOf, PoolsTheTestsOfAFieldAndReadsThemAgainstTheCut) {
    SeasonMaker maker = farmStart();
    maker.add(cut(16), at("2026-09-14T08:00:00Z"));
    maker.add(sieves({2, 34, 52, 12}), at("2026-09-15T10:00:00Z"));
    maker.add(sieves({2, 38, 48, 12}), at("2026-09-15T12:00:00Z"));
    maker.add(sieves({5, 60, 26, 9}, std::nullopt), at("2026-09-15T13:00:00Z"));
    maker.add(sieves({2, 2, 2, 94}), at("2026-09-15T21:00:00Z"));  // not seen yet
    const Season season = Season::fold(maker.entries);
    const auto chops = chopOf(season, today(season), kEvening);
    ASSERT_EQ(chops.size(), 2u);
    EXPECT_EQ(chops[0].field, kField);
    EXPECT_EQ(chops[0].parts.tests, 2);
    EXPECT_NEAR(chops[0].parts.parts[1].percent(), 36, 1e-9);
    const auto advice = chops[0].advice();
    ASSERT_EQ(advice.size(), 4u);
    EXPECT_EQ(advice[2].code, code::chopLengthen);
    EXPECT_EQ(advice[2].arguments[1], Argument{mm(18).chopAmount()});
    EXPECT_EQ(chops[1].advice().front().code, code::chopWithin);
}

TEST(ChopOf, TheFarmsOwnRangesStandBeforeTheUsual) {
    SeasonMaker maker = farmStart();
    samples::ChopRanges own = samples::usualRanges(crop::Crop::maize, samples::Processor::rolls);
    own.below4.high = Share::fromPercent(5);
    maker.add(entries::ChopRangesSet{own}, at("2026-08-01T06:00:00Z"));
    maker.add(sieves({5, 60, 26, 9}), at("2026-09-15T10:00:00Z"));
    const Season season = Season::fold(maker.entries);
    EXPECT_EQ(chopOf(season, today(season), kEvening).at(0).advice().front().code, code::chopDusty);
}

TEST(ChopInForce, EachPartAsItWasLastSet) {
    SeasonMaker maker = farmStart();
    entries::ChopSet first = cut(17);
    first.rollGap = mm(2);
    maker.add(first, at("2026-09-14T08:00:00Z"));
    maker.add(cut(19), at("2026-09-15T09:00:00Z"));
    const Season season = Season::fold(maker.entries);
    EXPECT_EQ(chopInForce(season, at("2026-09-14T07:00:00Z")), std::nullopt);
    EXPECT_EQ(chopInForce(season, at("2026-09-14T09:00:00Z"))->length, mm(17));
    const auto now = chopInForce(season, kEvening);
    EXPECT_EQ(now->length, mm(19));
    EXPECT_EQ(now->rollGap, mm(2));
    EXPECT_EQ(now->since, at("2026-09-15T09:00:00Z"));
}

TEST(ChopByDay, GivesALengthADay) {
    SeasonMaker maker = farmStart();
    maker.add(sieves({5, 60, 26, 9}), at("2026-09-14T10:00:00Z"));
    maker.add(sieves({4, 50, 34, 12}), at("2026-09-15T10:00:00Z"));
    maker.add(sieves({0, 0, 0, 100}), at("2026-09-16T10:00:00Z"));  // gives no line
    const auto lengths = chopByDay(Season::fold(maker.entries), at("2026-09-17T10:00:00Z"));
    ASSERT_EQ(lengths.size(), 2u);
    EXPECT_GT(lengths[0].geometricMean, lengths[1].geometricMean);
}

TEST(KernelsOf, FreshOnesAskForTheRolls) {
    SeasonMaker maker = farmStart();
    entries::ChopSet set = cut(17);
    set.rollGap = mm(2);
    maker.add(set, at("2026-09-15T08:00:00Z"));
    entries::KernelTest test;
    test.kernels = 6;
    maker.add(test, at("2026-09-15T10:00:00Z"));
    test.kernels = 0;
    test.material = samples::Material::fermented;
    maker.add(test, at("2026-09-15T11:00:00Z"));
    const Season season = Season::fold(maker.entries);
    const KernelsOfDay kernels = kernelsOf(season, today(season), kEvening);
    EXPECT_EQ(kernels.cups.size(), 2u);
    ASSERT_EQ(kernels.advice.size(), 1u);
    EXPECT_EQ(kernels.advice[0].code, code::kernelsNarrowGap);
    EXPECT_EQ(kernels.advice[0].arguments[1], Argument{mm(1.5).chopAmount()});
}

TEST(Outlook, TellsWhenAFieldIsReady) {
    SeasonMaker maker = farmStart();
    entries::FieldObserved visit;
    visit.field = kField;
    visit.planted = dayFromIso8601("2026-05-02");
    visit.silked = dayFromIso8601("2026-08-01");
    visit.hybridDays = 98;
    maker.add(visit, at("2026-08-02T08:00:00Z"));
    entries::FieldObserved sample;
    sample.field = kField;
    sample.dryMatter = DryMatter::fromPercent(28);
    maker.add(sample, at("2026-09-01T08:00:00Z"));
    entries::Temperatures temperatures;
    for (int i = 1; i <= 9; ++i) {
        temperatures.days.push_back({*dayFromIso8601("2026-08-0" + std::to_string(i)),
                                     Temperature::fromCelsius(10), Temperature::fromCelsius(30)});
    }
    maker.add(temperatures, at("2026-08-10T06:00:00Z"));
    const Season season = Season::fold(maker.entries);
    const FieldOutlook outlook = outlookOf(season, kField, kEvening);
    ASSERT_TRUE(outlook.reachesLow);
    // 28 % on the 1st at half a point a day: 34 % twelve days later.
    EXPECT_EQ(outlook.reachesLow->median, dayFromIso8601("2026-09-13"));
    // 750 F days are 416.7 C days: the 42nd day at ten a day.
    ASSERT_TRUE(outlook.byWarmth);
    EXPECT_EQ(outlook.byWarmth->day, *dayFromIso8601("2026-09-11"));
    EXPECT_EQ(outlook.byPlanting->first, *dayFromIso8601("2026-08-20"));
    EXPECT_TRUE(outlook.notes.empty());
    EXPECT_FALSE(outlookOf(season, idOf<farm::FieldTag>(9), kEvening).dryDown);
}

TEST(Outlook, TheMilkLineAsksForSamples) {
    SeasonMaker maker = farmStart();
    entries::FieldObserved visit;
    visit.field = kField;
    visit.milkLine = Share::fromPercent(40);
    maker.add(visit, at("2026-09-01T08:00:00Z"));
    const FieldOutlook outlook = outlookOf(Season::fold(maker.entries), kField, kEvening);
    ASSERT_EQ(outlook.notes.size(), 1u);
    EXPECT_EQ(outlook.notes[0].code, code::sampleFieldNow);
}

TEST(Temperatures, TheLastEntryOfADaySpeaks) {
    SeasonMaker maker = farmStart();
    for (const double high : {20.0, 25.0}) {
        maker.add(entries::Temperatures{{{*dayFromIso8601("2026-08-03"), Temperature::fromCelsius(10),
                                          Temperature::fromCelsius(high)}}},
                  at("2026-08-04T07:00:00Z"));
    }
    const auto days = temperaturesOf(Season::fold(maker.entries), kEvening);
    ASSERT_EQ(days.size(), 1u);
    EXPECT_NEAR(days[0].high.celsius(), 25, 1e-9);
}

}  // namespace
}  // namespace treadwell::season
