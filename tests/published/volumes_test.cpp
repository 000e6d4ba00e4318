#include "core/farm/geometry.h"
#include "core/farm/shape.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

namespace treadwell::farm {
namespace {

Silo silo12x50() {
    Silo silo = testing_support::someSilo();
    silo.width = Length::fromMetres(12);
    silo.length = Length::fromMetres(50);
    return silo;
}

// Derived by arithmetic: 12 x 50 x 3 m, ramp 1:3, one end and two.
TEST(PublishedVolumes, LevelBunkerVolumes) {
    Silo silo = silo12x50();
    EXPECT_NEAR(levelVolume(silo, Length::fromMetres(3)).cubicMetres(), 1638, 1e-9);
    silo.rampEnds = 2;
    EXPECT_NEAR(levelVolume(silo, Length::fromMetres(3)).cubicMetres(), 1476, 1e-9);
}

// D'Amours & Savoie 2005, ASAE paper 051051: 4.9 x 21.3 x 3.05 m hold 318 m3, 15.2 x 46.0 x 3.7 m 2587 m3
// (walls alone).
TEST(PublishedVolumes, PublishedBoxes) {
    const auto box = [](double width, double length, double height) {
        Silo silo = silo12x50();
        silo.width = Length::fromMetres(width);
        silo.length = Length::fromMetres(length);
        silo.rampEnds = 0;
        return levelVolume(silo, Length::fromMetres(height)).cubicMetres();
    };
    EXPECT_NEAR(box(4.9, 21.3, 3.05), 318, 0.5);
    EXPECT_NEAR(box(15.2, 46.0, 3.7), 2587, 0.5);
}

// Derived by arithmetic.
TEST(PublishedVolumes, CrownedSectionAndWedgeFace) {
    EXPECT_NEAR(crownedSection(Length::fromMetres(12), Length::fromMetres(3), Length::fromMetres(1),
                               Slope::fromRunPerRise(3))
                    .squareMetres(),
                45, 1e-9);
    Silo silo = silo12x50();
    const Area face = workingArea(silo, Length::fromMetres(3));
    EXPECT_NEAR(face.squareMetres(), 113.8, 0.05);
    EXPECT_NEAR((face * Length::fromCentimetres(15)).cubicMetres(), 17.1, 0.05);
    silo.filling = FillingWay::lifts;
    EXPECT_NEAR(workingArea(silo, Length::fromMetres(3)).squareMetres(), 600, 1e-9);
}

// The same rows by the shape as it is drawn.
TEST(PublishedVolumes, BodiesOfShapes) {
    const auto metres = [](double m) { return Length::fromMetres(m); };
    Shape shape{.width = metres(12), .length = metres(50), .height = metres(3), .wallHeight = metres(3)};
    EXPECT_NEAR(bodyOf(shape).volume.cubicMetres(), 1638, 1e-9);
    shape.rampEnds = 2;
    EXPECT_NEAR(bodyOf(shape).volume.cubicMetres(), 1476, 1e-9);
    const Shape pile{.kind = ShapeKind::pile,
                     .width = metres(30),
                     .length = metres(60),
                     .height = metres(4),
                     .wallHeight = {},
                     .rampEnds = 2};
    EXPECT_NEAR(bodyOf(pile).volume.cubicMetres(), 3648, 1e-9);
}

// Derived by arithmetic, and against slices: 30 x 60 m, 4 m high, sides 1:3.
TEST(PublishedVolumes, PileVolume) {
    const auto pile = [](double height) {
        return pileVolume(Length::fromMetres(30), Length::fromMetres(60), Length::fromMetres(height),
                          Slope::fromRunPerRise(3))
            .cubicMetres();
    };
    EXPECT_NEAR(pile(4), 3648, 1e-9);
    for (const double height : {0.5, 2.0, 4.5}) {
        constexpr int kSlices = 10'000;
        double sum = 0;
        for (int i = 0; i < kSlices; ++i) {
            const double z = (i + 0.5) * height / kSlices;
            sum += (30 - 6 * z) * (60 - 6 * z) * height / kSlices;
        }
        EXPECT_NEAR(pile(height), sum, 1e-5 * sum);
    }
}

}  // namespace
}  // namespace treadwell::farm
