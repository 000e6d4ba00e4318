#include "core/packing/layers.h"

#include "core/packing/pace.h"
#include "core/season/rolling.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::packing {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

/// A farm with two tractors of which the first packs from 08:00, and a dry matter of 35 %.
SeasonMaker farmWith(const farm::Silo& silo) {
    SeasonMaker maker;
    const Instant start = at("2026-02-10T08:00:00Z");
    maker.add(entries::SiloDefined{silo}, start);
    maker.add(entries::TractorDefined{someTractor(1, 14)}, start);
    maker.add(entries::TractorDefined{someTractor(2, 10)}, start);
    maker.add(someWork(1, farm::Activity::packing), start);
    return maker;
}

LayerBook bookOf(const SeasonMaker& maker, const farm::Silo& silo, const char* now) {
    return layersOf(season::Season::fold(maker.entries), silo, at(now));
}

double minutesIn(const LayerBook& book) {
    double minutes = 0;
    for (const auto& layer : book.layers) minutes += layer->packingTime().count() / 60;
    return minutes;
}

TEST(Layers, WithoutLoadsThereAreNone) {
    SeasonMaker maker = farmWith(someSilo());
    const LayerBook book = bookOf(maker, someSilo(), "2026-02-10T12:00:00Z");
    EXPECT_TRUE(book.layers.empty());
    EXPECT_DOUBLE_EQ(book.underWheels.tonnes(), 0);
    EXPECT_DOUBLE_EQ(book.beforeFirstLoad.at(idOf<farm::TractorTag>(1)).count(), 4 * 3600.0);
}

TEST(Layers, ALiftIsClosedWhereItsCropCoversTheFloor) {
    // 60 x 14 m x 15 cm at 112 / 0.35 = 320 kg/m3 as spread (Dutch trailer study 1979-86) is 40.32 t.
    SeasonMaker maker = farmWith(someLifts());
    for (int i = 0; i < 10; ++i) maker.add(someLoad(10), at("2026-02-10T09:00:00Z") + i * 6min);
    const LayerBook book = bookOf(maker, someLifts(), "2026-02-10T10:00:00Z");
    ASSERT_EQ(book.layers.size(), 3U);
    EXPECT_NEAR(book.layers[0]->mass.tonnes(), 40.32, 1e-9);
    EXPECT_EQ(book.layers[0]->loads.size(), 5U) << "the fifth load is split";
    EXPECT_NEAR(book.layers[0]->loads.back().mass.tonnes(), 0.32, 1e-9);
    EXPECT_NEAR(book.layers[0]->dry.tonnes(), 40.32 * 0.35, 1e-9);
    EXPECT_NEAR(book.layers[2]->mass.tonnes(), 100 - 80.64, 1e-9);
    EXPECT_TRUE(book.layers[1]->closed);
    EXPECT_FALSE(book.layers[2]->closed);
    EXPECT_EQ(book.layers[1]->begin, at("2026-02-10T09:24:00Z"));
    EXPECT_EQ(book.layers[1]->end, at("2026-02-10T09:48:00Z"));
    for (const auto& layer : book.layers) {
        EXPECT_EQ(layer->basis, ThicknessBasis::assumed);
        EXPECT_NEAR(layer->thickness.centimetres(), 15, 1e-9);
        EXPECT_NEAR(layer->area.squareMetres(), 840, 1e-9);
    }
}

TEST(Layers, MinutesSinceTheFirstLoadAllGoToLayers) {
    SeasonMaker maker = farmWith(someSilo());
    maker.add(someWork(2, farm::Activity::packing, 0.5), at("2026-02-10T09:10:00Z"));
    for (int i = 0; i < 30; ++i) maker.add(someLoad(11.3), at("2026-02-10T09:00:00Z") + i * 7min);
    const char* now = "2026-02-10T17:00:00Z";
    const auto season = season::Season::fold(maker.entries);
    const LayerBook book = layersOf(season, someSilo(), at(now));
    EXPECT_NEAR(minutesIn(book), 8 * 60 + (7 * 60 + 50) * 0.5, 1e-9 * 720);
    std::map<farm::TractorId, Seconds> credited;
    for (const auto& layer : book.layers)
        for (const auto& [tractor, time] : layer->packing) credited[tractor] += time;
    for (const auto& [tractor, time] : season::rollingAt(season, someSilo().id, at(now)).siloIn.packing)
        EXPECT_NEAR(credited[tractor] / time, 1, 1e-9);
}

