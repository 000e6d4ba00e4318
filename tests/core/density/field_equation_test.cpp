#include "core/density/field_equation.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::density {
namespace {

TEST(FieldEquation, TheRootIsARoot) {
    static_assert(detail::squareRoot(4.0) == 2.0);
    static_assert(detail::squareRoot(0.25) == 0.5);
    constexpr double root = detail::squareRoot(0.0151197456666);
    EXPECT_DOUBLE_EQ(root, std::sqrt(0.0151197456666));
}

TEST(FieldEquation, ThePackingFactorOfABracketTurnsItBack) {
    for (const double p : {0.0, 100.0, 592.0, 3000.0}) {
        EXPECT_NEAR(FieldEquation::packingFactorFor(FieldEquation::bracket(p)), p, 1e-10);
    }
    EXPECT_LT(FieldEquation::packingFactorFor(100.0), 0.0);
}

TEST(FieldEquation, TheMeanFactorIsTheMeanOfTheFactor) {
    const double depth = 3.7;
    constexpr int kSlices = 1000;
    double sum = 0.0;
    for (int i = 0; i < kSlices; ++i) sum += FieldEquation::factor(depth * (i + 0.5) / kSlices);
    EXPECT_NEAR(sum / kSlices, FieldEquation::meanFactor(depth), 1e-12);
    EXPECT_NEAR(FieldEquation::factor(FieldEquation::kUnitDepth), 1.0, 1e-15);
}

TEST(FieldEquation, TheElasticityIsTheSlopeOfTheLogarithms) {
    for (const double p : {10.0, 432.0, 1500.0}) {
        const double step = 1e-5;
        const double slope = (std::log(FieldEquation::bracket(p * std::exp(step))) -
                              std::log(FieldEquation::bracket(p * std::exp(-step)))) /
                             (2.0 * step);
        EXPECT_NEAR(FieldEquation::elasticity(p), slope, 1e-9);
    }
    EXPECT_EQ(FieldEquation::elasticity(0.0), 0.0);
}

}  // namespace
}  // namespace treadwell::density
