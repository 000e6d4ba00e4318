#include "core/density/weak_places.h"

#include "core/density/codes.h"
#include "core/density/readings.h"
#include "tests/support/season_maker.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace treadwell::density {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

/// Six hours at 100 t/h under two tractors of 14 t, layers of 15 cm seen. In
/// level layers only what was packed otherwise and the depth tell them apart.
SeasonMaker evenDay(bool packed = true) {
    SeasonMaker maker;
    const Instant start = at("2026-02-10T06:00:00Z");
    maker.add(entries::SiloDefined{someLifts()}, start);
    maker.add(entries::LayerSeen{kBunker, Length::fromCentimetres(15), {}}, start);
    maker.add(entries::DryMatterSample{DryMatter::fromPercent(35), {}, {}, {}, {}}, start);
    for (std::uint8_t tractor = 1; tractor <= 2; ++tractor) {
        maker.add(entries::TractorDefined{someTractor(tractor, 14)}, start);
        if (packed) maker.add(someWork(tractor, farm::Activity::packing), start);
    }
    for (int i = 0; i < 60; ++i) maker.add(someLoad(10), at("2026-02-10T08:00:00Z") + i * 6min);
    return maker;
}

std::vector<WeakPlace> weakest(const SeasonMaker& maker, std::size_t most = 3) {
    const auto season = season::Season::fold(maker.entries);
    const Readings readings = readingsAt(season, kBunker, at("2026-02-10T14:00:00Z"));
    return weakestPlaces(season, readings.layers.value(), Filled::whenFull, most);
}

std::vector<Code> codesOf(const WeakPlace& place) {
    std::vector<Code> codes;
    for (const Message& cause : place.causes) codes.push_back(cause.code);
    return codes;
}

TEST(WeakPlaces, AnHourOfFastTrucksIsFoundWithItsRateAndTractors) {
    SeasonMaker maker = evenDay();
    // From 10:00 to 11:00 sixty loads more: 700 t/h.
    for (int i = 0; i < 60; ++i) maker.add(someLoad(10), at("2026-02-10T10:00:30Z") + i * 1min);
    const auto places = weakest(maker);
    ASSERT_FALSE(places.empty());
    const WeakPlace& place = places.front();
    EXPECT_LT(place.begin, at("2026-02-10T11:00:00Z"));
    EXPECT_GT(place.end, at("2026-02-10T10:00:00Z"));
    const auto& [code, arguments] = place.causes.front();
    EXPECT_EQ(code, code::weakStretch);
    EXPECT_EQ(arguments.at(0), Argument{durationAmount(Seconds{place.end - place.begin})});
    const double rate = std::get<Amount>(arguments.at(1)).si;
    EXPECT_NEAR(AsFedRate::fromSi(rate).tonnesPerHour(), 700, 70);
    EXPECT_EQ(arguments.at(2), Argument{std::int64_t{2}});
    EXPECT_EQ(codesOf(place).at(1), code::weakFewMinutes);
}

TEST(WeakPlaces, ThickLayersAndLightTractorsAreNamed) {
    SeasonMaker thick = evenDay();
    thick.add(entries::LayerSeen{kBunker, Length::fromCentimetres(30), {}}, at("2026-02-10T10:00:00Z"));
    thick.add(entries::LayerSeen{kBunker, Length::fromCentimetres(15), {}}, at("2026-02-10T11:00:00Z"));
    EXPECT_EQ(codesOf(weakest(thick).front()).at(1), code::weakThickLayer);

    SeasonMaker light = evenDay();
    light.add(entries::TractorDefined{someTractor(3, 5)}, at("2026-02-10T06:00:00Z"));
    for (std::uint8_t tractor = 1; tractor <= 2; ++tractor) {
        light.add(someWork(tractor, farm::Activity::away), at("2026-02-10T10:00:00Z"));
        light.add(someWork(tractor, farm::Activity::packing), at("2026-02-10T12:00:00Z"));
    }
    light.add(someWork(3, farm::Activity::packing), at("2026-02-10T10:00:00Z"));
    light.add(someWork(3, farm::Activity::away), at("2026-02-10T12:00:00Z"));
    EXPECT_THAT(codesOf(weakest(light).front()), testing::Contains(code::weakLightTractors));
}

