// The field regression and the saturation limit against what was printed, or computed from it.
#include "core/density/calibration.h"
#include "core/density/effect.h"
#include "core/density/estimate.h"
#include "core/density/field.h"
#include "core/density/regression.h"
#include "core/density/stack.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::density {
namespace {

struct Row {
    const char* id;
    double pounds, inches, machines, dryMatter, tonsPerHour, feet;
    double packingFactor, poundsPerCubicFoot, kilogramsPerCubicMetre;
};

// Worked examples in the US form of Muck & Holmes 2000, Applied Engineering in Agriculture 16(6):613-619
// (structure published, coefficients: value from memory; results derived).
constexpr Row kRows[] = {
    {"D-1", 30000, 6, 1.0, .35, 50, 10, 418.33, 14.295, 228.98},
    {"D-2", 30000, 12, 1.0, .35, 50, 10, 209.17, 11.202, 179.44},
    {"D-3", 40000, 6, 2.0, .35, 120, 12, 509.18, 16.084, 257.64},
    {"D-4", 15000, 12, 0.8, .25, 60, 6, 72.17, 8.653, 138.61},
};

Situation situationOf(const Row& row) {
    Situation situation{.work = AsFedRate::fromShortTonsPerHour(row.tonsPerHour),
                        .dryMatter = DryMatter::fromFraction(row.dryMatter),
                        .layer = Length::fromInches(row.inches),
                        .meanDepth = Length::fromFeet(row.feet),
                        .machines = {},
                        .crop = crop::Crop::maize,
                        .target = {}};
    for (double left = row.machines; left > 0.0; left -= 1.0) {
        situation.machines.push_back({.mass = MachineMass::fromPounds(row.pounds),
                                      .share = Share::fromFraction(std::min(left, 1.0)),
                                      .trackWidth = {},
                                      .speed = {}});
    }
    return situation;
}

TEST(PublishedDensity, WorkedExamples) {
    for (const Row& row : kRows) {
        const auto result = estimate(situationOf(row));
        ASSERT_TRUE(result) << row.id;
        EXPECT_NEAR(result->packing.factor.us(), row.packingFactor, 0.005) << row.id;
        EXPECT_NEAR(result->density.median().poundsPerCubicFoot(), row.poundsPerCubicFoot, 5e-4) << row.id;
        EXPECT_NEAR(result->density.median().kilogramsPerCubicMetre(), row.kilogramsPerCubicMetre, 0.005)
            << row.id;
    }
}

// D-5. Abeni, Lodi research centre, report in the farm press: 10 t of tractor, maize at 35 % DM, 10 cm
// layers, 1 min a tonne as fed gives 225 kg DM/m3. The depth was not printed: 225.9 at 3.0 m and 225.0
// at 2.92 m.
TEST(PublishedDensity, AbenisTractor) {
    Situation situation{.work = PackingIntensity::fromMinutesPerTonne(1),
                        .dryMatter = DryMatter::fromPercent(35),
                        .layer = Length::fromCentimetres(10),
                        .meanDepth = Length::fromMetres(3),
                        .machines = {{.mass = MachineMass::fromTonnes(10)}},
                        .crop = crop::Crop::maize,
                        .target = {}};
    EXPECT_NEAR(estimate(situation)->density.median().si(), 225.9, 0.05);
    situation.meanDepth = Length::fromMetres(2.92);
    EXPECT_NEAR(estimate(situation)->density.median().si(), 225.0, 0.1);
}

// Norway: six equal bunkers, the same packing time, tractors of 8.3 and 14.5 t: 204 and 222 kg DM/m3
// (published; neither was fitted). Calibrated on four cores of one light bunker, the band for the heavy ones
// holds what they came to. Packing time, layer and depth were not printed: a time that gives 204.
TEST(PublishedDensity, NorwaysHeavyTractorAfterTheLightOne) {
    Situation light{.work = PackingIntensity::fromMinutesPerTonne(1.684),
                    .dryMatter = DryMatter::fromPercent(38),
                    .layer = Length::fromCentimetres(15),
                    .meanDepth = Length::fromMetres(3.25),
                    .machines = {{.mass = MachineMass::fromTonnes(8.3)}},
                    .crop = crop::Crop::maize,
                    .target = {}};
    const DryDensity seen = DryDensity::fromKilogramsPerCubicMetre(204);
    const auto predicted = estimate(light);
    ASSERT_NEAR(predicted->density.median().si(), 204.0, 0.5);
    DensityEvidence core;
    core.measured = seen;
    core.predicted = predicted->density.median();
    core.inputs = Residual{}.ordinaryInputs;
    core.error = 0.026 * 0.026;
    std::vector<DensityEvidence> evidence;
    for (core.place = 0; core.place < 4; ++core.place) evidence.push_back(core);
    Options options;
    options.residual = calibrate(evidence)->next;
    Situation heavy = light;
    heavy.machines[0].mass = MachineMass::fromTonnes(14.5);
    // The band without what these entries err beyond the ordinary, as the pair is published.
    options.residual.ordinaryInputs = options.residual.inputsCounted = Residual{}.ordinaryInputs;
    options.entries = {.machineMass = 0.0, .layer = 0.0, .packingTime = 0.0, .dryMatter = 0.0};
    const auto band = estimate(heavy, options)->density;
    EXPECT_NEAR(band.median().si(), 258.0, 1.0);
    EXPECT_NEAR(band.low80().si(), 211.0, 2.0);
    EXPECT_NEAR(band.high80().si(), 316.0, 2.0);
    EXPECT_LE(band.low80().si(), 222.0);
    EXPECT_GE(band.high80().si(), 222.0);
}

// D-6. 114 maize silos in Brittany, mean height 3 m, six cores each: thirds of 226, 252.5 and 273 kg DM/m3
// from the top, ratio 1.208. The depth factor was not fitted to them.
TEST(PublishedDensity, BrittanysThirds) {
    EXPECT_NEAR(FieldEquation::factor(2.5) / FieldEquation::factor(0.5), 1.208, 0.002);
    const double printed[] = {226, 252.5, 273}, expected[] = {227.0, 250.5, 274.0};
    const double mean = (printed[0] + printed[1] + printed[2]) / 3.0;
    const double bracket = mean / FieldEquation::meanFactor(3.0);
    const Residual residual;
    for (int third = 0; third < 3; ++third) {
        const Length depth = Length::fromMetres(0.5 + third);
        const double value = bracket * FieldEquation::factor(depth.metres());
        EXPECT_NEAR(value, expected[third], 0.05);
        // Even the narrowest band of a mean over many silos holds the printed value.
        const double sigma = std::sqrt(residual.spot / 114.0 + depthSlopeVarianceAt(depth));
        EXPECT_NEAR(std::log(printed[third] / value), 0.0, 1.2816 * sigma) << third;
    }
}

// The same from the layers themselves: three equal level lifts of a silo 3 m deep, their mean as printed.
// Their centres lie near 0.5 and 2.5 m, where the factor's ratio is 1.207.
TEST(PublishedDensity, BrittanysThirdsAsLayers) {
    farm::Silo silo;
    silo.filling = farm::FillingWay::lifts;
    silo.length = Length::fromMetres(40);
    silo.width = Length::fromMetres(10);
    silo.wallHeight = silo.plannedDepth = Length::fromMetres(3);
    const double mean = (226 + 252.5 + 273) / 3.0;
    // As much in each as makes the lifts a metre thick.
    std::vector<LaidLayer> layers;
    for (const double depth : {2.5, 1.5, 0.5}) {
        const double bracket = mean / FieldEquation::meanFactor(3.0);
        layers.push_back({DryMass::fromKilograms(400 * bracket * FieldEquation::factor(depth)),
                          DryDensity::fromSi(bracket), DryDensity::fromSi(400)});
    }
    const Stack stack = stackOf(silo, layers, Filled::whenFull).value();
    const double expected[] = {274.0, 250.5, 227.0}, printed[] = {273, 252.5, 226};
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_NEAR(stack.layers[i].thickness.si(), 1.0, 1e-9);
        EXPECT_NEAR(stack.layers[i].density.si(), expected[i], 0.05);
        EXPECT_NEAR(stack.layers[i].density.si(), printed[i], 2.1);
    }
    EXPECT_NEAR(stack.layers[0].density / stack.layers[2].density, 1.207, 5e-4);
    EXPECT_NEAR(stack.mean.si(), mean, 1e-9 * mean);
}

