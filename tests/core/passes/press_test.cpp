#include "core/passes/press.h"

#include "core/passes/rest.h"
#include "core/passes/tracks_laid.h"
#include "tests/core/passes/ground.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::passes {
namespace {

void layersOn(Pad& pad, int count, double thickness_cm = 15) {
    for (int i = 0; i < count; ++i) {
        ASSERT_TRUE(spreadEvenly(pad, kMaize, Length::fromCentimetres(thickness_cm)));
    }
}

/// Density of the newest layer in a column, as rolled.
double topDensity(const Pad& pad, std::size_t row, std::size_t column) {
    return 1.0 / pad.volume_m3_kg[pad.indexOf(pad.layers.size() - 1, row, column)];
}

/// One drive along the pad with the middle at `y_m`.
WheelPass along(const Pad& pad, double y_m) {
    return {0.0, y_m, pad.shape.length.si(), y_m, 0};
}

/// Densities of the newest layer of a fresh pad under a tyre after 0, 1, 2... passes.
std::vector<double> afterPasses(const Roller& roller, int passes, double thickness_cm = 15) {
    Pad pad = padOf(2, 6);
    layersOn(pad, 1, thickness_cm);
    const PressTable table{roller, pad.parameters};
    std::vector<double> densities{topDensity(pad, 8, 1)};
    for (int i = 0; i < passes; ++i) {
        const WheelPass pass = along(pad, 3.0);  // tyres over 1.65-2.35 m and 3.65-4.35 m
        press(pad, {&pass, 1}, {&table, 1}, 1);
        densities.push_back(topDensity(pad, 8, 1));
    }
    return densities;
}

TEST(Press, StressUnderAWheelOfFiveTonnes) {
    // 5 t at 250 kPa: 212/121/90 kPa at 0.2/0.4/0.5 m (Froehlich, Soehne; derived).
    const double load_N = 5000 * 9.80665;
    EXPECT_NEAR(stressUnderWheel(load_N, 250e3, 0.2, 4), 212e3, 1e3);
    EXPECT_NEAR(stressUnderWheel(load_N, 250e3, 0.4, 4), 121e3, 1e3);
    EXPECT_NEAR(stressUnderWheel(load_N, 250e3, 0.5, 4), 90e3, 1e3);
}

TEST(Press, PressureGovernsNearTheSurfaceAndTheAxleBelow) {
    // Arvidsson & Keller 2007, Soil and Tillage Research 96:284 (published): wheel load governs from 30 cm.
    const double nu = Parameters{}.concentration;
    const auto more = [&](double load, double pressure, double z) {
        return stressUnderWheel(20e3 * load, 200e3 * pressure, z, nu) / stressUnderWheel(20e3, 200e3, z, nu);
    };
    EXPECT_GT(more(1, 1.4, 0.05), more(1.4, 1, 0.05) + 0.2);
    EXPECT_GT(more(1.4, 1, 0.45), more(1, 1.4, 0.45) + 0.2);
}

TEST(Press, TyresAreInflatedAsPublished) {
    // 2.0-3.5 bar (published).
    const Parameters parameters;
    for (const double tonnes : {1.0, 6.0, 12.0, 20.0, 60.0}) {
        const double pressure = contactPressure(MachineMass::fromTonnes(tonnes), parameters);
        EXPECT_GE(pressure, 200e3);
        EXPECT_LE(pressure, 350e3);
    }
}

TEST(Press, TheFirstPassDoesThreeQuartersAndTheThirdLessThanTheSecond) {
    const auto densities = afterPasses({MachineMass::fromTonnes(12)}, 10);
    for (std::size_t i = 1; i < densities.size(); ++i) EXPECT_GT(densities[i], densities[i - 1]) << i;
    const auto gain = [&](std::size_t i) { return densities[i] - densities[i - 1]; };
    EXPECT_GT(gain(1), gain(2));
    EXPECT_GT(gain(2), gain(3));
    EXPECT_GT(gain(3), gain(4));
    // Of the fall in specific volume that one stress can attain, for one thin layer under one stress.
    const PressTable table{{MachineMass::fromTonnes(12)}, {}};
    EXPECT_NEAR(table.gain(0.0), 0.75, 0.01);
}

TEST(Press, TheTableIsItsFormula) {
    const Parameters parameters;
    const Roller roller{MachineMass::fromTonnes(14), Length::fromMetres(1.4),
                        Speed::fromKilometresPerHour(6)};
    const PressTable table{roller, parameters};
    const double counts = std::pow(4.0 / 6.0, parameters.speedExponent);
    for (const double done : {0.01, 0.4, 0.741, 0.9, 1.3}) {
        const double n = std::exp((done - parameters.firstPass) / parameters.laterGain);
        EXPECT_NEAR(table.gain(done),
                    parameters.firstPass + parameters.laterGain * std::log(n + counts) - done, 2e-4);
    }
    for (const double z : {0.013, 0.1, 0.222, 0.4}) {
        const double stress = stressUnderWheel(14e3 / 4 * 9.80665, contactPressure(roller.mass, parameters),
                                               z, parameters.concentration);
        const DryDensity there = attainable(stress, DryMatter::fromPercent(35), parameters);
        EXPECT_NEAR(table.attainable_m3_kg(z) * there.si(), 1.0, 1e-4);
    }
}

TEST(Press, FadesWithDepthAndEndsAtTheReach) {
    Pad pad = padOf(2, 6);
    layersOn(pad, 12, 10);
    const PressTable table{{MachineMass::fromTonnes(12)}, pad.parameters};
    const WheelPass pass = along(pad, 3.0);
    press(pad, {&pass, 1}, {&table, 1}, 1);
    double depth_m = 0.0, above = 1e9;
    for (std::size_t layer = pad.layers.size(); layer-- > 0;) {
        const std::size_t cell = pad.indexOf(layer, 8, 1);
        const double density = 1.0 / pad.volume_m3_kg[cell];
        EXPECT_LE(density, above);
        if (depth_m > pad.parameters.reach_m) {
            EXPECT_DOUBLE_EQ(density, 112.0);
        }
        depth_m += pad.areal_kg_m2[cell] * pad.volume_m3_kg[cell];
        above = density;
    }
    EXPECT_GT(1.0 / pad.volume_m3_kg[pad.indexOf(11, 8, 1)], 150.0);
    EXPECT_GT(depth_m, pad.parameters.reach_m + 0.2);
}

TEST(Press, OnlyUnderTheTyres) {
    Pad pad = padOf(4, 6);
    layersOn(pad, 1);
    const PressTable table{{MachineMass::fromTonnes(12)}, pad.parameters};
    const WheelPass pass{1.0, 3.0, 3.0, 3.0, 0};
    press(pad, {&pass, 1}, {&table, 1}, 1);
    for (std::size_t row = 0; row < pad.across; ++row) {
        const double y_m = (static_cast<double>(row) + 0.5) * 0.25;
        const bool tyre = std::abs(std::abs(y_m - 3.0) - 1.0) < 0.35;
        for (std::size_t column = 0; column < pad.along; ++column) {
            const double x_m = (static_cast<double>(column) + 0.5) * 0.5;
            const bool rolled = tyre && x_m > 1.0 && x_m < 3.0;
            EXPECT_EQ(pad.passes[pad.indexOf(0, row, column)], rolled ? 1 : 0) << x_m << ' ' << y_m;
            const bool beside = std::abs(std::abs(y_m - 3.0) - 1.0) < 0.35 + pad.parameters.besideTyre_m;
            const double least = rolled ? 170.0 : beside && x_m > 1.0 && x_m < 3.0 ? 135.0 : 112.0;
            EXPECT_GE(topDensity(pad, row, column), least - 1e-9) << x_m << ' ' << y_m;
            EXPECT_LE(topDensity(pad, row, column), rolled ? 300.0 : least > 112.0 ? 170.0 : 112.0 + 1e-9);
        }
    }
}

TEST(Press, PassesThatFollowEachOtherRollNoColumnTwice) {
    Pad pad = padOf(12, 9);
    layersOn(pad, 1);
    const PressTable table{{MachineMass::fromTonnes(12)}, pad.parameters};
    for (const double slant : {0.0, 0.7, -1.3}) {
        Pad whole = pad, parted = pad;
        const WheelPass pass{1.0, 4.5, 11.0, 4.5 + slant, 0};
        press(whole, {&pass, 1}, {&table, 1}, 1);
        std::vector<WheelPass> steps;
        for (int i = 0; i < 23; ++i) {
            const auto at = [&](int step, double from, double to) {
                return from + (to - from) * step / 23.0;
            };
            steps.push_back({at(i, 1.0, 11.0), at(i, 4.5, 4.5 + slant), at(i + 1, 1.0, 11.0),
                             at(i + 1, 4.5, 4.5 + slant), 0});
        }
        press(parted, steps, {&table, 1}, 1);
        EXPECT_EQ(whole.passes, parted.passes) << slant;
    }
}

TEST(Press, HeavierPressesMoreAndFasterLess) {
    const auto last = [](const Roller& roller) { return afterPasses(roller, 3).back(); };
    const Length width = Length::fromMetres(1.4);
    const Roller usual{MachineMass::fromTonnes(10)};
    EXPECT_GT(last({MachineMass::fromTonnes(16)}), last(usual));
    EXPECT_LT(last({MachineMass::fromTonnes(10), width, Speed::fromKilometresPerHour(9)}), last(usual));
}

TEST(Press, NeverBeyondSaturation) {
    Pad pad = padOf(2, 6);
    const Spread wet{DryMatter::fromPercent(22), DryDensity::fromKilogramsPerCubicMetre(112)};
    ASSERT_TRUE(spreadEvenly(pad, wet, Length::fromCentimetres(10)));
    const PressTable table{{MachineMass::fromTonnes(25)}, pad.parameters};
    const std::vector<WheelPass> passes(60, along(pad, 3.0));
    press(pad, passes, {&table, 1}, 1);
    // Tang, Jofriet & LeLievre 1988: 961 - 9.92 * 78 (published).
    EXPECT_NEAR(topDensity(pad, 8, 1), 187.24, 0.01);
}

/// A day's worth of everything that moves or presses crop.
Pad worked(unsigned threads) {
    Pad pad = padOf(20, 11);
    const std::vector<PressTable> tables{{{MachineMass::fromTonnes(14)}, pad.parameters},
                                         {{MachineMass::fromTonnes(9)}, pad.parameters}};
    TrackLayer tracks{pad.shape, Pattern::anywhere, kOverhang, 42};
    std::vector<WheelPass> passes;
    for (int layer = 0; layer < 8; ++layer) {
        EXPECT_TRUE(beginLayer(pad, kMaize));
        tip(pad, {0, 8, 0, 11}, DryMass::fromTonnes(3));
        blade(pad, {0, 20, 0, 11}, Length::fromCentimetres(15), Direction::outward);
        passes.clear();
        for (std::uint32_t machine = 0; machine < 2; ++machine) {
            tracks.add(passes, tables[machine].roller(), machine, Length::fromMetres(130));
        }
        passes.push_back({2, 2, 15, 8, 0});
        press(pad, passes, tables, threads);
    }
    return pad;
}

TEST(Press, AnyNumberOfThreadsGivesTheSameToTheBit) {
    const Pad one = worked(1);
    for (const unsigned threads : {2U, 3U, 4U}) {
        const Pad several = worked(threads);
        EXPECT_EQ(one.volume_m3_kg, several.volume_m3_kg) << threads;
        EXPECT_EQ(one.areal_kg_m2, several.areal_kg_m2) << threads;
        EXPECT_EQ(one.passes, several.passes) << threads;
    }
}

TEST(Press, DryMatterIsConserved) {
    EXPECT_NEAR(dryMass(worked(2)).tonnes(), 24.0, 24.0 * 1e-9);
}

}  // namespace
}  // namespace treadwell::passes
