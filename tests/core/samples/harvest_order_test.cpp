#include "core/samples/harvest_order.h"

#include "core/samples/codes.h"
#include "tests/support/brief.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <numeric>

namespace treadwell::samples {
namespace {

using testing::ElementsAre;
using testing_support::on;
using testing_support::percent;

/// A field that has so much dry matter on 1 September and dries at half a point a day.
FieldToCut field(double dryMatter, double tonnes, std::string hybrid = "A", double rate = 0.5) {
    FieldToCut cut;
    cut.dryDown.origin = on("2026-09-01");
    cut.dryDown.level = percent(dryMatter);
    cut.dryDown.rate = DryingRate::fromPointsPerDay(rate);
    cut.mass = AsFedMass::fromTonnes(tonnes);
    cut.hybrid = std::move(hybrid);
    return cut;
}

HarvestPlan plan() {
    HarvestPlan plan;
    plan.first = on("2026-09-01");
    plan.perDay = AsFedMass::fromTonnes(500);
    return plan;
}

std::vector<std::size_t> fieldsOf(const HarvestOrder& order) {
    std::vector<std::size_t> fields;
    for (const FieldTurn& turn : order.turns) fields.push_back(turn.field);
    return fields;
}

TEST(HarvestOrder, TheDriestComesFirst) {
    const auto order = bestOrder({field(32, 1000), field(36, 1000), field(34, 1000)}, plan());
    ASSERT_TRUE(order);
    EXPECT_THAT(fieldsOf(*order), ElementsAre(1, 2, 0));
    EXPECT_EQ(order->turns[0].first, on("2026-09-01"));
    EXPECT_EQ(order->turns[0].last, on("2026-09-02"));
    EXPECT_EQ(order->turns[2].last, on("2026-09-06"));
    EXPECT_NEAR(order->turns[0].dryMatter.percent(), 36.25, 1e-9);
    EXPECT_NEAR(order->siloMean.percent(), (36.25 + 35.25 + 34.25) / 3, 1e-9);
    EXPECT_NEAR(order->tonnesOutside, 500, 1e-9);  // the second day of the first field
    EXPECT_TRUE(order->everyOrderTried);
}

// By hand: 1,250 t on 2 September take it, the 4th (the 3rd is rain) and half of the 5th; the change takes
// the other half and half of the 6th.
TEST(HarvestOrder, RainAndChangesTakeDays) {
    HarvestPlan wet = plan();
    wet.first = on("2026-09-02");
    wet.rainDays = {on("2026-09-03")};
    wet.changeDays = 1;
    const std::vector<FieldToCut> fields{field(35, 1250, "A"), field(34, 250, "B")};
    const auto order = reckonOrder(fields, wet, {0, 1});
    ASSERT_TRUE(order);
    EXPECT_EQ(order->turns[0].last, on("2026-09-05"));
    EXPECT_EQ(order->turns[1].first, on("2026-09-06"));
    EXPECT_EQ(order->turns[1].last, on("2026-09-06"));
    const std::vector<FieldToCut> same{field(35, 1250, "A"), field(34, 250, "A")};
    EXPECT_EQ(reckonOrder(same, wet, {0, 1})->turns[1].first, on("2026-09-05"));
}

TEST(HarvestOrder, RefusesWhatCannotBe) {
    EXPECT_EQ(bestOrder({}, plan()).error().code(), code::readingsMissing);
    EXPECT_EQ(bestOrder({field(35, 0)}, plan()).error().field, "fields[0].mass");
    EXPECT_EQ(reckonOrder({field(35, 10), field(34, 10)}, plan(), {0, 0}).error().code(), code::orderWrong);
    HarvestPlan slow = plan();
    slow.perDay = AsFedMass::fromTonnes(1);
    EXPECT_EQ(bestOrder({field(35, 1000)}, slow).error().code(), code::harvestTooLong);
    slow.perDay = AsFedMass{};
    EXPECT_EQ(bestOrder({field(35, 1000)}, slow).error().field, "perDay");
}

TEST(HarvestOrder, ManyFieldsAreOrderedByTheirReadiness) {
    std::vector<FieldToCut> fields;
    for (int i = 0; i < 10; ++i) fields.push_back(field(27.5 + 0.8 * i, 400));
    const auto order = bestOrder(fields, plan());
    ASSERT_TRUE(order);
    EXPECT_FALSE(order->everyOrderTried);
    EXPECT_EQ(order->turns.front().field, 9u);
}

// No order leaves less outside the goal than the one that is advised.
RC_GTEST_PROP(HarvestOrderProperty, NoOtherOrderIsBetter, ()) {
    std::vector<FieldToCut> fields;
    for (int i = *rc::gen::inRange(1, 6); i > 0; --i) {
        fields.push_back(field(*rc::gen::inRange(280, 400) / 10.0, *rc::gen::inRange(50, 900),
                               std::string(1, static_cast<char>('A' + *rc::gen::inRange(0, 2))),
                               *rc::gen::inRange(3, 8) / 10.0));
    }
    HarvestPlan busy = plan();
    busy.changeDays = 0.5;
    std::vector<std::size_t> other(fields.size());
    std::iota(other.begin(), other.end(), std::size_t{0});
    for (std::size_t i = other.size(); i > 1; --i)
        std::swap(other[i - 1], other[*rc::gen::inRange(std::size_t{0}, i)]);
    const HarvestOrder best = *bestOrder(fields, busy);
    RC_ASSERT(best.turns.size() == fields.size());
    RC_ASSERT(best.tonnePointsOutside <= reckonOrder(fields, busy, other)->tonnePointsOutside + 1e-9);
}

}  // namespace
}  // namespace treadwell::samples
