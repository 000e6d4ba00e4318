#include "core/density/regression.h"

namespace treadwell::density {

namespace {

DryDensity ofWetGrass(const RegressionInput& input) noexcept {
    const double gramsPerKilogram = input.dryMatter.fraction() * 1000.0;
    return DryDensity::fromKilogramsPerCubicMetre(-32.4 + 1.02 * gramsPerKilogram);
}

constexpr Regression kWetGrass{
    .name = "wetGrass",
    .formula = "-32.4 + 1.02 DM (g/kg)",
    .source = {"van Schooten & Fabri 2022, Wageningen, 16 grass silages", Evidence::published},
    .use = Regression::Use::checkOfCap,
    .wettest = DryMatter::fromPercent(15),
    .driest = DryMatter::fromPercent(21),
    .lowest = DryDensity::fromKilogramsPerCubicMetre(-32.4 + 1.02 * 150.0),
    .highest = DryDensity::fromKilogramsPerCubicMetre(-32.4 + 1.02 * 210.0),
    .residualLogSd = std::nullopt,
    .value = ofWetGrass,
};

}  // namespace

const Regression& wetGrassRegression() noexcept {
    return kWetGrass;
}

}  // namespace treadwell::density
