#include "core/plan/fleet.h"

#include "core/outcome/loss.h"
#include "core/plan/pays.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace treadwell::plan {
namespace {

density::CaseFrame frameOf(const Inputs& inputs) {
    return density::caseFrame(situationOf(inputs, AsFedRate::fromTonnesPerHour(100), meanDepthOf(inputs)),
                              {});
}

double between(double low, double high) {
    return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0;
}

FleetChoice someChoice() {
    FleetChoice choice{.tractors = {},
                       .trucks = {},
                       .layer_cm = between(10, 40),
                       .dryMatter = 0.35,
                       .value_per_t_dm = between(1, 400)};
    const int tractors = *rc::gen::inRange(1, 7), trucks = *rc::gen::inRange(1, 8);
    for (int i = 0; i < tractors; ++i)
        choice.tractors.push_back({between(5000, 25000), between(0.2, 1), between(0, 150)});
    std::sort(choice.tractors.begin(), choice.tractors.end(),
              [](const auto& a, const auto& b) { return a.mass_kg > b.mass_kg; });
    for (int i = 1; i <= trucks; ++i) choice.trucks.push_back({i, 25.0 * i, 300 + 60.0 * i});
    return choice;
}

// The search passes cases over by a bound; every case, one by one, must not find better.
RC_GTEST_PROP(BestFleets, AreThoseOfEveryCaseOneByOne, ()) {
    Inputs inputs = exampleInputs();
    inputs.prices.lossLevel = Loss::fromPercent(between(0, 25));
    inputs.dryMatter = DryMatter::fromPercent(35);
    const ExpectedLoss loss{frameOf(inputs), inputs.prices};
    const FleetChoice choice = someChoice();
    FoundFleet best{.margin_per_t_dm = -std::numeric_limits<double>::max()};
    for (std::uint32_t fleet = 1; fleet < 1U << choice.tractors.size(); ++fleet) {
        for (std::size_t trucks = 0; trucks < choice.trucks.size(); ++trucks) {
            const double margin = marginOf(choice, loss, fleet, trucks);
            if (margin > best.margin_per_t_dm) best = {fleet, trucks, margin};
        }
    }
    const FoundFleet found = bestFleet(choice, loss);
    RC_ASSERT(found.tractors == best.tractors);
    RC_ASSERT(found.trucks == best.trucks);
    RC_ASSERT(std::abs(found.margin_per_t_dm - best.margin_per_t_dm) < 1e-9);
}

// With hardly any doubt the expected loss is the level less what outcome::lossSaved() gives.
TEST(ExpectedLosses, AreTheLevelLessWhatADenserPackSaves) {
    Inputs inputs = exampleInputs();
    density::CaseFrame frame = frameOf(inputs);
    frame.fixedVariance = 1e-10;
    frame.ordinaryInputs = 0;
    frame.inputsCounted = 1;
    const ExpectedLoss loss{frame, inputs.prices};
    for (const double factor : {0.0, 100.0, 300.0, 700.0}) {
        const double density = density::evaluateCase(frame, factor).density_kg_m3;
        const auto saved = outcome::lossSaved(inputs.prices.lossLevelAt, DryDensity::fromSi(density));
        ASSERT_TRUE(saved);
        EXPECT_NEAR(loss.at(factor), (inputs.prices.lossLevel - saved->saved).fraction(), 1e-6) << factor;
    }
}

// The mean over the band against the midpoint rule over its quantiles.
TEST(ExpectedLosses, AreTheMeanOverTheBand) {
    const Inputs inputs = exampleInputs();
    const density::CaseFrame frame = frameOf(inputs);
    const ExpectedLoss loss{frame, inputs.prices};
    for (const double factor : {50.0, 250.0, 600.0}) {
        const density::CaseValue value = density::evaluateCase(frame, factor);
        const stats::LogNormal density{value.uncapped_kg_m3, std::sqrt(value.variance)};
        constexpr int kParts = 20'000;
        double sum = 0;
        for (int i = 0; i < kParts; ++i) {
            const double kg_m3 = std::min(density.quantile((i + 0.5) / kParts), frame.limit_kg_m3);
            sum += outcome::lossSaved(inputs.prices.lossLevelAt, DryDensity::fromSi(kg_m3))->saved.fraction();
        }
        EXPECT_NEAR(loss.at(factor), inputs.prices.lossLevel.fraction() - sum / kParts, 1e-5) << factor;
    }
}

TEST(ExpectedLosses, AreNeverBelowZero) {
    Inputs inputs = exampleInputs();
    inputs.prices.lossLevel = Loss{};
    EXPECT_EQ((ExpectedLoss{frameOf(inputs), inputs.prices}.at(900)), 0);
}

TEST(Pays, TheBestFleetIsNoWorseThanThePlanned) {
    const auto pay = payOf(exampleInputs());
    ASSERT_TRUE(pay);
    EXPECT_GE(pay->best.fleet.margin_per_t_dm, pay->planned.fleet.margin_per_t_dm);
    EXPECT_EQ(pay->planned.fleet.trucks, 6);
    EXPECT_EQ(pay->planned.fleet.tractors.size(), 3U);
    EXPECT_GT(pay->planned.fleet.hour, pay->tractorHours[0]);
}

// A tractor pays where what it brings equals its hour: below the delivery it does not, above it does.
TEST(Pays, OneMoreTractorPaysFromADelivery) {
    const auto pay = payOf(exampleInputs());
    ASSERT_TRUE(pay);
    ASSERT_EQ(pay->oneMore.size(), 3U);
    EXPECT_EQ(pay->oneMore[0].tractor, "Auerochse") << "the heaviest first";
    for (const OneMore& more : pay->oneMore) {
        if (!more.paysFrom) continue;
        EXPECT_EQ(more.margin_per_h >= 0, *more.paysFrom <= pay->planned.fleet.delivery) << more.tractor;
    }
}

// Dear crop pays for more packing, dear hours for less.
TEST(Pays, FollowsThePrices) {
    Inputs inputs = exampleInputs();
    inputs.prices.crop_per_tonne_dm = 2000;
    const auto dear = payOf(inputs);
    inputs.prices.crop_per_tonne_dm = 1;
    const auto cheap = payOf(inputs);
    ASSERT_TRUE(dear && cheap);
    EXPECT_GT(dear->best.fleet.tractors.size(), cheap->best.fleet.tractors.size());
    EXPECT_LT(dear->best.fleet.loss, cheap->best.fleet.loss);
}

}  // namespace
}  // namespace treadwell::plan
