#include "app/desktop/settings/display_units.h"

#include "core/quantity/fraction.h"
#include "core/quantity/geometry.h"
#include "core/quantity/mass.h"

#include <gtest/gtest.h>

#include <limits>

namespace treadwell::settings {
namespace {

QString spaced(const char* text) {
    return QString::fromUtf8(text).replace(u'_', QChar::Nbsp);
}

TEST(DisplayUnits, ShowAmountsWithTheLocalesDecimalSignAndRaisedExponents) {
    const DisplayUnits english{UnitSystem::metric, QLocale{QStringLiteral("en_US")}};
    const DisplayUnits brazilian{UnitSystem::metric, QLocale{QStringLiteral("pt_BR")}};
    EXPECT_EQ(english.text(AsFedMass::fromTonnes(18.4)), spaced("18.4_t"));
    EXPECT_EQ(brazilian.text(AsFedMass::fromTonnes(18.4)), spaced("18,4_t"));
    EXPECT_EQ(english.text(DryDensity::fromKilogramsPerCubicMetre(236.2)),
              QStringLiteral("236") + QChar::Nbsp + QStringLiteral("kg DM/m³"));
}

TEST(DisplayUnits, PutNoDashBesideAMinus) {
    const DisplayUnits units{UnitSystem::metric, QLocale::c()};
    const auto range = [&](double low, double high) {
        return units.rangeText(DryMatter::fromPercent(low).amount(), DryMatter::fromPercent(high).amount());
    };
    EXPECT_EQ(range(-0.7, -0.4), QStringLiteral("-0.7 to ") + spaced("-0.4_%"));
    EXPECT_EQ(range(-0.7, 0.4), QStringLiteral("-0.7 to ") + spaced("0.4_%"));
    EXPECT_EQ(range(0.4, 0.7), QStringLiteral("0.4–") + spaced("0.7_%"));
}

TEST(DisplayUnits, NeverGroupDigits) {
    const DisplayUnits us{UnitSystem::us, QLocale{QStringLiteral("en_US")}};
    EXPECT_EQ(us.text(MachineMass::fromPounds(30000)), spaced("30000_lb"));
}

TEST(DisplayUnits, CallNoChanceCertain) {
    const DisplayUnits units{UnitSystem::metric, QLocale::c()};
    EXPECT_EQ(units.chanceText(Chance::fromPercent(61)), spaced("61_%"));
    EXPECT_EQ(units.chanceText(Chance::fromPercent(99.8)), QStringLiteral("over ") + spaced("99_%"));
    EXPECT_EQ(units.chanceText(Chance::fromPercent(100)), QStringLiteral("over ") + spaced("99_%"));
    EXPECT_EQ(units.chanceText(Chance::fromPercent(0)), QStringLiteral("under ") + spaced("1_%"));
}

TEST(DisplayUnits, ShowADashForWhatIsNotFinite) {
    const DisplayUnits units;
    const Amount amount{Dimension::asFedMass, std::numeric_limits<double>::quiet_NaN()};
    EXPECT_EQ(units.numberText(amount), QStringLiteral("–"));
}

TEST(DisplayUnits, ShowNoMinusBeforeZero) {
    const DisplayUnits units{UnitSystem::metric, QLocale::c()};
    EXPECT_EQ(units.numberText({Dimension::asFedMass, -1.0}), QStringLiteral("0.0"));
}

// 1 lb/ft3 = 16.018463 kg/m3 (NIST Special Publication 811, 2008, appendix B.8).
TEST(DisplayUnits, ConvertToUsUnitsAndBack) {
    const DisplayUnits us{UnitSystem::us, QLocale::c()};
    const Amount amount{Dimension::dryDensity, 16.018463 * 14.0};
    EXPECT_NEAR(us.shown(amount), 14.0, 1e-6);
    EXPECT_NEAR(us.fromShown(Dimension::dryDensity, 14.0).si, amount.si, 1e-5);
}

}  // namespace
}  // namespace treadwell::settings
