#include "core/density/season_evidence.h"

#include "core/density/codes.h"
#include "core/density/learning.h"
#include "core/density/silo_layers.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::density {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

const Instant kMorning = at("2026-09-15T06:00:00Z");
const Instant kOpened = at("2026-12-01T09:00:00Z");

/// Sixty loads over a day, packed by one tractor.
SeasonMaker filled() {
    SeasonMaker maker;
    maker.add(entries::SeasonStarted{"Farm", "Europe/Berlin"}, kMorning);
    maker.add(entries::SiloDefined{someSilo()}, kMorning);
    maker.add(entries::TractorDefined{someTractor(1, 14)}, kMorning);
    maker.add(someWork(1, farm::Activity::packing), kMorning);
    for (int i = 0; i < 60; ++i) maker.add(someLoad(12), kMorning + i * 6min);
    maker.add(someWork(1, farm::Activity::away), kMorning + 7h);
    return maker;
}

entries::Core core(double density, double along = 1.0, double height = 0.3) {
    entries::Core core;
    core.silo = someSilo().id;
    core.along = Length::fromMetres(along);
    core.across = Length::fromMetres(5);
    core.height = Length::fromMetres(height);
    core.density = DryDensity::fromKilogramsPerCubicMetre(density);
    return core;
}

SeasonEvidence evidenceWith(const std::vector<entries::Core>& cores) {
    SeasonMaker maker = filled();
    for (const entries::Core& each : cores) maker.add(each, kOpened);
    return evidenceOf(season::Season::fold(maker.entries), kOpened);
}

TEST(SeasonEvidence, ACoreIsHeldAgainstTheLayerItCameFrom) {
    const auto evidence = evidenceWith({core(210), core(210, 1.0, 0.6)});
    ASSERT_EQ(evidence.cores.size(), 2U);
    ASSERT_TRUE(evidence.cores[0].evidence);
    const DensityEvidence& low = *evidence.cores[0].evidence;
    const DensityEvidence& high = *evidence.cores[1].evidence;
    EXPECT_EQ(low.measured.si(), 210.0);
    EXPECT_EQ(low.face, 1);
    EXPECT_GE(low.place, 1);
    EXPECT_GT(low.predicted, high.predicted);  // deeper
    EXPECT_GT(low.inputs, 0.0);
    EXPECT_GT(low.error, 0.026 * 0.026);
    EXPECT_EQ(evidence.usable().size(), 2U);
}

TEST(SeasonEvidence, DepthAndHeightSpeakOfOnePlace) {
    SeasonMaker maker = filled();
    const auto season = season::Season::fold(maker.entries);
    const farm::Silo silo = someSilo();
    const auto layers = laySilo(season, silo, packing::layersOf(season, silo, kOpened),
                                season::rollingAt(season, silo.id, kOpened), std::nullopt, {});
    const Length surface = layers->asItLies.top;
    entries::Core deep = core(210);
    deep.height.reset();
    deep.depth = surface - Length::fromMetres(0.3);
    const auto evidence = evidenceWith({core(210), deep});
    EXPECT_NEAR(evidence.cores[0].evidence->predicted.si(), evidence.cores[1].evidence->predicted.si(), 1e-9);
}

TEST(SeasonEvidence, SaysWhyACoreIsNone) {
    entries::Core loose = core(210);
    loose.origin = entries::CoreOrigin::loaderRemoved;
    entries::Core elsewhere = core(210);
    elsewhere.silo = idOf<farm::SiloTag>(77);
    const auto evidence = evidenceWith({loose, elsewhere, core(210, someSilo().length.metres() - 0.1, 2.9)});
    ASSERT_EQ(evidence.cores.size(), 3U);
    EXPECT_EQ(evidence.cores[0].reason->code, code::coreIsLoose);
    EXPECT_EQ(evidence.cores[1].reason->code, code::siloUnknown);
    EXPECT_EQ(evidence.cores[2].reason->code, code::coreOutsideLayers);
    EXPECT_TRUE(evidence.usable().empty());
}

TEST(SeasonEvidence, CoresBeforeAnyCropSaySo) {
    SeasonMaker maker = filled();
    maker.add(core(210), kMorning - 1h);
    const auto evidence = evidenceOf(season::Season::fold(maker.entries), kOpened);
    EXPECT_EQ(evidence.cores.at(0).reason->code, code::noLoads);
}

