#include "core/density/kernel.h"

#include "tests/core/density/example.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::density {
namespace {

TEST(Kernel, TheEstimateIsTheKernels) {
    const Situation situation = exampleSituation();
    const Estimate whole = estimate(situation).value();
    const CaseValue value = evaluateCase(caseFrame(situation, {}), whole.packing.factor.si);
    EXPECT_EQ(value.density_kg_m3, whole.density.median().si());
    EXPECT_EQ(value.chance(), whole.chance.fraction());
    EXPECT_DOUBLE_EQ(std::sqrt(value.variance), whole.density.sigma());
}

// Rule B10's elasticities against the estimate itself: ln(density) by ln(entry).
TEST(Kernel, ElasticitiesAreTheEstimatesOwnSlopes) {
    const Situation base = exampleSituation();
    const double s = estimate(base)->elasticity, step = 1e-4;
    const auto slope = [&](auto change) {
        Situation up = base, down = base;
        change(up, std::exp(step));
        change(down, std::exp(-step));
        return std::log(estimate(up)->density.median() / estimate(down)->density.median()) / (2.0 * step);
    };
    const auto masses = [](Situation& situation, double by) {
        for (Machine& machine : situation.machines) machine.mass = machine.mass * by;
    };
    const auto layer = [](Situation& situation, double by) { situation.layer = *situation.layer * by; };
    const auto dryMatter = [](Situation& situation, double by) {
        situation.dryMatter = situation.dryMatter * by;
    };
    const auto time = [](Situation& situation, double by) {
        situation.work = std::get<AsFedRate>(situation.work) / by;
    };
    EXPECT_NEAR(slope(masses), s, 1e-7);
    EXPECT_NEAR(slope(layer), -s, 1e-7);
    EXPECT_NEAR(slope(time), s / 2, 1e-7);
    EXPECT_NEAR(slope(dryMatter), s / 2, 1e-7);
}

TEST(Kernel, ThePorosityTargetMovesWithDryMatterAsRuleB9Says) {
    const auto target = [](double percent) {
        return std::log(targetFor({}, DryMatter::fromPercent(percent), crop::Crop::maize).density.si());
    };
    const double slope = (target(35.01) - target(34.99)) / (std::log(35.01) - std::log(34.99));
    EXPECT_NEAR(slope, kPorosityElasticity, 0.01);
}

TEST(Kernel, DryMatterIsCountedOnceWherePorosityGoverns) {
    CaseFrame frame = caseFrame(exampleSituation(), {});
    ASSERT_TRUE(frame.porosityGoverns);
    frame.ordinaryInputs = frame.inputsCounted = 0.0;
    const CaseValue value = evaluateCase(frame, 432.6);
    const double s = value.elasticity, together = 1.16 - s / 2;
    const double variance = frame.fixedVariance + s * s * (frame.wholeVariance + frame.halfVariance / 4) +
                            together * together * frame.dryMatterVariance;
    const double distance = std::log(value.uncapped_kg_m3) - frame.logTarget;
    EXPECT_NEAR(value.score, distance / std::sqrt(variance), 1e-12);
    frame.porosityGoverns = false;
    EXPECT_NEAR(evaluateCase(frame, 432.6).score, distance / std::sqrt(value.variance), 1e-12);
}

TEST(Kernel, FiniteWithoutAnySpread) {
    CaseFrame frame = caseFrame(exampleSituation(), {});
    frame.fixedVariance = frame.ordinaryInputs = frame.wholeVariance = frame.halfVariance = 0.0;
    frame.dryMatterVariance = 0.0;
    const CaseValue value = evaluateCase(frame, 432.6);
    EXPECT_TRUE(std::isfinite(value.score));
    EXPECT_EQ(value.chance(), 0.0);
    EXPECT_EQ(evaluateCase(frame, 5000).chance(), 1.0);
}

}  // namespace
}  // namespace treadwell::density
