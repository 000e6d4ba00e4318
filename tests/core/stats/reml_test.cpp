#include "core/stats/reml.h"

#include "core/stats/minimise.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace treadwell::stats {
namespace {

// Balanced groups have a closed form: the analysis of variance, (MSB - MSW)/k between and MSW within.
TEST(Reml, BalancedGroupsAreTheAnalysisOfVariance) {
    const NestedSample sample{{3.0, 5.0, 4.0, 8.0, 10.0, 9.0, 1.0, 2.0, 3.0}, {{1, 1, 1, 2, 2, 2, 3, 3, 3}}};
    const RemlFit fit = reml(sample);
    ASSERT_TRUE(fit.isUsable());
    // Means 4, 9, 2 about 5: MSB = 3 (1 + 16 + 9) / 2 = 39; MSW = (2 + 2 + 2) / 6 = 1.
    EXPECT_NEAR(fit.residual, 1.0, 1e-6);
    EXPECT_NEAR(fit.components.at(0), (39.0 - 1.0) / 3.0, 1e-5);
    EXPECT_NEAR(fit.mean, 5.0, 1e-12);
    EXPECT_NEAR(fit.meanVariance, 39.0 / 9.0, 1e-5);
}

TEST(Reml, GroupsThatDifferLessThanTheirValuesHaveNoComponent) {
    const NestedSample sample{{1.0, 9.0, 2.0, 8.0, 1.5, 8.5}, {{1, 1, 2, 2, 3, 3}}};
    const RemlFit fit = reml(sample);
    ASSERT_TRUE(fit.isUsable());
    EXPECT_NEAR(fit.components.at(0), 0.0, 1e-6);
    EXPECT_NEAR(fit.residual, (16.0 + 9.0 + 12.25) * 2.0 / 5.0, 1e-5);
}

// On one farm the site cannot be told from the mean.
TEST(Reml, OneOutermostGroupIsNotEstimable) {
    const NestedSample sample{{1.0, 2.0, 3.0, 4.0}, {{7, 7, 7, 7}, {1, 1, 2, 2}}};
    EXPECT_EQ(reml(sample).outcome, RemlOutcome::notEstimable);
}

TEST(Reml, ValuesThatDoNotRepeatAreNotEstimable) {
    EXPECT_EQ(reml({{}, {{}}}).outcome, RemlOutcome::notEstimable);
    EXPECT_EQ(reml({{1.0}, {{1}}}).outcome, RemlOutcome::notEstimable);
    EXPECT_EQ(reml({{1.0, 2.0, 4.0}, {{1, 2, 3}}}).outcome, RemlOutcome::notEstimable);
    EXPECT_EQ(reml({{1.0, 1.0, 4.0, 4.0}, {{1, 1, 2, 2}}}).outcome, RemlOutcome::notEstimable);
    EXPECT_EQ(reml({{1.0, 2.0}, {}}).outcome, RemlOutcome::notEstimable);
}

TEST(Reml, RefusesWhatDoesNotFit) {
    EXPECT_THROW((void)reml({{1.0, 2.0}, {{1}}}), std::invalid_argument);
    EXPECT_THROW((void)reml({{1.0, std::numeric_limits<double>::quiet_NaN()}, {{1, 2}}}),
                 std::invalid_argument);
}

// Rosenbrock 1960, The Computer Journal 3:175: a curved valley with its bottom at (1, 1).
TEST(Minimise, FindsTheBottomOfACurvedValley) {
    const auto valley = [](const std::vector<double>& at) {
        return 100.0 * std::pow(at[1] - at[0] * at[0], 2) + std::pow(1.0 - at[0], 2);
    };
    const Minimum found = minimised(valley, {-1.2, 1.0}, 0.5, 10'000);
    EXPECT_TRUE(found.converged);
    EXPECT_NEAR(found.at[0], 1.0, 1e-6);
    EXPECT_NEAR(found.at[1], 1.0, 1e-6);
    EXPECT_FALSE(minimised(valley, {-1.2, 1.0}, 0.5, 20).converged);
}

TEST(Minimise, GoesAroundWhereThereIsNoValue) {
    const auto walled = [](const std::vector<double>& at) {
        return at[0] < 0.5 ? std::numeric_limits<double>::quiet_NaN() : std::pow(at[0] - 0.75, 2);
    };
    EXPECT_NEAR(minimised(walled, {2.0}, 0.5, 1000).at[0], 0.75, 1e-6);
}

}  // namespace
}  // namespace treadwell::stats
