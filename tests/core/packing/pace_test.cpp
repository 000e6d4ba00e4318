#include "core/packing/pace.h"

#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

namespace treadwell::packing {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

SeasonMaker loadsEvery(std::chrono::minutes gap, int count) {
    SeasonMaker maker;
    const Instant start = at("2026-02-10T08:00:00Z");
    maker.add(entries::SiloDefined{someSilo()}, start);
    maker.add(entries::TractorDefined{someTractor(1, 14)}, start);
    maker.add(entries::TractorDefined{someTractor(2, 10)}, start);
    maker.add(someWork(1, farm::Activity::packing), start);
    for (int i = 0; i < count; ++i) maker.add(someLoad(10), at("2026-02-10T12:00:00Z") + i * gap);
    return maker;
}

std::optional<Pace> paceOf(const SeasonMaker& maker, const char* now) {
    const auto season = season::Season::fold(maker.entries);
    return paceAt(season, season::rollingAt(season, kBunker, at(now)));
}

TEST(Pace, EvenDeliveriesGiveTheirPlainRate) {
    const auto pace = paceOf(loadsEvery(5min, 12), "2026-02-10T12:55:00Z");
    ASSERT_TRUE(pace);
    EXPECT_EQ(pace->loads, 8);
    EXPECT_NEAR(pace->delivery.tonnesPerHour(), 120, 1e-9);
    EXPECT_NEAR(pace->intensity.minutesPerTonne(), 0.5, 1e-9);
    EXPECT_NEAR(pace->logSd, 0, 1e-12);
}

TEST(Pace, FewerThanThreeLoadsAreTooFew) {
    EXPECT_FALSE(paceOf(loadsEvery(5min, 2), "2026-02-10T12:06:00Z"));
    EXPECT_TRUE(paceOf(loadsEvery(5min, 3), "2026-02-10T12:11:00Z"));
    EXPECT_FALSE(paceOf(loadsEvery(0min, 4), "2026-02-10T12:11:00Z")) << "logged in one moment";
}

TEST(Pace, ATractorThatJoinsCountsAtOnce) {
    SeasonMaker maker = loadsEvery(5min, 12);
    maker.add(someWork(2, farm::Activity::packing, 0.5), at("2026-02-10T12:55:00Z"));
    EXPECT_NEAR(paceOf(maker, "2026-02-10T12:55:00Z")->intensity.minutesPerTonne(), 0.75, 1e-9);
}

TEST(Pace, AnOpenGapCountsOnceLongerThanTheMedianAndAtMostThreeMedians) {
    const SeasonMaker maker = loadsEvery(5min, 12);
    EXPECT_NEAR(paceOf(maker, "2026-02-10T12:59:00Z")->delivery.tonnesPerHour(), 120, 1e-9);
    EXPECT_NEAR(paceOf(maker, "2026-02-10T13:05:00Z")->delivery.tonnesPerHour(), 80 * 60.0 / 50, 1e-9);
    EXPECT_NEAR(paceOf(maker, "2026-02-10T15:00:00Z")->delivery.tonnesPerHour(), 80 * 60.0 / 55, 1e-9);
}

TEST(Pace, ALongGapCountsThreeMediansAndADeclaredPauseNotAtAll) {
    SeasonMaker maker = loadsEvery(5min, 8);
    maker.add(someLoad(10), at("2026-02-10T14:00:00Z"));
    // Seven gaps of 5 min and one of 85, held to 15.
    EXPECT_NEAR(paceOf(maker, "2026-02-10T14:00:00Z")->delivery.tonnesPerHour(), 80 * 60.0 / 50, 1e-9);
    maker.add(entries::Pause{{}, true, "lunch"}, at("2026-02-10T12:40:00Z"));
    maker.add(entries::Pause{{}, false, ""}, at("2026-02-10T14:00:00Z"));
    EXPECT_NEAR(paceOf(maker, "2026-02-10T14:00:00Z")->delivery.tonnesPerHour(), 120, 1e-9);
}

}  // namespace
}  // namespace treadwell::packing
