#include "core/outcome/feed_out.h"

#include "core/outcome/effluent.h"
#include "core/outcome/sealing.h"

#include <gtest/gtest.h>

namespace treadwell::outcome {
namespace {

// Bastiman 1976 (from memory): L per t fresh at 100/150/200/250 g/kg; none above 285.
TEST(PublishedEffluent, Bastiman) {
    const double percent[] = {10, 15, 20, 25}, litres[] = {327, 177, 73, 17};
    for (std::size_t i = 0; i < 4; ++i)
        EXPECT_NEAR(*effluent_L_per_t(DryMatter::fromPercent(percent[i])), litres[i], 0.5) << percent[i];
    EXPECT_EQ(*effluent_L_per_t(DryMatter::fromPercent(28.6)), 0);
    EXPECT_FALSE(effluent_L_per_t(DryMatter::fromPercent(9)));
}

// Lower Saxony chamber of agriculture (published): 120 cows and 120 young at 20 and 10 m3 a year from two
// faces, 2.0 m a week, 2.5 m high: 3600 m3, 35 m3 a week and face, 17 m2, 7 m wide.
TEST(PublishedFeedOut, AFaceForTheHerd) {
    const double yearly_m3 = 120 * 20 + 120 * 10;
    EXPECT_NEAR(yearly_m3, 3600, 1e-9);
    const double weekly_m3 = yearly_m3 / 52 / 2;
    EXPECT_NEAR(weekly_m3, 35, 0.5);
    const DryDensity density = DryDensity::fromSi(230);
    const DryMass daily = density * Volume::fromCubicMetres(weekly_m3 / 7);
    const Area face = largestFace(daily, density, Length::fromMetres(2.0 / 7));
    EXPECT_NEAR(face.squareMetres(), 17, 0.5);
    EXPECT_NEAR(face.squareMetres() / 2.5, 7, 0.1);
    EXPECT_NEAR(advanceOf(daily, density, face).metres() * 7, 2.0, 1e-12);
}

// Published: 3,000 lb DM a day at 14 lb/ft3 take 214.3 ft3 a day; 3 ft heated at 1 ft a day lie 3 days open.
TEST(PublishedFeedOut, VolumeOfADayAndExposure) {
    const Volume daily = DryMass::fromPounds(3000) / DryDensity::fromPoundsPerCubicFoot(14);
    EXPECT_NEAR(daily.cubicFeet(), 214.3, 0.05);
    EXPECT_NEAR(daysExposed(Length::fromFeet(3), Length::fromFeet(1)), 3, 1e-12);
}

// Bruening et al. 2018 (published): 4 days of waiting cost up to 11 % of the exposed dry matter.
TEST(PublishedSealing, Waiting) {
    EXPECT_NEAR(waitingLoss(4).percent(), 11, 1e-12);
    EXPECT_EQ(waitingLoss(30), waitingLoss(4)) << "not known beyond";
    EXPECT_EQ(waitingLoss(0), Loss{});
}

// By hand: 60 m along and 2 m beyond each end in sheets of 12 m with 1.5 m overlap: 6 cover 64.5 m; each is
// 14 + 4 m long.
TEST(Sealing, SheetsCoverTheSurface) {
    const auto metres = [](double m) { return Length::fromMetres(m); };
    const Sheets sheets = sheetsOver(metres(60), metres(14), {metres(12), metres(1.5), metres(2)});
    EXPECT_EQ(sheets.count, 6);
    EXPECT_NEAR(sheets.area.squareMetres(), 6 * 12 * 18, 1e-9);
    EXPECT_NEAR(sheets.laps.squareMetres(), 5 * 1.5 * 18, 1e-9);
    EXPECT_EQ(sheetsOver(metres(5), metres(4), {metres(12), metres(1.5), metres(2)}).count, 1);
}

}  // namespace
}  // namespace treadwell::outcome
