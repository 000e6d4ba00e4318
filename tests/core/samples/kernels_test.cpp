#include "core/samples/kernels.h"

#include "core/base/codes.h"
#include "core/samples/codes.h"
#include "tests/support/brief.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::samples {
namespace {

using testing_support::mm;

TEST(CupMeans, FreshAndFermentedStayApart) {
    const auto means = cupMeans(std::vector<CupCount>{
        {1, Material::fresh}, {6, Material::fermented}, {3, Material::fresh}, {2, Material::fresh}});
    ASSERT_EQ(means->size(), 2u);
    EXPECT_EQ((*means)[0].material, Material::fresh);
    EXPECT_DOUBLE_EQ((*means)[0].perCup, 2);
    EXPECT_EQ((*means)[0].cups, 3);
    EXPECT_LT((*means)[0].low80, 2);
    EXPECT_GT((*means)[0].high80, 2);
    EXPECT_EQ((*means)[1].processing, Processing::inadequate);
    EXPECT_TRUE(cupMeans({})->empty());
    EXPECT_EQ(cupMeans(std::vector<CupCount>{{-1, Material::fresh}}).error().field, "counts[0]");
}

TEST(ProcessingScore, RefusesMoreStarchThanThereIs) {
    ScoreTest test{DryMass::fromKilograms(0.1), DryMass::fromKilograms(0.09), Share::fromPercent(30),
                   Share::fromPercent(40), Material::fresh};
    EXPECT_EQ(processingScore(test).error().code(), code::starchImpossible);
    test.coarse = DryMass::fromKilograms(0.2);
    EXPECT_EQ(processingScore(test).error().field, "coarse");
    test.coarse = DryMass{};
    EXPECT_EQ(processingScore(test)->score, Share::fromPercent(100));
    test.wholeStarch = Share{};
    EXPECT_EQ(processingScore(test).error().field, "wholeStarch");
    test.whole = DryMass::fromSi(std::nan(""));
    EXPECT_EQ(processingScore(test).error().code(), code::valueNotFinite);
}

TEST(RollGap, IsNarrowedByWhatIsMissing) {
    const auto advised = [](Processing processing, double gap) {
        return rollGapAdvice(processing, Material::fresh, mm(gap));
    };
    EXPECT_EQ(advised(Processing::optimal, 2).code, code::kernelsOptimal);
    const Message inadequate = advised(Processing::inadequate, 2);
    EXPECT_EQ(inadequate.code, code::kernelsNarrowGap);
    EXPECT_NEAR(std::get<Amount>(inadequate.arguments[1]).si, 0.0015, 1e-12);
    EXPECT_NEAR(std::get<Amount>(advised(Processing::adequate, 2).arguments[1]).si, 0.00175, 1e-12);
    EXPECT_NEAR(std::get<Amount>(advised(Processing::inadequate, 1.2).arguments[1]).si, 0.001, 1e-12);
    EXPECT_EQ(advised(Processing::inadequate, 1).code, code::kernelsCheckRolls);
    EXPECT_EQ(rollGapAdvice(Processing::inadequate, Material::fresh, {}).code, code::kernelsCloseRolls);
    EXPECT_EQ(rollGapAdvice(Processing::inadequate, Material::fermented, mm(2)).code, code::kernelsFermented);
}

}  // namespace
}  // namespace treadwell::samples
