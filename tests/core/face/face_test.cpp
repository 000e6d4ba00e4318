#include "core/face/face.h"

#include "core/face/codes.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::face {
namespace {

using namespace testing_support;

/// A silo that was filled in one day, and cores of one face at 20 m: `count` of them, three in a row, rows
/// half a metre apart from the floor up, denser by 10 kg DM/m3 a row downward.
SeasonMaker openedSilo(int count) {
    SeasonMaker maker;
    const Instant begin = at("2026-09-15T06:00:00Z");
    maker.add(entries::SeasonStarted{"Lindenhof", "UTC"}, begin);
    maker.add(entries::SiloDefined{someLifts()}, begin);
    maker.add(entries::TractorDefined{someTractor(1, 14)}, begin);
    maker.add(someWork(1, farm::Activity::packing), begin);
    for (int i = 0; i < 150; ++i) maker.add(someLoad(14), begin + i * std::chrono::minutes{6});
    for (int i = 0; i < count; ++i) {
        entries::Core core;
        core.silo = idOf<farm::SiloTag>(1);
        core.along = Length::fromMetres(20);
        core.across = Length::fromMetres(2.0 + 5.0 * (i % 3));
        core.height = Length::fromMetres(0.3 + 0.5 * (i / 3));
        core.density = DryDensity::fromKilogramsPerCubicMetre(240.0 - 10.0 * (i / 3) + 3.0 * (i % 3));
        maker.add(core, at("2027-01-10T08:00:00Z") + std::chrono::minutes{i});
    }
    return maker;
}

Face faceIn(const SeasonMaker& maker, std::optional<Length> along = {}) {
    const auto season = season::Season::fold(maker.entries);
    return faceOf(season, season.farm().silos.begin()->second, at("2027-02-01T00:00:00Z"), along);
}

TEST(Face, SetsEachCoreBesideItsPrediction) {
    const SeasonMaker maker = openedSilo(6);
    const Face face = faceIn(maker);
    ASSERT_EQ(face.cores.size(), 6u);
    const auto evidence =
        density::evidenceOf(season::Season::fold(maker.entries), at("2027-02-01T00:00:00Z"));
    for (std::size_t i = 0; i < 6; ++i) {
        ASSERT_TRUE(face.cores[i].residual());
        EXPECT_EQ(face.cores[i].predicted, evidence.cores[i].evidence->predicted);
        EXPECT_NEAR(*face.cores[i].residual(), std::exp(evidence.cores[i].evidence->logRatio()) - 1.0, 1e-12);
        EXPECT_TRUE(face.cores[i].learnt);
    }
}

TEST(Face, MapsItWithItsDoubt) {
    const Face face = faceIn(openedSilo(12));
    ASSERT_TRUE(face.map) << face.cores.size();
    const FaceMap& map = *face.map;
    ASSERT_EQ(map.cells.size(), 40u);
    EXPECT_EQ(map.cores, 12u);
    double nearest = 1e9, farthest = 0.0;
    for (const MapCell& cell : map.cells) {
        EXPECT_GT(cell.measured.median().si(), 200);
        EXPECT_LT(cell.measured.median().si(), 250);
        EXPECT_LT(cell.measured.low80(), cell.measured.median());
        nearest = std::min(nearest, cell.measured.sigma());
        farthest = std::max(farthest, cell.measured.sigma());
    }
    EXPECT_LT(nearest, farthest) << "it is known best beside the cores";
    EXPECT_GT(map.cells.front().measured.median(), map.cells.back().measured.median())
        << "denser at the floor";
    EXPECT_GT(map.leftOutLogSd, 0.0);
    EXPECT_LT(map.leftOutLogSd, 0.05);
    EXPECT_GE(map.leftOutWithin80, 8u);
    EXPECT_TRUE(map.cells.front().predicted);
}

TEST(Face, SaysWhyThereIsNoMap) {
    EXPECT_EQ(faceIn(openedSilo(0)).reason->code, code::faceNoCores);
    EXPECT_EQ(faceIn(openedSilo(4)).reason->code, code::faceTooFewCores);
    EXPECT_FALSE(faceIn(openedSilo(12), Length::fromMetres(40)).map) << "no core lies there";
}

// Loose material and a balance of days belong to no spot of a map.
TEST(Face, TakesSpotsAloneForTheMap) {
    SeasonMaker maker = openedSilo(5);
    entries::Core core;
    core.silo = idOf<farm::SiloTag>(1);
    core.along = Length::fromMetres(20);
    core.across = Length::fromMetres(5);
    core.height = Length::fromMetres(1);
    core.origin = entries::CoreOrigin::faceBalance;
    core.density = DryDensity::fromKilogramsPerCubicMetre(400);
    maker.add(core, at("2027-01-11T08:00:00Z"));
    core.origin = entries::CoreOrigin::loaderRemoved;
    core.density.reset();
    core.dryMatter = DryMatter::fromPercent(34);
    maker.add(core, at("2027-01-12T08:00:00Z"));
    const Face face = faceIn(maker);
    EXPECT_EQ(face.cores.size(), 7u);
    EXPECT_TRUE(face.cores.back().reason);
    ASSERT_TRUE(face.map);
    EXPECT_EQ(face.map->cores, 5u);
}

}  // namespace
}  // namespace treadwell::face
