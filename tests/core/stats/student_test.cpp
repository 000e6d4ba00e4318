#include "core/stats/student.h"

#include "core/stats/inverse_chi_square.h"
#include "core/stats/normal.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>
#include <numbers>

namespace treadwell::stats {
namespace {

TEST(Student, OneDegreeIsCauchysLaw) {
    for (const double x : {-30.0, -1.0, 0.0, 0.5, 4.0}) {
        EXPECT_NEAR(studentCdf(x, 1.0), 0.5 + std::atan(x) / std::numbers::pi, 1e-14);
    }
}

TEST(Student, TwoDegreesHaveAClosedForm) {
    for (const double p : {0.001, 0.2, 0.5, 0.9}) {
        const double x = (2.0 * p - 1.0) / std::sqrt(2.0 * p * (1.0 - p));
        EXPECT_NEAR(studentQuantile(p, 2.0), x, 1e-12 * (1.0 + std::abs(x)));
    }
}

// x / (2 sqrt(2 + x^2)) beyond one half: Abramowitz & Stegun 1964, 26.7.4 for two degrees of freedom.
TEST(Student, KeepsItsDigitsNearTheMiddle) {
    for (const double x : {1e-3, 1e-5, 1e-6, 1e-7, 1e-9}) {
        const double beyond = x / (2.0 * std::sqrt(2.0 + x * x));
        EXPECT_NEAR(studentCdf(x, 2.0), 0.5 + beyond, 1e-15) << x;
        EXPECT_NEAR(studentCdf(-x, 2.0), 0.5 - beyond, 1e-15) << x;
    }
    for (int degrees = 2; degrees < 400; degrees += 4) {
        for (const double probability : {0.49, 0.496, 0.498, 0.499, 0.501, 0.502, 0.51}) {
            const double back = studentCdf(studentQuantile(probability, degrees / 2.0), degrees / 2.0);
            EXPECT_NEAR(back, probability, 1e-13) << probability << " at " << degrees / 2.0;
        }
    }
}

TEST(Student, WithoutEndIsTheNormalLaw) {
    constexpr double kEndless = std::numeric_limits<double>::infinity();
    EXPECT_EQ(studentCdf(1.3, kEndless), normalCdf(1.3));
    EXPECT_EQ(studentQuantile(0.9, kEndless), normalQuantile(0.9));
    EXPECT_NEAR(studentQuantile(0.9, 1e7), normalQuantile(0.9), 1e-7);
}

RC_GTEST_PROP(Student, QuantileAndCdfAreInverse, ()) {
    const double probability = static_cast<double>(*rc::gen::inRange(1, 1000)) / 1000.0;
    const double degrees = static_cast<double>(*rc::gen::inRange(2, 400)) / 2.0;
    RC_ASSERT(std::abs(studentCdf(studentQuantile(probability, degrees), degrees) - probability) < 1e-12);
}

TEST(Student, RefusesWhatHasNoAnswer) {
    EXPECT_THROW((void)studentQuantile(0.0, 5), std::invalid_argument);
    EXPECT_THROW((void)studentQuantile(1.0, 5), std::invalid_argument);
    EXPECT_THROW((void)studentQuantile(0.5, 0.2), std::invalid_argument);
    EXPECT_THROW((void)studentCdf(0.5, 0.0), std::invalid_argument);
    EXPECT_TRUE(std::isfinite(studentQuantile(1e-300, 1.0)));
}

// A variance of 4 prior degrees at .105^2 after six deviations that are as large as the prior says keeps its
// scale; after none of them it falls to four tenths.
TEST(InverseChiSquare, LearnsFromDeviations) {
    constexpr double kScale = 0.105 * 0.105;
    constexpr InverseChiSquare kPrior{4.0, kScale};
    EXPECT_NEAR(kPrior.after(6.0 * kScale, 6.0).scale, kScale, 1e-16);
    EXPECT_EQ(kPrior.after(6.0 * kScale, 6.0).degreesOfFreedom, 10.0);
    EXPECT_NEAR(kPrior.after(0.0, 6.0).scale, 0.4 * kScale, 1e-16);
    EXPECT_NEAR(kPrior.cdf(kPrior.quantile(0.3)), 0.3, 1e-12);
    EXPECT_EQ(kPrior.cdf(0.0), 0.0);
    EXPECT_THROW((void)kPrior.quantile(1.0), std::invalid_argument);
}

}  // namespace
}  // namespace treadwell::stats
