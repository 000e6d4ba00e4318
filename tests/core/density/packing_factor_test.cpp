#include "core/density/packing_factor.h"

#include "tests/core/density/generators.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace treadwell::density {
namespace {

MachineWork machine(double tonnes, double minutesPerTonne) {
    return {MachineMass::fromTonnes(tonnes), PackingIntensity::fromMinutesPerTonne(minutesPerTonne)};
}

constexpr Length kLayer = Length::fromCentimetres(15);
constexpr DryMatter kDryMatter = DryMatter::fromPercent(35);

TEST(PackingFactor, OneMachine) {
    const MachineWork machines[] = {machine(14, 0.5)};
    const Packing packed = packingOf(machines, kLayer, kDryMatter);
    EXPECT_NEAR(packed.factor.si, 14000.0 / 15.0 * std::sqrt(0.5 * 0.35), 1e-10);
}

TEST(PackingFactor, TheOrderOfTheMachinesDoesNotMatter) {
    const MachineWork heavyFirst[] = {machine(20, 0.3), machine(14, 0.2), machine(5, 0.4)};
    const MachineWork lightFirst[] = {machine(5, 0.4), machine(14, 0.2), machine(20, 0.3)};
    const Packing a = packingOf(heavyFirst, kLayer, kDryMatter),
                  b = packingOf(lightFirst, kLayer, kDryMatter);
    EXPECT_DOUBLE_EQ(a.factor.si, b.factor.si);
    EXPECT_EQ(a.counted.front(), 0U);
    EXPECT_EQ(b.counted.front(), 2U);
}

TEST(PackingFactor, AMachineThatDoesNotPackIsNeitherCountedNorSaidToAddNothing) {
    const MachineWork machines[] = {machine(25, 0.0), machine(14, 0.5), machine(2, 0.5)};
    const Packing packed = packingOf(machines, kLayer, kDryMatter);
    EXPECT_EQ(packed.counted, (std::vector<std::size_t>{1}));
    EXPECT_EQ(packed.addNothing, (std::vector<std::size_t>{2}));
    EXPECT_NEAR(packed.allTime.minutesPerTonne(), 1.0, 1e-12);
    EXPECT_NEAR(packed.countedTime.minutesPerTonne(), 0.5, 1e-12);
}

TEST(PackingFactor, NothingWithoutMinutes) {
    EXPECT_EQ(packingOf({}, kLayer, kDryMatter).factor.si, 0.0);
    const MachineWork idle[] = {machine(14, 0.0)};
    const Packing packed = packingOf(idle, kLayer, kDryMatter);
    EXPECT_EQ(packed.factor.si, 0.0);
    EXPECT_TRUE(packed.counted.empty() && packed.addNothing.empty());
}

// The claim behind the prefix search: no sub-fleet whatever is stronger.
RC_GTEST_PROP(PackingFactor, NoSubFleetBeatsTheStrongestPrefix, ()) {
    std::vector<MachineTime> fleet;
    const auto count = *rc::gen::inRange<std::size_t>(1, 9);
    for (std::size_t i = 0; i < count; ++i) {
        fleet.push_back({*generated(1000, 30000), *generated(0.001, 2)});
    }
    std::sort(fleet.begin(), fleet.end(),
              [](const MachineTime& a, const MachineTime& b) { return a.mass_kg > b.mass_kg; });
    const double best = strongestPrefix(fleet).value;
    for (unsigned chosen = 1; chosen < (1U << count); ++chosen) {
        double weighted = 0.0, minutes = 0.0;
        for (std::size_t i = 0; i < count; ++i) {
            if ((chosen >> i & 1U) == 0) continue;
            weighted += fleet[i].mass_kg * fleet[i].minutes;
            minutes += fleet[i].minutes;
        }
        RC_ASSERT(weighted / std::sqrt(minutes) <= best * (1.0 + 1e-12));
    }
}

}  // namespace
}  // namespace treadwell::density