TEST(Layers, ARampOfTheHeightSeenSetsTheSurface) {
    SeasonMaker maker = farmWith(someSilo());
    const Length two = Length::fromMetres(2);
    maker.add(entries::HeightSurvey{someSilo().id, {{Length::fromMetres(5), Length::fromMetres(7), two}}},
              at("2026-02-10T08:30:00Z"));
    maker.add(entries::LayerSeen{someSilo().id, Length::fromCentimetres(20), entries::LayerMethod::measured},
              at("2026-02-10T08:30:00Z"));
    maker.add(someLoad(0.1), at("2026-02-10T09:00:00Z"));
    const LayerBook book = bookOf(maker, someSilo(), "2026-02-10T09:00:00Z");
    ASSERT_EQ(book.layers.size(), 1U);
    // W * z * sqrt(1 + s^2) = 14 * 2 * sqrt(10), a little more for the 100 kg.
    EXPECT_NEAR(book.layers[0]->area.squareMetres(), 14 * 2 * std::sqrt(10.0), 0.2);
    EXPECT_EQ(book.layers[0]->basis, ThicknessBasis::measured);
    EXPECT_NEAR(book.layers[0]->thickness.centimetres(), 20, 1e-9);
}

/// 14 m x 5 m, so that a 10 t load makes one layer of 10 / (70 * 0.32) m, and 0.40 m of it packed at 225 kg
/// DM/m3 are 18 t: less than the last three loads.
farm::Silo oneLoadALayer() {
    farm::Silo silo = someLifts();
    silo.length = Length::fromMetres(5);
    return silo;
}

SeasonMaker loadsAsLayers(int count) {
    SeasonMaker maker = farmWith(oneLoadALayer());
    maker.add(entries::LayerSeen{oneLoadALayer().id, Length::fromMetres(10 / (70 * 0.32)),
                                 entries::LayerMethod::loadsPerCover},
              at("2026-02-10T08:00:00Z"));
    for (int i = 0; i < count; ++i) maker.add(someLoad(10), at("2026-02-10T09:00:00Z") + i * 6min);
    return maker;
}

TEST(Layers, AMinuteIsSharedByAtLeastTheLastThreeLoads) {
    const LayerBook book = bookOf(loadsAsLayers(6), oneLoadALayer(), "2026-02-10T09:36:00Z");
    ASSERT_EQ(book.layers.size(), 6U);
    // Six minutes after each load: alone, then halves, then thirds, worked by hand.
    const std::vector<double> minutes{6 + 3 + 2, 3 + 2 + 2, 2 + 2 + 2, 2 + 2 + 2, 2 + 2, 2};
    for (std::size_t i = 0; i < minutes.size(); ++i) {
        EXPECT_NEAR(book.layers[i]->packingTime().count() / 60, minutes[i], 1e-9) << i;
        EXPECT_EQ(book.layers[i]->basis, ThicknessBasis::loadsPerCover);
        EXPECT_TRUE(book.layers[i]->closed);
    }
    EXPECT_NEAR(book.underWheels.tonnes(), 30, 1e-9);
    const std::vector<double> buried{1, 1, 1, 5 / 6., 3 / 6., 1 / 6.};
    for (std::size_t i = 0; i < buried.size(); ++i)
        EXPECT_NEAR(book.layers[i]->buried.fraction(), buried[i], 1e-9) << i;
}

