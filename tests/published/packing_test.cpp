// Packing-mass rules, passes and the fleet against what was printed, or computed from it.
#include "core/density/packing_factor.h"
#include "core/packing/mass_rules.h"
#include "core/packing/passes.h"

#include <gtest/gtest.h>

#include <vector>

namespace treadwell::packing {
namespace {

// North American extension services: 800 lb for each ton an hour. 50 ton/h -> 40,000 lb; 17 tons every 10 min
// are 102 ton/h -> 81,600 lb.
TEST(PublishedMassRules, NorthAmerica) {
    const MassRuleFacts& rule = factsOf(MassRule::northAmerica);
    const DryMatter dryMatter = DryMatter::fromPercent(35);
    EXPECT_NEAR(requiredMass(rule, AsFedRate::fromShortTonsPerHour(50), dryMatter).pounds(), 40000, 1e-6);
    EXPECT_NEAR(requiredMass(rule, AsFedRate::fromShortTonsPerHour(17 * 6), dryMatter).pounds(), 81600, 1e-6);
}

// Brittany: tonnes of dry matter an hour over three. 45 t DM/h -> about 15 t.
TEST(PublishedMassRules, Brittany) {
    const DryMatter dryMatter = DryMatter::fromPercent(35);
    const AsFedRate delivery = DryRate::fromTonnesPerHour(45) / dryMatter;
    EXPECT_NEAR(requiredMass(factsOf(MassRule::brittany), delivery, dryMatter).tonnes(), 15, 1e-9);
}

// The same 60 t as fed an hour at 33 % DM under each rule (derived): they differ threefold.
TEST(PublishedMassRules, OneDeliveryUnderEach) {
    const struct {
        MassRule rule;
        double tonnes;
    } rows[] = {{MassRule::northAmerica, 24.0},
                {MassRule::thirdOfHourlyMass, 20.0},
                {MassRule::quarterOfHourlyMass, 15.0},
                {MassRule::france, 7.9}};
    for (const auto& row : rows) {
        const MachineMass asked =
            requiredMass(factsOf(row.rule), AsFedRate::fromTonnesPerHour(60), DryMatter::fromPercent(33));
        EXPECT_NEAR(asked.tonnes(), row.tonnes, 0.05) << enumText(row.rule);
    }
}

// A box of 12.8 t filled every 3 min (common practice) is 256 t/h: 102 t of tractors by the 400 kg rule.
TEST(PublishedMassRules, ATruckEveryThreeMinutes) {
    const AsFedRate delivery = AsFedMass::fromTonnes(12.8) / Seconds{180};
    EXPECT_NEAR(requiredMass(factsOf(MassRule::northAmerica), delivery, DryMatter::fromPercent(35)).tonnes(),
                102, 0.5);
}

constexpr AsFedDensity kLoose = AsFedDensity::fromKilogramsPerCubicMetre(320);

std::vector<Roller> tractors(int count, AsFedRate delivery) {
    const PackingIntensity each = PackingIntensity::fromSi(0.8 / delivery.si());
    return std::vector<Roller>(static_cast<std::size_t>(count), Roller{each, kUsualSpeed, kUsualTrackWidth});
}

// Derived: 180 t/h, layer 15 cm, 320 kg/m3 loose, 4 km/h, 1.4 m, rolling 80 % of the time. The chamber of
// Lower Saxony asks for three.
TEST(PublishedPasses, OneToFourTractors) {
    const double expected[] = {1.19, 2.39, 3.58, 4.78};
    for (int count = 1; count <= 4; ++count) {
        const auto machines = tractors(count, AsFedRate::fromTonnesPerHour(180));
        EXPECT_NEAR(passesPerLayer(machines, kLoose, Length::fromCentimetres(15)), expected[count - 1],
                    0.005);
    }
}

// Derived: three machines as above get 3.58 passes over 15 cm and 2.39 over 10 cm.
TEST(PublishedPasses, FallWithAThinnerLayer) {
    const auto machines = tractors(3, AsFedRate::fromTonnesPerHour(180));
    EXPECT_NEAR(passesPerLayer(machines, kLoose, Length::fromCentimetres(10)), 2.39, 0.005);
}

// Derived: minutes per tonne for three passes, 0.67 / 1.00 / 1.34 at 15 / 10 / 7.5 cm.
TEST(PublishedPasses, MinutesForThree) {
    const double layers[] = {15, 10, 7.5}, minutes[] = {0.67, 1.00, 1.34};
    for (int i = 0; i < 3; ++i) {
        const PackingIntensity needed =
            intensityForPasses(3, kLoose, Length::fromCentimetres(layers[i]), kUsualSpeed, kUsualTrackWidth);
        EXPECT_NEAR(needed.minutesPerTonne(), minutes[i], 0.005);
    }
}

// Derived, Poisson: at 3 passes 5 % is never rolled and 58 % gets three; at 4.78 0.8 % and 86 %.
TEST(PublishedPasses, Evenness) {
    EXPECT_NEAR(unrolledShare(3).percent(), 5, 0.05);
    EXPECT_NEAR(shareWithThreePasses(3).percent(), 58, 0.5);
    EXPECT_NEAR(unrolledShare(4.78).percent(), 0.8, 0.05);
    EXPECT_NEAR(shareWithThreePasses(4.78).percent(), 86, 0.5);
}

// Derived: 20 + 8.1 + 8.1 t full time give 20.000, 19.870, 20.900: stopping at the first fall is wrong.
TEST(PublishedFleet, EveryPrefixIsTried) {
    const density::MachineTime fleet[] = {{20.0, 1}, {8.1, 1}, {8.1, 1}};
    const std::span<const density::MachineTime> all{fleet};
    EXPECT_NEAR(density::strongestPrefix(all.first(1)).value, 20.000, 5e-4);
    EXPECT_EQ(density::strongestPrefix(all.first(2)).counted, 1U);
    EXPECT_NEAR(density::strongestPrefix(all).value, 20.900, 5e-4);
    EXPECT_EQ(density::strongestPrefix(all).counted, 3U);
}

// Derived from the form of the packing factor: a second full-time machine adds nothing below 0.414 of the
// first.
TEST(PublishedFleet, TheLightTractor) {
    const density::MachineTime lighter[] = {{10.0, 1}, {4.14, 1}}, heavier[] = {{10.0, 1}, {4.15, 1}};
    EXPECT_EQ(density::strongestPrefix(lighter).counted, 1U);
    EXPECT_EQ(density::strongestPrefix(heavier).counted, 2U);
}

}  // namespace
}  // namespace treadwell::packing
