#include "core/attention/matters.h"

#include "core/attention/codes.h"
#include "core/samples/codes.h"
#include "tests/support/season_maker.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace treadwell::attention {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;
using testing::Contains;
using testing::ElementsAre;
using testing::Not;

const Instant kNoon = at("2026-02-10T12:00:00Z");

SeasonMaker filling(int loads, double tractorTonnes = 14) {
    SeasonMaker maker;
    const Instant start = at("2026-02-10T08:00:00Z");
    maker.add(entries::SiloDefined{someSilo()}, start);
    maker.add(entries::TractorDefined{someTractor(1, tractorTonnes)}, start);
    maker.add(someWork(1, farm::Activity::packing), start);
    for (int i = 0; i < loads; ++i) maker.add(someLoad(12), kNoon + i * 6min);
    return maker;
}

std::vector<Code> mattersIn(const SeasonMaker& maker, Instant now = kNoon + 114min) {
    const auto season = season::Season::fold(maker.entries);
    std::vector<Code> codes;
    for (const MatterNow& matter : mattersAt(season, density::readingsAt(season, kBunker, now)))
        codes.push_back(matter.message.code);
    return codes;
}

std::vector<GroundNow> groundsIn(const SeasonMaker& maker, Instant now = kNoon + 114min) {
    const auto season = season::Season::fold(maker.entries);
    return groundsAt(season, density::readingsAt(season, kBunker, now));
}

std::vector<Code> codesOf(const std::vector<GroundNow>& grounds, Standing standing) {
    std::vector<Code> codes;
    for (const GroundNow& ground : grounds) {
        if (ground.standing == standing) codes.push_back(ground.message.code);
    }
    return codes;
}

entries::DryMatterSample sampleOf(double percent) {
    entries::DryMatterSample sample;
    sample.dryMatter = DryMatter::fromPercent(percent);
    return sample;
}

TEST(Matters, NothingPressesBeforeTheFirstLoad) {
    EXPECT_THAT(mattersIn(filling(0)), testing::IsEmpty());
}

TEST(Matters, ComeInTheirOrder) {
    SeasonMaker maker = filling(20);
    maker.add(entries::LayerSeen{kBunker, Length::fromCentimetres(25), {}}, kNoon);
    maker.add(entries::Shift{idOf<entries::PersonTag>(1), true, {}, false, {}}, kNoon - 6h);
    EXPECT_THAT(mattersIn(maker),
                ElementsAre(code::packingBehind, code::layerThick, code::sampleMissing, code::hoursOnShift));
}

TEST(Matters, PackingThatKeepsUpIsNotNamed) {
    EXPECT_THAT(mattersIn(filling(20, 60)), Not(Contains(code::packingBehind)));
}

// Trucks that have stopped let the tractors catch up: nothing more comes in that could be packed too little.
TEST(Matters, TrucksThatHaveStoppedLeaveNothingBehind) {
    const SeasonMaker maker = filling(20);
    ASSERT_THAT(mattersIn(maker), Contains(code::packingBehind));
    EXPECT_THAT(mattersIn(maker, kNoon + 114min + 30min), Not(Contains(code::packingBehind)));
}

TEST(Matters, AChanceThatIsMetIsNoFallingBehind) {
    bool met = false;
    for (double tonnes = 14; tonnes < 40; tonnes += 1) {
        const SeasonMaker maker = filling(20, tonnes);
        const auto season = season::Season::fold(maker.entries);
        // Between two loads the last one has been rolled and the pace has not slowed yet.
        const auto readings = density::readingsAt(season, kBunker, kNoon + 114min + 5min);
        const bool reaches = readings.layer.estimate->chance >= season.farm().rules.wantedChance;
        met |= reaches;
        const auto codes = mattersIn(maker, kNoon + 114min + 5min);
        if (!reaches) continue;
        EXPECT_THAT(codes, Not(Contains(code::packingBehind))) << tonnes;
    }
    EXPECT_TRUE(met);
}

TEST(Matters, DryMatterBeyondTheGoalIsSaidOnceItIsSampled) {
    SeasonMaker maker = filling(20);
    EXPECT_THAT(mattersIn(maker), Not(Contains(code::dryMatterVeryDry)));
    maker.add(sampleOf(35), kNoon);
    EXPECT_THAT(mattersIn(maker), Not(Contains(code::dryMatterVeryDry)));
    maker.add(sampleOf(44), kNoon + 90min);
    maker.add(sampleOf(45), kNoon + 91min);
    EXPECT_THAT(mattersIn(maker), Contains(code::dryMatterVeryDry));
}

TEST(Matters, ChopThatIsTooFineComesWithWhatToDo) {
    SeasonMaker maker = filling(20);
    entries::SieveTest test;
    for (const Length opening : samples::kChopBounds) test.openings.push_back(opening);
    test.parts = {Share::fromPercent(5), Share::fromPercent(55), Share::fromPercent(30),
                  Share::fromPercent(10)};
    maker.add(test, kNoon + 10min);
    EXPECT_THAT(mattersIn(maker), Not(Contains(code::chopFine))) << "within its ranges";
    test.parts = {Share::fromPercent(2), Share::fromPercent(36), Share::fromPercent(42),
                  Share::fromPercent(20)};
    maker.add(entries::ChopSet{Length::fromMillimetres(16), {}, {}, {}}, kNoon + 15min);
    maker.add(test, kNoon + 20min);
    maker.add(test, kNoon + 21min);
    maker.add(test, kNoon + 22min);
    const auto codes = mattersIn(maker);
    EXPECT_THAT(codes, testing::IsSupersetOf({code::chopFine, code::chopLengthen, code::chopCheckKnives}));
    EXPECT_THAT(mattersIn(maker, kNoon + 10h), Contains(code::chopFine)) << "until the day is over";
}