TEST(Layers, PackingAfterTheLastLoadAndNextMorningBelongsToTheLastLayers) {
    SeasonMaker maker = loadsAsLayers(6);
    maker.add(someWork(1, farm::Activity::away), at("2026-02-10T10:30:00Z"));
    maker.add(someWork(1, farm::Activity::packing), at("2026-02-11T07:00:00Z"));
    maker.add(someLoad(10), at("2026-02-11T07:30:00Z"));
    const LayerBook book = bookOf(maker, oneLoadALayer(), "2026-02-11T07:36:00Z");
    ASSERT_EQ(book.layers.size(), 7U);
    EXPECT_NEAR(book.layers[2]->packingTime().count() / 60, 6, 1e-9) << "out of reach by then";
    EXPECT_NEAR(book.layers[3]->packingTime().count() / 60, 4 + (60 + 30) / 3., 1e-9);
    EXPECT_NEAR(book.layers[6]->packingTime().count() / 60, 2, 1e-9);
}

TEST(Layers, APauseNeedsNoRule) {
    SeasonMaker maker = loadsAsLayers(6);
    const LayerBook without = bookOf(maker, oneLoadALayer(), "2026-02-10T09:36:00Z");
    maker.add(entries::Pause{{}, true, "lunch"}, at("2026-02-10T09:13:00Z"));
    maker.add(entries::Pause{{}, false, ""}, at("2026-02-10T09:17:00Z"));
    const LayerBook with = bookOf(maker, oneLoadALayer(), "2026-02-10T09:36:00Z");
    for (std::size_t i = 0; i < 6; ++i) EXPECT_EQ(with.layers[i]->packing, without.layers[i]->packing);
}

TEST(Layers, TwoSilosAtOnceEachGetTheirOwn) {
    SeasonMaker maker = loadsAsLayers(6);
    farm::Silo other = oneLoadALayer();
    other.id = idOf<farm::SiloTag>(2);
    maker.add(entries::SiloDefined{other}, at("2026-02-10T08:00:00Z"));
    maker.add(someWork(2, farm::Activity::packing, 0.25, 2), at("2026-02-10T08:55:00Z"));
    maker.add(someLoad(3, 2), at("2026-02-10T09:03:00Z"));
    const LayerBook first = bookOf(maker, oneLoadALayer(), "2026-02-10T09:36:00Z");
    const LayerBook second = bookOf(maker, other, "2026-02-10T09:36:00Z");
    EXPECT_EQ(first.layers.size(), 6U);
    EXPECT_NEAR(minutesIn(first), 36, 1e-9);
    ASSERT_EQ(second.layers.size(), 1U);
    EXPECT_NEAR(minutesIn(second), 33 * 0.25, 1e-9);
    EXPECT_NEAR(second.beforeFirstLoad.at(idOf<farm::TractorTag>(2)).count(), 8 * 60 * 0.25, 1e-9);
}

TEST(Layers, OneLoadNobodyRolledHasZeroMinutes) {
    SeasonMaker maker;
    maker.add(entries::SiloDefined{someSilo()}, at("2026-02-10T08:00:00Z"));
    maker.add(someLoad(12), at("2026-02-10T09:00:00Z"));
    maker.add(entries::TractorDefined{someTractor(1, 14)}, at("2026-02-10T10:00:00Z"));
    maker.add(someWork(1, farm::Activity::packing), at("2026-02-10T10:00:00Z"));
    for (const auto& layer : bookOf(maker, someSilo(), "2026-02-10T10:00:00Z").layers) {
        EXPECT_DOUBLE_EQ(layer->intensity().si(), 0);
        EXPECT_DOUBLE_EQ(passesOn(*layer, {}), 0);
        EXPECT_DOUBLE_EQ(layer->dryMatter().percent(), 35);
    }
    EXPECT_NEAR(minutesIn(bookOf(maker, someSilo(), "2026-02-10T10:20:00Z")), 20, 1e-9);
    EXPECT_TRUE(bookOf(maker, someSilo(9), "2026-02-10T10:20:00Z").layers.empty()) << "nobody's silo";
    EXPECT_TRUE(bookOf(maker, someSilo(), "2026-02-09T10:20:00Z").layers.empty()) << "before the season";
}

