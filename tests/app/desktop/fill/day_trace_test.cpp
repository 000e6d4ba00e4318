#include "app/desktop/fill/day_trace.h"

#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <ostream>

namespace treadwell::fill {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

const Instant kNoon = at("2026-02-10T12:00:00Z");

/// A day at one silo: a light tractor packs, a heavy one stands by, a load of 12 t every six minutes.
SeasonMaker filling(int loads) {
    SeasonMaker maker;
    maker.add(entries::SiloDefined{someSilo(1)}, kNoon - 4h);
    maker.add(entries::SiloDefined{someSilo(2)}, kNoon - 4h);
    maker.add(entries::TractorDefined{someTractor(1, 8)}, kNoon - 4h);
    maker.add(entries::TractorDefined{someTractor(2, 18)}, kNoon - 4h);
    maker.add(someWork(1, farm::Activity::packing), kNoon - 1h);
    for (int i = 0; i < loads; ++i) maker.add(someLoad(12), kNoon + i * 6min);
    return maker;
}

DayTrace trace(const season::Season& season, Instant now, const DayTrace& previous = {}) {
    return traceAt(season, kBunker, now, previous);
}

DayTrace trace(const SeasonMaker& maker, Instant now) {
    return trace(season::Season::fold(maker.entries), now);
}

TEST(DayTrace, HasEveryLoadOfTheDayAndNow) {
    const SeasonMaker maker = filling(10);
    const Instant now = kNoon + 56min;
    const auto points = trace(maker, now).points;
    ASSERT_EQ(points.size(), 11u);
    EXPECT_EQ(points.front().at, kNoon);
    EXPECT_EQ(points.back().at, now);
    EXPECT_FALSE(points[1].density) << "two loads make no pace";
    const auto readings = density::readingsAt(season::Season::fold(maker.entries), kBunker, now);
    ASSERT_TRUE(points.back().density);
    EXPECT_EQ(points.back().density->median, readings.layer.estimate->density.median());
    EXPECT_EQ(points.back().target, readings.layer.estimate->target.density);
    EXPECT_EQ(points.back().delivered, readings.rolling.rateInWindow);
    EXPECT_TRUE(points.back().capacity);
}

TEST(DayTrace, FollowsTheRateAsItFallsInAPause) {
    SeasonMaker maker = filling(3);
    maker.add(someLoad(12), kNoon + 2h);
    const auto points = trace(maker, kNoon + 3h).points;
    for (std::size_t i = 1; i < points.size(); ++i) {
        EXPECT_GT(points[i].at, points[i - 1].at);
        EXPECT_LE(points[i].at - points[i - 1].at, 12min);
    }
    EXPECT_EQ(points.back().delivered, AsFedRate{}) << "the last load is an hour ago";
}

TEST(DayTrace, LeavesOutLoadsThatAPlotCannotTellApart) {
    SeasonMaker maker = filling(1);
    for (int i = 1; i < 60; ++i) maker.add(someLoad(12), kNoon + i * 1s);
    EXPECT_EQ(trace(maker, kNoon + 5min).points.size(), 2u);
}

TEST(DayTrace, BeforeTheFirstLoadThereIsOnlyNow) {
    EXPECT_EQ(trace(filling(0), kNoon).points.size(), 1u);
    EXPECT_EQ(traceAt(season::Season{}, kBunker, kNoon).points.size(), 1u);
}

struct News {
    const char* what;
    entries::Body body;
    Instant happened;
    friend void PrintTo(const News& news, std::ostream* out) { *out << news.what; }
};

entries::RulesSet otherRules() {
    entries::RulesSet set;
    set.rules.wantedChance = Chance::fromPercent(80);
    return set;
}

class DayTraceAfter : public testing::TestWithParam<News> {};

// What is taken over from the trace before must be what would be made anew.
TEST_P(DayTraceAfter, TakesOverOnlyWhatStillHolds) {
    SeasonMaker maker = filling(20);
    const auto season = season::Season::fold(maker.entries);
    const DayTrace before = trace(season, kNoon + 2h);
    maker.add(GetParam().body, GetParam().happened);
    const auto after = season.with(maker.entries.back());
    EXPECT_EQ(trace(after, kNoon + 121min, before).points, trace(after, kNoon + 121min).points);
}

INSTANTIATE_TEST_SUITE_P(
    News, DayTraceAfter,
    testing::Values(News{"load", someLoad(12), kNoon + 2h}, News{"lateLoad", someLoad(30), kNoon + 33min},
                    News{"lateTractor", someWork(2, farm::Activity::packing), kNoon + 20min},
                    News{"loadOfTheDayBefore", someLoad(12), kNoon - 24h},
                    News{"layerOfTheDayBefore", entries::LayerSeen{kBunker, Length::fromCentimetres(25)},
                         kNoon - 20h},
                    News{"heavierTractor", entries::TractorDefined{someTractor(1, 14)}, kNoon + 90min},
                    News{"rules", otherRules(), kNoon + 2h},
                    News{"pause", entries::Pause{std::nullopt, true, "rain"}, kNoon + 40min}),
    [](const auto& each) { return std::string{each.param.what}; });

TEST(DayTrace, AVoidTakesThePointOfItsLoadAway) {
    SeasonMaker maker = filling(20);
    const entries::EntryId load = maker.add(someLoad(12), kNoon + 33min);
    const auto season = season::Season::fold(maker.entries);
    const DayTrace before = trace(season, kNoon + 2h);
    maker.add(entries::VoidEntry{}, kNoon + 2h, load);
    const auto after = season.with(maker.entries.back());
    EXPECT_EQ(trace(after, kNoon + 2h, before).points, trace(after, kNoon + 2h).points);
}

// The tractor joined later than was thought.
TEST(DayTrace, ACorrectionMovesWhatItCorrects) {
    SeasonMaker maker = filling(10);
    maker.add(someLoad(12), kNoon + 80min);
    const entries::EntryId joined = maker.add(someWork(2, farm::Activity::packing), kNoon + 70min);
    const auto season = season::Season::fold(maker.entries);
    const DayTrace before = trace(season, kNoon + 2h);
    maker.add(someWork(2, farm::Activity::packing), kNoon + 110min, joined);
    const auto after = season.with(maker.entries.back());
    EXPECT_NE(trace(after, kNoon + 2h, before).points, before.points);
    EXPECT_EQ(trace(after, kNoon + 2h, before).points, trace(after, kNoon + 2h).points);
}

// A load costs one point, not the day: the points before it are those of the trace before, here with a mark.
TEST(DayTrace, DoesNotMakeAnewWhatStillHolds) {
    SeasonMaker maker = filling(20);
    const auto season = season::Season::fold(maker.entries);
    DayTrace before = trace(season, kNoon + 2h);
    const AsFedRate mark = AsFedRate::fromTonnesPerHour(999);
    for (TracePoint& point : before.points) point.delivered = mark;
    maker.add(someLoad(30), kNoon + 63min);
    const auto points = trace(season.with(maker.entries.back()), kNoon + 2h, before).points;
    for (const TracePoint& point : points) {
        EXPECT_EQ(point.delivered == mark, point.at < kNoon + 63min) << toIso8601(point.at);
    }
}

TEST(DayTrace, TakesNothingOverFromAnotherSilo) {
    const SeasonMaker maker = filling(20);
    const DayTrace before = trace(maker, kNoon + 2h);
    const auto season = season::Season::fold(maker.entries);
    const auto other = traceAt(season, idOf<farm::SiloTag>(2), kNoon + 2h, before);
    ASSERT_EQ(other.points.size(), 1u);
    EXPECT_FALSE(other.points.front().density);
}

}  // namespace
}  // namespace treadwell::fill