// The same as means of the field over boxes a metre high, in lifts and under the level top of a ramp: only
// the depth below the surface counts, not the way of filling. Each lies in the band of its box.
TEST(PublishedDensity, BrittanysThirdsInTheField) {
    farm::Silo silo;
    silo.length = Length::fromMetres(40);
    silo.width = Length::fromMetres(10);
    silo.wallHeight = silo.plannedDepth = Length::fromMetres(3);
    const DryDensity bracket = DryDensity::fromSi((226 + 252.5 + 273) / 3.0 / FieldEquation::meanFactor(3.0));
    const Residual residual;
    for (const auto way : {farm::FillingWay::lifts, farm::FillingWay::wedge}) {
        silo.filling = way;
        const std::vector<LaidLayer> layers(20, {DryMass::fromTonnes(20), bracket, DryDensity::fromSi(400)});
        const Stack stack = stackOf(silo, layers, Filled::asItLies).value();
        const std::vector<FieldLayer> laws(
            20,
            {{bracket.si(), 400}, DryDensity::fromSi(400), residual.site + residual.silo, residual.layer});
        const Field field{silo, stack, laws, residual};
        const double expected[] = {227.0, 250.5, 274.0}, printed[] = {226, 252.5, 273};
        for (int third = 0; third < 3; ++third) {
            const Length top = stack.top - Length::fromMetres(third);
            const Length across = silo.width;
            const auto mean = field.mean({{Length::fromMetres(5), top - Length::fromMetres(1), Length{}},
                                          {Length::fromMetres(15), top, across}});
            ASSERT_TRUE(mean);
            EXPECT_NEAR(mean->depth.metres(), 0.5 + third, 1e-9);
            EXPECT_NEAR(mean->density.median().si(), expected[third], 0.05);
            EXPECT_LT(mean->density.low80().si(), printed[third]);
            EXPECT_GT(mean->density.high80().si(), printed[third]);
        }
    }
}

