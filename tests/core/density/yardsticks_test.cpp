#include "core/density/yardsticks.h"

#include "core/density/codes.h"
#include "core/packing/codes.h"
#include "core/packing/passes.h"
#include "tests/core/density/example.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace treadwell::density {
namespace {

using testing::ElementsAre;

TEST(Yardsticks, EachRuleHasItsOwnVerdict) {
    const Yardsticks yardsticks = estimate(exampleSituation())->yardsticks;
    EXPECT_NEAR(yardsticks.massPacking.tonnes(), 19, 1e-12);
    ASSERT_EQ(yardsticks.massRules.size(), packing::massRules().size());
    // 120 t/h at 35 % DM: 48, 40 and 30 t by the fresh rules, 16.8 and 14 t by the French ones.
    for (const MassYardstick& mass : yardsticks.massRules) {
        const bool dry = packing::factsOf(mass.rule).basis == packing::Basis::dryMatter;
        EXPECT_EQ(mass.verdict, dry ? Verdict::reached : Verdict::missed) << enumText(mass.rule);
    }
    EXPECT_THAT(yardsticks.reached,
                ElementsAre(code::yardstickFrance, code::yardstickBrittany, code::yardstickPasses));
    EXPECT_THAT(yardsticks.missed, ElementsAre(code::yardstickNorthAmerica, code::yardstickThirdOfHourlyMass,
                                               code::yardstickQuarterOfHourlyMass, code::yardstickTarget));
}

TEST(Yardsticks, PassesUseWhatIsKnownOfTheMachines) {
    Situation situation = exampleSituation();
    const Yardsticks assumed = estimate(situation)->yardsticks;
    EXPECT_TRUE(assumed.tracksAssumed);
    // 320 kg/m3, 15 cm, 0.75 min/t, 4 km/h and 1.4 m.
    EXPECT_NEAR(assumed.passes, 320 * 0.15 * 0.75 * 4 * 1.4 / 60, 1e-9);
    for (Machine& machine : situation.machines) {
        machine.trackWidth = packing::kUsualTrackWidth;
        machine.speed = packing::kUsualSpeed * 2.0;
    }
    const Yardsticks known = estimate(situation)->yardsticks;
    EXPECT_FALSE(known.tracksAssumed);
    EXPECT_NEAR(known.passes, 2.0 * assumed.passes, 1e-12);
}

TEST(Yardsticks, TheTimeForThreePassesGivesThree) {
    Situation situation = exampleSituation();
    situation.work = estimate(situation)->yardsticks.timeForThreePasses;
    const Yardsticks yardsticks = estimate(situation)->yardsticks;
    EXPECT_NEAR(yardsticks.passes, 3.0, 1e-12);
    situation.machines.clear();
    EXPECT_NEAR(estimate(situation)->yardsticks.timeForThreePasses.minutesPerTonne(), 0.67, 0.005);
}

TEST(Yardsticks, NoDisagreementWhereAllAreReached) {
    Situation situation = exampleSituation();
    situation.machines.assign(6, {.mass = MachineMass::fromTonnes(20)});
    const Estimate result = estimate(situation).value();
    EXPECT_EQ(result.yardsticks.targetVerdict, Verdict::reached);
    EXPECT_EQ(result.yardsticks.passesVerdict, Verdict::reached);
    EXPECT_FALSE(result.yardsticks.disagree());
    const auto said =
        std::find_if(result.warnings.begin(), result.warnings.end(),
                     [](const Message& warning) { return warning.code == code::yardsticksDisagree; });
    EXPECT_EQ(said, result.warnings.end());
}

TEST(Yardsticks, VerdictsHaveNames) {
    EXPECT_EQ(enumText(Verdict::reached), "reached");
    EXPECT_EQ(enumText(Verdict::missed), "missed");
    EXPECT_EQ(enumText(Verdict::unknown), "unknown");
}

}  // namespace
}  // namespace treadwell::density
