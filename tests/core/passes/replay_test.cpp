#include "core/passes/replay.h"

#include "core/density/readings.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::passes {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

/// 12 t every 6 minutes, packed by one tractor.
season::Season dayWith(double tractor_t, farm::FillingWay filling, farm::Activity activity) {
    SeasonMaker maker;
    const Instant start = at("2026-02-10T08:00:00Z");
    farm::Silo silo = someSilo();
    silo.filling = filling;
    maker.add(entries::SiloDefined{silo}, start);
    maker.add(entries::TractorDefined{someTractor(1, tractor_t)}, start);
    maker.add(entries::LayerSeen{silo.id, Length::fromCentimetres(15), {}}, start);
    maker.add(entries::DryMatterSample{DryMatter::fromPercent(35), {}, {}, {}, {}}, start);
    maker.add(someWork(1, activity), start);
    for (int i = 0; i < 40; ++i) maker.add(someLoad(12), at("2026-02-10T08:10:00Z") + i * 6min);
    return season::Season::fold(maker.entries);
}

density::Readings readingsOf(const season::Season& season) {
    return density::readingsAt(season, idOf<farm::SiloTag>(1), at("2026-02-10T12:06:00Z"));
}

TEST(Replay, StandsWithinTheBandOfTheRegression) {
    for (const farm::FillingWay filling : {farm::FillingWay::lifts, farm::FillingWay::wedge}) {
        const season::Season season = dayWith(14, filling, farm::Activity::packing);
        const density::Readings readings = readingsOf(season);
        const auto replayed = replay(season, *readings.layers, density::Filled::whenFull);
        ASSERT_TRUE(replayed);
        ASSERT_EQ(replayed->layers.size(), readings.layers->layers.size());
        const density::Distribution& regression = readings.silo.estimate->density;
        EXPECT_GT(replayed->silo->median(), regression.low80()) << enumText(filling);
        EXPECT_LT(replayed->silo->median(), regression.high80()) << enumText(filling);
        EXPECT_GT(replayed->silo->sigma(), regression.sigma());
    }
}

TEST(Replay, TheStripGetsThePassesOfTheRecordedMinutes) {
    const season::Season season = dayWith(14, farm::FillingWay::lifts, farm::Activity::packing);
    const density::Readings readings = readingsOf(season);
    const auto replayed = replay(season, *readings.layers, density::Filled::asItLies);
    ASSERT_TRUE(replayed);
    double recorded = 0, simulated = 0;
    for (const ReplayedLayer& layer : replayed->layers) {
        recorded += packing::passesOn(*layer.layer, season.farm());
        simulated += layer.coverage.meanPasses;
    }
    EXPECT_GT(recorded, 1.0);
    EXPECT_NEAR(simulated / recorded, 1.0, 0.1);  // tyres and cells do not divide evenly
}

TEST(Replay, HeavierIsDenserAndNobodyRollingLeavesItLoose) {
    const auto median = [](const season::Season& season) {
        const density::Readings readings = readingsOf(season);
        return replay(season, *readings.layers, density::Filled::whenFull)->silo->median();
    };
    const DryDensity light = median(dayWith(8, farm::FillingWay::lifts, farm::Activity::packing));
    const DryDensity heavy = median(dayWith(18, farm::FillingWay::lifts, farm::Activity::packing));
    const DryDensity none = median(dayWith(18, farm::FillingWay::lifts, farm::Activity::spreading));
    EXPECT_GT(heavy, light * 1.05);
    EXPECT_LT(none, light * 0.8);
}

TEST(Replay, ASeedGivesOneAnswerOnAnyNumberOfThreads) {
    const season::Season season = dayWith(14, farm::FillingWay::lifts, farm::Activity::packing);
    const density::Readings readings = readingsOf(season);
    const auto with = [&](std::uint64_t seed, unsigned threads) {
        ReplayOptions options;
        options.pattern = Pattern::anywhere;
        options.seed = seed;
        options.threads = threads;
        return replay(season, *readings.layers, density::Filled::whenFull, options)->pad.volume_m3_kg;
    };
    EXPECT_EQ(with(1, 1), with(1, 4));
    EXPECT_NE(with(1, 1), with(2, 1));
}

TEST(Replay, NothingWithoutLoads) {
    SeasonMaker maker;
    maker.add(entries::SiloDefined{someSilo()}, at("2026-02-10T08:00:00Z"));
    const season::Season season = season::Season::fold(maker.entries);
    const auto replayed = replay(season, *readingsOf(season).layers, density::Filled::whenFull);
    ASSERT_TRUE(replayed);
    EXPECT_FALSE(replayed->silo);
    EXPECT_TRUE(replayed->layers.empty());
}

}  // namespace
}  // namespace treadwell::passes
