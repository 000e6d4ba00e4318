#include "core/density/measured.h"

#include "core/density/codes.h"
#include "core/density/field_equation.h"
#include "core/density/situation.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::density {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

entries::HeightSurvey level(double height) {
    entries::HeightSurvey survey{kBunker, {}};
    for (int i = 0; i < 4; ++i) {
        for (int j = 0; j < 3; ++j) {
            survey.readings.push_back({Length::fromMetres(6.0 + 10.0 * i), Length::fromMetres(2.5 + 4.5 * j),
                                       Length::fromMetres(height)});
        }
    }
    return survey;
}

/// Twelve heights a day after 60 loads of 12.5 t with twenty samples.
SeasonMaker filling(entries::MassSource source = entries::MassSource::weighed) {
    SeasonMaker maker;
    const Instant start = at("2026-02-10T06:00:00Z");
    maker.add(entries::SiloDefined{someLifts()}, start);
    for (int i = 0; i < 60; ++i) {
        if (i % 3 == 0)
            maker.add(entries::DryMatterSample{DryMatter::fromPercent(35), {}, {}, {}, {}},
                      start + i * 10min);
        entries::Load load = someLoad(12.5);
        load.source = source;
        maker.add(load, start + i * 10min + 1min);
    }
    return maker;
}

TEST(Measured, TheSiloIsWhatWasTippedOverTheRoomItTakes) {
    SeasonMaker maker = filling();
    const auto survey = maker.add(level(1.5), at("2026-02-10T17:00:00Z"));
    const auto season = season::Season::fold(maker.entries);
    EXPECT_TRUE(measuredIn(season, someLifts(), at("2026-02-10T16:59:59Z")).empty());
    const auto measured = measuredIn(season, someLifts(), at("2026-02-10T17:00:00Z"));
    ASSERT_EQ(measured.size(), 1u);
    EXPECT_EQ(measured[0].survey, survey);
    ASSERT_TRUE(measured[0].whole);
    const MassBalance& whole = *measured[0].whole;
    EXPECT_EQ(whole.loads, 60);
    EXPECT_NEAR(whole.dry.tonnes(), 60 * 12.5 * 0.35, 1e-9);
    const double volume = 14 * 1.5 * (60 - 3 * 1.5 / 2);
    EXPECT_NEAR(whole.volume.cubicMetres(), volume, 1e-3 * volume);
    EXPECT_NEAR(whole.density.median().si(), 60 * 12.5 * 350 / volume, 0.3);
    EXPECT_NEAR(whole.density.sigma(), std::sqrt(whole.parts.total()), 1e-12);
    EXPECT_EQ(measured[0].placed->volume, whole.volume) << "the first survey's part is all there is";
}

// Definitions of the density engine, derived: with weighed loads and a good mean dry matter (twenty samples)
// twelve heights give 3.3 % at 2.5 m, 5.4 % at 0.9 m and 8.8 % at 0.5 m.
TEST(Measured, ErrorsAreThoseOfTheRule) {
    const DryMatter dryMatter = DryMatter::fromPercent(35);
    for (const auto& [height, error] : {std::pair{2.5, 0.033}, {0.9, 0.054}, {0.5, 0.088}}) {
        const double volume = volumeLogSdOf(12, Length::fromMetres(height));
        EXPECT_NEAR(std::hypot(volume, dryMatterLogSd(dryMatter, samples::kSampleSd / std::sqrt(20.0))),
                    error, 0.0006)
            << height;
    }
}

TEST(Measured, UnweighedLoadsKeepTheirCommonError) {
    const auto errorOf = [](entries::MassSource source) {
        SeasonMaker maker = filling(source);
        maker.add(level(1.5), at("2026-02-10T17:00:00Z"));
        const auto measured =
            measuredIn(season::Season::fold(maker.entries), someLifts(), at("2026-02-10T18:00:00Z"));
        return measured.at(0).whole->parts.mass;
    };
    // Sixty trailers: 8.6 % in common and 5.1 % / sqrt(60), not 1.3 %.
    EXPECT_NEAR(std::sqrt(errorOf(entries::MassSource::box)), std::hypot(0.086, 0.051 / std::sqrt(60.0)),
                1e-9);
    EXPECT_NEAR(std::sqrt(errorOf(entries::MassSource::usual)), 0.0863, 1e-4);
    EXPECT_LT(std::sqrt(errorOf(entries::MassSource::weighed)), 0.003);
}

// Definitions of the density engine, derived: 0.8 m laid on 1.7 m squeeze it to 1.583 m.
TEST(Measured, WhatIsLaidOnTopSqueezesWhatLiesBelow) {
    EXPECT_NEAR(laidThickness(1.7, 0.8 + 1.583, FieldEquation::kFactorSlope), 0.8, 5e-4);
    EXPECT_NEAR(laidThickness(0.0, 2.0, FieldEquation::kFactorSlope), 2.0, 1e-12);
    EXPECT_NEAR(laidThickness(2.0, 2.0, FieldEquation::kFactorSlope), 0.0, 1e-12);
    EXPECT_NEAR(laidThickness(2.0, 1.9, FieldEquation::kFactorSlope) +
                    laidThickness(1.9, 2.0, FieldEquation::kFactorSlope),
                0.0, 1e-12);
}