TEST(SeasonEvidence, AFaceBalanceSpeaksOfItsFace) {
    entries::Core balance = core(230);
    balance.origin = entries::CoreOrigin::faceBalance;
    const auto evidence = evidenceWith({balance});
    ASSERT_TRUE(evidence.cores[0].evidence);
    EXPECT_EQ(evidence.cores[0].evidence->kind, entries::EvidenceKind::faceBalance);
    EXPECT_GE(evidence.cores[0].evidence->error, 0.05 * 0.05);
}

TEST(SeasonEvidence, CoresMoveTheFarmAndWhatComesLaterIsNotSeen) {
    SeasonMaker maker = filled();
    for (int i = 0; i < 8; ++i) maker.add(core(150, 1.0, 0.1 * i), kOpened);
    const auto season = season::Season::fold(maker.entries);
    const Calibration calibration = learnFrom(season, kOpened).calibration;
    ASSERT_EQ(calibration.silos.size(), 1U);
    EXPECT_EQ(calibration.silos[0].cores, 8);
    EXPECT_LT(calibration.silos[0].level.mean, -0.05);
    EXPECT_LT(calibration.next.level, 0.0);
    EXPECT_TRUE(learnFrom(season, kOpened - 1h).calibration.silos.empty());
}

TEST(SeasonEvidence, TheNewestHeightsOfASiloCount) {
    SeasonMaker maker = filled();
    const auto survey = [&](double height, Instant when) {
        entries::HeightSurvey heights{someSilo().id, {}};
        for (int along = 1; along <= 10; ++along) {
            heights.readings.push_back(
                {someSilo().length * (along / 10.5), someSilo().width * 0.5, Length::fromMetres(height)});
        }
        maker.add(heights, when);
    };
    survey(0.9, kMorning + 7h);
    survey(0.8, kMorning + 8h);
    const auto evidence = evidenceOf(season::Season::fold(maker.entries), kOpened);
    ASSERT_EQ(evidence.surveys.size(), 1U);
    EXPECT_EQ(evidence.surveys[0].at, kMorning + 8h);
    ASSERT_TRUE(evidence.surveys[0].evidence);
    EXPECT_EQ(evidence.surveys[0].evidence->kind, entries::EvidenceKind::survey);
    EXPECT_GE(evidence.surveys[0].evidence->layers, 1.0);
}

TEST(SeasonEvidence, WhatWasCarriedCountsFromThenOnAndOnceASeason) {
    SeasonMaker maker = filled();
    entries::SeasonCarried carried;
    carried.from.push_back({"Farm", {}, idOf<entries::EntryTag>(9), kMorning - 24h * 365});
    DensityEvidence older;
    older.season = idOf<entries::EntryTag>(9).value.text();
    older.silo = someSilo().id;
    older.measured = DryDensity::fromKilogramsPerCubicMetre(170);
    older.predicted = DryDensity::fromKilogramsPerCubicMetre(220);
    older.error = 0.01;
    carried.evidence.emplace(8, older);
    const auto first = maker.add(carried, kMorning);
    const auto learntAt = [&](Instant now) {
        return learnFrom(season::Season::fold(maker.entries), now).calibration;
    };
    EXPECT_TRUE(learntAt(kMorning - 1h).silos.empty());
    EXPECT_LT(learntAt(kMorning).next.level, -0.05);
    EXPECT_EQ(learntAt(kMorning).find(someSilo().id), nullptr) << "another year's filling of the same silo";
    carried.evidence->resize(3);
    maker.add(carried, kMorning + 1h);
    EXPECT_EQ(evidenceOf(season::Season::fold(maker.entries), kOpened).carried.size(), 3U);
    EXPECT_GT(learntAt(kOpened).next.level, learntAt(kMorning).next.level);

    // One who asks again and again sees it come and go as well.
    LearningHistory history;
    const auto asked = [&] { return history.at(season::Season::fold(maker.entries), kOpened); };
    EXPECT_EQ(asked().calibration.silos.at(0).cores, 3);
    maker.add(entries::VoidEntry{"the wrong file"}, kOpened, maker.entries.back().header.id);
    EXPECT_EQ(asked().calibration.silos.at(0).cores, 8);
    maker.add(entries::VoidEntry{"this one too"}, kOpened, first);
    EXPECT_TRUE(asked().calibration.silos.empty());
}

}  // namespace
}  // namespace treadwell::density