TEST(WeakPlaces, InAnEvenSiloTheSurfaceIsWeakest) {
    const auto places = weakest(evenDay());
    ASSERT_EQ(places.size(), 1U) << "a fifth of the dry matter, in one place";
    EXPECT_EQ(codesOf(places.front()).at(1), code::weakNearSurface);
}

TEST(WeakPlaces, WhatNobodyPackedHasNoOtherCause) {
    const auto places = weakest(evenDay(false));
    ASSERT_FALSE(places.empty());
    EXPECT_THAT(codesOf(places.front()), testing::ElementsAre(code::weakStretch, code::weakNotPacked));
    EXPECT_EQ(std::get<std::int64_t>(places.front().causes.front().arguments.at(2)), 0);
}

TEST(WeakPlaces, TheyComeWeakestFirstAndHoldAFifthOfTheDryMatter) {
    SeasonMaker maker = evenDay();
    for (int i = 0; i < 3; ++i) {
        maker.add(someWork(1, farm::Activity::away), at("2026-02-10T08:30:00Z") + i * 2h);
        maker.add(someWork(1, farm::Activity::packing), at("2026-02-10T09:30:00Z") + i * 2h);
    }
    const auto places = weakest(maker, 99);
    double dry = 0;
    for (const WeakPlace& place : places) dry += place.dry.tonnes();
    EXPECT_GE(dry, 0.2 * 210);
    EXPECT_LT(dry, 0.2 * 210 + 40.32 * 0.35) << "at most a layer more";
    EXPECT_TRUE(std::is_sorted(places.begin(), places.end(), [](const WeakPlace& a, const WeakPlace& b) {
        return a.density.median() < b.density.median();
    }));
    EXPECT_EQ(weakest(maker, 1).size(), 1U);
    EXPECT_TRUE(weakest(maker, 0).empty());
}

TEST(FieldOfASeason, ItsMeanIsTheSilosAllDryMatterOverAllVolume) {
    SeasonMaker maker = evenDay();
    maker.add(someWork(2, farm::Activity::away), at("2026-02-10T10:00:00Z"));
    for (const auto way : {farm::FillingWay::lifts, farm::FillingWay::wedge}) {
        farm::Silo silo = someLifts();
        silo.filling = way;
        maker.add(entries::SiloDefined{silo}, at("2026-02-10T07:00:00Z"));
        const auto season = season::Season::fold(maker.entries);
        const Readings readings = readingsAt(season, kBunker, at("2026-02-10T20:00:00Z"));
        for (const Filled filled : {Filled::whenFull, Filled::asItLies}) {
            const auto field = fieldOf(season, *readings.layers, filled);
            ASSERT_TRUE(field);
            const auto whole = field->mean(field->whole());
            ASSERT_TRUE(whole);
            EXPECT_NEAR(whole->dry.tonnes(), 600 * 0.35, 1e-6);
            EXPECT_NEAR((whole->dry / whole->volume) / readings.layers->stack(filled).mean, 1, 1e-9);
        }
    }
}

TEST(FieldOfASeason, WithoutCropThereIsNothingToAsk) {
    SeasonMaker maker;
    maker.add(entries::SiloDefined{someLifts()}, at("2026-02-10T07:00:00Z"));
    const auto season = season::Season::fold(maker.entries);
    const Readings readings = readingsAt(season, kBunker, at("2026-02-10T20:00:00Z"));
    const auto field = fieldOf(season, readings.layers.value(), Filled::asItLies);
    ASSERT_TRUE(field);
    EXPECT_FALSE(field->mean(field->whole()));
    EXPECT_TRUE(weakestPlaces(season, *readings.layers, Filled::asItLies, 5).empty());
}

}  // namespace
}  // namespace treadwell::density