// Six equal Norwegian bunkers at the same packing time: 204 kg DM/m3 under 8.3 t and 222 under 14.5 t, 9 %
// more. The equation says 26 to 27 % (3.5 and 3.0 m): too sensitive to mass, yet its band holds the printed
// value.
TEST(PublishedDensity, NorwaysPair) {
    const double ratios[] = {1.26, 1.27}, depths[] = {3.5, 3.0};
    for (int i = 0; i < 2; ++i) {
        const double factor = FieldEquation::meanFactor(depths[i]);
        const double light = FieldEquation::packingFactorFor(204.0 / factor);
        const double heavy = FieldEquation::bracket(light * 14.5 / 8.3) * factor;
        EXPECT_NEAR(heavy / 204.0, ratios[i], 0.005);
        const double sigma =
            std::sqrt(fixedParts({}, Reading::silo, 1, Length::fromMetres(depths[i])).total() +
                      Residual{}.ordinaryInputs);
        EXPECT_GT(222.0, heavy * std::exp(-1.2816 * sigma));
        EXPECT_LT(222.0, heavy * std::exp(1.2816 * sigma));
    }
}

// van Schooten & Fabri 2022, Wageningen: 16 wet grass silages, mean 152 kg DM/m3 at 18.1 % DM. Their line has
// no packing term and lies 2.4 % above Tang's saturation limit over its range, so the limit is about right.
TEST(PublishedDensity, WetGrassConfirmsTheLimit) {
    const Regression& wet = wetGrassRegression();
    double sum = 0.0;
    int count = 0;
    for (double percent = 15; percent <= 21; percent += 0.5) {
        const DryMatter dryMatter = DryMatter::fromPercent(percent);
        const double ratio = wet.value({{}, dryMatter, {}}) / *crop::saturationLimit(dryMatter);
        EXPECT_NEAR(ratio, 1.024, 0.02) << percent;
        sum += ratio;
        ++count;
    }
    EXPECT_NEAR(sum / count, 1.024, 0.003);
    EXPECT_NEAR(wet.value({{}, DryMatter::fromPercent(18.1), {}}).si(), 152, 0.5);
    EXPECT_EQ(wet.use, Regression::Use::checkOfCap);
}

