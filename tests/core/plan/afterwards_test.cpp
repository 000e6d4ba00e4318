#include "core/plan/feeds.h"
#include "core/plan/seals.h"
#include "tests/core/plan/quick.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::plan {
namespace {

using std::chrono::days;
using std::chrono::local_days;

TEST(Seals, CoverTheSilosThatGetCrop) {
    Inputs inputs = quick();
    const auto seals = sealsOf(inputs);
    ASSERT_TRUE(seals);
    ASSERT_EQ(seals->size(), 2U);
    EXPECT_GT((*seals)[0].sideSheets, Area{});
    EXPECT_EQ((*seals)[1].sideSheets, Area{}) << "a pile has no walls";
    EXPECT_LE(local_days{(*seals)[0].full}, local_days{(*seals)[1].full});
    inputs.grounds.resize(1);
    inputs.grounds[0].crop = AsFedMass::fromTonnes(100);
    EXPECT_EQ(sealsOf(inputs)->size(), 1U);
}

// The bunker of 14 x 60 m by hand: along 60 less 10.5 m of ramp plus 11.07 m of slope is 60.57 m; with 2 m
// beyond each end just more than the 64.5 m of six sheets of 12 m with laps of 1.5 m: seven, each 18 m long.
TEST(Seals, HaveTheAreasOfTheSlope) {
    const Inputs inputs = quick();
    const Seal seal = sealsOf(inputs)->front();
    EXPECT_EQ(seal.sheets.count, 7);
    EXPECT_NEAR(seal.sheets.area.squareMetres(), 7 * 12 * 18, 1e-9);
    const farm::Body body = farm::bodyOf(inputs.silos[0].shape);
    EXPECT_EQ(seal.tyres,
              std::int64_t(std::ceil((body.surface.squareMetres() + seal.sheets.laps.squareMetres()) * 2.4)));
    EXPECT_NEAR(seal.lostByADay / seal.exposed, 0.0275, 1e-12);
    EXPECT_NEAR(seal.costOfADay, seal.lostByADay.tonnes() * inputs.prices.crop_per_tonne_dm, 1e-9);
}

TEST(Seals, ASiloIsFullOnTheDayOfItsLastLoad) {
    Inputs inputs = quick();
    inputs.grounds.resize(1);
    const auto fit = fitOf(inputs);
    const AsFedMass daily = fit->delivery * inputs.workday;
    inputs.grounds[0].crop = daily;
    EXPECT_EQ(sealsOf(inputs)->front().full, inputs.begins);
    inputs.grounds[0].crop = daily * 1.01;
    EXPECT_EQ(sealsOf(inputs)->back().full, dayAfter(inputs.begins));
}

TEST(Feeds, OneSiloAfterTheOther) {
    const auto feeds = feedsOf(quick());
    ASSERT_TRUE(feeds);
    ASSERT_EQ(feeds->silos.size(), 2U);
    const Feed &first = feeds->silos[0], &second = feeds->silos[1];
    EXPECT_GE(local_days{second.opens}, local_days{first.empty});
    EXPECT_EQ((local_days{first.empty} - local_days{first.opens}).count(), static_cast<int>(first.days));
    EXPECT_EQ(first.effluent_L, 0) << "none at 35 %";
    const DryDensity density = fitOf(quick())->silos[0].density.median();
    const DryMass daily = density * (first.face * first.advance);
    EXPECT_NEAR(daily.kilograms(), 1500, 1e-6);
    EXPECT_NEAR(first.left / daily, first.days, 1e-9);
}

TEST(Feeds, TheGasDateIsThreeWeeksAfterTheLastLoad) {
    const Inputs inputs = quick();
    const auto feeds = feedsOf(inputs);
    const auto full = daysFull(inputs, *fitOf(inputs));
    EXPECT_EQ(local_days{feeds->silos[0].gasUntil}, local_days{full[0]} + days{21});
}

TEST(Feeds, ALongClosureLeavesDaysWithoutFeed) {
    Inputs inputs = quick();
    EXPECT_EQ(feedsOf(inputs)->daysWithout, 0);
    inputs.feeding.daily = DryMass::fromTonnes(300);
    inputs.workday = std::chrono::hours{2};
    EXPECT_GT(feedsOf(inputs)->daysWithout, 0) << "the first is empty before the second is ripe";
}

// Summer lies where the farm has it; a face that moves 25 cm a day is fast enough for winter (21) alone (36).
TEST(Feeds, TheRemovalRateGoesByTheSeason) {
    Inputs inputs = quick();
    inputs.grounds.resize(1);
    const Feed before = feedsOf(inputs)->silos[0];
    inputs.feeding.daily = inputs.feeding.daily * (25.0 / before.advance.centimetres());
    inputs.feeding.closedDays = 120;
    inputs.begins = std::chrono::year{2026} / std::chrono::September / 14;
    const Feed feed = feedsOf(inputs)->silos[0];
    EXPECT_NEAR(feed.advance.centimetres(), 25, 1e-9);
    EXPECT_LT(feed.summerFace, feed.face);
    EXPECT_GT(feed.winterFace, feed.face);
    int summer = 0;
    for (LocalDay day = feed.opens; day != feed.empty; day = dayAfter(day))
        summer += day.month() >= std::chrono::April && day.month() <= std::chrono::September ? 1 : 0;
    EXPECT_EQ(feed.slowDays, summer);
    inputs.feeding.summerFrom = 10;
    inputs.feeding.summerUntil = 3;
    const Feed south = feedsOf(inputs)->silos[0];
    EXPECT_EQ(south.slowDays, static_cast<int>(feed.days) - summer);
}

// Lower Saxony chamber (published): 35 m3 a week at 2.0 m a week is a face of 17 m2, 7 m wide at 2.5 m.
TEST(Feeds, TheFaceOfTheHerdHasItsWidth) {
    Inputs inputs = quick();
    inputs.grounds.resize(1);
    inputs.silos.resize(1);
    inputs.silos[0].shape.height = inputs.silos[0].shape.wallHeight = Length::fromMetres(2.5);
    inputs.feeding.summerAdvance = Length::fromMetres(2.0 / 7);
    const DryDensity density = fitOf(inputs)->silos[0].density.median();
    inputs.feeding.daily = density * Volume::fromCubicMetres(35.0 / 7);
    const Feed feed = feedsOf(inputs)->silos[0];
    EXPECT_NEAR(feed.summerFace.squareMetres(), 17.5, 1e-9);
    EXPECT_NEAR(feed.summerWidth.metres(), 7, 1e-9);
}

TEST(Feeds, WetCropRunsEffluent) {
    Inputs inputs = quick();
    inputs.dryMatter = DryMatter::fromPercent(20);
    const auto wet = feedsOf(inputs);
    ASSERT_TRUE(wet);
    EXPECT_NEAR(wet->silos[0].effluent_L / fitOf(inputs)->silos[0].placed.tonnes(), 73.4, 0.1);
}

TEST(Feeds, AThimbleADayIsRefused) {
    Inputs inputs = quick();
    inputs.feeding.daily = DryMass::fromKilograms(10);
    const auto endless = feedsOf(inputs);
    ASSERT_FALSE(endless);
    EXPECT_EQ(endless.error().field, "feeding.daily");
}

}  // namespace
}  // namespace treadwell::plan
