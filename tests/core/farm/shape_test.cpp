#include "core/farm/shape.h"

#include "core/farm/codes.h"
#include "core/farm/geometry.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace treadwell::farm {
namespace {

Shape bunker(double width, double length, double height, double wall, int ends = 1) {
    return {.width = Length::fromMetres(width),
            .length = Length::fromMetres(length),
            .height = Length::fromMetres(height),
            .wallHeight = Length::fromMetres(wall),
            .rampEnds = ends};
}

Shape pile(double width, double length, double height, double run = 3) {
    Shape shape = bunker(width, length, height, 0, 2);
    shape.kind = ShapeKind::pile;
    shape.rampSlope = Slope::fromRunPerRise(run);
    return shape;
}

/// The body by the midpoint rule over the surface.
struct Summed {
    double volume = 0, squares = 0, surface = 0;
};

Summed integrate(const Shape& shape) {
    constexpr int kCells = 120;
    const double dx = shape.length.metres() / kCells, dy = shape.width.metres() / kCells;
    const auto z = [&](double x, double y) {
        return surfaceHeight(shape, Length::fromMetres(x), Length::fromMetres(y)).metres();
    };
    Summed sum;
    for (int i = 0; i < kCells; ++i) {
        for (int j = 0; j < kCells; ++j) {
            const double x = (i + 0.5) * dx, y = (j + 0.5) * dy, h = z(x, y);
            const double gx = (z(x + 1e-6, y) - z(x - 1e-6, y)) / 2e-6;
            const double gy = (z(x, y + 1e-6) - z(x, y - 1e-6)) / 2e-6;
            sum.volume += h * dx * dy;
            sum.squares += h * h * dx * dy;
            sum.surface += std::sqrt(1 + gx * gx + gy * gy) * dx * dy;
        }
    }
    return sum;
}

double between(double low, double high) {
    return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0;
}

void holdsAgainstIntegration(const Shape& shape) {
    RC_ASSERT(validate(shape).has_value());
    const Body body = bodyOf(shape);
    const Summed sum = integrate(shape);
    RC_ASSERT(std::abs(body.volume.cubicMetres() / sum.volume - 1) < 2e-3);
    RC_ASSERT(std::abs(body.meanDepth.metres() / (sum.squares / sum.volume) - 1) < 2e-3);
    RC_ASSERT(std::abs(body.surface.squareMetres() / sum.surface - 1) < 1e-2);
}

RC_GTEST_PROP(Shapes, BunkersHoldAgainstIntegration, ()) {
    const int ends = *rc::gen::inRange(1, 3);
    const double width = between(6, 40), wall = between(1, 5);
    const double height = wall * 0.5 + between(0, width / 6 > wall ? wall : width / 6);
    Shape shape = bunker(width, 0, height, wall, ends);
    shape.rampSlope = Slope::fromRunPerRise(between(2, 8));
    const double ramps = height * shape.rampSlope.runPerRise() * ends;
    shape.length = Length::fromMetres(ramps + between(5, 60));
    if (height - wall > width / 6) shape.height = shape.wallHeight;
    holdsAgainstIntegration(shape);
}

RC_GTEST_PROP(Shapes, PilesHoldAgainstIntegration, ()) {
    const double run = between(1.5, 6), height = between(0.5, 6), base = 2 * run * height;
    const double width = std::max(3.0, base) + between(0, 30);
    holdsAgainstIntegration(pile(width, width + between(2, 60), height, run));
}

RC_GTEST_PROP(Shapes, HigherHoldsMore, ()) {
    const Shape full = *rc::gen::element(bunker(12, 50, 4, 3), bunker(12, 60, 4, 3, 2), pile(30, 60, 4));
    const double low = between(0.05, 3.9);
    const Volume less = bodyOf(filledTo(full, Length::fromMetres(low))).volume;
    RC_ASSERT(less < bodyOf(filledTo(full, Length::fromMetres(low + 0.05))).volume);
    RC_ASSERT(less > Volume{});
}

// The walls by hand: 12 x 50 m, 3 m high, back wall, ramp 1:3: two sides of 150 less a triangle of 13.5,
// and 36.
TEST(Shapes, WallsThatCropLiesAgainst) {
    EXPECT_NEAR(bodyOf(bunker(12, 50, 3, 3)).walls.squareMetres(), 2 * (150 - 13.5) + 36, 1e-9);
    EXPECT_NEAR(bodyOf(bunker(12, 50, 3, 3, 2)).walls.squareMetres(), 2 * (150 - 27), 1e-9);
    EXPECT_EQ(bodyOf(pile(30, 60, 4)).walls, Area{});
}

TEST(Shapes, OfASiloHasItsCrown) {
    Silo silo = testing_support::someSilo();
    silo.crown = Length::fromMetres(0.5);
    const Shape shape = shapeOf(silo);
    EXPECT_TRUE(validate(shape));
    EXPECT_EQ(shape.height, silo.wallHeight + silo.crown);
    EXPECT_NEAR(bodyOf(filledTo(shape, silo.wallHeight)).volume.cubicMetres(),
                levelVolume(silo, silo.wallHeight).cubicMetres(), 1e-9);
}

TEST(Shapes, ThatCannotBeAreRefused) {
    EXPECT_EQ(validate(pile(10, 60, 4)).error().code(), code::pileDoesNotClose);
    EXPECT_EQ(validate(bunker(12, 10, 3.5, 3.5)).error().code(), code::rampLongerThanSilo);
    EXPECT_EQ(validate(bunker(12, 50, 5.5, 3)).error().code(), code::crownTooWide);
    EXPECT_EQ(validate(bunker(12, 50, 3, 0)).error().field, "wallHeight");
    EXPECT_EQ(validate(bunker(12, 50, 3, 3, 0)).error().field, "rampEnds");
}

}  // namespace
}  // namespace treadwell::farm
