#include "app/desktop/fill/say.h"

#include "core/advice/codes.h"
#include "core/quantity/fraction.h"
#include "core/quantity/mass.h"

#include <gtest/gtest.h>

namespace treadwell::fill {
namespace {

TEST(Speech, RaisesExponentsAndDrawsArrows) {
    const settings::DisplayUnits units{UnitSystem::metric, QLocale::c()};
    const Message gain{code::adviceGain,
                       {DryDensity::fromKilogramsPerCubicMetre(212).amount(),
                        DryDensity::fromKilogramsPerCubicMetre(236).amount(),
                        DryDensity::fromKilogramsPerCubicMetre(225).amount(),
                        Chance::fromPercent(36).amount(), Chance::fromPercent(61).amount()}};
    EXPECT_EQ(Speech(units, FarmZone{}).say(gain),
              QStringLiteral("212 kg DM/m³ → 236 kg DM/m³, chance of 225 kg DM/m³ from 36 % to 61 %"));
    const settings::DisplayUnits us{UnitSystem::us, QLocale::c()};
    EXPECT_TRUE(Speech(us, FarmZone{}).say(gain).contains(QStringLiteral("lb DM/ft³")));
}

TEST(Speech, LeavesTheNamesOfPeopleAndMachinesAlone) {
    const settings::DisplayUnits units{UnitSystem::metric, QLocale::c()};
    const Message advice{code::advicePack, {std::string{"m3 Loader 2"}}};
    EXPECT_TRUE(Speech(units, FarmZone{}).say(advice).contains(QStringLiteral("m3 Loader 2")));
}

}  // namespace
}  // namespace treadwell::fill
