#include "core/density/doubts.h"

#include "core/density/codes.h"
#include "tests/core/density/example.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace treadwell::density {
namespace {

const Doubt* find(const Doubts& doubts, DoubtOf of) {
    const auto found = std::find_if(doubts.parts.begin(), doubts.parts.end(),
                                    [of](const Doubt& doubt) { return doubt.of == of; });
    return found == doubts.parts.end() ? nullptr : &*found;
}

const Narrowing* find(const Doubts& doubts, Measurement measurement) {
    const auto found = std::find_if(doubts.next.begin(), doubts.next.end(), [&](const Narrowing& narrowing) {
        return narrowing.measurement == measurement;
    });
    return found == doubts.next.end() ? nullptr : &*found;
}

Doubts doubtsOf(const Situation& situation, const Options& options = {}, const EntriesBehind& behind = {}) {
    return density::doubtsOf(situation, options, estimate(situation, options).value(), behind);
}

TEST(Doubts, AddUpToTheBandWhereverItsPartsComeFrom) {
    Options calibrated;
    calibrated.residual.ordinaryInputs = 0.001;
    Options poor;
    poor.entries.layer = 0.4;
    Options layer;
    layer.reading = Reading::layer;
    for (const Options& options : {Options{}, calibrated, poor, layer}) {
        const Doubts doubts = doubtsOf(exampleSituation(), options);
        double variance = 0.0, share = 0.0;
        for (const Doubt& doubt : doubts.parts) {
            variance += doubt.variance;
            share += doubt.share;
        }
        const double sigma = estimate(exampleSituation(), options)->density.sigma();
        EXPECT_NEAR(variance, sigma * sigma, 1e-12);
        EXPECT_NEAR(share, 1.0, 1e-9);
        EXPECT_TRUE(std::is_sorted(doubts.parts.begin(), doubts.parts.end(),
                                   [](const Doubt& a, const Doubt& b) { return a.variance > b.variance; }));
    }
}

TEST(Doubts, ALayerThatNobodySawAndASampleAreNamed) {
    Situation situation = exampleSituation();
    situation.layer.reset();
    EXPECT_EQ(find(doubtsOf(situation), DoubtOf::layer)->what.code, code::doubtLayerAssumed);
    EntriesBehind behind;
    behind.sample = behind.layer = Instant{std::chrono::hours{7}};
    const Doubts doubts = doubtsOf(exampleSituation(), {}, behind);
    const Doubt& sample = *find(doubts, DoubtOf::dryMatter);
    EXPECT_EQ(sample.what.code, code::doubtSample);
    EXPECT_EQ(std::get<Instant>(sample.what.arguments.at(1)), *behind.sample);
    EXPECT_EQ(find(doubts, DoubtOf::layer)->what.code, code::doubtLayerSeen);
}

// Derived by Gaussian conditioning on one number: twelve heights 2.5 m above the floor, a dry matter known to
// 1 %, nothing else unsure: the silo's .0275 against .0167^2 + .05^2 + .05^2.
TEST(Doubts, HeightsNarrowTheSiloMost) {
    Options options;
    options.entries = {.machineMass = 0.0, .layer = 0.0, .packingTime = 0.0, .dryMatter = 0.0};
    Situation situation = exampleSituation();
    situation.meanDepth = Length::fromMetres(4.0 * 1.02);  // where the slope with depth is known
    EntriesBehind behind;
    behind.height = Length::fromMetres(2.5);
    const Doubts doubts = doubtsOf(situation, options, behind);
    const double prior = 2 * 0.105 * 0.105 + 0.0055;
    const double own = (0.016 / 12 + 0.0004) / 6.25 + 0.005;
    ASSERT_FALSE(doubts.next.empty());
    EXPECT_EQ(doubts.next.front().measurement, Measurement::heights);
    EXPECT_NEAR(doubts.next.front().varianceFall, prior * prior / (prior + own), 1e-5);
    EXPECT_NEAR(doubts.next.front().sigmaAfter, 0.065, 0.005) << "6 to 7 % near full (derived)";
    behind.heightsRead = true;
    EXPECT_EQ(find(doubtsOf(situation, options, behind), Measurement::heights), nullptr);
}

TEST(Doubts, WhatIsUnsureIsWorthMeasuring) {
    Situation situation = exampleSituation();
    situation.layer.reset();
    Options options;
    options.residual = {.site = 0.001, .silo = 0.001, .ordinaryInputs = 0.0, .inputsCounted = 0.0};
    EntriesBehind behind;
    behind.heightsRead = true;
    const Doubts doubts = doubtsOf(situation, options, behind);
    EXPECT_EQ(doubts.next.front().measurement, Measurement::layerThickness);
    const double s = estimate(situation)->elasticity;
    EXPECT_NEAR(doubts.next.front().varianceFall, s * s * 0.09 * 0.09 / (0.09 + 0.0225), 1e-9);
    options.entries = {.machineMass = 0.0, .layer = 0.0, .packingTime = 0.0};
    const Doubts ofSample = doubtsOf(situation, options, behind);
    ASSERT_NE(find(ofSample, Measurement::dryMatterSample), nullptr);
    // A second sample as good as the first takes half of what sampling errs.
    const double sampling = std::pow(0.037 / 0.35, 2);
    EXPECT_NEAR(find(ofSample, Measurement::dryMatterSample)->varianceFall, s * s / 4 * sampling / 2, 1e-9);
    for (const Narrowing& narrowing : doubts.next) EXPECT_GT(narrowing.varianceFall, 0.0);
}

TEST(Doubts, AMeasurementThatNarrowsByLessThanTwoInAHundredIsNotNamed) {
    const Doubts doubts = doubtsOf(exampleSituation());
    ASSERT_FALSE(doubts.next.empty());
    double variance = 0.0;
    for (const Doubt& doubt : doubts.parts) variance += doubt.variance;
    for (const Narrowing& narrowing : doubts.next) EXPECT_GE(narrowing.varianceFall, 0.04 * variance);
    EXPECT_EQ(find(doubts, Measurement::tractorWeights), nullptr) << "51.1 to 50.8 is no news";
}

TEST(Doubts, WithoutPackingNothingOfItIsInDoubt) {
    Situation situation = exampleSituation();
    situation.machines.clear();
    const Doubts doubts = doubtsOf(situation);
    EXPECT_EQ(find(doubts, Measurement::tractorWeights), nullptr);
    EXPECT_NEAR(find(doubts, DoubtOf::otherEntries)->variance, 0.0055, 1e-12);
    situation.meanDepth = Length{};
    EXPECT_EQ(find(doubtsOf(situation), Measurement::heights), nullptr);
}

}  // namespace
}  // namespace treadwell::density
