#include "core/density/spread.h"

#include "core/density/field_equation.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

namespace treadwell::density {
namespace {

constexpr Length kUnitMean = Length::fromMetres(2.0 * FieldEquation::kUnitDepth);

TEST(Spread, PlaceAveragesOverTheDaysLayers) {
    const Residual residual;
    EXPECT_EQ(fixedParts(residual, Reading::silo, 5, kUnitMean)[SpreadPart::place], 0.0);
    EXPECT_DOUBLE_EQ(fixedParts(residual, Reading::day, 5, kUnitMean)[SpreadPart::place], 0.01 / 5);
    EXPECT_DOUBLE_EQ(fixedParts(residual, Reading::layer, 5, kUnitMean)[SpreadPart::place], 0.01);
    EXPECT_EQ(fixedParts(residual, Reading::layer, 5, kUnitMean)[SpreadPart::face], 0.0);
    EXPECT_GT(fixedParts(residual, Reading::core, 5, kUnitMean)[SpreadPart::face], 0.0);
}

TEST(Spread, DepthCostsNothingWhereTheFactorIsOne) {
    const Residual residual;
    EXPECT_NEAR(fixedParts(residual, Reading::silo, 1, kUnitMean)[SpreadPart::depthSlope], 0.0, 1e-20);
    EXPECT_NEAR(depthSlopeVarianceAt(Length::fromMetres(FieldEquation::kUnitDepth)), 0.0, 1e-20);
    // At 3 m of mean depth: .0446 * |1.5 - 2.04| / .952.
    const double three =
        fixedParts(residual, Reading::silo, 1, Length::fromMetres(3))[SpreadPart::depthSlope];
    EXPECT_NEAR(std::sqrt(three), 0.0446 * 0.54 / 0.952, 1e-4);
}

TEST(Spread, OnlyWhatExceedsTheOrdinaryIsAdded) {
    SpreadParts parts;
    setInputs(parts, {}, 0.0040);
    EXPECT_EQ(parts[SpreadPart::inputsBeyondOrdinary], 0.0);
    setInputs(parts, {}, 0.0080);
    EXPECT_NEAR(parts[SpreadPart::inputsBeyondOrdinary], 0.0025, 1e-15);
    EXPECT_NEAR(parts.total(), 0.0080, 1e-15);
}

TEST(Spread, InputsGoInByTheirElasticity) {
    const InputParts parts = inputParts(
        {.machineMass = 0.1, .layer = 0.2, .packingTime = 0.3, .loadMass = 0.2, .dryMatter = 0.4}, 0.5);
    EXPECT_DOUBLE_EQ(parts.machineMass, 0.0025);
    EXPECT_DOUBLE_EQ(parts.layer, 0.01);
    EXPECT_DOUBLE_EQ(parts.packingTime, 0.005625);
    EXPECT_DOUBLE_EQ(parts.loadMass, 0.0025);
    EXPECT_DOUBLE_EQ(parts.dryMatter, 0.01);
}

TEST(Spread, TheLargestPartIsNamed) {
    SpreadParts parts = fixedParts({}, Reading::core, 1, Length::fromMetres(3));
    EXPECT_EQ(parts.largest(), SpreadPart::place);
    EXPECT_EQ(SpreadParts{}.largest(), SpreadPart::site);
}

TEST(Spread, NamesAreDistinct) {
    std::set<std::string_view> names;
    for (std::size_t i = 0; i < kSpreadParts; ++i) {
        const std::string_view name = enumText(static_cast<SpreadPart>(i));
        EXPECT_FALSE(name.empty());
        EXPECT_TRUE(names.insert(name).second);
    }
    for (const Reading reading : {Reading::silo, Reading::day, Reading::layer, Reading::core}) {
        EXPECT_FALSE(enumText(reading).empty());
    }
}

}  // namespace
}  // namespace treadwell::density