// Derived: the residual's parts as rule B10 gives them. A silo .166, a layer .194, a core .27; in all .2112.
TEST(PublishedDensity, SpreadByReading) {
    const auto sigma = [](Reading reading) {
        SpreadParts parts = fixedParts({}, reading, 1, Length::fromMetres(2.0 * FieldEquation::kUnitDepth));
        setInputs(parts, {}, 0.0);
        return std::sqrt(parts.total());
    };
    EXPECT_NEAR(sigma(Reading::silo), 0.166, 5e-4);
    EXPECT_NEAR(sigma(Reading::layer), 0.194, 5e-4);
    EXPECT_NEAR(sigma(Reading::core), 0.27, 5e-3);
    const Residual r;
    EXPECT_NEAR(std::sqrt(r.site + r.silo + r.face + (r.layer + r.spot) / 4 + r.ordinaryInputs), 0.2112,
                5e-4);
    EXPECT_NEAR(49.0 / 232.0, *fieldRegression().residualLogSd, 5e-5);
}

// Derived from the published goals: with 225 kg DM/m3 and porosity 0.40, saturation governs below 25.8 % DM
// and porosity above 32.8 % (32.755).
TEST(PublishedDensity, WhichTargetGoverns) {
    const auto governs = [](double percent) {
        return targetFor({}, DryMatter::fromPercent(percent), crop::Crop::maize).governs;
    };
    EXPECT_EQ(governs(25.75), Governs::saturation);
    EXPECT_EQ(governs(25.85), Governs::minimum);
    EXPECT_EQ(governs(32.7), Governs::minimum);
    EXPECT_EQ(governs(32.8), Governs::porosity);
}

// Derived: a third tractor of 20 t at 256 t/h takes 217.6 to 237.0 kg DM/m3, +19 +- 8; the survey's own
// standard error of the slope is 16 % (R2 = 0.182, n = 175).
TEST(PublishedDensity, AThirdTractor) {
    Situation situation{.work = AsFedRate::fromTonnesPerHour(256),
                        .dryMatter = DryMatter::fromPercent(35),
                        .layer = Length::fromCentimetres(15),
                        .meanDepth = Length::fromMetres(3)};
    situation.machines.assign(2, {.mass = MachineMass::fromTonnes(20)});
    const DryDensity two = estimate(situation)->density.median();
    situation.machines.assign(3, {.mass = MachineMass::fromTonnes(20)});
    const DryDensity three = estimate(situation)->density.median();
    EXPECT_NEAR(two.si(), 217.6, 0.3);
    EXPECT_NEAR(three.si(), 237.0, 0.3);
    const Effect effect = effectOf(two, three);
    EXPECT_NEAR(effect.change.si(), 19, 1);
    EXPECT_NEAR(effect.sd.si(), 8, 0.5);
    EXPECT_GT(kEffectSpread, std::sqrt((1 - 0.182) / (0.182 * (175 - 2))));
}

// The equation's SI constants as rule B1 of the density engine prints them (derived by the exact
// conversions).
TEST(PublishedDensity, SiConstants) {
    EXPECT_NEAR(FieldEquation::kBracketConstant, 136.156938679, 5e-10);
    EXPECT_NEAR(FieldEquation::kBracketSlope, 0.170959315, 5e-10);
    EXPECT_NEAR(FieldEquation::kMeanFactorSlope, 0.0446194226, 5e-11);
    EXPECT_NEAR(FieldEquation::kFactorSlope, 0.0892388451, 5e-11);
    EXPECT_NEAR(FieldEquation::kUnitDepth, 2.04, 0.005);
    EXPECT_DOUBLE_EQ(FieldEquation::kUsPerSi, 2.54 / 0.45359237 * std::sqrt(0.90718474 / 60.0));
}

}  // namespace
}  // namespace treadwell::density
