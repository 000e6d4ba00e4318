#include "core/samples/meter.h"

#include "core/base/codes.h"
#include "tests/support/brief.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::samples {
namespace {

using testing_support::percent;

TEST(MeterBias, WithoutPairsIsThePrior) {
    const auto bias = learnBias({});
    EXPECT_EQ(bias->bias, DryMatter{});
    EXPECT_NEAR(bias->sd / kMeterBiasSd, 1, 1e-12);
    EXPECT_NEAR(bias->readingSd / kMeterReadingSd, 1, 1e-12);
    const auto belief = corrected(percent(36), *bias);
    EXPECT_EQ(belief->mean, percent(36));
    EXPECT_NEAR(belief->sd.percent(), 2.5, 1e-9);  // 2 and 1.5
}

// By hand, one pair 3 points too high: precisions 1/1.5^2 and 1/2^2 give 3 * 0.444 / 0.694 = 1.92.
TEST(MeterBias, OnePairMovesItPartOfTheWay) {
    const auto bias = learnBias(std::vector<MeterPair>{{percent(38), percent(35)}});
    EXPECT_NEAR(bias->bias.percent(), 1.92, 1e-9);
    EXPECT_NEAR(bias->sd.percent(), 1.2, 1e-9);
    EXPECT_NEAR(corrected(percent(38), *bias)->mean.percent(), 36.08, 1e-9);
}

TEST(MeterBias, ManyPairsFindIt) {
    std::vector<MeterPair> pairs;
    for (int i = 0; i < 200; ++i) pairs.push_back({percent(30 + i % 7 - 1.4), percent(30 + i % 7)});
    const auto bias = learnBias(pairs);
    EXPECT_NEAR(bias->bias.percent(), -1.4, 0.01);
    EXPECT_LT(bias->sd, percent(0.05));
    EXPECT_EQ(bias->pairs, 200);
}

TEST(MeterBias, RefusesWhatIsNoDryMatter) {
    EXPECT_EQ(learnBias(std::vector<MeterPair>{{percent(35), percent(2)}}).error().field, "pairs[0].dish");
    EXPECT_EQ(corrected(percent(99), {}).error().field, "reading");
    EXPECT_EQ(corrected(percent(6), MeterBias{percent(3), {}, {}, 1}).error().code(), code::valueOutOfRange);
}

}  // namespace
}  // namespace treadwell::samples
