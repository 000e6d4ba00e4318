#include "core/packing/passes.h"

#include <gtest/gtest.h>

#include <vector>

namespace treadwell::packing {
namespace {

constexpr AsFedDensity kLoose = AsFedDensity::fromKilogramsPerCubicMetre(320);

TEST(Passes, TheInverseTurnsThemBack) {
    const Speed speed = Speed::fromKilometresPerHour(5);
    const Length width = Length::fromMetres(1.1), layer = Length::fromCentimetres(12);
    const std::vector<Roller> machines{{intensityForPasses(3, kLoose, layer, speed, width), speed, width}};
    EXPECT_NEAR(passesPerLayer(machines, kLoose, layer), 3, 1e-12);
}

TEST(Passes, ThinnerLayersGetFewerAtEqualMinutes) {
    const std::vector<Roller> machines{
        {PackingIntensity::fromMinutesPerTonne(1), kUsualSpeed, kUsualTrackWidth}};
    const double thick = passesPerLayer(machines, kLoose, Length::fromCentimetres(20));
    const double thin = passesPerLayer(machines, kLoose, Length::fromCentimetres(10));
    EXPECT_NEAR(thin, thick / 2, 1e-12);
}

TEST(Passes, NobodyRolling) {
    EXPECT_EQ(passesPerLayer({}, kLoose, Length::fromCentimetres(15)), 0);
    EXPECT_EQ(unrolledShare(0).fraction(), 1);
    EXPECT_EQ(shareWithThreePasses(0).fraction(), 0);
}

}  // namespace
}  // namespace treadwell::packing
