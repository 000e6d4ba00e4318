#include "core/density/codes.h"
#include "core/density/readings.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace treadwell::density {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

const Instant kStart = at("2026-02-10T08:00:00Z");
const Instant kEvening = at("2026-02-10T18:40:00Z");

/// A day of 80 loads of 12 t in a level silo, 35 % dry matter, and heights in the evening.
SeasonMaker day(std::optional<double> height) {
    SeasonMaker maker;
    maker.add(entries::SiloDefined{someLifts()}, kStart);
    maker.add(entries::TractorDefined{someTractor(1, 14)}, kStart);
    maker.add(entries::LayerSeen{kBunker, Length::fromCentimetres(15), {}}, kStart);
    maker.add(entries::DryMatterSample{DryMatter::fromPercent(35), {}, {}, {}, {}}, kStart);
    maker.add(someWork(1, farm::Activity::packing), kStart);
    for (int i = 0; i < 80; ++i) maker.add(someLoad(12), kStart + i * 6min);
    if (!height) return maker;
    entries::HeightSurvey survey{kBunker, {}};
    for (int i = 0; i < 12; ++i) {
        survey.readings.push_back({Length::fromMetres(4.0 + 4.0 * i), Length::fromMetres(2.0 + (i % 3) * 5.0),
                                   Length::fromMetres(*height)});
    }
    maker.add(survey, kEvening);
    return maker;
}

Readings readingsOf(std::optional<double> height) {
    return readingsAt(season::Season::fold(day(height).entries), kBunker, kEvening + 1min);
}

TEST(Learning, TheSameEveningTheHeightsMoveLayerDayAndSilo) {
    const Readings before = readingsOf({});
    // Higher than predicted: looser. Lower: denser.
    const double predicted = before.layers->asItLies.top.metres();
    for (const double part : {1.15, 0.87}) {
        const Readings after = readingsOf(predicted * part);
        ASSERT_TRUE(after.surveyed && after.surveyed->newest) << part;
        for (const auto reading : {&Readings::layer, &Readings::today, &Readings::silo}) {
            const auto& then = (before.*reading).estimate;
            const auto& now = (after.*reading).estimate;
            ASSERT_EQ(then.has_value(), now.has_value());
            if (!then) continue;
            EXPECT_EQ(now->density.median() < then->density.median(), part > 1.0) << part;
            EXPECT_LT(now->density.sigma(), then->density.sigma()) << part;
        }
        // It goes most of the way to what was measured, never beyond.
        const double measured = std::log(after.surveyed->surveys.back().whole->density.median() /
                                         before.silo.asItLies->density.median());
        const double moved =
            std::log(after.silo.asItLies->density.median() / before.silo.asItLies->density.median());
        EXPECT_GT(moved / measured, 0.5) << part;
        EXPECT_LT(moved / measured, 1.0) << part;
        ASSERT_FALSE(after.learnt.empty());
        EXPECT_EQ(after.learnt.front().code, code::learntFromHeights);
        EXPECT_EQ(std::get<Instant>(after.learnt.front().arguments.front()), kEvening);
    }
}

// Derived: 10 % the first evening against 17 % without (rule B10's figures for "full, at opening").
TEST(Learning, OneEveningNarrowsTheBandAsTheRuleSays) {
    const Readings before = readingsOf({});
    const Readings after = readingsOf(before.layers->asItLies.top.metres());
    EXPECT_NEAR(before.silo.estimate->density.sigma(), 0.17, 0.02);
    EXPECT_NEAR(after.silo.estimate->density.sigma(), 0.10, 0.02);
}

TEST(Learning, ASurveyThatSaysNothingIsKeptWithItsReason) {
    const Readings readings = readingsOf(0.0);
    ASSERT_TRUE(readings.surveyed);
    EXPECT_FALSE(readings.surveyed->newest);
    EXPECT_EQ(readings.surveyed->surveys.back().reason->code, code::heightsWithoutCrop);
    EXPECT_TRUE(readings.learnt.empty());
    EXPECT_EQ(messagesOf(readings.surveyed->surveys.back()).front().code, code::heightsWithoutCrop);
}

TEST(Learning, WhoAsksAgainGetsTheSameAndALateEntryIsSeen) {
    SeasonMaker maker = day(1.2);
    ReadingsHistory history;
    const auto season = season::Season::fold(maker.entries);
    const auto first = history.at(season, kBunker, kEvening + 1min);
    const auto again = history.at(season, kBunker, kEvening + 1min);
    EXPECT_EQ(first.silo.estimate->density.median(), again.silo.estimate->density.median());
    maker.add(someLoad(40), kStart + 5h);
    const auto late = season::Season::fold(maker.entries);
    EXPECT_EQ(history.at(late, kBunker, kEvening + 1min).silo.estimate->density.median(),
              readingsAt(late, kBunker, kEvening + 1min).silo.estimate->density.median());
    EXPECT_TRUE(history.at(late, kBunker, kEvening - 1min).learnt.empty()) << "not yet read";
}

TEST(Learning, CoresMoveTheReadingsTowardsWhatTheyMeasured) {
    const Readings before = readingsOf({});
    SeasonMaker maker = day({});
    entries::Core core;
    core.silo = kBunker;
    core.along = Length::fromMetres(5);
    core.across = Length::fromMetres(5);
    core.height = Length::fromMetres(0.5);
    core.density = DryDensity::fromKilogramsPerCubicMetre(100);
    ReadingsHistory history;
    const auto uncored = season::Season::fold(maker.entries);
    EXPECT_TRUE(history.at(uncored, kBunker, kEvening + 1min).learnt.empty());
    for (int i = 0; i < 8; ++i) maker.add(core, kEvening);
    const Readings after = history.at(season::Season::fold(maker.entries), kBunker, kEvening + 1min);
    EXPECT_LT(after.silo.estimate->density.median(), before.silo.estimate->density.median());
    EXPECT_LT(after.silo.estimate->density.sigma(), before.silo.estimate->density.sigma());
    EXPECT_FALSE(after.learnt.empty());
}

// Heights have been read: reading them again is no advice; before them it is the first.
TEST(Learning, WhatToMeasureNextFollowsWhatWasMeasured) {
    const auto asks = [](const Readings& readings) {
        const Doubts doubts = doubtsOf(readings, readings.silo);
        return std::any_of(doubts.next.begin(), doubts.next.end(), [](const Narrowing& narrowing) {
            return narrowing.measurement == Measurement::heights;
        });
    };
    EXPECT_TRUE(asks(readingsOf({})));
    EXPECT_FALSE(asks(readingsOf(1.2)));
}

}  // namespace
}  // namespace treadwell::density
