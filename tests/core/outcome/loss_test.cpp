#include "core/outcome/loss.h"

#include "core/base/codes.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace treadwell::outcome {
namespace {

TEST(Loss, NeverExtrapolated) {
    for (const double density : {160.1, 352.5, 0.0, -5.0}) {
        const auto result = lossAt(DryDensity::fromSi(density));
        ASSERT_FALSE(result) << density;
        EXPECT_EQ(result.error().code(), code::valueOutOfRange);
        EXPECT_EQ(result.error().field, "density");
    }
    EXPECT_EQ(lossAt(DryDensity::fromSi(std::nan(""))).error().code(), code::valueNotFinite);
    EXPECT_TRUE(lossAt(lossRows().front().density));
    EXPECT_TRUE(lossAt(lossRows().back().density));
}

TEST(Loss, SavedIsTheDifferenceOfTheLine) {
    const DryDensity before = DryDensity::fromSi(200), after = DryDensity::fromSi(240);
    const auto saved = lossSaved(before, after);
    ASSERT_TRUE(saved);
    EXPECT_FALSE(saved->heldToRows);
    EXPECT_NEAR(saved->saved.fraction(), (*lossAt(before) - *lossAt(after)).fraction(), 1e-15);
    EXPECT_EQ(lossSaved(after, before)->saved, -saved->saved);
}

TEST(Loss, SavedBeyondTheRowsCountsToTheirEndAndSaysSo) {
    const auto saved = lossSaved(DryDensity::fromSi(120), DryDensity::fromSi(200));
    const auto inside = lossSaved(lossRows().front().density, DryDensity::fromSi(200));
    EXPECT_TRUE(saved->heldToRows);
    EXPECT_EQ(saved->saved, inside->saved);
    EXPECT_EQ(lossSaved(DryDensity::fromSi(100), DryDensity::fromSi(120))->saved, Loss{});
    EXPECT_EQ(lossSaved(DryDensity::fromSi(-1), DryDensity::fromSi(120)).error().field, "before");
    EXPECT_EQ(lossSaved(DryDensity::fromSi(200), DryDensity::fromSi(1e300)).error().field, "after");
}

TEST(Loss, CostNamesWhatIsWrong) {
    EXPECT_EQ(costPerTonneLeft(-1, Loss{}).error().field, "cost");
    EXPECT_EQ(costPerTonneLeft(std::numeric_limits<double>::infinity(), Loss{}).error().field, "cost");
    EXPECT_EQ(costPerTonneLeft(40, Loss::fromFraction(1)).error().field, "loss");
    EXPECT_EQ(costPerTonneLeft(40, Shrink::fromFraction(-0.1)).error().field, "shrink");
    EXPECT_EQ(costPerTonneLeft(40, Loss{}), 40);
}

}  // namespace
}  // namespace treadwell::outcome
