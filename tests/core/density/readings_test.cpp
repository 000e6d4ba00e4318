#include "core/density/readings.h"

#include "core/density/codes.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::density {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

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
    Situation plain;
    plain.work = AsFedRate::fromTonnesPerHour(120);
    plain.dryMatter = DryMatter::fromPercent(35);
    plain.layer = Length::fromCentimetres(15);
    // A ramp's layer reaches from the floor to the level top: 3.086 m, where H (60 - 2 H) / (60 - 1.5 H), the
    // mean depth, is the planned 3 m.
    plain.meanDepth = Length::fromMetres(3.0859960);
    plain.machines = {{MachineMass::fromTonnes(14)}, {MachineMass::fromTonnes(10), Share::fromFraction(0.5)}};
    const auto expected = estimate(plain);
    // As a load is tipped, half rolled, and just before the next: what is still to come of its minutes falls
    // as those credited rise.
    for (const char* moment : {"2026-02-10T13:54:00Z", "2026-02-10T13:57:00Z", "2026-02-10T13:59:59Z"}) {
        const Readings readings = readingsAt(season, kBunker, at(moment));
        ASSERT_TRUE(readings.layer.estimate);
        EXPECT_NEAR(readings.layer.estimate->density.median() / expected->density.median(), 1.0, 1e-3)
            << moment;
        EXPECT_NEAR(readings.layer.estimate->packing.allTime.minutesPerTonne(), 0.75, 0.005) << moment;
        EXPECT_EQ(readings.layer.options.effectiveLayers, 1.0);
    }
    const Readings tipped = readingsAt(season, kBunker, at("2026-02-10T13:54:00Z"));
    EXPECT_NEAR(tipped.layer.estimate->density.median().si(), expected->density.median().si(), 1e-5);
}

TEST(Readings, TheDayAndTheSiloCountWhatWasPackedSinceTheFirstLoad) {
    const auto season = season::Season::fold(steadyDay().entries);
    // Twenty loads in 20 gaps of 6 min: at the end of the last gap the day's minutes are exactly those of the
    // pace; the last layers are still to get some.
    const Readings readings = readingsAt(season, kBunker, at("2026-02-10T14:00:00Z"));
    ASSERT_TRUE(readings.today.estimate);
    ASSERT_TRUE(readings.silo.estimate);
    EXPECT_NEAR(readings.today.asItLies->packing.allTime.minutesPerTonne(), 0.75, 1e-9);
    EXPECT_GT(readings.today.estimate->packing.allTime.minutesPerTonne(), 0.75);
    EXPECT_LT(readings.silo.estimate->density.sigma(), readings.layer.estimate->density.sigma());
    EXPECT_GT(readings.today.options.effectiveLayers, 10.0);
    EXPECT_LE(readings.today.options.effectiveLayers, static_cast<double>(readings.layers->layers.size()));
    for (const Filled filled : {Filled::whenFull, Filled::asItLies}) {
        const auto& estimate = filled == Filled::whenFull ? readings.silo.estimate : readings.silo.asItLies;
        EXPECT_NEAR(estimate->density.median() / readings.layers->stack(filled).mean, 1.0, 1e-12);
    }
}

TEST(Readings, AsItLiesIsLooserAndLessCertain) {
    const auto season = season::Season::fold(steadyDay().entries);
    const Readings readings = readingsAt(season, kBunker, at("2026-02-10T14:00:00Z"));
    for (const SiloReading* reading : {&readings.layer, &readings.today, &readings.silo}) {
        EXPECT_LT(reading->asItLies->density.median(), reading->estimate->density.median());
        EXPECT_GT(reading->asItLies->spread[SpreadPart::depthSlope],
                  reading->estimate->spread[SpreadPart::depthSlope]);
    }
}

TEST(Readings, TodayLeavesOutYesterday) {
    SeasonMaker maker = steadyDay();
    maker.add(someWork(1, farm::Activity::away), at("2026-02-10T16:00:00Z"));
    maker.add(someWork(2, farm::Activity::away), at("2026-02-10T16:00:00Z"));
    for (int i = 0; i < 10; ++i) maker.add(someLoad(12), at("2026-02-11T08:00:00Z") + i * 6min);
    const Readings readings =
        readingsAt(season::Season::fold(maker.entries), kBunker, at("2026-02-11T09:00:00Z"));
    ASSERT_TRUE(readings.today.estimate);
    EXPECT_NEAR(std::get<PackedMass>(readings.today.situation.work).mass.tonnes(), 120, 1e-9);
    EXPECT_NEAR(std::get<PackedMass>(readings.silo.situation.work).mass.tonnes(), 360, 1e-9);
    // Nobody packs on the second day.
    EXPECT_NEAR(readings.layer.estimate->packing.allTime.minutesPerTonne(), 0.0, 1e-12);
    EXPECT_LT(readings.today.estimate->density.median(), readings.silo.estimate->density.median());
}

