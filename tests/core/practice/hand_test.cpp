#include "core/practice/hand.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::practice {
namespace {

const passes::PadShape kShape{Length::fromMetres(30), Length::fromMetres(12)};
const passes::Roller kMachine{MachineMass::fromTonnes(12)};
using Passes = std::vector<passes::WheelPass>;

Length metres(double m) {
    return Length::fromMetres(m);
}

TEST(HandDriven, GoesToItsGoalInOneUnbrokenTrack) {
    HandDriven hand{kShape, kMachine};
    EXPECT_TRUE(hand.stands());
    Passes passes;
    EXPECT_EQ(hand.go(passes, metres(5)).metres(), 0);
    hand.goTo({0, 3});
    double driven_m = 0;
    while (!hand.stands()) driven_m += hand.go(passes, metres(1.1)).metres();
    EXPECT_EQ(hand.place().x_m, 0);
    EXPECT_EQ(hand.place().y_m, 3);
    double length_m = 0;
    for (std::size_t i = 0; i < passes.size(); ++i) {
        const passes::WheelPass& pass = passes[i];
        if (i > 0) {
            EXPECT_EQ(pass.x0_m, passes[i - 1].x1_m);
            EXPECT_EQ(pass.y0_m, passes[i - 1].y1_m);
        }
        const double along_m = pass.x1_m - pass.x0_m, across_m = pass.y1_m - pass.y0_m;
        EXPECT_LE(std::abs(across_m), HandDriven::kSteepest * std::abs(along_m) + 1e-9);
        length_m += std::hypot(along_m, across_m);
    }
    EXPECT_NEAR(length_m, driven_m, 1e-9);
    EXPECT_GT(length_m, 30);
}

TEST(HandDriven, CannotGoSidewaysAndStandsWhereItComesNoCloser) {
    HandDriven hand{kShape, kMachine};
    Passes passes;
    hand.goTo({28, 2});
    hand.go(passes, metres(100));
    EXPECT_TRUE(hand.stands());
    EXPECT_EQ(hand.place().x_m, 28);
    EXPECT_NEAR(hand.place().y_m, 6 - 2 * HandDriven::kSteepest, 1e-9);
}

TEST(HandDriven, StaysBetweenTheWallsAndHalts) {
    HandDriven hand{kShape, kMachine};
    Passes passes;
    hand.goTo({-5, -5});
    EXPECT_EQ(hand.goal().x_m, 0);
    EXPECT_NEAR(hand.goal().y_m, passes::kOverhang.si() + kMachine.width().si() / 2, 1e-9);
    hand.go(passes, metres(2));
    hand.halt();
    EXPECT_TRUE(hand.stands());
    EXPECT_EQ(hand.go(passes, metres(2)).metres(), 0);
}

TEST(HandDriven, OnASiloNarrowerThanTheMachineItKeepsToTheMiddle) {
    HandDriven hand{{Length::fromMetres(20), Length::fromMetres(2.5)}, kMachine};
    hand.goTo({0, 0});
    EXPECT_EQ(hand.goal().y_m, 1.25);
}

}  // namespace
}  // namespace treadwell::practice