TEST(Matters, APauseIsNoFallingBehind) {
    SeasonMaker maker = filling(20);
    maker.add(entries::Pause{std::nullopt, true, {}}, kNoon + 114min);
    EXPECT_THAT(mattersIn(maker), Not(Contains(code::packingBehind)));
}

TEST(Matters, ASampleIsOverdueAfterItsInterval) {
    SeasonMaker maker = filling(20);
    maker.add(sampleOf(34), kNoon + 60min);
    EXPECT_THAT(mattersIn(maker), Not(Contains(code::sampleOverdue)));
    EXPECT_THAT(mattersIn(maker, kNoon + 121min), Contains(code::sampleOverdue));
}

// 60 m x 14 m x 3 m less half of its ramp of 9 m: 2331 m3, at 225 kg DM/m3 and 35 % 1499 t as fed.
TEST(Matters, ASiloFillsUpAndItsBackIsReadyToCover) {
    SeasonMaker maker = filling(0);
    for (int i = 0; i < 16; ++i) maker.add(someLoad(75), kNoon + i * 6min);
    EXPECT_THAT(mattersIn(maker), Not(Contains(code::siloNearlyFull)));
    EXPECT_THAT(mattersIn(maker), Contains(code::readyToCover));
    for (int i = 16; i < 19; ++i) maker.add(someLoad(75), kNoon + i * 6min);
    EXPECT_THAT(mattersIn(maker), Contains(code::siloNearlyFull));
}

TEST(Grounds, OfTheFirstHourSayWhatIsMissingThenAssumed) {
    const auto grounds = groundsIn(filling(0));
    EXPECT_THAT(codesOf(grounds, Standing::missing), ElementsAre(code::missingPace, code::missingHeights));
    EXPECT_THAT(codesOf(grounds, Standing::assumed), ElementsAre(code::assumedDryMatter, code::assumedLayer));
    EXPECT_THAT(codesOf(grounds, Standing::known), ElementsAre(code::knownMasses));
    EXPECT_TRUE(std::is_sorted(grounds.begin(), grounds.end(),
                               [](const auto& a, const auto& b) { return a.standing < b.standing; }));
}

TEST(Grounds, LastSeasonsDryMatterIsSaidToBeSo) {
    SeasonMaker maker = filling(0);
    entries::SeasonCarried carried;
    carried.from.push_back({"Two Creeks", {}, idOf<entries::EntryTag>(1)});
    carried.dryMatter = DryMatter::fromPercent(32);
    maker.add(carried, kNoon - 5h);
    EXPECT_THAT(codesOf(groundsIn(maker), Standing::assumed), Contains(code::carriedDryMatter));
    maker.add(sampleOf(34), kNoon);
    maker.add(someLoad(12), kNoon + 5min);
    EXPECT_THAT(codesOf(groundsIn(maker), Standing::known), Contains(code::knownDryMatter));
}

TEST(Grounds, WhatIsMeasuredIsKnown) {
    SeasonMaker maker = filling(20);
    maker.add(sampleOf(34), kNoon - 1h);
    maker.add(entries::LayerSeen{kBunker, Length::fromCentimetres(14), {}}, kNoon - 1h);
    const auto known = codesOf(groundsIn(maker), Standing::known);
    EXPECT_THAT(known,
                ElementsAre(code::knownDryMatter, code::knownLayer, code::knownLoads, code::knownMasses));
}

TEST(Grounds, UsualLoadsAndClassMassesAreAssumed) {
    SeasonMaker maker = filling(3);
    entries::Load usual = someLoad(12);
    usual.source = entries::MassSource::usual;
    maker.add(usual, kNoon + 20min);
    farm::Tractor hired = someTractor(2, 14);
    hired.massKnown = false;
    maker.add(entries::TractorDefined{hired}, kNoon);
    maker.add(someWork(2, farm::Activity::spreading), kNoon);
    const auto grounds = groundsIn(maker);
    EXPECT_THAT(codesOf(grounds, Standing::assumed), Contains(code::assumedLoads));
    EXPECT_THAT(codesOf(grounds, Standing::assumed), Contains(code::assumedMasses));
    EXPECT_THAT(codesOf(grounds, Standing::known), Not(Contains(code::knownMasses)));
}

// A tractor of which only the class is known makes the band wider, and a weighbridge narrows it again.
TEST(Grounds, AClassMassWidensTheBand) {
    const auto widthWith = [](bool known) {
        SeasonMaker maker = filling(20);
        farm::Tractor tractor = someTractor(1, 14);
        tractor.massKnown = known;
        maker.add(entries::TractorDefined{tractor}, kNoon - 1h);
        const auto season = season::Season::fold(maker.entries);
        return density::readingsAt(season, kBunker, kNoon + 114min).layer.estimate->density.sigma();
    };
    EXPECT_GT(widthWith(false), widthWith(true));
}

}  // namespace
}  // namespace treadwell::attention
