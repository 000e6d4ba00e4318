#include "core/passes/driven.h"

#include "core/formats/nmea.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::passes {
namespace {

using namespace std::chrono_literals;
using formats::Fix;
using formats::FixQuality;

const Instant kStart = instantFromIso8601("2026-09-15T12:00:00Z").value();
const farm::SiloPlace kPlace{43.52, -89.51, 0.0, Length::fromMetres(0)};
constexpr double kNorth_m = 111103.0,
                 kEast_m = 80850.0;  // a degree at 43.52 N (derived), to a few parts in 1e5

DrivenGrid gridOf(std::vector<LayerWindow> layers = {{1, kStart, 0, 40}}) {
    return DrivenGrid::make({Length::fromMetres(40), Length::fromMetres(12)}, kPlace, std::move(layers))
        .value();
}

/// A fix at a place on the silo, whose axis points north and whose width runs east.
Fix fixAt(double x_m, double y_m, Instant at, FixQuality quality = FixQuality::rtkFixed) {
    Fix fix;
    fix.at = at;
    fix.latitude_deg = kPlace.latitude_deg + x_m / kNorth_m;
    fix.longitude_deg = kPlace.longitude_deg + y_m / kEast_m;
    fix.quality = quality;
    return fix;
}

/// One drive a metre a second from -2 m to 42 m along, or back.
Instant driveAlong(DrivenGrid& grid, double y_m, Instant at, FixQuality quality, bool back) {
    for (int i = 0; i <= 44; ++i, at += 1s) grid.take(fixAt(back ? 42.0 - i : i - 2.0, y_m, at, quality));
    return at;
}

TEST(Driven, CountsThePassesOfTheTyres) {
    DrivenGrid grid = gridOf();
    grid.begin({MachineMass::fromTonnes(12)}, 0);
    Instant at = driveAlong(grid, 6.0, kStart, FixQuality::rtkFixed, false);
    driveAlong(grid, 6.0, at, FixQuality::rtkFixed, true);
    for (int row = 0; row < 48; ++row) {
        const double y_m = (row + 0.5) * 0.25;
        const int expected = std::abs(std::abs(y_m - 6.0) - 1.0) < 0.35 ? 2 : 0;
        EXPECT_EQ(grid.passes(0)[static_cast<std::size_t>(row * 80 + 40)], expected) << y_m;
    }
    const DrivenLayer layer = grid.layer(0);
    EXPECT_NEAR(layer.distance.metres(), 80, 3);
    EXPECT_EQ(layer.precise.fraction(), 1);
    EXPECT_NEAR(layer.counted.meanPasses, 2 * 4.0 / 48, 1e-9);
    EXPECT_LE(layer.least.meanPasses, layer.counted.meanPasses);
    EXPECT_GE(layer.most.meanPasses, layer.counted.meanPasses);
    EXPECT_EQ(grid.counts().segments, 1);
}

TEST(Driven, APlainReceiverTellsTimeButNoWheels) {
    DrivenGrid grid = gridOf();
    grid.begin({MachineMass::fromTonnes(12)}, 0);
    driveAlong(grid, 6.0, kStart, FixQuality::autonomous, false);
    const DrivenLayer layer = grid.layer(0);
    EXPECT_GT(layer.time.count(), 38);
    EXPECT_EQ(layer.precise.fraction(), 0);
    EXPECT_EQ(layer.counted.meanPasses, 0);
    EXPECT_EQ(layer.least.meanPasses, 0);
    EXPECT_GT(layer.most.meanPasses, 0.5);
    double seconds = 0, middle = 0;
    for (std::size_t i = 0; i < grid.zoneSeconds().size(); ++i) {
        seconds += grid.zoneSeconds()[i];
        if (i % 3 == 1) middle += grid.zoneSeconds()[i];
    }
    EXPECT_NEAR(seconds, layer.time.count(), 1e-9);
    EXPECT_EQ(middle, seconds);
}

TEST(Driven, NothingIsRolledAcrossAGap) {
    for (const bool told : {true, false}) {
        DrivenGrid grid = gridOf();
        grid.begin({MachineMass::fromTonnes(12)}, 0);
        grid.take(fixAt(10, 6, kStart));
        grid.take(fixAt(11, 6, kStart + 1s));
        Fix later = fixAt(20, 6, told ? kStart + 2s : kStart + 30s);
        later.beginsSegment = told;
        grid.take(later);
        grid.take(fixAt(21, 6, later.at + 1s));
        EXPECT_EQ(grid.counts().segments, 2);
        EXPECT_NEAR(grid.layer(0).distance.metres(), 2, 0.01);
    }
}

TEST(Driven, CleansAndCounts) {
    DrivenGrid grid = gridOf();
    grid.begin({MachineMass::fromTonnes(12)}, 0);
    Fix unchecked = fixAt(10, 6, kStart);
    unchecked.checked = false;
    grid.take(unchecked);
    grid.take(fixAt(10, 6, kStart));          // the same moment again
    grid.take(fixAt(35, 6, kStart + 1s));     // a jump
    grid.take(fixAt(12, 6, kStart + 2s));     // and back where it was
    grid.take(fixAt(12, 6.01, kStart + 3s));  // stands
    grid.take(fixAt(14, 6, kStart + 5s));
    grid.take(fixAt(14, 40, kStart + 60s));  // beside the silo
    grid.take(fixAt(15, 40, kStart + 61s));
    grid.take(fixAt(5000, 40, kStart + 62s));  // a kilometre away
    const TrackCounts& counts = grid.counts();
    EXPECT_EQ(counts.fixes, 9);
    EXPECT_EQ(counts.unchecked, 1);
    EXPECT_EQ(counts.notLater, 1);
    EXPECT_EQ(counts.jumps, 1);
    EXPECT_EQ(counts.outside, 1);
    EXPECT_EQ(counts.farAway, 1);
    EXPECT_EQ(counts.segments, 2);
    EXPECT_EQ(counts.byQuality[0], 9);
    EXPECT_NEAR(grid.layer(0).distance.metres(), 4, 0.01);
    EXPECT_NEAR(grid.layer(0).time.count(), 5, 1e-9);
}

TEST(Driven, EachDriveBelongsToTheLayerOfItsTime) {
    DrivenGrid grid = gridOf({{4, kStart, 0, 40}, {5, kStart + 10s, 10, 20}});
    std::vector<DrivenPass> seen;
    grid.onPass([&](const DrivenPass& pass) { seen.push_back(pass); });
    grid.begin({MachineMass::fromTonnes(12)}, 7);
    for (int i = -5; i < 20; ++i) grid.take(fixAt(20 + i, 6, kStart + i * 1s));
    EXPECT_EQ(grid.counts().beforeFirstLayer, 4);
    EXPECT_EQ(grid.layer(0).number, 4);
    EXPECT_NEAR(grid.layer(0).distance.metres(), 10, 0.01);
    EXPECT_NEAR(grid.layer(1).distance.metres(), 10, 0.01);
    ASSERT_EQ(seen.size(), 20);
    EXPECT_EQ(seen[0].layer, 0);
    EXPECT_EQ(seen[19].layer, 1);
    EXPECT_EQ(seen[0].pass.roller, 7);
}

TEST(Driven, RefusesAPlaceThatIsNone) {
    farm::SiloPlace nowhere = kPlace;
    nowhere.latitude_deg = 91;
    const auto grid = DrivenGrid::make({Length::fromMetres(40), Length::fromMetres(12)}, nowhere, {});
    EXPECT_EQ(grid.error().field, "latitude");
}

}  // namespace
}  // namespace treadwell::passes
