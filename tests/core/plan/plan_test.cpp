#include "core/entries/codes.h"
#include "core/farm/codes.h"
#include "core/plan/codes.h"
#include "core/plan/fits.h"
#include "core/plan/flows.h"
#include "tests/core/plan/quick.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace treadwell::plan {
namespace {

TEST(PlanInputs, GoToJsonAndBack) {
    const Inputs inputs = quick();
    const auto back = inputsFromJson(toJson(inputs));
    ASSERT_TRUE(back) << back.error().field;
    EXPECT_EQ(*back, inputs);
}

std::string with(std::string json, const std::string& what, const std::string& instead) {
    const auto at = json.find(what);
    EXPECT_NE(at, std::string::npos) << what;
    return json.replace(at, what.size(), instead);
}

TEST(PlanInputs, PassNothingOver) {
    const std::string json = toJson(quick());
    const auto unknown = inputsFromJson(with(json, "\"mass_kg\"", "\"colour\":1,\"mass_kg\""));
    ASSERT_FALSE(unknown);
    EXPECT_EQ(unknown.error().code(), code::fieldUnknown);
    EXPECT_EQ(unknown.error().field, "tractors[0].colour");
    const auto missing = inputsFromJson(with(json, "\"tip_s\"", "\"tap_s\""));
    EXPECT_EQ(missing.error().code(), code::fieldUnknown);
    EXPECT_EQ(inputsFromJson("{}").error().code(), code::payloadFieldMissing);
}

TEST(PlanInputs, AreHeldToTheirRanges) {
    Inputs inputs = quick();
    inputs.tractors[1].mass = MachineMass::fromTonnes(80);
    EXPECT_EQ(validate(inputs).error().field, "tractors[1].mass");
    inputs = quick();
    inputs.tractors[1].name = inputs.tractors[0].name;
    EXPECT_EQ(validate(inputs).error().code(), code::planNameTwice);
    inputs = quick();
    inputs.grounds.clear();
    EXPECT_EQ(validate(inputs).error().code(), code::planNothingListed);
    inputs = quick();
    inputs.silos[1].shape.width = Length::fromMetres(10);
    EXPECT_EQ(validate(inputs).error().code(), code::pileDoesNotClose);
    EXPECT_EQ(validate(inputs).error().field, "silos[1].height");
}

TEST(Fits, EveryTonneIsPlacedOrLeftOver) {
    Inputs inputs = quick();
    for (const double tonnes : {200.0, 1400.0, 9000.0}) {
        inputs.grounds[0].crop = AsFedMass::fromTonnes(tonnes);
        const auto fit = fitOf(inputs);
        ASSERT_TRUE(fit);
        AsFedMass placed;
        for (const Placement& placement : fit->placements) placed += placement.mass;
        EXPECT_NEAR((placed + fit->leftOver.median).tonnes(), fit->crop.tonnes(), 1e-6);
        for (const SiloFit& silo : fit->silos) EXPECT_LE(silo.placed, silo.holds.median);
    }
}

TEST(Fits, CapacityIsVolumeTimesDensityWithItsBand) {
    const auto fit = fitOf(quick());
    ASSERT_TRUE(fit);
    const SiloFit& silo = fit->silos[0];
    EXPECT_NEAR(silo.holds.median.tonnes(),
                silo.body.volume.cubicMetres() * silo.density.median().si() / 0.35 / 1000, 1e-6);
    EXPECT_LT(silo.holds.low80, silo.holds.median);
    EXPECT_LT(silo.holds.median, silo.holds.high80);
    EXPECT_EQ(silo.byHeight.back().volume, silo.body.volume);
}

// As much crop as the median holds fits with even chance; nothing like the whole world's crop does.
TEST(Fits, TheChanceOfRoomFollowsTheCapacity) {
    Inputs inputs = quick();
    inputs.grounds.pop_back();
    const auto roomy = fitOf(inputs);
    inputs.grounds[0].crop = roomy->silos[0].holds.median + roomy->silos[1].holds.median;
    EXPECT_NEAR(fitOf(inputs)->fits.fraction(), 0.5, 1e-6);
    inputs.grounds[0].crop = roomy->silos[0].holds.low80 + roomy->silos[1].holds.low80;
    EXPECT_NEAR(fitOf(inputs)->fits.fraction(), 0.9, 1e-6);
    EXPECT_GT(roomy->fits.fraction(), fitOf(inputs)->fits.fraction());
    inputs.grounds[0].crop = AsFedMass::fromTonnes(100'000);
    EXPECT_EQ(fitOf(inputs)->fits.fraction(), 0);
}

TEST(Flows, TheFarFieldWantsMoreTrucks) {
    const auto flow = flowOf(quick());
    ASSERT_TRUE(flow);
    const FieldFlow& near = flow->fields[0];
    const FieldFlow& far = flow->fields[1];
    ASSERT_TRUE(near.trucksWanted && far.trucksWanted);
    EXPECT_LT(*near.trucksWanted, *far.trucksWanted);
    EXPECT_LT(far.days.loadsPerHour.median, near.days.loadsPerHour.median);
    EXPECT_GT(far.days.harvesterWaiting.median, near.days.harvesterWaiting.median);
    EXPECT_GT(far.estimate.density.median(), near.estimate.density.median())
        << "slower deliveries leave more time to pack";
}

TEST(Flows, ABrokenTruckCostsLoads) {
    Inputs inputs = quick();
    inputs.haulage.trucks = 4;
    const auto flow = flowOf(inputs);
    for (const FieldFlow& field : flow->fields) {
        ASSERT_TRUE(field.oneFewer);
        EXPECT_LT(field.oneFewer->loadsPerHour.median, field.days.loadsPerHour.median) << field.field;
        EXPECT_GT(field.oneFewer->harvesterWaiting.median, field.days.harvesterWaiting.median);
    }
}

// Random times bring no more than fixed ones; both within what each link can carry.
TEST(Flows, RandomTimesStayBelowTheFixedOnes) {
    const auto flow = flowOf(quick());
    for (const FieldFlow& field : flow->fields) {
        const double fixed = field.chain.delivery.tonnesPerHour() / 12;
        EXPECT_LE(field.days.loadsPerHour.median, fixed * 1.001) << field.field;
        EXPECT_GT(field.days.loadsPerHour.median, fixed * 0.7) << field.field;
    }
}

TEST(Flows, ARoundLongerThanHalfADayIsRefused) {
    Inputs inputs = quick();
    inputs.workday = std::chrono::hours{1};
    inputs.grounds[1].distance = Length::fromMetres(30'000);
    const auto flow = flowOf(inputs);
    ASSERT_FALSE(flow);
    EXPECT_EQ(flow.error().code(), code::planRoundTooLong);
}

// The median density of simulated days is what `estimate` says of such a delivery.
TEST(Flows, DensityOfTheDaysIsThatOfTheEngine) {
    const auto flow = flowOf(quick());
    for (const FieldFlow& field : flow->fields) {
        EXPECT_NEAR(field.days.density_kg_dm_m3.median, field.estimate.density.median().si(), 0.5);
        EXPECT_NEAR(field.days.minutesPerTonne.median, field.estimate.packing.allTime.minutesPerTonne(),
                    0.02);
    }
}

}  // namespace
}  // namespace treadwell::plan
