#include "core/density/stack.h"

#include "core/base/codes.h"
#include "core/density/field_equation.h"
#include "core/density/wedge_section.h"
#include "tests/core/density/generators.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace treadwell::density {
namespace {

constexpr double kOpenLimit = 5000;

LaidLayer laid(double dry_kg, double bracket = 220, double limit = kOpenLimit) {
    return {DryMass::fromKilograms(dry_kg), DryDensity::fromSi(bracket), DryDensity::fromSi(limit)};
}

farm::Silo bunker(farm::FillingWay way, int ramps = 1) {
    farm::Silo silo = testing_support::someSilo();
    silo.filling = way;
    silo.rampEnds = ramps;
    return silo;
}

farm::Silo generatedSilo() {
    farm::Silo silo;
    silo.filling = *rc::gen::element(farm::FillingWay::lifts, farm::FillingWay::wedge);
    silo.rampEnds = *rc::gen::element(1, 2);
    silo.width = Length::fromMetres(*generated(4, 40));
    silo.wallHeight = Length::fromMetres(*generated(0.5, 5));
    silo.plannedDepth = silo.wallHeight * *generated(0.6, 1.0);
    silo.rampSlope = Slope::fromRunPerRise(*generated(2, 8));
    silo.length =
        silo.wallHeight * silo.rampSlope.runPerRise() * silo.rampEnds + Length::fromMetres(*generated(0, 60));
    return silo;
}

/// Layers that fill anything from nothing to half as much again as the silo holds.
std::vector<LaidLayer> generatedLayers(const farm::Silo& silo, bool limited) {
    const auto count = *rc::gen::inRange(1, 60);
    const double whole = 220 * silo.width.si() * silo.length.si() * silo.plannedDepth.si();
    const double filled = *generated(0.001, 1.5);
    std::vector<LaidLayer> layers;
    for (int i = 0; i < count; ++i) {
        const double part = *rc::gen::element(0.0, 0.1, 1.0, 1.0, 2.0);
        layers.push_back(laid(part * filled * whole / count, *generated(137, 330),
                              limited ? *generated(120, 400) : kOpenLimit));
    }
    return layers;
}

/// More crop deepens what lies below and so draws its fronts back. Under a ramp at the back too, that takes
/// a layer a little way down that ramp's slope, where it is less deep.
double slack(const farm::Silo& silo) {
    return silo.rampEnds == 2 ? 1e-3 : 1e-7;
}

double placed(const std::vector<LaidLayer>& layers) {
    double dry = 0;
    for (const LaidLayer& layer : layers) dry += layer.dry.si();
    return dry;
}

/// What lies in a layer by the local law, integrated anew: over thin slices of height and depth.
double contentOfLift(const StackedLayer& layer, const LaidLayer& laid, double deepest, double floor) {
    constexpr int kSlices = 2000;
    double content = 0;
    for (int i = 0; i < kSlices; ++i) {
        const double height = layer.lower.si() + layer.thickness.si() * (i + 0.5) / kSlices;
        const double density = laid.bracket.si() * FieldEquation::factor(deepest - height);
        content += std::min(density, laid.limit.si()) * layer.thickness.si() / kSlices * floor;
    }
    return content;
}

TEST(Stack, NothingLaidIsNothing) {
    for (const auto way : {farm::FillingWay::lifts, farm::FillingWay::wedge}) {
        for (const Filled filled : {Filled::whenFull, Filled::asItLies}) {
            const Stack stack = stackOf(bunker(way), {}, filled).value();
            EXPECT_TRUE(stack.layers.empty());
            EXPECT_EQ(stack.mean, DryDensity{});
            EXPECT_TRUE(stack.converged);
            EXPECT_FALSE(stack.overfull);
        }
    }
}

TEST(Stack, ALayerWithoutCropHasADensityAndNoThickness) {
    const std::vector<LaidLayer> layers{laid(0), laid(20000), laid(0)};
    for (const auto way : {farm::FillingWay::lifts, farm::FillingWay::wedge}) {
        const Stack stack = stackOf(bunker(way), layers, Filled::asItLies).value();
        EXPECT_EQ(stack.layers[0].thickness, Length{});
        EXPECT_EQ(stack.layers[2].volume, Volume{});
        EXPECT_NEAR(stack.layers[2].density.si(), 220 * FieldEquation::factor(stack.layers[2].depth.si()),
                    1e-9);
        EXPECT_GT(stack.layers[0].density, DryDensity{});
    }
}

TEST(Stack, WhatCannotBeMeantIsAnErrorWithItsField) {
    const std::vector<LaidLayer> layers{laid(1000), laid(1000, std::nan(""))};
    const auto failed = stackOf(bunker(farm::FillingWay::lifts), layers, Filled::whenFull);
    ASSERT_FALSE(failed);
    EXPECT_EQ(failed.error().code(), code::valueNotFinite);
    EXPECT_EQ(failed.error().field, "layers[1].bracket");
    const auto negative = stackOf(bunker(farm::FillingWay::lifts), std::vector{laid(-1)}, Filled::whenFull);
    EXPECT_EQ(negative.error().field, "layers[0].dry");
    const auto noLimit =
        stackOf(bunker(farm::FillingWay::lifts), std::vector{laid(1, 200, 0)}, Filled::whenFull);
    EXPECT_EQ(noLimit.error().field, "layers[0].limit");
}

// An evenly packed silo filled as planned: the mean equation at the planned mean depth.
TEST(Stack, AnEvenlyPackedFullSiloIsTheMeanEquation) {
    for (const auto way : {farm::FillingWay::lifts, farm::FillingWay::wedge}) {
        for (const int ramps : {1, 2}) {
            const farm::Silo silo = bunker(way, ramps);
            const double expected = 220 * FieldEquation::meanFactor(silo.plannedDepth.si());
            // A little too much and a little too little: both meet the mean of their own depth.
            for (const double tonnes : {100.0, 400.0, 560.0}) {
                std::vector<LaidLayer> layers(37, laid(tonnes * 1000 / 37));
                const Stack today = stackOf(silo, layers, Filled::asItLies).value();
                EXPECT_NEAR(today.mean.si(), 220 * FieldEquation::meanFactor(today.meanDepth.si()),
                            1e-9 * 220);
            }
            const Stack empty = stackOf(silo, std::vector{laid(1)}, Filled::whenFull).value();
            EXPECT_NEAR(empty.meanDepth.si(), 3.0, 1e-12);
            // As much as it holds.
            double low = 0, high = 2e6;
            for (int i = 0; i < 100; ++i) {
                const double middle = 0.5 * (low + high);
                const Stack stack = stackOf(silo, std::vector{laid(middle)}, Filled::whenFull).value();
                (stack.overfull ? high : low) = middle;
            }
            const Stack full =
                stackOf(silo, std::vector<LaidLayer>(50, laid(low / 50)), Filled::whenFull).value();
            EXPECT_NEAR(full.mean.si(), expected, 1e-9 * expected) << static_cast<int>(way) << ramps;
        }
    }
}

// Derived: level lifts, 100 t at 180 and 100 t at 260 kg DM/m3 average 212.7 by volume, not 220.
TEST(Stack, TheMeanIsAllMassOverAllVolume) {
    const std::vector<LaidLayer> layers{laid(100000, 1000, 180), laid(100000, 1000, 260)};
    const Stack stack = stackOf(bunker(farm::FillingWay::lifts), layers, Filled::asItLies).value();
    EXPECT_NEAR(stack.layers[0].density.si(), 180, 1e-9);
    EXPECT_NEAR(stack.layers[1].density.si(), 260, 1e-9);
    EXPECT_NEAR(stack.mean.si(), 212.7, 0.05);
}

// Rule B7's closed form for a level top: (a + bH) X^2 / (2s) - b X^3 / (6 s^2) up to X = sH, then
// + (X - sH) F(H).
TEST(Stack, TheContentUnderAFrontIsTheClosedForm) {
    constexpr double a = FieldEquation::kSurfaceFactor, b = FieldEquation::kFactorSlope;
    const double top = 3.2, run = 3.0;
    const WedgeSection section{top, 60, run, 1};
    const LayerLaw open{220, kOpenLimit};
    const auto start = [&](double x) {
        return (a + b * top) * x * x / (2 * run) - b * x * x * x / (6 * run * run);
    };
    for (const double x : {0.5, 4.0, 9.6, 20.0, 50.0}) {
        const double expected = x <= run * top
                                    ? start(x)
                                    : start(run * top) + (x - run * top) * FieldEquation::factorIntegral(top);
        EXPECT_NEAR(section.under(x, open).integral, expected, 1e-12 * expected) << x;
    }
    // The foot that holds as much: the inverse of the whole.
    EXPECT_NEAR(footFor_m(section.under(60, open).integral, top, run, 1), 60, 1e-10);
    EXPECT_NEAR(footFor_m(WedgeSection{2, 6, run, 1}.under(6, open).integral, top, run, 1), 6, 1e-10);
}

TEST(Stack, MoreThanTheSiloHoldsIsSaidAndStillLies) {
    for (const auto way : {farm::FillingWay::lifts, farm::FillingWay::wedge}) {
        const Stack stack =
            stackOf(bunker(way), std::vector<LaidLayer>(40, laid(40000)), Filled::whenFull).value();
        EXPECT_TRUE(stack.overfull);
        EXPECT_TRUE(stack.converged);
        EXPECT_GT(stack.meanDepth.si() + stack.foot.si(), 3.0);
    }
}

RC_GTEST_PROP(StackProperty, EveryLayerHoldsItsDryMatter, ()) {
    const farm::Silo silo = generatedSilo();
    const auto layers = generatedLayers(silo, *rc::gen::arbitrary<bool>());
    const auto filled = *rc::gen::element(Filled::whenFull, Filled::asItLies);
    const Stack stack = stackOf(silo, layers, filled).value();
    RC_ASSERT(stack.converged);
    double dry = 0, volume = 0;
    for (std::size_t k = 0; k < layers.size(); ++k) {
        const StackedLayer& layer = stack.layers[k];
        RC_ASSERT(std::isfinite(layer.density.si()) && std::isfinite(layer.depth.si()));
        RC_ASSERT(layer.upper >= layer.lower && layer.depth >= Length{});
        if (k > 0) RC_ASSERT(layer.lower == stack.layers[k - 1].upper);
        dry += (layer.density * layer.volume).si();
        volume += layer.volume.si();
        // Without a limit the mean over the layer is the law at its mean depth.
        if (layer.limited || layer.volume.si() < 1e-6) continue;
        const double law = layers[k].bracket.si() * FieldEquation::factor(layer.depth.si());
        RC_ASSERT(std::abs(layer.density.si() / law - 1.0) < 1e-8);
    }
    RC_ASSERT(std::abs(dry - placed(layers)) <= 1e-9 * placed(layers));
    RC_ASSERT(std::abs(stack.mean.si() * volume - dry) <= 1e-9 * dry);
}

RC_GTEST_PROP(StackProperty, ALimitedLiftHoldsWhatTheLawSays, ()) {
    farm::Silo silo = generatedSilo();
    silo.filling = farm::FillingWay::lifts;
    const auto layers = generatedLayers(silo, true);
    const Stack stack = stackOf(silo, layers, Filled::whenFull).value();
    const double deepest = stack.top.si(), floor = silo.width.si() * silo.length.si();
    for (std::size_t k = 0; k < layers.size(); ++k) {
        const double content = contentOfLift(stack.layers[k], layers[k], deepest, floor);
        RC_ASSERT(std::abs(content - layers[k].dry.si()) <= 1e-5 * layers[k].dry.si() + 1e-6);
    }
}

RC_GTEST_PROP(StackProperty, NoLayerIsBeyondItsLimit, ()) {
    const farm::Silo silo = generatedSilo();
    const auto layers = generatedLayers(silo, true);
    const Stack stack = stackOf(silo, layers, *rc::gen::element(Filled::whenFull, Filled::asItLies)).value();
    for (std::size_t k = 0; k < layers.size(); ++k) {
        RC_ASSERT(stack.layers[k].density.si() <= layers[k].limit.si() * (1 + 1e-7));
    }
}

RC_GTEST_PROP(StackProperty, WhenFullIsAtLeastAsDenseAsItLies, ()) {
    const farm::Silo silo = generatedSilo();
    const auto layers = generatedLayers(silo, *rc::gen::arbitrary<bool>());
    const Stack today = stackOf(silo, layers, Filled::asItLies).value();
    const Stack full = stackOf(silo, layers, Filled::whenFull).value();
    for (std::size_t k = 0; k < layers.size(); ++k) {
        if (today.layers[k].volume.si() < 1e-6) continue;
        RC_ASSERT(full.layers[k].density.si() >= today.layers[k].density.si() * (1 - slack(silo)));
    }
}

RC_GTEST_PROP(StackProperty, AddingALayerNeverLoosensThoseBelow, ()) {
    const farm::Silo silo = generatedSilo();
    auto layers = generatedLayers(silo, *rc::gen::arbitrary<bool>());
    const auto filled = *rc::gen::element(Filled::whenFull, Filled::asItLies);
    const Stack before = stackOf(silo, layers, filled).value();
    layers.push_back(laid(*generated(1, 50000), *generated(137, 330)));
    const Stack after = stackOf(silo, layers, filled).value();
    for (std::size_t k = 0; k < before.layers.size(); ++k) {
        if (before.layers[k].volume.si() < 1e-6) continue;
        RC_ASSERT(after.layers[k].density.si() >= before.layers[k].density.si() * (1 - slack(silo)));
    }
}

RC_GTEST_PROP(StackProperty, ADeeperSiloIsDenser, ()) {
    farm::Silo silo = generatedSilo();
    const auto layers = generatedLayers(silo, false);
    const Stack shallow = stackOf(silo, layers, Filled::whenFull).value();
    silo.plannedDepth += Length::fromMetres(*generated(0, 1));
    const Stack deep = stackOf(silo, layers, Filled::whenFull).value();
    RC_ASSERT(deep.mean.si() >= shallow.mean.si() * (1 - 1e-9));
}

}  // namespace
}  // namespace treadwell::density
