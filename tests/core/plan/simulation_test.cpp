#include "core/plan/simulation.h"

#include "core/plan/chain.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace treadwell::plan {
namespace {

using namespace std::chrono_literals;

/// Everything away from the harvester in one stretch of road there and back, nothing else holding up.
Round twoStations(int trucks, Seconds fill, Seconds round, double variation) {
    return {.trucks = trucks,
            .fill = {fill, variation},
            .road = {(round - fill) / 2.0, variation},
            .tip = {0s, 0},
            .spread = {0s, 0},
            .tippingPlaces = trucks,
            .heaps = trucks,
            .day = 300h};
}

double meanOf(const std::vector<double>& values) {
    double sum = 0;
    for (const double value : values) sum += value;
    return sum / static_cast<double>(values.size());
}

/// Within four standard errors of the mean over the days; the draw is fixed, so this holds or fails for good.
void expectBusyShare(int trucks, Seconds round, double expected) {
    std::vector<double> busy;
    for (const SimulatedDay& day : simulateDays(twoStations(trucks, 180s, round, 1.0), 40, 1))
        busy.push_back(1 - day.harvesterWaiting);
    const double mean = meanOf(busy);
    double squares = 0;
    for (const double value : busy) squares += (value - mean) * (value - mean);
    const double standardError = std::sqrt(squares / 39 / 40);
    EXPECT_LT(standardError, 0.004) << "the interval must be narrow enough to tell";
    EXPECT_NEAR(mean, expected, 1.96 * standardError);
    EXPECT_NEAR(queueBusyShare(trucks, 180.0 / (round.count() - 180.0)), expected, 5e-5);
}

// The finite-source queue (machine repair), derived: filling 3 min, N trucks on a round of Tc min keep the
// harvester busy .8082 (6, 18 min), .8320 (10, 30 min) and .6017 (4, 18 min) of the time.
TEST(SimulatedDays, KeepToTheFiniteSourceQueue) {
    expectBusyShare(6, 18min, 0.8082);
    expectBusyShare(10, 30min, 0.8320);
    expectBusyShare(4, 18min, 0.6017);
}

// With fixed times loads/h = min(60/Tf, 60 N/Tc); the first loads of a day come late by a part of a round.
RC_GTEST_PROP(SimulatedDays, KeepToTheFixedTimes, ()) {
    const int trucks = *rc::gen::inRange(1, 15);
    const double fill = *rc::gen::inRange(60, 600);
    const double away = *rc::gen::inRange(60, 4000);
    const Round round = twoStations(trucks, Seconds{fill}, Seconds{fill + away}, 0);
    const SimulatedDay day = simulateDay(round, std::mt19937_64{1});
    const double expected = 300 * 3600 * std::min(1 / fill, trucks / (fill + away));
    RC_ASSERT(std::abs(day.loads - expected) <= 1 + trucks * 1.0);
    if (trucks * fill >= fill + away) {
        RC_ASSERT(day.harvesterWaiting < 1e-9);
    } else {
        RC_ASSERT(day.truckWaiting_s < fill * trucks);
    }
}

// One more truck never brings fewer loads where times are fixed.
RC_GTEST_PROP(SimulatedDays, MoreTrucksBringNoLess, ()) {
    const int trucks = *rc::gen::inRange(1, 12);
    Round round = twoStations(trucks, 200s, 1500s, 0);
    round.tip = {Seconds{static_cast<double>(*rc::gen::inRange(30, 400))}, 0};
    round.tippingPlaces = 1;
    const int before = simulateDay(round, std::mt19937_64{1}).loads;
    ++round.trucks;
    RC_ASSERT(simulateDay(round, std::mt19937_64{1}).loads >= before);
}

TEST(SimulatedDays, AreHeldUpByTheSlowestLink) {
    Round round = twoStations(10, 180s, 18min, 0);
    round.tip = {240s, 0};
    round.tippingPlaces = 1;
    EXPECT_NEAR(simulateDay(round, std::mt19937_64{1}).loads, 300 * 15, 5) << "one place, 4 min a load";
    round.tippingPlaces = 2;
    EXPECT_NEAR(simulateDay(round, std::mt19937_64{1}).loads, 300 * 20, 12) << "the harvester again";
    round.spread = {300s, 0};
    round.heaps = 2;
    EXPECT_NEAR(simulateDay(round, std::mt19937_64{1}).loads, 300 * 12, 5) << "spreading, 5 min a load";
}

TEST(SimulatedDays, AreTheSameForTheSameDraw) {
    const Round round = twoStations(6, 180s, 18min, 0.5);
    const auto one = simulateDays(round, 3, 7), same = simulateDays(round, 3, 7),
               other = simulateDays(round, 3, 8);
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_EQ(one[i].loads, same[i].loads);
        EXPECT_EQ(one[i].truckWaiting_s, same[i].truckWaiting_s);
        EXPECT_NE(one[i].truckWaiting_s, other[i].truckWaiting_s);
    }
    EXPECT_NE(one[0].truckWaiting_s, one[1].truckWaiting_s);
}

// Mean and coefficient of variation of what is drawn, over the whole range of the latter.
TEST(VaryingTimes, HaveTheirMeanAndVariation) {
    for (const double variation : {0.0, 0.1, 0.3, 0.7, 1.0}) {
        const VaryingTime time{100s, variation};
        std::mt19937_64 random{3};
        constexpr int kDraws = 40'000;
        double sum = 0, squares = 0;
        for (int i = 0; i < kDraws; ++i) {
            const double drawn = time.draw_s(random);
            sum += drawn;
            squares += drawn * drawn;
        }
        const double mean = sum / kDraws;
        EXPECT_NEAR(mean, 100, 4 * 100 * variation / 200 + 1e-9) << variation;
        EXPECT_NEAR(std::sqrt(std::max(0.0, squares / kDraws - mean * mean)) / mean, variation, 0.02);
    }
}

TEST(Bands, AreQuantilesOverTheDays) {
    std::vector<double> values;
    for (int i = 100; i >= 0; --i) values.push_back(i);
    const Band band = bandOf(values);
    EXPECT_DOUBLE_EQ(band.low80, 10);
    EXPECT_DOUBLE_EQ(band.median, 50);
    EXPECT_DOUBLE_EQ(band.high80, 90);
    EXPECT_THROW((void)bandOf({}), std::invalid_argument);
}

}  // namespace
}  // namespace treadwell::plan
