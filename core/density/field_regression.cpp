#include "core/density/regression.h"

namespace treadwell::density {

namespace {

DryDensity surveyed(const RegressionInput& input) noexcept {
    return DryDensity::fromKilogramsPerCubicMetre(FieldEquation::bracket(input.packing.si) *
                                                  FieldEquation::meanFactor(input.meanDepth.metres()));
}

constexpr Regression kField{
    .name = "fieldSurvey",
    .formula = "(136.157 + 0.170959 P) (0.818 + 0.0446194 D)",
    .source = {"Muck & Holmes 2000, Applied Engineering in Agriculture 16(6):613-619", Evidence::fromMemory},
    .use = Regression::Use::estimate,
    .wettest = DryMatter::fromPercent(24),
    .driest = DryMatter::fromPercent(67),
    .lowest = DryDensity::fromKilogramsPerCubicMetre(106),
    .highest = DryDensity::fromKilogramsPerCubicMetre(434),
    // 49 of 232 kg DM/m3: derived from R2 = 0.182 and the survey's spread; not the authors' figure.
    .residualLogSd = 0.2112,
    .value = surveyed,
};

}  // namespace

const Regression& fieldRegression() noexcept {
    return kField;
}

}  // namespace treadwell::density
