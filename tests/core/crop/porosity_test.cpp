#include "core/crop/porosity.h"

#include "core/crop/codes.h"
#include "core/crop/saturation.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace treadwell::crop {
namespace {

constexpr Solids kMaize = Solids::fromOrganicMatter(0.95);

TEST(Porosity, TheInverseTurnsItBack) {
    for (double dm = 0.1; dm <= 1.0; dm += 0.05) {
        for (double phi = 0.0; phi <= 1.0; phi += 0.1) {
            const DryMatter dryMatter = DryMatter::fromFraction(dm);
            const auto back = porosity(densityAtPorosity(Porosity::fromFraction(phi), dryMatter, kMaize),
                                       dryMatter, kMaize);
            ASSERT_TRUE(back) << dm << ' ' << phi;
            EXPECT_NEAR(back->fraction(), phi, 1e-14);
        }
    }
}

TEST(Porosity, FallsWithDensityAndIsOneForNothing) {
    const DryMatter dryMatter = DryMatter::fromPercent(35);
    EXPECT_EQ(porosity(DryDensity{}, dryMatter, kMaize)->fraction(), 1.0);
    EXPECT_LT(*porosity(DryDensity::fromSi(230), dryMatter, kMaize),
              *porosity(DryDensity::fromSi(220), dryMatter, kMaize));
}

TEST(Porosity, ADensityBeyondThePoreFreeOneIsAnImpossibleInput) {
    const auto result = porosity(DryDensity::fromSi(405), DryMatter::fromPercent(35), kMaize);
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error().code(), code::densityImpossible);
    EXPECT_EQ(result.error().field, "density");
    EXPECT_EQ(result.error().message.arguments.size(), 3U);
}

TEST(Porosity, NamesTheFieldThatIsWrong) {
    const double nan = std::nan("");
    const double inf = std::numeric_limits<double>::infinity();
    for (const double dm : {0.0, -0.1, 1.01, nan}) {
        const auto result = porosity(DryDensity::fromSi(200), DryMatter::fromFraction(dm), kMaize);
        ASSERT_FALSE(result) << dm;
        EXPECT_EQ(result.error().field, "dryMatter");
    }
    for (const double density : {-1.0, nan, inf}) {
        const auto result = porosity(DryDensity::fromSi(density), DryMatter::fromPercent(35), kMaize);
        ASSERT_FALSE(result) << density;
        EXPECT_EQ(result.error().field, "density");
    }
}

TEST(Saturation, NoneOutsideItsRange) {
    EXPECT_FALSE(saturationLimit(DryMatter::fromPercent(9.99)));
    EXPECT_FALSE(saturationLimit(DryMatter::fromPercent(50.01)));
    EXPECT_FALSE(saturationLimit(DryMatter::fromFraction(std::nan(""))));
    EXPECT_NEAR(saturationLimit(DryMatter::fromPercent(50))->kilogramsPerCubicMetre(), 465, 1e-9);
    EXPECT_NEAR(saturationLimit(DryMatter::fromPercent(10))->kilogramsPerCubicMetre(), 68.2, 1e-9);
}

TEST(Saturation, LiesBelowThePoreFreeDensity) {
    for (double percent = 10; percent <= 50; percent += 1) {
        const DryMatter dryMatter = DryMatter::fromPercent(percent);
        EXPECT_LT(*saturationLimit(dryMatter), poreFreeDensity(dryMatter, kMaize));
    }
}

}  // namespace
}  // namespace treadwell::crop
