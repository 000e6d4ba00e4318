#include "core/density/readings.h"

#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

namespace treadwell::density {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

const farm::SiloId kBunker = idOf<farm::SiloTag>(1);

/// 12 t every 6 minutes (120 t/h), a 14 t tractor in full and a 10 t one at half time, 15 cm seen, 35 % dry
/// matter.
SeasonMaker steadyDay(int loads = 20) {
    SeasonMaker maker;
    const Instant start = at("2026-02-10T08:00:00Z");
    maker.add(entries::SiloDefined{someSilo()}, start);
    maker.add(entries::TractorDefined{someTractor(1, 14)}, start);
    maker.add(entries::TractorDefined{someTractor(2, 10)}, start);
    maker.add(entries::LayerSeen{kBunker, Length::fromCentimetres(15), {}}, start);
    maker.add(entries::DryMatterSample{DryMatter::fromPercent(35), {}, {}, {}, {}}, start);
    maker.add(someWork(1, farm::Activity::packing), start);
    maker.add(someWork(2, farm::Activity::packing, 0.5), start);
    for (int i = 0; i < loads; ++i) maker.add(someLoad(12), at("2026-02-10T12:00:00Z") + i * 6min);
    return maker;
}

TEST(Readings, TheLayerUnderWayIsTheEquationAtThePaceOfNow) {
    const auto season = season::Season::fold(steadyDay().entries);
    const Readings readings = readingsAt(season, kBunker, at("2026-02-10T13:54:00Z"));
    ASSERT_TRUE(readings.layer.estimate);
    Situation plain;
    plain.work = AsFedRate::fromTonnesPerHour(120);
    plain.dryMatter = DryMatter::fromPercent(35);
    plain.layer = Length::fromCentimetres(15);
    plain.meanDepth = Length::fromMetres(3);
    plain.machines = {{MachineMass::fromTonnes(14)}, {MachineMass::fromTonnes(10), Share::fromFraction(0.5)}};
    const auto expected = estimate(plain);
    EXPECT_NEAR(readings.layer.estimate->density.median().si(), expected->density.median().si(), 1e-9);
}

TEST(Readings, TheDayAndTheSiloCountWhatWasPackedSinceTheFirstLoad) {
    const auto season = season::Season::fold(steadyDay().entries);
    // Twenty loads in 20 gaps of 6 min: at the end of the last gap the day's minutes are exactly those of the
    // pace.
    const Readings readings = readingsAt(season, kBunker, at("2026-02-10T14:00:00Z"));
    ASSERT_TRUE(readings.today.estimate);
    ASSERT_TRUE(readings.silo.estimate);
    EXPECT_NEAR(readings.today.estimate->packing.allTime.minutesPerTonne(), 0.75, 1e-9);
    EXPECT_NEAR(readings.silo.estimate->density.median().si(), readings.layer.estimate->density.median().si(),
                1e-6);
    EXPECT_LT(readings.silo.estimate->density.sigma(), readings.layer.estimate->density.sigma());
    EXPECT_GT(readings.today.options.effectiveLayers, 1.0);
}

TEST(Readings, WithoutEnoughLoadsThereIsAReasonInsteadOfANumber) {
    const Instant now = at("2026-02-10T14:00:00Z");
    const auto none = readingsAt(season::Season::fold(steadyDay(0).entries), kBunker, now);
    EXPECT_EQ(none.layer.reason->code, Code::tooFewLoads);
    EXPECT_EQ(none.today.reason->code, Code::noLoads);
    const auto two = readingsAt(season::Season::fold(steadyDay(2).entries), kBunker, now);
    EXPECT_EQ(two.layer.reason->code, Code::tooFewLoads);
    EXPECT_TRUE(two.today.estimate);
    const auto unknown = readingsAt(season::Season::fold(steadyDay().entries), idOf<farm::SiloTag>(7), now);
    EXPECT_EQ(unknown.silo.reason->code, Code::siloUnknown);
}

TEST(Readings, AnUnseenLayerIsAssumedAndSaid) {
    SeasonMaker maker = steadyDay();
    maker.add(entries::VoidEntry{}, at("2026-02-10T08:00:00Z"), maker.entries[3].header.id);
    const Readings readings =
        readingsAt(season::Season::fold(maker.entries), kBunker, at("2026-02-10T13:54:00Z"));
    const auto& warnings = readings.layer.estimate->warnings;
    EXPECT_TRUE(std::any_of(warnings.begin(), warnings.end(),
                            [](const Message& warning) { return warning.code == Code::layerAssumed; }));
}

}  // namespace
}  // namespace treadwell::density
