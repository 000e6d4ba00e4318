#include "core/plan/adoption.h"

#include "core/entries/body.h"
#include "core/plan/codes.h"
#include "core/plan/compare.h"
#include "core/plan/flows.h"
#include "core/plan/from_farm.h"
#include "tests/core/plan/quick.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace treadwell::plan {
namespace {

using std::chrono::local_days;

TEST(PlannedDays, BringAllTheCropInOrder) {
    const Inputs inputs = quick();
    const auto days = daysOf(inputs);
    ASSERT_TRUE(days);
    AsFedMass sum;
    for (std::size_t i = 0; i < days->size(); ++i) {
        sum += (*days)[i].mass;
        EXPECT_EQ((local_days{(*days)[i].day} - local_days{inputs.begins}).count(), std::ptrdiff_t(i));
    }
    EXPECT_NEAR(sum.tonnes(), 2500, 1e-6);
}

// A day of one field alone, by hand: its delivery for ten hours, three tractors that pack all the time.
TEST(PlannedDays, HaveTheDeliveryOfTheirField) {
    Inputs inputs = quick();
    inputs.grounds[0].crop = AsFedMass::fromTonnes(1'800);
    const auto days = daysOf(inputs);
    const auto flow = flowOf(inputs);
    ASSERT_TRUE(days && flow);
    const entries::PlannedDay& first = days->front();
    const double perHour = flow->fields[0].days.loadsPerHour.median * inputs.haulage.load.tonnes();
    ASSERT_LT(perHour * 10, 1800) << "the first day stays on the near field";
    EXPECT_NEAR(first.mass.tonnes(), perHour * 10, 1e-6);
    EXPECT_NEAR(first.delivery.tonnesPerHour(), perHour, 1e-6);
    EXPECT_NEAR(first.packing.count(), 3 * 36'000, 1e-6);
    EXPECT_GT(days->back().density, first.density) << "the far field is slower and leaves time to pack";
    EXPECT_LT(first.low80, first.density);
    EXPECT_LT(first.density, first.high80);
}

// Whatever the crop and the working day, no day is longer than it or without crop.
RC_GTEST_PROP(PlannedDays, KeepToTheWorkingDay, ()) {
    Inputs inputs = quick();
    inputs.workday = std::chrono::hours{*rc::gen::inRange(3, 15)};
    for (PlannedField& field : inputs.grounds) field.crop = AsFedMass::fromTonnes(*rc::gen::inRange(1, 2000));
    const auto days = daysOf(inputs);
    RC_ASSERT(days.has_value());
    AsFedMass sum;
    for (const entries::PlannedDay& day : *days) {
        sum += day.mass;
        RC_ASSERT(day.mass.si() / day.delivery.si() <= inputs.workday.count() + 1e-6);
        RC_ASSERT(day.mass > AsFedMass{});
    }
    RC_ASSERT(std::abs((sum - inputs.grounds[0].crop - inputs.grounds[1].crop).kilograms()) <= 1.0);
}

TEST(PlannedDays, AreRefusedWhereTheyGoOnForever) {
    Inputs inputs = quick();
    inputs.grounds[0].crop = AsFedMass::fromTonnes(190'000);
    const auto days = daysOf(inputs);
    ASSERT_FALSE(days);
    EXPECT_EQ(days.error().code(), code::planTooManyDays);
}

TEST(Adoptions, AreEntriesThatOpenAsThePlanAgain) {
    const Inputs inputs = quick();
    const auto plan = adoptionOf(inputs);
    ASSERT_TRUE(plan);
    ASSERT_TRUE(entries::validate(*plan));
    const auto back = entries::decode("plan_adopted", 1, entries::encode(*plan));
    ASSERT_TRUE(back);
    EXPECT_EQ(std::get<entries::PlanAdopted>(*back), *plan);
    EXPECT_EQ(*inputsFromJson(plan->inputs), inputs);
    EXPECT_EQ(plan->figures, *summaryOf(inputs));
}

TEST(Adoptions, HoldDaysInOrder) {
    auto plan = *adoptionOf(quick());
    std::swap(plan.days[0].day, plan.days[1].day);
    EXPECT_EQ(entries::validate(plan).error().field, "days[1].day");
    plan.days.clear();
    EXPECT_EQ(entries::validate(plan).error().field, "days");
}

TEST(FarmPlans, BeginWithWhatTheFarmHas) {
    season::FarmBook farm;
    const farm::Silo silo = testing_support::someSilo();
    farm.silos[silo.id] = silo;
    for (std::uint8_t i = 1; i <= 2; ++i) {
        const farm::Tractor tractor = testing_support::someTractor(i, 8.0 + 4 * i);
        farm.tractors[tractor.id] = tractor;
        const auto id = testing_support::idOf<farm::FieldTag>(i);
        farm.fields[id] = {id, "Field " + std::to_string(i)};
    }
    farm.tractors.begin()->second.usualRole = farm::Activity::spreading;
    const LocalDay begins = std::chrono::year{2027} / std::chrono::August / 2;
    const Inputs inputs = inputsOf(farm, begins);
    ASSERT_TRUE(validate(inputs)) << validate(inputs).error().field;
    EXPECT_EQ(inputs.begins, begins);
    ASSERT_EQ(inputs.silos.size(), 1U);
    EXPECT_EQ(inputs.silos[0].shape, farm::shapeOf(silo));
    ASSERT_EQ(inputs.tractors.size(), 2U);
    EXPECT_NEAR(inputs.tractors[0].share.percent(), 50, 1e-9);
    EXPECT_NEAR(inputs.tractors[1].mass.tonnes(), 16, 1e-9);
    ASSERT_EQ(inputs.grounds.size(), 2U);
    EXPECT_EQ(inputs.grounds[0].crop, inputs.grounds[1].crop);
    EXPECT_EQ(inputs.haulage.trucks, exampleInputs().haulage.trucks) << "the farm names none";
}

TEST(FarmPlans, OfAnEmptyFarmAreTheExample) {
    Inputs inputs = inputsOf(season::FarmBook{}, exampleInputs().begins);
    EXPECT_TRUE(validate(inputs));
    EXPECT_EQ(inputs.silos, exampleInputs().silos);
}

}  // namespace
}  // namespace treadwell::plan
