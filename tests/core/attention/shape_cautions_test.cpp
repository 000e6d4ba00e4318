#include "core/attention/shape_cautions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace treadwell::attention {
namespace {

std::vector<Caution> seenIn(const farm::Shape& planned) {
    std::vector<Caution> seen;
    for (const CautionNow& caution : shapeCautions(planned, Length::fromMetres(2.5)))
        seen.push_back(caution.caution);
    return seen;
}

constexpr Length metres(double m) {
    return Length::fromMetres(m);
}

TEST(ShapeCautions, AreThoseBeyondALimit) {
    farm::Shape shape{
        .width = metres(14), .length = metres(60), .height = metres(3), .wallHeight = metres(3)};
    EXPECT_THAT(seenIn(shape), testing::IsEmpty());
    shape.height = metres(3.5);
    EXPECT_THAT(seenIn(shape), testing::Contains(Caution::fillAboveWall));
    shape.rampSlope = Slope::fromRunPerRise(2.5);
    EXPECT_THAT(seenIn(shape), testing::Contains(Caution::rampSlope));
}

// All sides of a pile rise from its edge: 24 m less 2 x 3 x 3 m leave 6 m on top, and three machines of 2.5 m
// want 7.5.
TEST(ShapeCautions, APileIsAsWideAsItsTop) {
    const farm::Shape pile{.kind = farm::ShapeKind::pile,
                           .width = metres(24),
                           .length = metres(50),
                           .height = metres(3),
                           .wallHeight = {},
                           .rampEnds = 2};
    EXPECT_THAT(seenIn(pile), testing::ElementsAre(Caution::workingWidth));
}

}  // namespace
}  // namespace treadwell::attention
