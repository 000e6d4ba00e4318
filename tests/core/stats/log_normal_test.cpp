#include "core/stats/log_normal.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::stats {
namespace {

struct Case {
    LogNormal distribution;
    double cap;
    double meanUpTo;
    double chanceUpTo225;
    double mean;
};

// mpmath 1.3.0 at 30 digits: the mean below the cap by numerical integration of the density.
constexpr Case kCases[] = {
    {{228.98, 0.166}, 316.2, 231.60863552162675, 0.45793872235316465, 232.15672061453027},
    {{300.0, 0.166}, 316.2, 289.10602983483528, 0.041545654214329943, 304.16200622045193},
    {{400.0, 0.3}, 316.2, 305.97182363761374, 0.027563083750686692, 418.41114396348678},
};

TEST(LogNormal, AgreesWithNumericalIntegration) {
    for (const Case& row : kCases) {
        EXPECT_NEAR(row.distribution.meanUpTo(row.cap), row.meanUpTo, 1e-11);
        EXPECT_NEAR(row.distribution.cdf(225.0), row.chanceUpTo225, 1e-14);
        EXPECT_NEAR(row.distribution.mean(), row.mean, 1e-11);
    }
}

TEST(LogNormal, MedianAndBand) {
    const LogNormal density{217.6, 0.166};
    EXPECT_DOUBLE_EQ(density.quantile(0.5), 217.6);
    EXPECT_NEAR(density.quantile(0.9) / 217.6, std::exp(1.2815515655446004 * 0.166), 1e-14);
    EXPECT_NEAR(density.quantile(0.1) * density.quantile(0.9), 217.6 * 217.6, 1e-9);
    EXPECT_NEAR(density.cdf(density.quantile(0.3)), 0.3, 1e-14);
}

TEST(LogNormal, WithoutSpreadItIsItsMedian) {
    const LogNormal known{217.6, 0.0};
    EXPECT_EQ(known.quantile(0.1), 217.6);
    EXPECT_EQ(known.cdf(217.5), 0.0);
    EXPECT_EQ(known.cdf(217.6), 1.0);
    EXPECT_EQ(known.mean(), 217.6);
    EXPECT_EQ(known.meanUpTo(200.0), 200.0);
    EXPECT_EQ(known.meanUpTo(300.0), 217.6);
}

TEST(LogNormal, NothingBelowZero) {
    EXPECT_EQ((LogNormal{217.6, 0.2}.cdf(0.0)), 0.0);
    EXPECT_EQ((LogNormal{217.6, 0.2}.cdf(-1.0)), 0.0);
}

}  // namespace
}  // namespace treadwell::stats
