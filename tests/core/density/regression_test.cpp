#include "core/density/regression.h"

#include "tests/core/density/example.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace treadwell::density {
namespace {

TEST(Regression, OneGivesTheEstimateAndEachIsCited) {
    std::set<std::string_view> names;
    int estimating = 0;
    for (const Regression* regression : regressions()) {
        EXPECT_TRUE(names.insert(regression->name).second);
        EXPECT_FALSE(regression->source.citation.empty());
        EXPECT_FALSE(regression->formula.empty());
        EXPECT_LT(regression->wettest, regression->driest);
        EXPECT_LT(regression->lowest, regression->highest);
        estimating += regression->use == Regression::Use::estimate;
    }
    EXPECT_EQ(estimating, 1);
}

TEST(Regression, TheTableGivesWhatTheEstimateGives) {
    const Estimate result = estimate(exampleSituation()).value();
    const RegressionInput input{result.packing.factor, DryMatter::fromPercent(35), Length::fromMetres(3)};
    EXPECT_DOUBLE_EQ(fieldRegression().value(input).si(), result.density.median().si());
}

TEST(Regression, TheWetGrassOneKnowsNoPacking) {
    const DryMatter wet = DryMatter::fromPercent(18);
    const Regression& regression = wetGrassRegression();
    EXPECT_EQ(regression.value({PackingFactor{0}, wet, Length::fromMetres(1)}),
              regression.value({PackingFactor{900}, wet, Length::fromMetres(4)}));
    EXPECT_EQ(regression.value({{}, regression.wettest, {}}), regression.lowest);
    EXPECT_EQ(regression.value({{}, regression.driest, {}}), regression.highest);
}

}  // namespace
}  // namespace treadwell::density
