#include "core/crop/crop.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::crop {
namespace {

TEST(Crop, EveryCropIsReadBackFromItsName) {
    for (const Facts& facts : crops()) {
        EXPECT_EQ(enumText(facts.crop), facts.name);
        EXPECT_EQ(enumFromText<Crop>(facts.name), facts.crop);
        EXPECT_LT(facts.wettest, facts.driest);
        EXPECT_FALSE(facts.looseSource.citation.empty());
    }
    EXPECT_FALSE(enumFromText<Crop>("straw"));
    EXPECT_FALSE(enumFromText<Crop>("Maize"));
}

TEST(Crop, AFortyCubicMetreBoxOfMaize) {
    const AsFedMass load = looseAsFed(Crop::maize, DryMatter::fromPercent(35)) * Volume::fromCubicMetres(40);
    EXPECT_NEAR(load.tonnes(), 12.8, 1e-9);
    EXPECT_NEAR((load * DryMatter::fromPercent(35)).tonnes(), 4.48, 1e-9);
}

TEST(Crop, LooseSpreadAddsUpToTheStudys) {
    EXPECT_NEAR(std::hypot(kLooseCommonLogSd, kLooseLoadLogSd), 11.2 / 112, 1e-4);
}

}  // namespace
}  // namespace treadwell::crop
