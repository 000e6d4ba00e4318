// A silo simulated pass by pass, against the field regression and what was measured in silos.
#include "core/crop/saturation.h"
#include "core/density/field_equation.h"
#include "core/density/regression.h"
#include "core/passes/rest.h"
#include "core/passes/tracks_laid.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace treadwell::passes {
namespace {

struct Case {
    double machine_t = 12;
    double layer_cm = 15;
    double minutesPerTonne = 1;
    double dryMatter = 0.35;
    double depth_m = 3;
    Pattern pattern = Pattern::wholeWidth;
    double width_m = 10;
};

double heightOf(const Pad& pad) {
    double height_m = 0;
    for (const ColumnPicture& column : pictureOf(pad).columns) height_m += column.height.si();
    return height_m / static_cast<double>(pad.columns());
}

/// Filled layer by layer to the depth, each layer packed for its minutes.
Pad filled(const Case& c) {
    Pad pad = makePad({Length::fromMetres(1), Length::fromMetres(c.width_m)}).value();
    const Spread spread{DryMatter::fromFraction(c.dryMatter), DryDensity::fromKilogramsPerCubicMetre(112)};
    const PressTable table{{MachineMass::fromTonnes(c.machine_t)}, pad.parameters};
    TrackLayer tracks{pad.shape, c.pattern, kOverhang, 11};
    const double layer_t = 112 * c.layer_cm / 100 * c.width_m / c.dryMatter / 1000;
    const Length distance = Length::fromMetres(layer_t * c.minutesPerTonne * 60 * 4 / 3.6);
    std::vector<WheelPass> passes;
    while (pad.layers.empty() || heightOf(pad) < c.depth_m) {
        EXPECT_TRUE(spreadEvenly(pad, spread, Length::fromCentimetres(c.layer_cm)));
        passes.clear();
        tracks.add(passes, table.roller(), 0, distance);
        press(pad, passes, {&table, 1}, 1);
    }
    return pad;
}

double regressionOf(const Case& c, double depth_m) {
    const double factor = c.machine_t * 1000 / c.layer_cm * std::sqrt(c.minutesPerTonne * c.dryMatter);
    const auto limit = crop::saturationLimit(DryMatter::fromFraction(c.dryMatter)).value();
    return std::min(density::FieldEquation::bracket(factor) * density::FieldEquation::meanFactor(depth_m),
                    limit.si());
}

// Muck & Holmes 2000, Applied Engineering in Agriculture 16(6):613-619 (structure published, coefficients
// from memory), held to saturation; its central 80 % band.
TEST(SimulatedSilo, FollowsTheFieldRegressionWithinItsBand) {
    const double band = 1.2816 * density::fieldRegression().residualLogSd.value();
    double squares = 0;
    int cases = 0;
    const auto compare = [&](const Case& c) {
        const Pad pad = filled(c);
        const double ratio = densityAtRest(pad)->si() / regressionOf(c, heightOf(pad));
        EXPECT_LT(std::abs(std::log(ratio)), band)
            << c.machine_t << " t, " << c.layer_cm << " cm, " << c.minutesPerTonne << " min/t, "
            << c.dryMatter << ", " << c.depth_m << " m: " << ratio;
        squares += std::log(ratio) * std::log(ratio);
        ++cases;
    };
    for (const double machine_t : {6.0, 12.0, 20.0}) {
        for (const double layer_cm : {10.0, 15.0, 30.0}) {
            for (const double minutes : {0.4, 1.0, 3.2}) {
                for (const double dryMatter : {0.28, 0.42})
                    compare({machine_t, layer_cm, minutes, dryMatter, 2.5});
            }
        }
    }
    for (const double depth_m : {1.5, 4.0}) compare({12, 15, 1, 0.35, depth_m});
    EXPECT_LT(std::sqrt(squares / cases), 0.12);
}

// 114 maize silos in Brittany, mean height 3 m: top third 226, bottom third 273 kg DM/m3, ratio 1.208
// (published).
TEST(SimulatedSilo, TheFloorIsDenserThanTheTop) {
    const Pad pad = filled({});
    const std::size_t third = pad.layers.size() / 3;
    const Patch all{0, 1, 0, 10};
    const double bottom = densityAtRest(pad, all, 0, third)->si();
    const double top = densityAtRest(pad, all, pad.layers.size() - third, pad.layers.size())->si();
    EXPECT_NEAR(bottom / top, 1.208, 0.07);
}

// D'Amours & Savoie 2005, ASAE 051051: the centre 9 % denser than beside the wall (published;
// herbage); on 20 English farms the outer 0.5 m at walls and top had 0.72 of the core's density (AHDB,
// published).
TEST(SimulatedSilo, TheCentreIsDenserThanBesideTheWall) {
    const auto ratioWith = [](Pattern pattern) {
        Case c;
        c.pattern = pattern;
        const Pad pad = filled(c);
        const double wall = densityAtRest(pad, {0, 1, 0, 0.5}, 0, pad.layers.size())->si();
        return densityAtRest(pad, {0, 1, 2.5, 7.5}, 0, pad.layers.size())->si() / wall;
    };
    const double usual = ratioWith(Pattern::wholeWidth);
    EXPECT_GT(usual, 1.04);
    EXPECT_LT(usual, 1.39);
    EXPECT_GT(ratioWith(Pattern::anywhere), usual);
}

TEST(SimulatedSilo, TracksOverTheWholeWidthPackMoreEvenly) {
    Case whole, middle;
    middle.pattern = Pattern::middle;
    const Pad even = filled(whole), uneven = filled(middle);
    EXPECT_LT(coverageOf(even, 3).variation, 0.5 * coverageOf(uneven, 3).variation);
    EXPECT_LT(coverageOf(even, 3).unrolled, coverageOf(uneven, 3).unrolled);
    EXPECT_GT(densityAtRest(even)->si(), densityAtRest(uneven)->si() * 1.02);
}

// Norway, six equal bunkers, same packing time, 8.3 t against 14.5 t: 204 against 222 kg DM/m3, +9 %; the
// field regression says +27 % (published / derived). The simulation stands between.
TEST(SimulatedSilo, AHeavierTractorCountsLessThanByTheRegression) {
    const double light = densityAtRest(filled({8.3}))->si(), heavy = densityAtRest(filled({14.5}))->si();
    EXPECT_GT(heavy / light, 1.05);
    EXPECT_LT(heavy / light, 1.27);
}

TEST(SimulatedSilo, MoreMinutesAndMorePassesPackMoreAndEachLess) {
    const auto at = [](double minutes) {
        Case c;
        c.minutesPerTonne = minutes;
        return densityAtRest(filled(c))->si();
    };
    const double one = at(0.5), two = at(1.0), three = at(1.5);
    EXPECT_GT(two, one);
    EXPECT_GT(three, two);
    EXPECT_GT(two - one, three - two);
}

}  // namespace
}  // namespace treadwell::passes
