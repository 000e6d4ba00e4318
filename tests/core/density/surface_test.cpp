#include "core/density/surface.h"

#include "core/density/codes.h"
#include "core/farm/geometry.h"
#include "core/samples/codes.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <numbers>
#include <numeric>
#include <random>

namespace treadwell::density {
namespace {

using entries::HeightReading;
using farm::FillingWay;
using farm::Silo;
using Height = std::function<double(double, double)>;

Silo siloOf(double width, double length, double wall, FillingWay filling, int rampEnds = 1) {
    Silo silo = testing_support::someSilo();
    silo.width = Length::fromMetres(width);
    silo.length = Length::fromMetres(length);
    silo.wallHeight = Length::fromMetres(wall);
    silo.plannedDepth = Length::fromMetres(wall);
    silo.filling = filling;
    silo.rampEnds = rampEnds;
    return silo;
}

std::vector<HeightReading> read(const Silo& silo, int along, int across, const Height& height) {
    std::vector<HeightReading> readings;
    for (int i = 0; i < along; ++i) {
        for (int j = 0; j < across; ++j) {
            const double x = (i + 0.5) * silo.length.metres() / along;
            const double y = (j + 0.5) * silo.width.metres() / across;
            readings.push_back({Length::fromMetres(x), Length::fromMetres(y),
                                Length::fromMetres(std::max(0.0, height(x, y)))});
        }
    }
    return readings;
}

struct Whole {
    double volume = 0.0, depth = 0.0;
};

/// In the middle of pieces of 5 cm by 50 cm.
Whole integrated(const Silo& silo, const Height& height) {
    double sum = 0.0, squares = 0.0;
    for (double x = 0.025; x < silo.length.metres(); x += 0.05) {
        for (double y = 0.25; y < silo.width.metres(); y += 0.5) {
            const double z = std::max(0.0, height(x, y));
            sum += z;
            squares += z * z;
        }
    }
    return {sum * 0.05 * 0.5, squares / sum};
}

// D'Amours & Savoie 2005, ASAE paper 051051: 4.9 x 21.3 x 3.05 m hold 318 m3, 15.2 x 46.0 x 3.7 m 2587 m3.
TEST(Surface, OneHeightInABoxGivesThePublishedVolumes) {
    const Silo small = siloOf(4.9, 21.3, 3.05, FillingWay::lifts, 0);
    const Silo large = siloOf(15.2, 46.0, 3.7, FillingWay::lifts, 0);
    const auto level = [](double z) { return [z](double, double) { return z; }; };
    EXPECT_NEAR(surfaceOf(small, read(small, 1, 1, level(3.05)))->volume.cubicMetres(), 318, 0.5);
    EXPECT_NEAR(surfaceOf(large, read(large, 1, 1, level(3.7)))->volume.cubicMetres(), 2587, 0.5);
    EXPECT_NEAR(surfaceOf(large, read(large, 4, 3, level(3.7)))->volume.cubicMetres(), 2587, 0.5);
    EXPECT_NEAR(surfaceOf(large, read(large, 4, 3, level(3.7)))->meanDepth.metres(), 3.7, 1e-9);
}

// Derived by arithmetic, 12 x 50 x 3 m, ramp 1:3: 1638 m3 with one ramp, 1476 m3 with two.
TEST(Surface, RampsLieAtTheirSlope) {
    for (const auto& [ends, volume] : {std::pair{1, 1638.0}, {2, 1476.0}}) {
        const Silo silo = siloOf(12, 50, 3, FillingWay::lifts, ends);
        const auto surface =
            surfaceOf(silo, {{{Length::fromMetres(25), Length::fromMetres(6), silo.wallHeight}}});
        EXPECT_NEAR(surface->volume.cubicMetres(), volume, 0.001 * volume);
        EXPECT_NEAR(surface->volume.cubicMetres(), farm::levelVolume(silo, silo.wallHeight).cubicMetres(),
                    0.001 * volume);
    }
}

// Crowned section of 12 m between 3 m walls, 1 m crown, sides 1:3: 45 m2 (derived).
TEST(Surface, ACrownFallsToTheWalls) {
    Silo silo = siloOf(12, 40, 3, FillingWay::lifts, 0);
    silo.crown = Length::fromMetres(1);
    const auto surface =
        surfaceOf(silo, {{{Length::fromMetres(20), Length::fromMetres(6), Length::fromMetres(4)}}});
    EXPECT_NEAR(surface->volume.cubicMetres(), 45.0 * 40.0, 0.005 * 1800);
}

TEST(Surface, TheRampOfAWedgeIsFoundFromTheReadingsOnIt) {
    const Silo silo = siloOf(14, 60, 3.5, FillingWay::wedge);
    for (const double foot : {12.0, 25.0, 41.5, 58.0}) {
        const Height wedge = [foot](double x, double) { return std::min(3.4, (foot - x) / 3.0); };
        const auto surface = surfaceOf(silo, read(silo, 12, 3, wedge));
        ASSERT_TRUE(surface);
        const Whole exact = integrated(silo, wedge);
        EXPECT_NEAR(surface->volume.cubicMetres(), exact.volume, surface->volumeLogSd * exact.volume) << foot;
        EXPECT_NEAR(surface->meanDepth.metres(), exact.depth, 0.04 * exact.depth) << foot;
        EXPECT_TRUE(surface->frontSeen) << foot;
    }
}

TEST(Surface, WithoutAReadingOnTheRampItsPlaceIsUnsureAndSaid) {
    const Silo silo = siloOf(14, 60, 3.5, FillingWay::wedge);
    const std::vector<HeightReading> level{
        {Length::fromMetres(10), Length::fromMetres(7), Length::fromMetres(3)}};
    const auto surface = surfaceOf(silo, level);
    ASSERT_TRUE(surface);
    EXPECT_FALSE(surface->frontSeen);
    // The foot lies evenly between 19 m and 60 m.
    const double sd = 41.0 / std::sqrt(12.0) * 14 * 3;
    EXPECT_NEAR(surface->volumeLogSd,
                std::hypot(sd / surface->volume.cubicMetres(), volumeLogSdOf(1, surface->meanHeight)), 1e-9);
    std::vector<HeightReading> closed = level;
    closed.push_back({Length::fromMetres(24), Length::fromMetres(7), Length{}});
    EXPECT_LT(surfaceOf(silo, closed)->volumeLogSd, 0.4 * surface->volumeLogSd);
}

// Rule B10 as an outside check of its own: what it promises is what a wavy surface read at points really
// gives. 12 cm (1 sd) of waves about 12 m long, 4 cm of reading, 2 cm of floor.
TEST(Surface, TheErrorOfTheVolumeIsThatOfTheRule) {
    const Silo silo = siloOf(14, 60, 3.5, FillingWay::lifts, 0);
    std::mt19937_64 draw{20260915};
    std::normal_distribution<double> normal;
    std::uniform_real_distribution<double> phase{0.0, 2.0 * std::numbers::pi};
    double squares = 0.0;
    constexpr int kDraws = 300;
    for (int i = 0; i < kDraws; ++i) {
        const double first = phase(draw), second = phase(draw), third = phase(draw),
                     floor = 0.02 * normal(draw);
        const Height truth = [&](double x, double y) {
            const double k = 2.0 * std::numbers::pi / 12.0;
            return 2.5 + 0.12 * std::sqrt(2.0 / 3.0) *
                             (std::sin(k * x + first) + std::sin(k * (0.8 * x + 0.6 * y) + second) +
                              std::sin(k * (0.5 * x - 0.9 * y) + third));
        };
        const auto readings =
            read(silo, 4, 3, [&](double x, double y) { return truth(x, y) + floor + 0.04 * normal(draw); });
        const auto surface = surfaceOf(silo, readings);
        squares += std::pow(std::log(surface->volume.cubicMetres() / integrated(silo, truth).volume), 2);
    }
    const double promised = volumeLogSdOf(12, Length::fromMetres(2.5));
    EXPECT_NEAR(promised, std::sqrt((0.0016 + 0.0144) / 12 + 0.0004) / 2.5, 1e-12);
    const double found = std::sqrt(squares / kDraws);
    EXPECT_LT(found, 1.25 * promised);
    EXPECT_GT(found, 0.4 * promised);
}

TEST(Surface, AThousandHeightsOfAMachineCountByTheSquareMetre) {
    const Silo silo = siloOf(14, 60, 3.5, FillingWay::lifts, 0);
    const Height dished = [](double, double y) { return 3.0 + 0.01 * (y - 7) * (y - 7); };
    const auto surface = surfaceOf(silo, read(silo, 240, 28, dished));
    ASSERT_TRUE(surface);
    EXPECT_EQ(surface->readings, 60 * 14);
    const Whole exact = integrated(silo, dished);
    EXPECT_NEAR(surface->volume.cubicMetres(), exact.volume, 1e-3 * exact.volume);
    const auto profile = surface->profile();
    ASSERT_EQ(profile.size(), 120u);
    EXPECT_NEAR(profile[60].metres(), exact.volume / (60 * 14), 0.01);
}

TEST(Surface, WhatCannotBeIsAnErrorThatNamesTheReading) {
    const Silo silo = siloOf(14, 60, 3.5, FillingWay::wedge);
    const auto at = [](double along, double across, double height) {
        return std::vector<HeightReading>{
            {Length::fromMetres(1), Length::fromMetres(1), Length::fromMetres(1)},
            {Length::fromMetres(along), Length::fromMetres(across), Length::fromMetres(height)}};
    };
    const auto expectError = [&](const std::vector<HeightReading>& readings, Code code, const char* field) {
        const auto surface = surfaceOf(silo, readings);
        ASSERT_FALSE(surface);
        EXPECT_EQ(surface.error().code(), code);
        EXPECT_EQ(surface.error().field, field);
    };
    expectError({}, code::readingsMissing, "readings");
    expectError(at(61, 7, 2), code::heightOutsideSilo, "readings[1].along");
    expectError(at(10, 14.1, 2), code::heightOutsideSilo, "readings[1].across");
    expectError(at(10, 7, 4.2), code::heightAboveSilo, "readings[1].height");
    expectError(at(10, 7, std::nan("")), code::heightAboveSilo, "readings[1].height");
    expectError({{Length::fromMetres(5), Length::fromMetres(5), Length{}}}, code::heightsWithoutCrop,
                "readings");
}

}  // namespace
}  // namespace treadwell::density
