#include "core/samples/sieve.h"

#include "core/base/codes.h"
#include "core/samples/codes.h"
#include "tests/support/brief.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <limits>

namespace treadwell::samples {
namespace {

using testing_support::mm;

SieveTest testOf(const std::vector<double>& grams, std::optional<double> before = {}) {
    SieveTest test;
    const auto openings = openingsOf(SieveStack::threeTo4);
    test.openings.assign(openings.begin(), openings.end());
    for (const double g : grams) test.masses.push_back(AsFedMass::fromKilograms(g / 1000));
    if (before) test.before = AsFedMass::fromKilograms(*before / 1000);
    return test;
}

std::vector<Code> remarksOf(const SieveTest& test) {
    std::vector<Code> codes;
    const auto parts = partsOf(test);
    for (const Message& remark : parts->remarks) codes.push_back(remark.code);
    return codes;
}

Code refusalOf(const SieveTest& test) {
    return partsOf(test).error().code();
}

TEST(SieveParts, AreOfTheWhole) {
    const auto parts = partsOf(testOf({10, 120, 50, 20}, 203));
    ASSERT_TRUE(parts);
    EXPECT_NEAR(parts->parts[1].percent(), 60, 1e-9);
    EXPECT_NEAR(parts->coarserThan(mm(8))->percent(), 65, 1e-9);
    EXPECT_EQ(parts->coarserThan(mm(5)), std::nullopt);
    EXPECT_TRUE(parts->remarks.empty());
}

TEST(SieveParts, BetweenSievesTheyAreReadOffALine) {
    const auto parts = *partsOf(testOf({10, 120, 50, 20}));
    EXPECT_NEAR(parts.coarserThanAny(mm(8)).percent(), 65, 1e-9);
    EXPECT_GT(parts.coarserThanAny(mm(6)), parts.coarserThanAny(mm(8)));
    EXPECT_LT(parts.coarserThanAny(mm(6)), parts.coarserThanAny(mm(4)));
    EXPECT_NEAR(parts.coarserThanAny(mm(30)).percent(), 5, 1e-9);
    EXPECT_NEAR(parts.coarserThanAny(mm(1)).percent(), 90, 1e-9);
}

TEST(SieveParts, SayWhatIsOdd) {
    using testing::ElementsAre;
    EXPECT_THAT(remarksOf(testOf({0, 120, 50, 20})), ElementsAre(code::sieveEmpty));
    EXPECT_THAT(remarksOf(testOf({10, 120, 50, 0})), ElementsAre(code::panEmpty));
    EXPECT_THAT(remarksOf(testOf({10, 120, 50, 20}, 220)), ElementsAre(code::sieveLost));
    SieveTest wet = testOf({10, 120, 50, 20});
    wet.wet = true;
    EXPECT_THAT(remarksOf(wet), ElementsAre(code::sieveWet));
    EXPECT_TRUE(partsOf(testOf({10, 120, 50, 20}, 220), Share::fromPercent(10))->remarks.empty());
}

TEST(SieveParts, RefuseWhatCannotBe) {
    EXPECT_EQ(refusalOf(testOf({0, 0, 0, 0})), code::sieveNothing);
    EXPECT_EQ(refusalOf(testOf({10, 120, 50})), code::sieveCountWrong);
    EXPECT_EQ(refusalOf(testOf({10, -1, 50, 20})), code::valueOutOfRange);
    EXPECT_EQ(refusalOf(testOf({10, std::numeric_limits<double>::quiet_NaN(), 50, 20})),
              code::valueNotFinite);
    EXPECT_EQ(refusalOf(testOf({10, 120, 50, 20}, 150)), code::sieveGained);
    SieveTest upsideDown = testOf({10, 120, 50, 20});
    std::swap(upsideDown.openings[0], upsideDown.openings[1]);
    EXPECT_EQ(refusalOf(upsideDown), code::sievesNotInOrder);
    EXPECT_EQ(refusalOf({}), code::readingsMissing);
}

TEST(SieveParts, PercentMustMakeAWhole) {
    const auto openings = openingsOf(SieveStack::threeTo4);
    EXPECT_NEAR(partsOfPercent(openings, std::array{5.0, 60.0, 25.0, 9.5})->parts[0].fraction(), 5 / 99.5,
                1e-12);
    EXPECT_EQ(partsOfPercent(openings, std::array{5.0, 60.0, 25.0, 20.0}).error().code(), code::percentSum);
    EXPECT_EQ(partsOfPercent(openings, std::array{5.0, 95.0}).error().code(), code::sieveCountWrong);
    EXPECT_EQ(partsOfPercent(openings, std::array{5.0, 160.0, 25.0, 20.0}).error().field, "percent[1]");
}

TEST(Pooled, CountsTestsAlikeAndShowsTheirSpread) {
    const std::vector tests{*partsOf(testOf({10, 60, 20, 10})), *partsOf(testOf({0, 140, 40, 20}))};
    const auto pool = pooled(tests);
    ASSERT_TRUE(pool);
    EXPECT_NEAR(pool->parts[0].percent(), 5, 1e-9);
    EXPECT_NEAR(pool->parts[1].percent(), 65, 1e-9);
    EXPECT_NEAR(pool->sds[0].percent(), 7.0710678, 1e-6);
    EXPECT_EQ(pool->tests, 2);
    EXPECT_EQ(pool->remarks.size(), 1u);
    EXPECT_EQ(pooled({}).error().code(), code::readingsMissing);
    const std::vector mixed{
        tests[0], *partsOfPercent(openingsOf(SieveStack::threeTo118), std::array{5.0, 60.0, 25.0, 10.0})};
    EXPECT_EQ(pooled(mixed).error().code(), code::sieveStacksDiffer);
}

RC_GTEST_PROP(SieveProperty, PartsMakeOneAndDoNotDependOnTheUnit, ()) {
    std::vector<double> grams, tenfold;
    for (int i = 0; i < 4; ++i) {
        grams.push_back(*rc::gen::inRange(1, 5000) / 10.0);
        tenfold.push_back(10 * grams.back());
    }
    const auto parts = *partsOf(testOf(grams)), same = *partsOf(testOf(tenfold));
    Share sum;
    for (std::size_t i = 0; i < 4; ++i) {
        sum += parts.parts[i];
        RC_ASSERT(std::abs((parts.parts[i] - same.parts[i]).fraction()) < 1e-12);
    }
    RC_ASSERT(std::abs(sum.fraction() - 1) < 1e-12);
    const double a = *rc::gen::inRange(10, 400) / 10.0, b = *rc::gen::inRange(10, 400) / 10.0;
    if (a < b) RC_ASSERT(parts.coarserThanAny(mm(a)) >= parts.coarserThanAny(mm(b)));
}

}  // namespace
}  // namespace treadwell::samples
