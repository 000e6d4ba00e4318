#include "core/packing/layers.h"

#include "core/season/rolling.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::packing {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

farm::Silo lifts() {
    farm::Silo silo = someSilo();
    silo.filling = farm::FillingWay::lifts;
    return silo;
}

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
    SeasonMaker maker = farmWith(lifts());
    for (int i = 0; i < 10; ++i) maker.add(someLoad(10), at("2026-02-10T09:00:00Z") + i * 6min);
    const LayerBook book = bookOf(maker, lifts(), "2026-02-10T10:00:00Z");
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

}  // namespace
}  // namespace treadwell::packing