TEST(Layers, ANewThicknessCountsFromItsTimeOn) {
    SeasonMaker maker = farmWith(someLifts());
    maker.add(someLoad(20.16), at("2026-02-10T09:00:00Z"));
    maker.add(entries::LayerSeen{someLifts().id, Length::fromCentimetres(30), entries::LayerMethod::measured},
              at("2026-02-10T09:30:00Z"));
    maker.add(someLoad(40.32), at("2026-02-10T10:00:00Z"));
    const LayerBook book = bookOf(maker, someLifts(), "2026-02-10T10:00:00Z");
    // Half the floor at 15 cm, half at 30: no crop is left for a second layer.
    ASSERT_EQ(book.layers.size(), 1U);
    EXPECT_TRUE(book.layers[0]->closed);
    EXPECT_NEAR(book.layers[0]->thickness.centimetres(), 22.5, 1e-9);
    EXPECT_EQ(book.layers[0]->basis, ThicknessBasis::assumed) << "the least certain part";
}

TEST(Layers, TheRampGrowsAtTheUsualFillingDensity) {
    SeasonMaker maker = farmWith(someSilo());
    farm::SiteRules rules;
    rules.fillingDensity = DryDensity::fromKilogramsPerCubicMetre(200);
    maker.add(entries::RulesSet{rules}, at("2026-02-10T08:10:00Z"));
    // 8.4 t of dry matter at 200 kg/m3 are 42 m3, a ramp 14 m wide and 1:3 of sqrt(2 * 42 / (14 * 3)) m.
    maker.add(someLoad(24), at("2026-02-10T09:00:00Z"));
    const LayerBook book = bookOf(maker, someSilo(), "2026-02-10T09:00:00Z");
    EXPECT_NEAR(book.layers.front()->area.squareMetres(), 14 * std::sqrt(2.0) * std::sqrt(10.0), 1e-9);
    for (int i = 1; i < 60; ++i) maker.add(someLoad(24), at("2026-02-10T09:00:00Z") + i * 6min);
    const LayerBook full = bookOf(maker, someSilo(), "2026-02-10T18:00:00Z");
    EXPECT_NEAR(full.layers.back()->area.squareMetres(), 14 * 3 * std::sqrt(10.0), 1e-9)
        << "at the planned depth it only moves on";
}

TEST(Layers, PassesAgreeWithTheWorkedExample) {
    // 180 t/h, three machines at 4 km/h on 1.4 m, 80 % of the time, 320 kg/m3, 15 cm: 3.58 passes (derived).
    Layer layer;
    layer.mass = AsFedMass::fromTonnes(180);
    layer.spread = layer.mass / AsFedDensity::fromKilogramsPerCubicMetre(320);
    layer.thickness = Length::fromCentimetres(15);
    for (std::uint8_t i = 1; i <= 3; ++i) layer.packing[idOf<farm::TractorTag>(i)] = Seconds{0.8 * 3600};
    EXPECT_NEAR(passesOn(layer, {}), 3.58, 0.005);
}

TEST(Layers, MassErrsByHowItBecameKnown) {
    season::LoadTipped weighed, usual, box;
    weighed.load.source = entries::MassSource::weighed;
    usual.load.source = entries::MassSource::usual;
    box.load.source = entries::MassSource::box;
    const auto times = [](const season::LoadTipped& load, int n) {
        return std::vector<LayerLoad>(static_cast<std::size_t>(n), {&load, AsFedMass::fromTonnes(10)});
    };
    // Rule B10: 8.6 % in common and 5.1 % a load, so that 60 of them are known to 8.6 %, not to 1.3.
    EXPECT_NEAR(massSpread(times(usual, 60), 0).common, 0.086, 1e-12);
    EXPECT_NEAR(massSpread(times(usual, 60), 0).own, 0.051 / std::sqrt(60.0), 1e-12);
    EXPECT_NEAR(massSpread(times(usual, 60), 4).common, 0.051 / 2, 1e-12) << "four were weighed";
    EXPECT_NEAR(massSpread(times(box, 60), 4).common, 0.086, 1e-12);
    EXPECT_LT(massSpread(times(weighed, 1), 1).common, 0.005);
    EXPECT_DOUBLE_EQ(massSpread({}, 3).common, 0);
}

