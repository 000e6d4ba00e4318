#include "core/plan/chain.h"

#include <gtest/gtest.h>

namespace treadwell::plan {
namespace {

/// Filling takes 3 min, 40 km/h.
Inputs threeMinutes(double km) {
    Inputs inputs = exampleInputs();
    inputs.haulage.load = AsFedMass::fromTonnes(12);
    inputs.harvester.rate = AsFedRate::fromTonnesPerHour(240);
    inputs.harvester.chopping = Share::fromPercent(100);
    inputs.grounds = {{"Field", AsFedMass::fromTonnes(100), Length::fromMetres(1000 * km)}};
    return inputs;
}

Chain chainAt(double km, int trucks = 6) {
    Inputs inputs = threeMinutes(km);
    inputs.haulage.trucks = trucks;
    return chainFrom(inputs, inputs.grounds[0], AsFedRate::fromTonnesPerHour(1000));
}

// Round = fill + 7.5 min + road: Harrigan 2003, Applied Engineering in Agriculture 19:389 (published).
// Derived from it: 1/3/5 km at 40 km/h and 3 min give 13.5/19.5/25.5 min and 5/7/9 trucks.
TEST(PublishedChain, RoundsAndTrucks) {
    const double km[] = {1, 3, 5}, minutes[] = {13.5, 19.5, 25.5};
    const int trucks[] = {5, 7, 9};
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_NEAR(chainAt(km[i]).round.count() / 60, minutes[i], 1e-9);
        EXPECT_EQ(chainAt(km[i]).trucksToKeepUp, trucks[i]);
    }
}

// Derived: six trucks suffice to rounds of 18 min, ten to 30 min; six near and ten far is common practice.
TEST(PublishedChain, SixNearTenFar) {
    EXPECT_EQ(chainAt(2.5, 6).trucksToKeepUp, 6);
    EXPECT_NEAR(chainAt(2.5, 6).match, 1, 1e-9);
    EXPECT_EQ(chainAt(6.5, 10).trucksToKeepUp, 10);
    EXPECT_NEAR(chainAt(6.5, 6).match, 0.6, 1e-9);
}

// loads/h = min(60/Tf, 60 N/Tc): 20 at most; four trucks on 18 min bring 13.33.
TEST(PublishedChain, TheSlowestLinkSetsThePace) {
    const Chain few = chainAt(2.5, 4);
    EXPECT_EQ(few.slowest, Link::trucks);
    EXPECT_NEAR(few.delivery.tonnesPerHour(), 12 * 60.0 * 4 / 18, 1e-9);
    Inputs inputs = threeMinutes(2.5);
    inputs.haulage.trucks = 12;
    const Chain many = chainFrom(inputs, inputs.grounds[0], AsFedRate::fromTonnesPerHour(180));
    EXPECT_EQ(many.slowest, Link::packing);
    EXPECT_NEAR(many.delivery.tonnesPerHour(), 240, 1e-9) << "what is not packed to the target still comes";
}

// Finite-source queue, derived: filling 3 min; N 6, 10, 4 on rounds of 18, 30, 18 min.
TEST(PublishedChain, FiniteSourceQueue) {
    EXPECT_NEAR(queueBusyShare(6, 3.0 / 15), 0.8082, 5e-5);
    EXPECT_NEAR(queueBusyShare(10, 3.0 / 27), 0.8320, 5e-5);
    EXPECT_NEAR(queueBusyShare(4, 3.0 / 15), 0.6017, 5e-5);
}

}  // namespace
}  // namespace treadwell::plan
