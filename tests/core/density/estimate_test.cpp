#include "core/density/estimate.h"

#include "core/density/codes.h"
#include "tests/core/density/example.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace treadwell::density {
namespace {

std::vector<Code> codesOf(const Estimate& estimate) {
    std::vector<Code> codes;
    for (const Message& warning : estimate.warnings) codes.push_back(warning.code);
    return codes;
}

TEST(Estimate, TheMainJob) {
    const auto result = estimate(exampleSituation());
    ASSERT_TRUE(result);
    // By hand: both count, since 19/sqrt(1.5) > 14; T = 60 * 1.5 / 120 min/t.
    const double p = 19000.0 / std::sqrt(1.5) * std::sqrt(60.0 / 120.0 * 0.35) / 15.0;
    EXPECT_NEAR(result->packing.factor.si, p, 1e-9);
    EXPECT_NEAR(result->packing.allTime.minutesPerTonne(), 0.75, 1e-12);
    EXPECT_EQ(result->packing.counted, (std::vector<std::size_t>{0, 1}));
    const double median = (136.156938679 + 0.170959315 * p) * (0.818 + 0.0446194226 * 3);
    EXPECT_NEAR(result->density.median().si(), median, 1e-6);
    EXPECT_NEAR(result->density.low80().si(), median * std::exp(-1.2815515655 * result->density.sigma()),
                1e-6);
    EXPECT_NEAR(result->density.high80().si(), median * std::exp(1.2815515655 * result->density.sigma()),
                1e-6);
    EXPECT_EQ(result->target.governs, Governs::porosity);
    EXPECT_NEAR(result->porosity.low80().fraction(), result->porosity.quantile(0.1).fraction(), 1e-12);
    EXPECT_LT(result->porosity.low80(), result->porosity.median());
    EXPECT_LT(result->porosity.median(), result->porosity.high80());
}

TEST(Estimate, TheBandIsTheSumOfItsParts) {
    for (const Reading reading : {Reading::silo, Reading::day, Reading::layer, Reading::core}) {
        Options options{.reading = reading, .effectiveLayers = 4, .residual = {}, .entries = {}};
        const auto result = estimate(exampleSituation(), options);
        EXPECT_NEAR(result->spread.total(), result->density.sigma() * result->density.sigma(), 1e-15);
    }
}

TEST(Estimate, WiderForTheDayTheLayerAndTheCore) {
    const auto sigma = [](Reading reading) {
        Options options{.reading = reading, .effectiveLayers = 4, .residual = {}, .entries = {}};
        return estimate(exampleSituation(), options)->density.sigma();
    };
    EXPECT_LT(sigma(Reading::silo), sigma(Reading::day));
    EXPECT_LT(sigma(Reading::day), sigma(Reading::layer));
    EXPECT_LT(sigma(Reading::layer), sigma(Reading::core));
}

TEST(Estimate, AnUnseenLayerIsSaidAndWidensTheBand) {
    Situation situation = exampleSituation();
    const auto seen = estimate(situation);
    situation.layer.reset();
    const auto unseen = estimate(situation);
    EXPECT_EQ(unseen->density.median(), seen->density.median());
    EXPECT_GT(unseen->density.sigma(), seen->density.sigma());
    EXPECT_GT(unseen->spread[SpreadPart::inputsBeyondOrdinary], 0.0);
    EXPECT_EQ(unseen->warnings.front().code, code::layerAssumed);
    EXPECT_GT(unseen->inputs.layer, unseen->inputs.machineMass + unseen->inputs.packingTime);
}

TEST(Estimate, OnceCalibratedTheEntriesStandInFull) {
    Options options;
    options.residual.ordinaryInputs = options.residual.inputsCounted = 0.0;
    options.residual.level = 0.1;
    const auto before = estimate(exampleSituation());
    const auto after = estimate(exampleSituation(), options);
    EXPECT_NEAR(after->density.median() / before->density.median(), std::exp(0.1), 1e-12);
    const InputParts& parts = after->inputs;
    EXPECT_NEAR(after->spread[SpreadPart::inputsBeyondOrdinary],
                parts.machineMass + parts.layer + parts.packingTime + parts.dryMatter, 1e-15);
    EXPECT_EQ(after->spread[SpreadPart::ordinaryInputs], 0.0);
    const auto level =
        std::find_if(after->working.begin(), after->working.end(),
                     [](const WorkingStep& step) { return step.what.code == code::workingLevel; });
    EXPECT_NE(level, after->working.end());
}

// sigma is .166 at this depth; a doubt of sigma^4 / 6 leaves six degrees of freedom, whose ninth tenth lies
// at 1.4398 (Student's table).
TEST(Estimate, AnEstimatedSpreadWidensBandAndTails) {
    const auto known = estimate(exampleSituation());
    Options options;
    options.residual.varianceDoubt = std::pow(known->density.sigma(), 4) / 6.0;
    const auto estimated = estimate(exampleSituation(), options);
    EXPECT_NEAR(estimated->density.degreesOfFreedom(), 6.0, 1e-9);
    EXPECT_EQ(estimated->density.sigma(), known->density.sigma());
    EXPECT_NEAR(std::log(estimated->density.high80() / estimated->density.median()),
                1.4398 * known->density.sigma(), 1e-4 * known->density.sigma());
    EXPECT_EQ(estimated->density.median(), known->density.median());
    EXPECT_NE(estimated->chance, known->chance);
}

TEST(Estimate, NoMachinesIsAnEstimateWithoutPacking) {
    Situation situation = exampleSituation();
    situation.machines.clear();
    const auto result = estimate(situation);
    ASSERT_TRUE(result);
    EXPECT_EQ(result->packing.factor.si, 0.0);
    EXPECT_NEAR(result->density.median().si(), 136.156938679 * (0.818 + 0.0446194226 * 3), 1e-6);
    EXPECT_EQ(codesOf(*result).front(), code::noMachines);
    EXPECT_EQ(result->yardsticks.passes, 0.0);
}

TEST(Estimate, NobodyPackingIsSaid) {
    Situation situation = exampleSituation();
    for (Machine& machine : situation.machines) machine.share = Share{};
    for (const Work& work :
         {Work{AsFedRate::fromTonnesPerHour(120)}, Work{PackingIntensity::fromMinutesPerTonne(1)},
          Work{PackingIntensity{}}, Work{PackedMass{AsFedMass::fromTonnes(12), {Seconds{0}, Seconds{0}}}}}) {
        situation.work = work;
        const auto result = estimate(situation);
        ASSERT_TRUE(result);
        EXPECT_EQ(result->packing.factor.si, 0.0);
        EXPECT_EQ(codesOf(*result).front(), code::noPackingTime);
    }
}

TEST(Estimate, TheThreeWaysToSayTheWorkAgree) {
    Situation situation = exampleSituation();
    const auto byRate = estimate(situation);
    situation.work = PackingIntensity::fromMinutesPerTonne(0.75);
    const auto byTime = estimate(situation);
    situation.work = PackedMass{AsFedMass::fromTonnes(60), {Seconds{1800}, Seconds{900}}};
    const auto byMinutes = estimate(situation);
    EXPECT_NEAR(byTime->packing.factor.si, byRate->packing.factor.si, 1e-9);
    EXPECT_NEAR(byMinutes->packing.factor.si, byRate->packing.factor.si, 1e-9);
    EXPECT_TRUE(byTime->yardsticks.massRules.empty());
}

TEST(Estimate, TheMachineThatAddsNothingIsNamed) {
    Situation situation = exampleSituation();
    situation.machines = {{.mass = MachineMass::fromTonnes(5)}, {.mass = MachineMass::fromTonnes(14)}};
    const auto result = estimate(situation);
    EXPECT_EQ(result->packing.counted, (std::vector<std::size_t>{1}));
    EXPECT_EQ(result->packing.addNothing, (std::vector<std::size_t>{0}));
    EXPECT_NEAR(result->packing.allTime.minutesPerTonne(), 1.0, 1e-12);
    EXPECT_NEAR(result->packing.countedTime.minutesPerTonne(), 0.5, 1e-12);
    const Message expected{code::machineAddsNothing, {std::int64_t{1}, MachineMass::fromTonnes(5).amount()}};
    EXPECT_EQ(result->warnings.front(), expected);
}

TEST(Estimate, TheLayerIsHeldToItsRange) {
    Situation situation = exampleSituation();
    situation.layer = Length::fromCentimetres(5);
    const auto thin = estimate(situation);
    EXPECT_EQ(thin->layer, kThinnestLayer);
    EXPECT_EQ(codesOf(*thin).front(), code::layerHeldToRange);
    situation.layer = Length::fromCentimetres(60);
    EXPECT_EQ(estimate(situation)->layer, kThickestLayer);
    situation.layer = kThinnestLayer;
    EXPECT_EQ(estimate(situation)->density.median(), thin->density.median());
    EXPECT_NE(codesOf(*estimate(situation)).front(), code::layerHeldToRange);
}

TEST(Estimate, SaturatedMassPilesAtTheLimit) {
    Situation situation = exampleSituation();
    situation.dryMatter = DryMatter::fromPercent(25);
    situation.machines.assign(2, {.mass = MachineMass::fromTonnes(20)});
    const auto result = estimate(situation);
    const DryDensity limit = *crop::saturationLimit(situation.dryMatter);
    EXPECT_EQ(result->density.median(), limit);
    EXPECT_EQ(result->density.high80(), limit);
    EXPECT_LT(result->density.low80(), limit);
    EXPECT_EQ(result->target.density, limit);
    EXPECT_EQ(result->target.governs, Governs::saturation);
    EXPECT_GT(result->chance.fraction(), 0.5);
    EXPECT_NEAR(result->chance.fraction(), result->density.chanceOfAtLeast(limit).fraction(), 1e-12);
    const std::vector<Code> codes = codesOf(*result);
    EXPECT_NE(std::find(codes.begin(), codes.end(), code::saturated), codes.end());
    EXPECT_NE(std::find(codes.begin(), codes.end(), code::targetAboveSaturation), codes.end());
    EXPECT_EQ(result->yardsticks.saturationVerdict, Verdict::reached);
}

TEST(Estimate, DryCropHasNoSaturationLimit) {
    Situation situation = exampleSituation();
    situation.dryMatter = DryMatter::fromPercent(60);
    const auto result = estimate(situation);
    const std::vector<Code> codes = codesOf(*result);
    EXPECT_NE(std::find(codes.begin(), codes.end(), code::saturationUnknown), codes.end());
    EXPECT_NE(std::find(codes.begin(), codes.end(), code::dryMatterOutsideCrop), codes.end());
    EXPECT_GE(result->porosity.low80().fraction(), 0.0);
}

TEST(Estimate, OutsideTheSurveysDensitiesIsSaid) {
    Situation situation = exampleSituation();
    situation.dryMatter = DryMatter::fromPercent(49);
    situation.machines.assign(6, {.mass = MachineMass::fromTonnes(30)});
    situation.layer = kThinnestLayer;
    const std::vector<Code> codes = codesOf(*estimate(situation));
    EXPECT_NE(std::find(codes.begin(), codes.end(), code::densityOutsideSurvey), codes.end());
}

TEST(Estimate, ShowsTheWorkingToTheEnd) {
    const auto result = estimate(exampleSituation());
    ASSERT_EQ(result->working.size(), 10U);
    EXPECT_EQ(result->working.front().what.code, code::workingLayer);
    EXPECT_EQ(result->working.back().what, (Message{code::workingChance, {result->chance.amount()}}));
    for (const WorkingStep& step : result->working) {
        EXPECT_FALSE(step.formula.empty());
        EXPECT_TRUE(!step.source.citation.empty() || step.source.evidence == Evidence::assumed);
        EXPECT_FALSE(step.what.arguments.empty());
    }
}

}  // namespace
}  // namespace treadwell::density
