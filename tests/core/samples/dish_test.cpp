#include "core/samples/dish.h"

#include "core/base/codes.h"
#include "core/samples/codes.h"
#include "tests/support/grams.h"

#include <gtest/gtest.h>

#include <limits>
#include <vector>

namespace treadwell::samples {
namespace {

using testing_support::dryGrams;
using testing_support::grams;

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

TEST(Dish, RefusesImpossibleWeights) {
    EXPECT_EQ(dryMatterOfDish(grams(100), dryGrams(100)).error().code(), code::dishImpossible);
    EXPECT_EQ(dryMatterOfDish(grams(100), dryGrams(0)).error().code(), code::dishImpossible);
    EXPECT_EQ(dryMatterOfDish(grams(kNaN), dryGrams(1)).error().field, "wet");
    EXPECT_EQ(dryMatterOfDish(grams(1), dryGrams(kNaN)).error().field, "dry");
}

TEST(Dish, TakesTheEmptyDishOff) {
    EXPECT_NEAR(netOfDish(grams(142.5), grams(41.2))->kilograms(), 0.1013, 1e-12);
    EXPECT_EQ(netOfDish(grams(41), grams(41)).error().code(), code::grossBelowTare);
    EXPECT_EQ(netOfDish(grams(41), grams(kNaN)).error().code(), code::valueNotFinite);
}

TEST(DryingStep, TellsWhatIsKnownAfterEachWeighing) {
    const std::vector<DryMass> all{dryGrams(50), dryGrams(40), dryGrams(39.5)};
    const auto first = nextDryingStep(grams(100), std::span{all}.first(0));
    EXPECT_EQ(first->dryMatter, std::nullopt);
    const auto second = nextDryingStep(grams(100), std::span{all}.first(1));
    EXPECT_NEAR(second->dryMatter->percent(), 50, 1e-9);
    EXPECT_EQ(second->lastLoss, std::nullopt);
    const auto last = nextDryingStep(grams(100), all);
    EXPECT_TRUE(last->isDry);
    EXPECT_EQ(last->heat, Seconds{0});
    EXPECT_NEAR(last->lastLoss->kilograms(), 0.0005, 1e-12);
    EXPECT_FALSE(last->small);
    EXPECT_TRUE(nextDryingStep(grams(60), {})->small);
}

TEST(DryingStep, RefusesWhatCannotBe) {
    EXPECT_EQ(nextDryingStep(grams(10), {}).error().field, "wet");
    const auto gained = nextDryingStep(grams(100), std::vector{dryGrams(40), dryGrams(40.6)});
    EXPECT_EQ(gained.error().code(), code::weighingGained);
    EXPECT_EQ(gained.error().field, "weighings[1]");
    EXPECT_TRUE(nextDryingStep(grams(100), std::vector{dryGrams(40), dryGrams(40.3)})->isDry);
    EXPECT_EQ(nextDryingStep(grams(100), std::vector{dryGrams(100)}).error().code(), code::dishImpossible);
    EXPECT_EQ(nextDryingStep(grams(100), std::vector{dryGrams(kNaN)}).error().code(), code::valueNotFinite);
}

}  // namespace
}  // namespace treadwell::samples