TEST(Readings, WithoutEnoughLoadsThereIsAReasonInsteadOfANumber) {
    const Instant now = at("2026-02-10T14:00:00Z");
    const auto none = readingsAt(season::Season::fold(steadyDay(0).entries), kBunker, now);
    EXPECT_EQ(none.layer.reason->code, code::tooFewLoads);
    EXPECT_EQ(none.today.reason->code, code::noLoads);
    const auto two = readingsAt(season::Season::fold(steadyDay(2).entries), kBunker, now);
    EXPECT_EQ(two.layer.reason->code, code::tooFewLoads);
    EXPECT_TRUE(two.today.estimate);
    const auto unknown = readingsAt(season::Season::fold(steadyDay().entries), idOf<farm::SiloTag>(7), now);
    EXPECT_EQ(unknown.silo.reason->code, code::siloUnknown);
}

TEST(Readings, AnUnseenLayerIsAssumedAndSaid) {
    SeasonMaker maker = steadyDay();
    maker.add(entries::VoidEntry{}, at("2026-02-10T08:00:00Z"), maker.entries[3].header.id);
    const Readings readings =
        readingsAt(season::Season::fold(maker.entries), kBunker, at("2026-02-10T13:54:00Z"));
    const auto& warnings = readings.layer.estimate->warnings;
    EXPECT_TRUE(std::any_of(warnings.begin(), warnings.end(),
                            [](const Message& warning) { return warning.code == code::layerAssumed; }));
}

bool finite(const Estimate& estimate) {
    const Distribution& density = estimate.density;
    return std::isfinite(density.low80().si()) && std::isfinite(density.median().si()) &&
           std::isfinite(density.high80().si()) && std::isfinite(estimate.chance.fraction()) &&
           std::isfinite(estimate.porosity.median().fraction()) &&
           std::isfinite(estimate.packing.factor.si) && density.median() > DryDensity{};
}

// One load, nobody who packs, a load before the first tractor, the driest and the wettest crop that can be
// entered, a night's rolling on one load: each has a number or a reason.
TEST(Readings, WhateverIsRecordedHasANumberOrAReason) {
    const Instant morning = at("2026-02-10T08:00:00Z");
    for (const auto way : {farm::FillingWay::lifts, farm::FillingWay::wedge}) {
        for (const double dryMatter : {10.0, 35.0, 90.0}) {
            for (const int loads : {1, 3, 30}) {
                for (const int packsFrom : {-1, 0, 90}) {
                    SeasonMaker maker;
                    farm::Silo silo = someSilo();
                    silo.filling = way;
                    maker.add(entries::SiloDefined{silo}, morning);
                    maker.add(entries::TractorDefined{someTractor(1, 14)}, morning);
                    maker.add(entries::DryMatterSample{DryMatter::fromPercent(dryMatter), {}, {}, {}, {}},
                              morning);
                    for (int i = 0; i < loads; ++i)
                        maker.add(someLoad(12), at("2026-02-10T12:00:00Z") + i * 6min);
                    if (packsFrom >= 0)
                        maker.add(someWork(1, farm::Activity::packing),
                                  at("2026-02-10T12:00:00Z") + packsFrom * 1min);
                    const auto season = season::Season::fold(maker.entries);
                    for (const char* moment :
                         {"2026-02-10T12:00:00Z", "2026-02-10T13:00:00Z", "2026-02-11T06:00:00Z"}) {
                        const Readings readings = readingsAt(season, kBunker, at(moment));
                        for (const SiloReading* reading :
                             {&readings.layer, &readings.today, &readings.silo}) {
                            EXPECT_NE(reading->estimate.has_value(), reading->reason.has_value());
                            if (!reading->estimate) continue;
                            EXPECT_TRUE(finite(*reading->estimate) && finite(*reading->asItLies));
                        }
                    }
                }
            }
        }
    }
}

// What the working shows, it shows with the entries that it rests on.
TEST(Readings, TheWorkingNamesItsEntries) {
    SeasonMaker maker = steadyDay();
    const auto season = season::Season::fold(maker.entries);
    const Readings readings = readingsAt(season, kBunker, at("2026-02-10T14:00:00Z"));
    const auto entriesOf = [](const Estimate& estimate, Code code) {
        for (const WorkingStep& step : estimate.working)
            if (step.what.code == code) return step.entries;
        return std::vector<entries::EntryId>{};
    };
    const auto id = [&](std::size_t i) { return maker.entries[i].header.id; };
    const Estimate& silo = *readings.silo.estimate;
    EXPECT_EQ(entriesOf(silo, code::workingLayer), std::vector{id(3)});
    EXPECT_EQ(entriesOf(silo, code::workingPackingFactor), std::vector{id(4)});
    EXPECT_EQ(entriesOf(silo, code::workingLayers).size(), 20U);
    const auto packing = entriesOf(silo, code::workingPackingTime);
    ASSERT_EQ(packing.size(), 22U);
    EXPECT_EQ(packing[0], id(5));
    EXPECT_EQ(packing[1], id(6));
    EXPECT_EQ(packing[2], id(7));
    EXPECT_EQ(entriesOf(*readings.layer.estimate, code::workingOneLayer),
              std::vector{maker.entries.back().header.id});
}

}  // namespace
}  // namespace treadwell::density
