#include "core/density/target.h"

#include <gtest/gtest.h>

namespace treadwell::density {
namespace {

TEST(Target, TheLargerOfMinimumAndPorosityUpToTheLimit) {
    const auto target = [](double percent) {
        return targetFor({}, DryMatter::fromPercent(percent), crop::Crop::maize);
    };
    EXPECT_EQ(target(30).density.si(), 225);
    EXPECT_EQ(target(30).governs, Governs::minimum);
    EXPECT_EQ(target(35).density, target(35).atPorosity);
    EXPECT_EQ(target(35).governs, Governs::porosity);
    EXPECT_EQ(target(22).density, target(22).limit.density);
    EXPECT_EQ(target(22).governs, Governs::saturation);
}

TEST(Target, OutsideTheSaturationLineTheLimitIsThePoreFreeDensity) {
    const Limit dry = limitOf(DryMatter::fromPercent(60), crop::Crop::maize);
    EXPECT_FALSE(dry.saturation);
    EXPECT_GT(dry.density.si(), 465);
    EXPECT_TRUE(limitOf(DryMatter::fromPercent(50), crop::Crop::maize).saturation);
}

TEST(Target, AUsersMinimumBeyondEverythingIsHeldToTheLimit) {
    const TargetRule rule{.minimum = DryDensity::fromSi(900)};
    const Target target = targetFor(rule, DryMatter::fromPercent(60), crop::Crop::maize);
    EXPECT_EQ(target.density, target.limit.density);
    EXPECT_EQ(target.governs, Governs::saturation);
}

TEST(Limit, ALayerIsItsBracketTimesTheFactorUpToTheLimit) {
    const DryDensity limit = DryDensity::fromSi(316);
    const DryDensity bracket = bracketOf(PackingFactor{592});
    EXPECT_NEAR(densityAt(bracket, Length::fromMetres(0.5), limit).si(), 237.365 * 0.862619, 0.01);
    EXPECT_EQ(densityAt(bracket, Length::fromMetres(9), limit), limit);
    EXPECT_NEAR(densityAt(bracket, Length::fromMetres(FieldEquation::kUnitDepth), limit).si(), bracket.si(),
                1e-9);
}

TEST(Target, WhatGovernsHasAName) {
    EXPECT_EQ(enumText(Governs::minimum), "minimum");
    EXPECT_EQ(enumText(Governs::porosity), "porosity");
    EXPECT_EQ(enumText(Governs::saturation), "saturation");
}

}  // namespace
}  // namespace treadwell::density
