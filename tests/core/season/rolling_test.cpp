#include "core/season/rolling.h"

#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

namespace treadwell::season {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

constexpr auto kSilo = 1;

/// Six loads of 12 t, ten minutes apart from 12:00; one tractor packs in full from 11:50, one at half time
/// from 12:30.
SeasonMaker filling() {
    SeasonMaker maker;
    const Instant start = at("2026-02-10T08:00:00Z");
    maker.add(entries::SeasonStarted{"Farm", "America/Sao_Paulo"}, start);
    maker.add(entries::SiloDefined{someSilo()}, start);
    maker.add(entries::TractorDefined{someTractor(1, 14)}, start);
    maker.add(entries::TractorDefined{someTractor(2, 10)}, start);
    maker.add(someWork(1, farm::Activity::packing), at("2026-02-10T11:50:00Z"));
    maker.add(someWork(2, farm::Activity::packing, 0.5), at("2026-02-10T12:30:00Z"));
    for (int i = 0; i < 6; ++i) maker.add(someLoad(12), at("2026-02-10T12:00:00Z") + i * 10min);
    return maker;
}

TEST(Rolling, SumsRatesAndPackingByHand) {
    const Season season = Season::fold(filling().entries);
    const Rolling rolling = rollingAt(season, kBunker, at("2026-02-10T13:00:00Z"));
    EXPECT_EQ(rolling.todayIn.loads, 6);
    EXPECT_NEAR(rolling.todayIn.mass.tonnes(), 72, 1e-9);
    EXPECT_NEAR(rolling.todayIn.dryMatter()->percent(), 35, 1e-9);
    // The window is open at its early end: the load of 12:00 has just left it.
    EXPECT_NEAR(rolling.rateInWindow.tonnesPerHour(), 60, 1e-9);
    EXPECT_NEAR(rolling.rateToday.tonnesPerHour(), 72, 1e-9);
    // 60 min of the first and half of 30 min of the second since the first load.
    EXPECT_NEAR(rolling.packingToday.minutesPerTonne(), 75.0 / 72.0, 1e-9);
    ASSERT_EQ(rolling.tractors.size(), 2u);
    EXPECT_NEAR(rolling.tractors[0].packedToday.count(), 70 * 60, 1e-6);
    EXPECT_NEAR(rolling.tractors[1].packedToday.count(), 15 * 60, 1e-6);
    EXPECT_NEAR(rolling.tractors[1].workedToday.count(), 30 * 60, 1e-6);
    EXPECT_EQ(rolling.tractors[1].packing, Share::fromFraction(0.5));
}

TEST(Rolling, WhatHappensLaterIsNotSeen) {
    const Season season = Season::fold(filling().entries);
    const Rolling rolling = rollingAt(season, kBunker, at("2026-02-10T12:15:00Z"));
    EXPECT_EQ(rolling.todayIn.loads, 2);
    EXPECT_EQ(rolling.tractors[1].activity, farm::Activity::away);
    EXPECT_EQ(rollingAt(season, kBunker, at("2026-02-09T12:00:00Z")).today, std::nullopt);
}

TEST(Rolling, APauseIsCutOutOfTheDaysRateOnce) {
    SeasonMaker maker = filling();
    maker.add(entries::Pause{{}, true, "lunch"}, at("2026-02-10T12:52:00Z"));
    maker.add(entries::Pause{kBunker, true, "truck in the way"}, at("2026-02-10T12:58:00Z"));
    const Season season = Season::fold(maker.entries);
    const Rolling rolling = rollingAt(season, kBunker, at("2026-02-10T13:00:00Z"));
    EXPECT_TRUE(rolling.paused);
    EXPECT_NEAR(rolling.rateToday.tonnesPerHour(), 72 * 60.0 / 52, 1e-9);
}

TEST(Rolling, TheSiloIsTheSumOfItsDaysAndOfPackingSinceTheFirstLoad) {
    SeasonMaker maker = filling();
    maker.add(someWork(1, farm::Activity::away), at("2026-02-10T14:00:00Z"));
    maker.add(someWork(2, farm::Activity::away), at("2026-02-10T14:00:00Z"));
    // The next morning the pad is rolled for half an hour before the first load.
    maker.add(someWork(1, farm::Activity::packing), at("2026-02-11T08:00:00Z"));
    maker.add(someLoad(8), at("2026-02-11T08:30:00Z"));
    const Season season = Season::fold(maker.entries);
    const Rolling rolling = rollingAt(season, kBunker, at("2026-02-11T09:00:00Z"));
    EXPECT_EQ(rolling.todayIn.loads, 1);
    EXPECT_NEAR(rolling.todayIn.intensity().minutesPerTonne(), 30.0 / 8, 1e-9);
    EXPECT_EQ(rolling.siloIn.loads, 7);
    EXPECT_NEAR(rolling.siloIn.mass.tonnes(), 80, 1e-9);
    EXPECT_EQ(rolling.siloIn.first, at("2026-02-10T12:00:00Z"));
    EXPECT_NEAR(rolling.siloIn.packing.at(idOf<farm::TractorTag>(1)).count(), (120 + 60) * 60, 1e-6);
    EXPECT_NEAR(rolling.siloIn.packing.at(idOf<farm::TractorTag>(2)).count(), 45 * 60, 1e-6);
}

TEST(Rolling, TwoSilosAreKeptApart) {
    SeasonMaker maker = filling();
    maker.add(entries::SiloDefined{someSilo(2)}, at("2026-02-10T08:00:00Z"));
    maker.add(someLoad(20, 2), at("2026-02-10T12:05:00Z"));
    maker.add(someWork(2, farm::Activity::packing, 1.0, 2), at("2026-02-10T12:45:00Z"));
    const Season season = Season::fold(maker.entries);
    const Instant now = at("2026-02-10T13:00:00Z");
    EXPECT_NEAR(rollingAt(season, kBunker, now).todayIn.mass.tonnes(), 72, 1e-9);
    EXPECT_NEAR(rollingAt(season, idOf<farm::SiloTag>(2), now).todayIn.mass.tonnes(), 20, 1e-9);
    const auto packing = packingOf(season, kBunker, at("2026-02-10T12:00:00Z"), now);
    EXPECT_NEAR(packing.at(idOf<farm::TractorTag>(2)).count(), 7.5 * 60, 1e-6);
}

TEST(LongestShift, IsOfThoseWhoAreOnShiftNow) {
    SeasonMaker maker = filling();
    EXPECT_EQ(longestShift(Season::fold({}), at("2026-02-10T13:00:00Z")), std::nullopt);
    const auto shift = [&](std::uint8_t person, bool begins, const char* iso) {
        maker.add(entries::Shift{idOf<entries::PersonTag>(person), begins, {}, false, {}}, at(iso));
    };
    shift(1, true, "2026-02-10T05:00:00Z");
    shift(2, true, "2026-02-10T08:00:00Z");
    shift(1, false, "2026-02-10T12:30:00Z");
    const Season season = Season::fold(maker.entries);
    EXPECT_EQ(longestShift(season, at("2026-02-10T04:00:00Z")), std::nullopt);
    EXPECT_EQ(longestShift(season, at("2026-02-10T12:00:00Z")), Seconds{7 * 3600});
    EXPECT_EQ(longestShift(season, at("2026-02-10T13:00:00Z")), Seconds{5 * 3600});
    EXPECT_EQ(longestShift(season, at("2026-02-11T08:00:00Z")), Seconds{24 * 3600});
}

TEST(TabletHolder, IsTheLastWhoTookItAndIsStillAtWork) {
    SeasonMaker maker = filling();
    const auto shift = [&](std::uint8_t person, bool begins, bool holds, const char* iso) {
        maker.add(entries::Shift{idOf<entries::PersonTag>(person), begins, {}, holds, {}}, at(iso));
    };
    shift(1, true, true, "2026-02-10T05:00:00Z");
    shift(3, true, false, "2026-02-10T06:00:00Z");
    shift(2, true, true, "2026-02-10T08:00:00Z");
    shift(2, false, false, "2026-02-10T12:00:00Z");
    const Season season = Season::fold(maker.entries);
    const auto holder = [&](const char* iso) -> std::optional<entries::PersonId> {
        const auto held = tabletHolder(season, at(iso));
        return held ? std::optional{held->person} : std::nullopt;
    };
    EXPECT_EQ(holder("2026-02-10T04:00:00Z"), std::nullopt);
    EXPECT_EQ(holder("2026-02-10T07:00:00Z"), idOf<entries::PersonTag>(1));
    EXPECT_EQ(holder("2026-02-10T09:00:00Z"), idOf<entries::PersonTag>(2));
    EXPECT_EQ(holder("2026-02-10T13:00:00Z"), idOf<entries::PersonTag>(1));
    EXPECT_EQ(holder("2026-02-10T21:30:00Z"), std::nullopt) << "no shift lasts so long";
}

TEST(Rolling, ASiloWithoutLoadsHasRatesOfNothing) {
    const Season season = Season::fold(filling().entries);
    const Rolling rolling = rollingAt(season, idOf<farm::SiloTag>(9), at("2026-02-10T13:00:00Z"));
    EXPECT_EQ(rolling.todayIn.loads, 0);
    EXPECT_EQ(rolling.todayIn.dryMatter(), std::nullopt);
    EXPECT_EQ(rolling.rateToday, AsFedRate{});
    EXPECT_EQ(rolling.packingToday, PackingIntensity{});
}

}  // namespace
}  // namespace treadwell::season
