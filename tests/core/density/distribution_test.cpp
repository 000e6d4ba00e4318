#include "core/density/distribution.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::density {
namespace {

constexpr DryDensity kLimit = DryDensity::fromKilogramsPerCubicMetre(316.16);

TEST(Distribution, QuantilesStopAtTheLimit) {
    const Distribution density{{280, 0.166}, kLimit};
    EXPECT_FALSE(density.isLimited());
    EXPECT_EQ(density.median().si(), 280);
    EXPECT_NEAR(density.low80().si(), 280 * std::exp(-1.2815515655446 * 0.166), 1e-9);
    EXPECT_EQ(density.high80(), kLimit);
    EXPECT_EQ(density.quantile(0.9999), kLimit);
    EXPECT_NEAR(density.quantile(0.1).si(), density.low80().si(), 1e-9);
    EXPECT_LT(density.mean().si(), 280 * std::exp(0.5 * 0.166 * 0.166));
}

TEST(Distribution, TheChanceIsTheUpperTail) {
    const Distribution density{{228.98, 0.166}, kLimit};
    EXPECT_NEAR(density.chanceOfAtLeast(density.quantile(0.25)).fraction(), 0.75, 1e-12);
    EXPECT_GT(density.chanceOfAtLeast(kLimit).fraction(), 0.0);
    EXPECT_EQ(density.chanceOfAtLeast(kLimit * 1.001).fraction(), 0.0);
    EXPECT_EQ(density.chanceOfAtLeast(DryDensity{}).fraction(), 1.0);
}

TEST(Distribution, AnEstimatedSpreadFollowsStudentsT) {
    const Distribution known{{228.98, 0.166}, kLimit};
    const Distribution estimated{{228.98, 0.166}, kLimit, 4.0};
    EXPECT_NEAR(estimated.halfBand80(), 1.5332, 5e-5);  // Student's table
    EXPECT_NEAR(estimated.low80().si(), 228.98 * std::exp(-1.5332 * 0.166), 0.01);
    EXPECT_NEAR(estimated.quantile(0.1).si(), estimated.low80().si(), 1e-9);
    EXPECT_NEAR(estimated.chanceOfAtLeast(estimated.quantile(0.25)).fraction(), 0.75, 1e-12);
    EXPECT_EQ(estimated.mean(), known.mean());
    EXPECT_NEAR((Distribution{{228.98, 0.166}, kLimit, 1e9}.low80().si()), known.low80().si(), 1e-9);
    EXPECT_THROW((Distribution{{228.98, 0.166}, kLimit, 0.5}), std::invalid_argument);
}

TEST(Distribution, WithoutSpreadAStep) {
    const Distribution density{{228.98, 0.0}, kLimit};
    EXPECT_EQ(density.chanceOfAtLeast(DryDensity::fromSi(228.98)).fraction(), 1.0);
    EXPECT_EQ(density.chanceOfAtLeast(DryDensity::fromSi(229)).fraction(), 0.0);
    EXPECT_EQ(density.low80(), density.high80());
}

TEST(Distribution, PorosityRunsTheOtherWay) {
    const Distribution density{{228.98, 0.166}, kLimit};
    const PorosityDistribution porosity{density, DryDensity::fromSi(404.7)};
    EXPECT_NEAR(porosity.low80().fraction(), 1 - density.high80().si() / 404.7, 1e-15);
    EXPECT_NEAR(porosity.quantile(0.9).fraction(), porosity.high80().fraction(), 1e-12);
}

}  // namespace
}  // namespace treadwell::density
