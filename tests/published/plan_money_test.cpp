#include "core/plan/machine_hour.h"
#include "core/plan/pays.h"

#include <gtest/gtest.h>

namespace treadwell::plan {
namespace {

// Edwards, Iowa State University Extension A3-29 (inputs published, the sum derived): list 150,000, price
// 130,000, 15 years, 400 h a year, 8 %, salvage 23 %, taxes and insurance 1 %: 36.85 an hour.
TEST(PublishedMoney, AnHourOfATractor) {
    MachinePrice machine;
    machine.list = 150'000;
    machine.purchase = 130'000;
    machine.life_years = 15;
    machine.hours_per_year = 400;
    machine.interest = Share::fromPercent(8);
    machine.salvage = Share::fromPercent(23);
    machine.taxes = Share::fromPercent(1);
    EXPECT_NEAR(hourOf(machine, {}).owning.perHour(), 36.85, 0.005);
}

// Crop priced by its dry matter, extension tables (published): 40 a tonne at 30 % is 36 at 27 % and 44 at 33
// %; 75 at 30 % is 70 at 28 % and 80 at 32 %.
TEST(PublishedMoney, CropByItsDryMatter) {
    Prices prices;
    prices.crop_per_tonne_dm = 40 / 0.30;
    EXPECT_NEAR(prices.cropPerTonne(DryMatter::fromPercent(27)), 36, 1e-9);
    EXPECT_NEAR(prices.cropPerTonne(DryMatter::fromPercent(33)), 44, 1e-9);
    prices.crop_per_tonne_dm = 75 / 0.30;
    EXPECT_NEAR(prices.cropPerTonne(DryMatter::fromPercent(28)), 70, 1e-9);
    EXPECT_NEAR(prices.cropPerTonne(DryMatter::fromPercent(32)), 80, 1e-9);
}

// (0.22 X + 0.096) kW: form published, coefficients from memory. 134.2 kW at half load: 27.65 L/h, derived.
// Average 0.223 kW L/h (published) lies within its range of loads.
TEST(PublishedMoney, Fuel) {
    EXPECT_NEAR(fuel_L_per_h(134.2, Share::fromPercent(50)), 27.65, 0.01);
    EXPECT_NEAR(fuel_L_per_h(1, Share::fromPercent(57.7)), 0.223, 0.001);
}

// Derived: 110 an hour at 180 t/h and 50 a tonne must save 1.22 points, which is 23 kg DM/m3 by Ruppel's
// rows.
TEST(PublishedMoney, BreakEvenOfOneMoreTractor) {
    const BreakEven even = breakEvenOf(CostRate::fromPerHour(110), AsFedRate::fromTonnesPerHour(180), 50);
    EXPECT_NEAR(even.loss.percent(), 1.22, 0.005);
    EXPECT_NEAR(even.density.kilogramsPerCubicMetre(), 23, 0.1);
}

}  // namespace
}  // namespace treadwell::plan
