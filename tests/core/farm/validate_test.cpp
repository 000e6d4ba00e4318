#include "core/base/codes.h"
#include "core/farm/codes.h"
#include "core/farm/field.h"
#include "core/farm/machines.h"
#include "core/farm/silo.h"
#include "core/farm/site_rules.h"

#include <gtest/gtest.h>

#include <limits>

namespace treadwell::farm {
namespace {

Silo goodSilo() {
    Silo silo;
    silo.name = "North bunker";
    silo.length = Length::fromMetres(60);
    silo.width = Length::fromMetres(14);
    silo.wallHeight = Length::fromMetres(3.5);
    silo.crown = Length::fromMetres(0.5);
    silo.plannedDepth = Length::fromMetres(3);
    return silo;
}

TEST(Silo, EachFieldIsHeldToItsRangeByName) {
    const auto fieldOf = [](auto change) {
        Silo silo = goodSilo();
        change(silo);
        const auto checked = validate(silo);
        return checked ? std::string{"held"} : checked.error().field;
    };
    EXPECT_EQ(fieldOf([](Silo&) {}), "held");
    EXPECT_EQ(fieldOf([](Silo& s) { s.name = "  "; }), "name");
    EXPECT_EQ(fieldOf([](Silo& s) { s.width = Length::fromMetres(2); }), "width");
    EXPECT_EQ(fieldOf([](Silo& s) { s.length = Length::fromMetres(600); }), "length");
    EXPECT_EQ(
        fieldOf([](Silo& s) { s.wallHeight = Length::fromMetres(std::numeric_limits<double>::quiet_NaN()); }),
        "wallHeight");
    EXPECT_EQ(fieldOf([](Silo& s) { s.rampSlope = Slope::fromRunPerRise(1); }), "rampSlope");
    EXPECT_EQ(fieldOf([](Silo& s) { s.plannedDepth = Length::fromMetres(5); }), "plannedDepth");
    EXPECT_EQ(fieldOf([](Silo& s) { s.rampEnds = 3; }), "rampEnds");
    EXPECT_EQ(fieldOf([](Silo& s) { s.length = Length::fromMetres(9); }), "rampSlope");
    EXPECT_EQ(fieldOf([](Silo& s) {
                  s.width = Length::fromMetres(5);
                  s.crown = Length::fromMetres(1);
              }),
              "crown");
}

TEST(Machines, RangesHoldAndCarryTheValue) {
    Tractor tractor;
    tractor.name = "Ox";
    tractor.mass = MachineMass::fromTonnes(14);
    EXPECT_TRUE(validate(tractor));
    tractor.mass = MachineMass::fromTonnes(0.014);
    const auto light = validate(tractor);
    ASSERT_FALSE(light);
    EXPECT_EQ(light.error().field, "mass");
    EXPECT_EQ(light.error().message.arguments.at(0), Argument{tractor.mass.amount()});
    EXPECT_EQ(light.error().message.arguments.at(1), Argument{MachineMass::fromTonnes(1).amount()});
    Truck truck;
    truck.name = "Red";
    truck.usualLoad = AsFedMass::fromTonnes(12);
    EXPECT_TRUE(validate(truck));
    truck.boxVolume = Volume::fromCubicMetres(400);
    EXPECT_EQ(validate(truck).error().field, "boxVolume");
    EXPECT_EQ(validate(Field{}).error().code(), code::nameEmpty);
}

TEST(SiteRules, TheUsualOnesHoldAndTheGoalIsInOrder) {
    SiteRules rules;
    EXPECT_TRUE(validate(rules));
    rules.dryMatterLow = DryMatter::fromPercent(40);
    EXPECT_EQ(validate(rules).error().field, "dryMatterLow");
    rules = {};
    rules.fillingDensity = DryDensity::fromKilogramsPerCubicMetre(90);
    EXPECT_EQ(validate(rules).error().field, "fillingDensity");
    rules = {};
    rules.rateWindow = std::chrono::minutes{1};
    EXPECT_EQ(validate(rules).error().code(), code::valueOutOfRange);
}

}  // namespace
}  // namespace treadwell::farm
