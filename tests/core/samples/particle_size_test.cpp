#include "core/samples/particle_size.h"

#include "core/base/codes.h"
#include "core/samples/codes.h"
#include "tests/support/brief.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace treadwell::samples {
namespace {

using testing_support::mm;

SieveParts partsOn(std::vector<double> openings, const std::vector<double>& percent) {
    std::vector<Length> lengths;
    for (const double opening : openings) lengths.push_back(mm(opening));
    return *partsOfPercent(lengths, percent);
}

TEST(StandardSize, NeedsTheLengthOfWhatLiesOnTop) {
    const SieveParts some = partsOn({19, 8, 4}, {5, 60, 25, 10}), none = partsOn({19, 8, 4}, {0, 60, 30, 10});
    EXPECT_EQ(standardSize(some, {}).error().code(), code::topLengthMissing);
    EXPECT_TRUE(standardSize(some, mm(40)));
    EXPECT_TRUE(standardSize(none, {}));
    EXPECT_EQ(standardSize(some, mm(10)).error().field, "topLength");
    EXPECT_EQ(standardSize(some, mm(std::nan(""))).error().code(), code::valueNotFinite);
}

// By hand: all between 4 and 16 mm lies at 8 mm, without spread.
TEST(StandardSize, OfOneSizeHasNoSpread) {
    const auto size = standardSize(partsOn({16, 4}, {0, 100, 0}), {});
    EXPECT_NEAR(size->geometricMean.millimetres(), 8, 1e-9);
    EXPECT_NEAR(*size->spread, 1, 1e-9);
}

TEST(LogNormalSize, EmptySievesDropOut) {
    const SieveParts with = partsOn({30, 19, 8, 4}, {5, 0, 58, 27, 10});
    const SieveParts without = partsOn({30, 8, 4}, {5, 58, 27, 10});
    EXPECT_NEAR(logNormalSize(with)->geometricMean.si(), logNormalSize(without)->geometricMean.si(), 1e-12);
}

TEST(LogNormalSize, TooFewPointsAreRefused) {
    const auto fewer = logNormalSize(partsOn({19, 8, 4}, {0, 0, 60, 40}));
    EXPECT_EQ(fewer.error().code(), code::sievesTooFew);
    EXPECT_EQ(fewer.error().message.arguments.at(0), Argument{std::int64_t{1}});
    EXPECT_EQ(logNormalSize(partsOn({19, 8, 4}, {0, 0, 0, 100})).error().code(), code::sievesTooFew);
    EXPECT_EQ(logNormalSize(partsOn({19, 8, 4}, {100, 0, 0, 0})).error().code(), code::sievesTooFew);
}

TEST(OneScreenSize, NeedsAScreenOfNineMillimetres) {
    EXPECT_EQ(oneScreenSize(partsOn({19, 8, 4}, {5, 60, 25, 10})).error().code(), code::screenMissing);
}

TEST(EffectiveFibre, NeedsItsSieve) {
    const SieveParts parts = partsOn({19, 8, 4}, {5, 60, 25, 10});
    EXPECT_NEAR(effectiveFibre(parts, mm(8), Share::fromPercent(40))->fibre.percent(), 26, 1e-9);
    EXPECT_EQ(effectiveFibre(parts, mm(1.18), Share::fromPercent(40)).error().code(), code::screenMissing);
    EXPECT_EQ(effectiveFibre(parts, mm(8), Share::fromPercent(140)).error().field, "fibre");
}

// A sample that is log-normal gives back what it was made with, whatever the sieves.
RC_GTEST_PROP(LogNormalSizeProperty, FindsWhatASampleWasMadeWith, ()) {
    const double mean = *rc::gen::inRange(40, 150) / 10.0, spread = *rc::gen::inRange(15, 25) / 10.0;
    const std::vector<double> openings{19, 8, 4, 1.18};
    std::vector<double> percent;
    double above = 0;
    for (const double opening : openings) {
        const double coarser = 0.5 * std::erfc(std::log(opening / mean) / std::log(spread) / std::sqrt(2.0));
        percent.push_back(100 * (coarser - above));
        above = coarser;
    }
    percent.push_back(100 * (1 - above));
    const auto size = logNormalSize(partsOn(openings, percent));
    RC_ASSERT(size.has_value());
    RC_ASSERT(std::abs(size->geometricMean.millimetres() / mean - 1) < 1e-6);
    RC_ASSERT(std::abs(*size->spread / spread - 1) < 1e-6);
}

// Three methods on one sample lie within a third of each other: their names must stand beside them.
TEST(Methods, DifferOnOneSample) {
    const SieveParts parts = partsOn({26.9, 18, 8.98, 5.61, 1.65}, {2, 9, 35, 24, 20, 10});
    const double standard = standardSize(parts, mm(48))->geometricMean.millimetres();
    const double fit = logNormalSize(parts)->geometricMean.millimetres();
    const double screen = oneScreenSize(parts)->geometricMean.millimetres();
    EXPECT_NEAR(fit / standard, 1, 0.15);
    EXPECT_NEAR(screen / standard, 1, 0.15);
    EXPECT_NE(fit, standard);
}

}  // namespace
}  // namespace treadwell::samples
