#include "core/density/field.h"

#include "core/density/spread.h"
#include "tests/core/density/generators.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace treadwell::density {
namespace {

Length metres(double m) {
    return Length::fromMetres(m);
}

farm::Silo siloOf(farm::FillingWay way, int ramps = 1) {
    farm::Silo silo;
    silo.length = metres(40);
    silo.width = metres(12);
    silo.wallHeight = metres(3.2);
    silo.plannedDepth = metres(3);
    silo.rampEnds = ramps;
    silo.filling = way;
    return silo;
}

LaidLayer laidAt(double tonnes, double bracket, double limit = 1e4) {
    return {DryMass::fromTonnes(tonnes), DryDensity::fromSi(bracket), DryDensity::fromSi(limit)};
}

Field fieldOf(const farm::Silo& silo, const std::vector<LaidLayer>& layers, Filled filled) {
    const Stack stack = stackOf(silo, layers, filled).value();
    std::vector<FieldLayer> fieldLayers;
    for (const LaidLayer& layer : layers)
        fieldLayers.push_back({{layer.bracket.si(), layer.limit.si()}, layer.limit, 0.02, 0.01});
    Residual residual;
    residual.face = 0.01;
    residual.spot = 0.02;
    return {silo, stack, std::move(fieldLayers), residual};
}

bool near(double a, double b, double tolerance) {
    return std::abs(a - b) <= tolerance * std::max(std::abs(a), std::abs(b));
}

/// Any silo and layers that a farm could meet; some of them limited if asked for.
struct Generated {
    farm::Silo silo;
    std::vector<LaidLayer> layers;
    Filled filled;
};

Generated generatedLayers(bool limited) {
    const auto way = *rc::gen::element(farm::FillingWay::lifts, farm::FillingWay::wedge);
    Generated made{
        siloOf(way, *rc::gen::inRange(1, 3)), {}, *rc::gen::element(Filled::whenFull, Filled::asItLies)};
    const int count = *rc::gen::inRange(1, 12);
    for (int i = 0; i < count; ++i) {
        const double limit = limited ? *generated(200, 300) : 1e4;
        made.layers.push_back(laidAt(*generated(1, 40), *generated(150, 300), limit));
    }
    return made;
}

TEST(Field, WallsAreLooserAndTheMeanOverTheWidthIsOne) {
    const Length width = metres(12);
    EXPECT_NEAR(wallFactor(metres(6), width) / wallFactor(metres(0.2), width), 1.09, 1e-12);
    EXPECT_DOUBLE_EQ(wallFactor(metres(11.8), width), wallFactor(metres(0.2), width));
    double sum = 0;
    for (int i = 0; i < 1200; ++i) sum += wallFactor(metres((i + 0.5) / 100), width) / 1200;
    EXPECT_NEAR(sum, 1, 1e-12);
}

TEST(Field, ALiftLiesWhereItsEdgesAre) {
    const std::vector<LaidLayer> layers{laidAt(100, 200), laidAt(100, 260)};
    const farm::Silo silo = siloOf(farm::FillingWay::lifts);
    const Stack stack = stackOf(silo, layers, Filled::asItLies).value();
    const Field field = fieldOf(silo, layers, Filled::asItLies);
    const Length edge = stack.layers[0].upper;
    EXPECT_EQ(field.at({metres(10), edge - metres(0.01), metres(6)})->layer, 0U);
    const auto above = field.at({metres(10), edge + metres(0.01), metres(6)});
    EXPECT_EQ(above->layer, 1U);
    const double depth = (stack.top - edge).metres() - 0.01;
    EXPECT_NEAR(above->depth.metres(), depth, 1e-12);
    EXPECT_NEAR(above->density.median().si(),
                260 * FieldEquation::factor(depth) * wallFactor(metres(6), silo.width), 1e-9);
    EXPECT_NEAR(above->density.sigma(), std::sqrt(0.02 + 0.01 + 0.03 + depthSlopeVarianceAt(metres(depth))),
                1e-12);
}

TEST(Field, OutsideTheCropThereIsNothing) {
    const Field full = fieldOf(siloOf(farm::FillingWay::wedge), {laidAt(30, 200)}, Filled::whenFull);
    EXPECT_TRUE(full.at({metres(0.5), metres(0.5), metres(6)}));
    EXPECT_FALSE(full.at({metres(35), metres(0.5), metres(6)})) << "not filled yet";
    for (const Position& place :
         {Position{metres(-1), metres(1), metres(6)}, Position{metres(1), metres(9), metres(6)},
          Position{metres(1), metres(1), metres(13)}, Position{metres(1), metres(-0.1), metres(6)},
          Position{metres(99), metres(0), metres(6)}, Position{metres(NAN), metres(1), metres(6)}}) {
        EXPECT_FALSE(full.at(place));
    }
    EXPECT_FALSE(full.mean({{metres(35), metres(0), metres(0)}, {metres(38), metres(1), metres(12)}}));
    EXPECT_FALSE(full.mean({{metres(3), metres(1), metres(0)}, {metres(1), metres(2), metres(12)}}));
    const Field empty = fieldOf(siloOf(farm::FillingWay::wedge), {}, Filled::asItLies);
    EXPECT_FALSE(empty.at({metres(0), metres(0), metres(1)}));
    EXPECT_FALSE(empty.mean(empty.whole()));
}

TEST(Field, OnARampThePlaceBelongsToTheFrontThatPassedIt) {
    const std::vector<LaidLayer> layers{laidAt(20, 200), laidAt(20, 220), laidAt(20, 240)};
    const farm::Silo silo = siloOf(farm::FillingWay::wedge);
    const Stack stack = stackOf(silo, layers, Filled::asItLies).value();
    const Field field = fieldOf(silo, layers, Filled::asItLies);
    const Length front = stack.layers[0].upper;
    // The same front is met low and far forward, or high at the back.
    EXPECT_EQ(field.at({front - metres(0.01), metres(0), metres(6)})->layer, 0U);
    EXPECT_EQ(field.at({front + metres(0.01), metres(0), metres(6)})->layer, 1U);
    EXPECT_EQ(field.at({metres(0), front / 3.0 - metres(0.01), metres(6)})->layer, 0U);
    EXPECT_EQ(field.at({metres(0), front / 3.0 + metres(0.01), metres(6)})->layer, 1U);
}

RC_GTEST_PROP(FieldProperty, TheWholeHoldsAllDryMatterInAllVolume, ()) {
    const Generated made = generatedLayers(*rc::gen::arbitrary<bool>());
    const Stack stack = stackOf(made.silo, made.layers, made.filled).value();
    const Field field = fieldOf(made.silo, made.layers, made.filled);
    const auto whole = field.mean(field.whole());
    RC_ASSERT(whole.has_value());
    double dry = 0, volume = 0;
    for (std::size_t k = 0; k < made.layers.size(); ++k) {
        dry += made.layers[k].dry.si();
        volume += stack.layers[k].volume.si();
    }
    RC_ASSERT(near(whole->dry.si(), dry, 1e-9));
    RC_ASSERT(near(whole->volume.si(), volume, 1e-9));
    RC_ASSERT(near(whole->density.quantile(0.5).si(), stack.mean.si(), 1e-9) || whole->density.isLimited());
    RC_ASSERT(whole->effectiveLayers >= 1.0 - 1e-9 &&
              whole->effectiveLayers <= static_cast<double>(made.layers.size()) + 1e-9);
}

RC_GTEST_PROP(FieldProperty, TwoHalvesOfABoxHoldWhatItHolds, ()) {
    const Generated made = generatedLayers(*rc::gen::arbitrary<bool>());
    const Field field = fieldOf(made.silo, made.layers, made.filled);
    const Box all = field.whole();
    Length Position::*const way = *rc::gen::element(&Position::along, &Position::up, &Position::across);
    Box first = all, second = all;
    first.high.*way = all.high.*way * *generated(0, 1);
    second.low.*way = first.high.*way;
    double dry = 0, volume = 0;
    for (const Box& part : {first, second}) {
        if (const auto mean = field.mean(part)) {
            dry += mean->dry.si();
            volume += mean->volume.si();
        }
    }
    const auto whole = field.mean(all);
    RC_ASSERT(near(dry, whole->dry.si(), 1e-9));
    RC_ASSERT(near(volume, whole->volume.si(), 1e-9));
}

// The same sum by another way: midpoints of a fine grid, place by place.
RC_GTEST_PROP(FieldProperty, PlacesAddUpToTheMean, ()) {
    Generated made = generatedLayers(false);
    made.filled = Filled::asItLies;  // a full silo with little in it needs a finer grid
    const Field field = fieldOf(made.silo, made.layers, made.filled);
    const Box all = field.whole();
    const auto exact = field.mean(all);
    constexpr int kAlong = 60, kUp = 30, kAcross = 24;
    double dry = 0;
    for (int i = 0; i < kAlong; ++i) {
        for (int j = 0; j < kUp; ++j) {
            for (int k = 0; k < kAcross; ++k) {
                const auto point =
                    field.at({all.high.along * ((i + 0.5) / kAlong), all.high.up * ((j + 0.5) / kUp),
                              all.high.across * ((k + 0.5) / kAcross)});
                if (point) dry += point->density.median().si();
            }
        }
    }
    dry *= all.high.along.si() * all.high.up.si() * all.high.across.si() / (kAlong * kUp * kAcross);
    RC_ASSERT(near(dry, exact->dry.si(), 0.04));
}

}  // namespace
}  // namespace treadwell::density
