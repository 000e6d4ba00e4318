#include "core/entries/core.h"

#include "core/base/codes.h"
#include "core/entries/codes.h"

#include <gtest/gtest.h>

namespace treadwell::entries {
namespace {

Core cored() {
    Core core;
    core.along = Length::fromMetres(20);
    core.across = Length::fromMetres(5);
    core.height = Length::fromMetres(1.2);
    core.dryMatter = DryMatter::fromPercent(35);
    core.mass = AsFedMass::fromKilograms(0.4536);
    core.diameter = Length::fromMetres(0.0508);
    core.length = Length::fromMetres(0.3048);
    return core;
}

Code codeOf(const Core& core) {
    const auto valid = validate(core);
    return valid ? code::valueMissing : valid.error().code();
}

// Derived: 453.6 g in a hole of 50.8 x 304.8 mm, 6.178e-4 m3, is 734.2 kg/m3 as fed.
TEST(Core, DensityIsDryMatterOverTheHole) {
    ASSERT_TRUE(validate(cored()));
    EXPECT_NEAR(cored().dryDensity()->kilogramsPerCubicMetre(), 734.2 * 0.35, 0.05);
}

TEST(Core, ABlockHasAVolumeAndABalanceItsDensity) {
    Core block = cored();
    block.origin = CoreOrigin::blockCut;
    block.diameter.reset();
    block.length.reset();
    block.mass = AsFedMass::fromKilograms(900);
    block.volume = Volume::fromCubicMetres(1.3);
    ASSERT_TRUE(validate(block));
    EXPECT_NEAR(block.dryDensity()->kilogramsPerCubicMetre(), 900 * 0.35 / 1.3, 1e-9);
    Core balance = cored();
    balance.origin = CoreOrigin::faceBalance;
    balance.mass.reset();
    balance.diameter.reset();
    balance.length.reset();
    balance.dryMatter.reset();
    balance.density = DryDensity::fromKilogramsPerCubicMetre(231);
    ASSERT_TRUE(validate(balance));
    EXPECT_EQ(balance.dryDensity(), balance.density);
}

TEST(Core, LooseMaterialHasDryMatterAndNoDensity) {
    Core loose = cored();
    loose.origin = CoreOrigin::loaderRemoved;
    EXPECT_TRUE(validate(loose));
    EXPECT_FALSE(loose.dryDensity());
    loose.dryMatter.reset();
    EXPECT_EQ(validate(loose).error().field, "dryMatter");
}

TEST(Core, RefusesNoWayOrTwoWaysToItsDensity) {
    Core core = cored();
    core.density = DryDensity::fromKilogramsPerCubicMetre(231);
    EXPECT_EQ(codeOf(core), code::coreDensityUnclear);
    core = cored();
    core.dryMatter.reset();
    EXPECT_EQ(codeOf(core), code::coreDensityUnclear);
    core = cored();
    core.length.reset();
    EXPECT_EQ(codeOf(core), code::coreDensityUnclear);
}

TEST(Core, RefusesWhatCannotBe) {
    Core core = cored();
    core.depth = Length::fromMetres(2);
    EXPECT_EQ(codeOf(core), code::coreHeightUnclear);
    core.depth.reset();
    core.height.reset();
    EXPECT_EQ(codeOf(core), code::coreHeightUnclear);
    core = cored();
    core.mass = AsFedMass::fromKilograms(4.5);
    EXPECT_EQ(codeOf(core), code::valueOutOfRange);
    EXPECT_EQ(validate(core).error().field, "density");
    core = cored();
    core.diameter = Length::fromMetres(2);
    EXPECT_EQ(validate(core).error().field, "diameter");
}

}  // namespace
}  // namespace treadwell::entries