// The second day's part alone: 1.7 m from the first day are squeezed to 1.583 m under 0.8 m.
TEST(Measured, ThePartPlacedSinceTheLastSurveyCountsTheSqueeze) {
    farm::Silo silo = someLifts();
    silo.rampEnds = 0;
    SeasonMaker maker = filling();
    maker.add(level(1.7), at("2026-02-10T17:00:00Z"));
    for (int i = 0; i < 32; ++i) maker.add(someLoad(12.5), at("2026-02-11T08:00:00Z") + i * 10min);
    maker.add(level(2.383), at("2026-02-11T17:00:00Z"));
    const auto measured = measuredIn(season::Season::fold(maker.entries), silo, at("2026-02-11T18:00:00Z"));
    ASSERT_EQ(measured.size(), 2u);
    ASSERT_TRUE(measured[1].placed);
    const MassBalance& placed = *measured[1].placed;
    EXPECT_EQ(placed.loads, 32);
    EXPECT_NEAR(placed.volume.cubicMetres(), 0.8 * 14 * 60, 0.5);
    EXPECT_GT(placed.parts.settling, 0.0);
    EXPECT_GT(placed.density.sigma(), measured[1].whole->density.sigma());
    // 12 heights on 1.7 m and 2.383 m, each 4.16 cm (1 sd), moved to 0.8 m.
    const double each = volumeLogSdOf(12, Length::fromMetres(1)) / 0.8 / FieldEquation::factor(0.8);
    EXPECT_NEAR(std::sqrt(placed.parts.heights),
                each * std::hypot(FieldEquation::factor(1.7), FieldEquation::factor(2.383)), 1e-3);
}

TEST(Measured, NoSurveyIsPassedOverInSilence) {
    SeasonMaker maker;
    const Instant start = at("2026-02-10T06:00:00Z");
    maker.add(entries::SiloDefined{someLifts()}, start);
    maker.add(level(0.0), start + 1h);
    maker.add(level(1.0), start + 2h);
    maker.add(someLoad(12), start + 3h);
    maker.add(level(3.0), start + 4h);
    entries::HeightSurvey outside = level(2.0);
    outside.readings[3].along = Length::fromMetres(75);
    maker.add(outside, start + 5h);
    for (int i = 0; i < 60; ++i) maker.add(someLoad(12), start + 6h + i * 1min);
    maker.add(level(1.5), start + 8h);
    for (int i = 0; i < 20; ++i) maker.add(someLoad(12), start + 9h + i * 1min);
    maker.add(level(1.4), start + 10h);
    maker.add(level(1.6), start + 11h);
    const auto measured = measuredIn(season::Season::fold(maker.entries), someLifts(), start + 12h);
    const std::vector<std::optional<Code>> reasons{code::heightsWithoutCrop,
                                                   code::surveyWithoutLoads,
                                                   code::surveyImpossible,
                                                   code::heightOutsideSilo,
                                                   {},
                                                   {},
                                                   {}};
    ASSERT_EQ(measured.size(), reasons.size());
    for (std::size_t i = 0; i < reasons.size(); ++i) {
        EXPECT_EQ(measured[i].whole.has_value(), !reasons[i]) << i;
        if (reasons[i]) {
            EXPECT_EQ(measured[i].reason->code, *reasons[i]) << i;
        }
    }
    EXPECT_TRUE(measured[4].placed);
    EXPECT_EQ(measured[5].placedReason->code, code::surveyWithoutRoom);
    EXPECT_EQ(measured[6].placedReason->code, code::surveyWithoutLoads);
}

TEST(Measured, MassAndDryMatterStandInThePredictionToo) {
    const MeasuredParts parts{.mass = 0.0005, .dryMatter = 0.0009, .heights = 0.0003};
    EXPECT_NEAR(logRatioVariance(parts, 0.3), 1.15 * 1.15 * 0.0005 + 0.85 * 0.85 * 0.0009 + 0.0003, 1e-15);
    EXPECT_NEAR(logRatioVariance(parts, 0.0), parts.total(), 1e-15);
}

TEST(DepthSlope, ThreeEveningsOfASteeperFarmMoveItAndSayHowFar) {
    std::vector<SlopeEvidence> evenings;
    for (const double depth : {0.9, 1.8, 2.7}) {
        evenings.push_back(
            {Length::fromMetres(depth), 1.05 * (1 + 0.12 * (0.5 * depth - FieldEquation::kUnitDepth)), 0.02});
    }
    EXPECT_FALSE(depthSlopeFrom(std::span{evenings}.first(2)));
    const auto slope = depthSlopeFrom(evenings);
    ASSERT_TRUE(slope);
    EXPECT_TRUE(slope->converged);
    EXPECT_GT(slope->perMetre, FieldEquation::kFactorSlope);
    EXPECT_LT(slope->perMetre, 0.12);
    EXPECT_LT(slope->sd, slope->priorSd);
    for (SlopeEvidence& evening : evenings) evening.logSd = 1e-4;
    EXPECT_NEAR(depthSlopeFrom(evenings)->perMetre, 0.12, 1e-4);
}

}  // namespace
}  // namespace treadwell::density
