#include "core/passes/pad.h"

#include "core/passes/rest.h"
#include "tests/core/passes/ground.h"

#include <gtest/gtest.h>

namespace treadwell::passes {
namespace {

TEST(Pad, IsHeldToWhatASiloCanBe) {
    EXPECT_EQ(makePad({Length::fromMetres(0.2), Length::fromMetres(10)}).error().field, "length");
    EXPECT_EQ(makePad({Length::fromMetres(20), Length::fromMetres(1)}).error().field, "width");
    PadShape fine{Length::fromMetres(20), Length::fromMetres(10)};
    fine.cellAcross = Length::fromMillimetres(1);
    EXPECT_EQ(makePad(fine).error().field, "cell_across");
    Pad pad = padOf(20, 10);
    EXPECT_EQ(beginLayer(pad, {DryMatter::fromPercent(3), kMaize.loose}).error().field, "dry_matter");
    EXPECT_EQ(spreadEvenly(pad, kMaize, Length::fromMetres(2)).error().field, "thickness");
    EXPECT_TRUE(pad.layers.empty());
}

TEST(Pad, CellsFillTheFloorExactly) {
    Pad pad = padOf(20.2, 10.1);
    ASSERT_TRUE(spreadEvenly(pad, kMaize, Length::fromCentimetres(20)));
    EXPECT_NEAR(dryMass(pad).kilograms(), 20.2 * 10.1 * 0.2 * 112, 1e-6);
}

TEST(Pad, ABladeLevelsAHeapAlongItsWayAndLosesNothing) {
    Pad pad = padOf(20, 10);
    ASSERT_TRUE(beginLayer(pad, kMaize));
    tip(pad, {0, 5, 0, 10}, DryMass::fromKilograms(10 * 10 * 0.15 * 112));
    blade(pad, {0, 20, 0, 10}, Length::fromCentimetres(15), Direction::outward);
    for (std::size_t column = 0; column < pad.along; ++column) {
        const double thickness_m = pad.areal_kg_m2[pad.indexOf(0, 7, column)] / 112;
        EXPECT_NEAR(thickness_m, column < 20 ? 0.15 : 0.0, 1e-9) << column;
    }
    EXPECT_NEAR(dryMass(pad).kilograms(), 1680, 1680 * 1e-9);
}

TEST(Pad, WhatABladeCannotPlaceStaysAtTheEndOfItsWay) {
    Pad pad = padOf(20, 10);
    ASSERT_TRUE(beginLayer(pad, kMaize));
    tip(pad, {10, 20, 0, 10}, DryMass::fromTonnes(5));
    blade(pad, {10, 20, 0, 10}, Length::fromCentimetres(10), Direction::back);
    EXPECT_GT(pad.areal_kg_m2[pad.indexOf(0, 3, 20)] / 112, 1.0);
    EXPECT_NEAR(pad.areal_kg_m2[pad.indexOf(0, 3, 30)] / 112, 0.10, 1e-9);
    EXPECT_EQ(pad.areal_kg_m2[pad.indexOf(0, 3, 19)], 0.0);
    EXPECT_NEAR(dryMass(pad).tonnes(), 5, 5e-9);
}

TEST(Pad, CropThatIsPushedLiesLooseAgain) {
    Pad pad = padOf(4, 4);
    ASSERT_TRUE(spreadEvenly(pad, kMaize, Length::fromCentimetres(20)));
    for (double& volume : pad.volume_m3_kg) volume = 1.0 / 200;
    blade(pad, {0, 4, 0, 4}, Length::fromCentimetres(10), Direction::outward);
    EXPECT_DOUBLE_EQ(1.0 / pad.volume_m3_kg[0], 200);
    const double last = 1.0 / pad.volume_m3_kg[pad.along - 1];
    EXPECT_LT(last, 130);
    EXPECT_GT(last, 112);
}

TEST(Rest, WeightAboveHoldsTheReboundBack) {
    const Parameters parameters;
    EXPECT_DOUBLE_EQ(restFactor(0, parameters), parameters.restAtSurface);
    EXPECT_GT(restFactor(20e3, parameters), restFactor(10e3, parameters));
    EXPECT_EQ(restFactor(1e9, parameters), parameters.restMost);
}

TEST(Rest, APictureShowsWhatTheColumnsHold) {
    Pad pad = padOf(4, 4);
    ASSERT_TRUE(spreadEvenly(pad, kMaize, Length::fromCentimetres(20)));
    ASSERT_TRUE(beginLayer(pad, kMaize));
    tip(pad, {0, 1, 0, 4}, DryMass::fromKilograms(4 * 0.1 * 112));
    const PadPicture picture = pictureOf(pad);
    ASSERT_EQ(picture.columns.size(), pad.columns());
    EXPECT_GT(picture.columns[0].height, picture.columns[7].height);
    for (const std::size_t column : {0U, 7U}) {
        const auto cells = columnAtRest(pad, 0, column);
        EXPECT_NEAR(picture.columns[column].height.si(), cells.back().upper_m, 1e-12);
        EXPECT_EQ(cells[1].density_kg_m3 > 0, column == 0);
    }
    EXPECT_NEAR(
        densityAtRest(pad)->si(),
        dryMass(pad).si() /
            [&] {
                double volume_m3 = 0;
                for (const auto& column : picture.columns)
                    volume_m3 += column.height.si() * pad.cellArea_m2();
                return volume_m3;
            }(),
        1e-9);
}

TEST(Rest, NothingLiesOnAnEmptyPad) {
    Pad pad = padOf(4, 4);
    ASSERT_TRUE(beginLayer(pad, kMaize));
    EXPECT_FALSE(densityAtRest(pad));
    EXPECT_EQ(pictureOf(pad).columns[0].density.si(), 0);
    EXPECT_EQ(coverageOf(pad, 0).meanPasses, 0);
}

}  // namespace
}  // namespace treadwell::passes
