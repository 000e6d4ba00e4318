#include "core/stats/gaussian_process.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace treadwell::stats {
namespace {

const std::vector<PlacedValue> kThree{{0, 0, 1}, {1, 0, 2}, {0, 2, 4}};

TEST(GaussianProcess, PassesThroughItsValuesWithoutNoise) {
    const GaussianProcess process{kThree, {1.0, 2.0, 0.0}};
    for (const PlacedValue& value : kThree) {
        const Scalar here = process.at(value.x, value.y);
        EXPECT_NEAR(here.mean, value.value, 1e-12);
        EXPECT_NEAR(here.variance, 0.0, 1e-12);
    }
}

TEST(GaussianProcess, IsTheConstantFarAwayWithAllItsDoubt) {
    const GaussianProcess process{kThree, {1.0, 2.0, 0.5}};
    const Scalar far = process.at(1e6, 0);
    EXPECT_NEAR(far.mean, process.constant().mean, 1e-12);
    EXPECT_NEAR(far.variance, 2.0 + process.constant().variance, 1e-12);
}

// Two values a distance of ln 2 ranges apart: covariance v (1, 1/2; 1/2, 1); in the middle the weights are
// equal.
TEST(GaussianProcess, AgreesWithTwoValuesByHand) {
    const GaussianProcess process{std::vector<PlacedValue>{{0, 0, 10}, {std::log(2.0), 0, 20}},
                                  {1.0, 4.0, 0.0}};
    EXPECT_NEAR(process.constant().mean, 15, 1e-12);
    EXPECT_NEAR(process.constant().variance, 4.0 * 0.75, 1e-12);  // (1 + 1/2) / 2
    EXPECT_NEAR(process.at(0.5 * std::log(2.0), 0).mean, 15, 1e-12);
}

TEST(GaussianProcess, ForetellsEachValueByTheOthers) {
    const auto foretold = GaussianProcess{kThree, {1.0, 2.0, 0.5}}.leftOut();
    const std::vector<PlacedValue> others{kThree[1], kThree[2]};
    const Scalar first = GaussianProcess{others, {1.0, 2.0, 0.5}}.at(0, 0);
    ASSERT_EQ(foretold.size(), 3u);
    EXPECT_NEAR(foretold[0].mean, first.mean, 1e-12);
    EXPECT_NEAR(foretold[0].variance, first.variance + 0.5, 1e-12);
}

TEST(GaussianProcess, RefusesWhatHasNoSurface) {
    const std::vector<PlacedValue> twice{{0, 0, 1}, {0, 0, 2}};
    EXPECT_THROW((GaussianProcess{twice, {1.0, 1.0, 0.0}}), std::invalid_argument);
    EXPECT_NO_THROW((GaussianProcess{twice, {1.0, 1.0, 0.1}}));
    EXPECT_THROW((GaussianProcess{std::vector<PlacedValue>{{0, 0, 1}}, {1.0, 1.0, 0.1}}),
                 std::invalid_argument);
    EXPECT_THROW((GaussianProcess{kThree, {0.0, 1.0, 0.1}}), std::invalid_argument);
    EXPECT_THROW((GaussianProcess{kThree, {1.0, std::numeric_limits<double>::infinity(), 0.1}}),
                 std::invalid_argument);
}

TEST(FittedResemblance, IsNoneWhereNothingCanBeTold) {
    EXPECT_FALSE(fittedResemblance(std::vector<PlacedValue>{{0, 0, 1}, {1, 1, 2}}));
    EXPECT_FALSE(fittedResemblance(std::vector<PlacedValue>{{0, 0, 1}, {1, 1, 1}, {2, 0, 1}}));
    EXPECT_FALSE(fittedResemblance(std::vector<PlacedValue>{{1, 1, 1}, {1, 1, 2}, {1, 1, 3}}));
}

TEST(FittedResemblance, StaysWithinItsBounds) {
    const auto fit = fittedResemblance(kThree);
    ASSERT_TRUE(fit);
    EXPECT_GT(fit->resemblance.range, 0.01 * 2.2);
    EXPECT_LT(fit->resemblance.range, 10 * 2.3);
    EXPECT_GT(fit->resemblance.noise, 0.0);
    EXPECT_TRUE(std::isfinite(fit->logLikelihood));
}

}  // namespace
}  // namespace treadwell::stats