/// The layer under way at `moment`: what it is expected to get and what it has got in the end, in min/t.
std::pair<double, double> foreseenAndFinal(const SeasonMaker& maker, const char* moment) {
    const auto season = season::Season::fold(maker.entries);
    const auto pace = paceAt(season, season::rollingAt(season, kBunker, at(moment)));
    const auto book = layersOf(season, someLifts(), at(moment));
    const auto& layer = book.layers.back();
    const auto later = layersOf(season, someLifts(), at("2026-02-10T23:00:00Z"));
    const Share left = stillToCome(*layer, book, *pace);
    return {(layer->intensity() + pace->intensity * left.fraction()).minutesPerTonne(),
            later.layers[static_cast<std::size_t>(layer->number) - 1]->intensity().minutesPerTonne()};
}

TEST(Layers, TheLayerUnderWayIsSteadyWhileALoadIsRolled) {
    // Loads of 10 t in layers of 10 t, two of them, or a third of one.
    for (const double layerMass : {10.0, 20.0, 10 / 3.0}) {
        SeasonMaker maker = farmWith(someLifts());
        const Length thickness = Length::fromMetres(layerMass / (60 * 14 * 0.32));
        maker.add(entries::LayerSeen{kBunker, thickness, {}}, at("2026-02-10T08:00:00Z"));
        for (int i = 0; i < 120; ++i) maker.add(someLoad(10), at("2026-02-10T09:00:00Z") + i * 6min);
        for (const char* moment : {"2026-02-10T20:00:00Z", "2026-02-10T20:03:00Z", "2026-02-10T20:05:59Z"}) {
            const auto season = season::Season::fold(maker.entries);
            const auto pace = paceAt(season, season::rollingAt(season, kBunker, at(moment)));
            const auto book = layersOf(season, someLifts(), at(moment));
            const Layer& layer = *book.layers.back();
            const Share left = stillToCome(layer, book, *pace);
            EXPECT_NEAR((layer.intensity() + pace->intensity * left.fraction()).minutesPerTonne(), 0.6, 0.006)
                << layerMass << moment;
        }
    }
}

// Rule B4 in simulation: the whole layer is compared, at the moment itself and with what follows as it is.
TEST(Layers, TheLayerUnderWayForeseesATractorThatJoins) {
    SeasonMaker maker = farmWith(someLifts());
    for (int i = 0; i < 160; ++i) maker.add(someLoad(10), at("2026-02-10T09:00:00Z") + i * 5min);
    const auto [steady, reached] = foreseenAndFinal(maker, "2026-02-10T14:02:00Z");
    EXPECT_NEAR(reached, 0.5, 1e-3) << "what is delivered, but for the loads' steps";
    EXPECT_NEAR(steady / reached, 1, 0.03);
    maker.add(someWork(2, farm::Activity::packing), at("2026-02-10T14:00:00Z"));
    const auto [foreseen, final] = foreseenAndFinal(maker, "2026-02-10T14:02:00Z");
    EXPECT_GT(final, 0.9);
    EXPECT_NEAR(foreseen / final, 1, 0.03);
}

TEST(Layers, TheLayerUnderWayIsNotCarriedAwayByAStopOfTheTrucks) {
    SeasonMaker maker = farmWith(someLifts());
    for (int i = 0; i < 160; ++i) {
        maker.add(someLoad(10), at("2026-02-10T09:00:00Z") + i * 5min + (i < 60 ? 0min : 50min));
    }
    const auto [foreseen, final] = foreseenAndFinal(maker, "2026-02-10T14:30:00Z");
    EXPECT_GT(final, 0.6) << "the stop was rolled on it";
    EXPECT_NEAR(foreseen / final, 1, 0.2);
}

}  // namespace
}  // namespace treadwell::packing
