#include "core/samples/dry_matter.h"

#include "core/base/codes.h"
#include "core/samples/codes.h"
#include "tests/support/brief.h"
#include "tests/support/carried.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace treadwell::samples {
namespace {

using namespace std::chrono_literals;
using testing_support::carriedTo;
using testing_support::percent;

const Instant kMorning = *instantFromIso8601("2026-09-15T08:00:00Z");

TEST(MeanOfSamples, OneSampleHasTheUsualSpreadAndNoInterval) {
    const auto one = meanOfSamples(std::vector{percent(34)});
    EXPECT_EQ(one->mean, percent(34));
    EXPECT_EQ(one->sd, kSampleSd);
    EXPECT_EQ(one->half95, std::nullopt);
    EXPECT_EQ(meanOfSamples({}).error().code(), code::readingsMissing);
    EXPECT_EQ(meanOfSamples(std::vector{percent(34), percent(-1)}).error().field, "samples[1]");
}

TEST(SamplesFor, NeverLessThanOneAndRefusesNonsense) {
    EXPECT_EQ(*samplesFor(percent(0), percent(1)), 1);
    EXPECT_EQ(samplesFor(percent(3), percent(0)).error().field, "wanted");
    EXPECT_EQ(samplesFor(percent(std::nan("")), percent(1)).error().code(), code::valueNotFinite);
}

TEST(Drift, NoneWithoutTwoMomentsAndNoIntervalWithTwo) {
    EXPECT_FALSE(driftOf({}));
    EXPECT_FALSE(driftOf(std::vector<TimedDryMatter>{{kMorning, percent(33)}, {kMorning, percent(35)}}));
    const auto two =
        driftOf(std::vector<TimedDryMatter>{{kMorning, percent(33)}, {kMorning + 2h, percent(35)}});
    EXPECT_NEAR(two->pointsPerHour.percent(), 1, 1e-9);
    EXPECT_FALSE(two->isSeen());
}

TEST(CarriedTo, OneSampleSpeaksBothWaysWithGrowingDoubt) {
    const std::vector<TimedDryMatter> one{{kMorning, percent(34)}};
    EXPECT_FALSE(carriedTo(kMorning, {}));
    EXPECT_NEAR(carriedTo(kMorning, one)->sd / kSampleSd, 1, 1e-12);
    const Belief after = *carriedTo(kMorning + 4h, one), before = *carriedTo(kMorning - 4h, one);
    EXPECT_EQ(after.mean, percent(34));
    EXPECT_EQ(before.mean, percent(34));
    EXPECT_NEAR(after.sd.percent(), std::hypot(3.7, 2.0), 1e-9);
    EXPECT_NEAR(before.sd.percent(), after.sd.percent(), 1e-12);
}

TEST(CarriedTo, DoubtGrowsNoWiderThanSilageCropIs) {
    const std::vector<TimedDryMatter> one{{kMorning, percent(34)}};
    EXPECT_NEAR(carriedTo(kMorning + 24h * 300, one)->sd / kWidestSd, 1, 1e-12);
}

TEST(CarriedTo, SamplesAtOnceAverageAndLaterOnesAreNotSeen) {
    const std::vector<TimedDryMatter> samples{{kMorning, percent(32)},
                                              {kMorning, percent(34)},
                                              {kMorning, percent(36)},
                                              {kMorning + 1h, percent(60)}};
    const Belief belief = *carriedTo(kMorning, samples);
    EXPECT_NEAR(belief.mean.percent(), 34, 1e-9);
    EXPECT_NEAR(belief.sd.percent(), 3.7 / std::sqrt(3.0), 1e-9);
}

TEST(CarriedDryMatter, OfAnErrorStaysWhatTheSamplesSinceHaveLeft) {
    CarriedDryMatter carried;
    carried.take({kMorning, percent(34)});
    EXPECT_EQ(carried.leftOfErrors(), 0.0);
    carried.take({kMorning, percent(34)});
    EXPECT_NEAR(carried.leftOfErrors(), std::log(0.5), 1e-12) << "two samples at once count alike";
    carried.take({kMorning, percent(30)}, percent(1e-6));
    EXPECT_NEAR(carried.at(kMorning)->mean.percent(), 30, 1e-6) << "one that is exact speaks alone";
    EXPECT_LT(carried.leftOfErrors(), -20);
}

TEST(CarriedTo, AnotherFieldIsFartherOff) {
    EXPECT_NEAR(fromAnotherField({percent(34), percent(3)}).sd.percent(), 5, 1e-9);
    EXPECT_EQ(fromAnotherField({percent(34), percent(3)}).mean, percent(34));
}

RC_GTEST_PROP(CarriedToProperty, StaysWithinTheSamplesAndDoubtGrowsWithAge, ()) {
    std::vector<TimedDryMatter> samples;
    DryMatter low = percent(90), high = percent(10);
    Instant at = kMorning;
    for (int i = *rc::gen::inRange(1, 8); i > 0; --i) {
        at += std::chrono::minutes{*rc::gen::inRange(0, 300)};
        samples.push_back({at, percent(*rc::gen::inRange(150, 600) / 10.0)});
        low = std::min(low, samples.back().dryMatter);
        high = std::max(high, samples.back().dryMatter);
    }
    const Belief now = *carriedTo(at, samples), later = *carriedTo(at + 3h, samples);
    RC_ASSERT(now.mean >= low - percent(1e-9));
    RC_ASSERT(now.mean <= high + percent(1e-9));
    RC_ASSERT(later.sd > now.sd);
    RC_ASSERT(now.sd <= kSampleSd + percent(1e-9));
    RC_ASSERT(later.mean == now.mean);
}

TEST(Goal, TheDrySideIsTheStrongerOne) {
    const auto side = [](double dm) { return distanceFromGoal(percent(dm), percent(34), percent(36)).side; };
    EXPECT_EQ(side(30), GoalSide::wet);
    EXPECT_EQ(side(32), GoalSide::slightlyWet);
    EXPECT_EQ(side(34), GoalSide::within);
    EXPECT_EQ(side(36), GoalSide::within);
    EXPECT_EQ(side(37), GoalSide::dry);
    // The same distance that is slight on the wet side is the strongest word on the dry one.
    EXPECT_EQ(side(31.5), GoalSide::slightlyWet);
    EXPECT_EQ(side(38.5), GoalSide::veryDry);
    EXPECT_FALSE(goalWarning(percent(35), percent(34), percent(36)));
    EXPECT_EQ(goalWarning(percent(40), percent(34), percent(36))->code, code::dryMatterVeryDry);
    EXPECT_EQ(goalWarning(percent(37), percent(34), percent(36))->code, code::dryMatterDry);
    EXPECT_EQ(goalWarning(percent(33), percent(34), percent(36))->code, code::dryMatterSlightlyWet);
    EXPECT_EQ(goalWarning(percent(29), percent(34), percent(36))->code, code::dryMatterWet);
}

}  // namespace
}  // namespace treadwell::samples
