#include "core/advice/what_if.h"

#include "core/base/codes.h"
#include "core/density/estimate.h"
#include "tests/core/advice/example.h"

#include <gtest/gtest.h>

#include <limits>

namespace treadwell::advice {
namespace {

using farm::Activity;

TEST(WhatIf, NothingIsTheEstimate) {
    AdviceSituation situation = exampleAt(
        120, {tractor("Otter", 14), tractor("Heron", 12, Activity::spreading), tractor("Wren", 10)});
    situation.tractors[2].share = Share::fromPercent(50);
    const Outcome outcome = whatIf(situation, {}).value();
    const density::Estimate estimate = density::estimate(densitySituation(situation)).value();
    EXPECT_NEAR(outcome.density.si(), estimate.density.median().si(), 1e-9);
    EXPECT_NEAR(outcome.chance.fraction(), estimate.chance.fraction(), 1e-12);
    EXPECT_NEAR(outcome.passes, estimate.yardsticks.passes, 1e-9);
    EXPECT_NEAR(outcome.packing.minutesPerTonne(), 1.5 * 60 / 120, 1e-9);
    EXPECT_FALSE(outcome.upTo);
}

// Definitions B8 after Lower Saxony's three passes: 180 t/h, three machines rolling 80 % of the time, 4 km/h,
// 1.4 m, 320 kg/m3 as fed: 3.58 passes at 15 cm, 2.39 at 10 cm (derived).
TEST(WhatIf, AThinnerLayerGetsFewerPasses) {
    AdviceSituation situation = exampleAt(180, {tractor("A", 20), tractor("B", 20), tractor("C", 20)});
    for (Tractor& each : situation.tractors) each.share = Share::fromPercent(80);
    EXPECT_NEAR(whatIf(situation, {})->passes, 3.58, 0.01);
    const Outcome thin = whatIf(situation, {.layer = Length::fromCentimetres(10)}).value();
    EXPECT_NEAR(thin.passes, 2.39, 0.01);
    EXPECT_EQ(thin.density, whatIf(situation, {})->density);
}

TEST(WhatIf, AThickerLayerIsChargedInFull) {
    AdviceSituation situation = exampleAt(180, {tractor("A", 20), tractor("B", 20)});
    const Outcome thick = whatIf(situation, {.layer = Length::fromCentimetres(25)}).value();
    situation.layer = Length::fromCentimetres(25);
    EXPECT_NEAR(thick.density.si(), whatIf(situation, {})->density.si(), 1e-9);
    EXPECT_FALSE(thick.upTo);
}

TEST(WhatIf, AtTheSlowerDeliveryTheWantedChanceIsReached) {
    AdviceSituation situation = exampleAt(300, {tractor("A", 20)});
    for (const double percent : {30.0, 50.0, 80.0}) {
        situation.wantedChance = Chance::fromPercent(percent);
        const Comparer comparer{situation};
        const auto rate = comparer.slowerDelivery({});
        ASSERT_TRUE(rate);
        EXPECT_GE(comparer.outcomeOf({.delivery = rate}).chance.percent(), percent);
        const AsFedRate more = *rate + AsFedRate::fromTonnesPerHour(1);
        EXPECT_LT(comparer.outcomeOf({.delivery = more}).chance.percent(), percent);
    }
}

TEST(WhatIf, PricesOnlyWhoComesAndGoes) {
    AdviceSituation situation =
        exampleAt(180, {tractorAt("A", 20, 90, Activity::packing),
                        tractorAt("B", 20, 70, Activity::spreading), tractor("C", 20, Activity::away)});
    EXPECT_EQ(whatIf(situation, {.duties = {{1, Activity::packing}}})->cost, CostRate{});
    EXPECT_NEAR(whatIf(situation, {.duties = {{0, Activity::away}}})->cost->perHour(), -90, 1e-9);
    EXPECT_FALSE(whatIf(situation, {.duties = {{2, Activity::packing}}})->cost);
    EXPECT_FALSE(whatIf(situation, {.delivery = AsFedRate::fromTonnesPerHour(100)})->cost);
}

TEST(WhatIf, NamesTheFieldThatIsWrong) {
    const AdviceSituation situation = exampleAt(180, {tractor("A", 20)});
    EXPECT_EQ(whatIf(situation, {.duties = {{1, Activity::away}}}).error().field, "tractor");
    EXPECT_EQ(whatIf(situation, {.duties = {{0, Activity::packing, Share::fromFraction(1.1)}}}).error().field,
              "share");
    EXPECT_EQ(whatIf(situation, {.layer = Length{}}).error().field, "layer");
    const auto endless = AsFedRate::fromSi(std::numeric_limits<double>::infinity());
    EXPECT_EQ(whatIf(situation, {.delivery = endless}).error().code(), code::valueNotFinite);
}

}  // namespace
}  // namespace treadwell::advice
