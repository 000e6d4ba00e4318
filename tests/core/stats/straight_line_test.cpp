#include "core/stats/straight_line.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace treadwell::stats {
namespace {

// By hand: (0, 1), (1, 3), (2, 2) have slope 1/2, mean (1, 2), residuals -1/2, 1, -1/2 and so a residual
// variance of 3/2 and a variance of the slope of 3/4.
TEST(StraightLine, ByHand) {
    const auto line = lineThrough(std::array{Point{0, 1}, Point{1, 3}, Point{2, 2}});
    ASSERT_TRUE(line);
    EXPECT_DOUBLE_EQ(line->slope, 0.5);
    EXPECT_DOUBLE_EQ(line->at(3), 3);
    EXPECT_NEAR(line->residualSd, std::sqrt(1.5), 1e-12);
    EXPECT_NEAR(line->slopeSd, std::sqrt(0.75), 1e-12);
    // One degree of freedom: the 50 % interval is a standard error to either side.
    const auto interval = line->slopeInterval(0.5);
    ASSERT_TRUE(interval);
    EXPECT_NEAR(interval->high, 0.5 + std::sqrt(0.75), 1e-9);
    EXPECT_NEAR(interval->low, 0.5 - std::sqrt(0.75), 1e-9);
}

TEST(StraightLine, TwoPointsSayNothingOfTheirScatter) {
    const auto line = lineThrough(std::array{Point{1, 1}, Point{3, 5}});
    ASSERT_TRUE(line);
    EXPECT_DOUBLE_EQ(line->slope, 2);
    EXPECT_EQ(line->slopeInterval(0.8), std::nullopt);
}

TEST(StraightLine, NoneWithoutTwoDifferentPlaces) {
    EXPECT_FALSE(lineThrough({}));
    EXPECT_FALSE(lineThrough(std::array{Point{1, 1}}));
    EXPECT_FALSE(lineThrough(std::array{Point{0.1, 1}, Point{0.1, 2}, Point{0.1, 4}}));
    EXPECT_FALSE(lineThrough(std::array{Point{1, 1}, Point{2, std::nan("")}}));
}

}  // namespace
}  // namespace treadwell::stats
