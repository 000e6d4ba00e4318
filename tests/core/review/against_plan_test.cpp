#include "core/review/codes.h"
#include "tests/core/review/example_day.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace treadwell::review {
namespace {

using namespace testing_support;
using std::chrono::minutes;
using testing::Contains;
using testing::Not;

/// 200 t at 100 t/h, three tractor-hours, layers of 15 cm.
entries::PlanAdopted somePlan() {
    entries::PlanAdopted plan;
    plan.name = "Two trucks";
    plan.inputs = "{}";
    plan.layer = Length::fromCentimetres(15);
    const auto density = [](double kg) { return DryDensity::fromKilogramsPerCubicMetre(kg); };
    plan.days = {{.day = exampleDate(),
                  .mass = AsFedMass::fromTonnes(200),
                  .delivery = AsFedRate::fromTonnesPerHour(100),
                  .packing = std::chrono::hours{3},
                  .low80 = density(250),
                  .density = density(290),
                  .high80 = density(330)}};
    return plan;
}

SeasonMaker planned(const entries::PlanAdopted& plan = somePlan()) {
    SeasonMaker maker = exampleDay();
    maker.add(plan, at("2026-02-10T08:01:00Z"));
    return maker;
}

std::vector<Code> sentencesIn(const Document& sheet) {
    std::vector<Code> codes;
    for (const Block& block : sectionOf(sheet, "plan").blocks) {
        if (const auto* message = std::get_if<Message>(&block)) codes.push_back(message->code);
    }
    return codes;
}

double si(const Cell& cell) {
    return std::get<Amount>(cell).si;
}

TEST(AgainstPlan, SaysThatThereIsNone) {
    EXPECT_THAT(sentencesIn(exampleSheet()), testing::ElementsAre(code::planNone));
}

// Ten loads of 12 t from 12:00 to 13:25, of which half an hour was a pause: nine intervals of 12 t in 55 min.
TEST(AgainstPlan, SetsTheDayBesideThePlan) {
    const Document sheet = exampleSheet(planned());
    const Table& figures = tableOf(sheet, "plan", "figures");
    ASSERT_EQ(figures.rows.size(), 2U);
    EXPECT_NEAR(si(figures.rows[0][1]), 200'000, 1e-6);
    EXPECT_NEAR(si(figures.rows[1][1]), 120'000, 1e-6);
    EXPECT_NEAR(si(figures.rows[1][2]) * 3.6, 9 * 12 / (55.0 / 60), 1e-6);
    EXPECT_NEAR(std::get<double>(figures.rows[0][3]), 3, 1e-12);
    EXPECT_NEAR(std::get<double>(figures.rows[1][3]), 100 / 60.0 + 33 / 60.0, 1e-9)
        << "the first packs 100 minutes, the second half of 66";
    EXPECT_EQ(figures.rows[1][5], Cell{}) << "no layer was seen";
    const auto sentences = sentencesIn(sheet);
    EXPECT_THAT(sentences, Contains(code::planMassLess));
    EXPECT_THAT(sentences, Contains(code::planRateMore));
    EXPECT_THAT(sentences, Contains(code::planPackingLess));
    EXPECT_THAT(sentences, Contains(code::planDensityLess));
    EXPECT_THAT(sentences, Contains(code::planSoFar));
    EXPECT_THAT(sentences, Not(Contains(code::planKept)));
}

TEST(AgainstPlan, SetsTheDensitiesWithTheirBands) {
    const Table& density = tableOf(exampleSheet(planned()), "plan", "density");
    ASSERT_EQ(density.rows.size(), 2U);
    EXPECT_NEAR(si(density.rows[0][2]), 290, 1e-9);
    EXPECT_LT(si(density.rows[1][3]), si(density.rows[1][2]));
    EXPECT_LT(si(density.rows[1][2]), si(density.rows[1][4]));
}

TEST(AgainstPlan, NamesThickLayers) {
    SeasonMaker maker = planned();
    maker.add(entries::LayerSeen{idOf<farm::SiloTag>(1), Length::fromCentimetres(20), {}},
              at("2026-02-10T12:20:00Z"));
    maker.add(entries::LayerSeen{idOf<farm::SiloTag>(1), Length::fromCentimetres(24), {}},
              at("2026-02-10T12:50:00Z"));
    const Document sheet = exampleSheet(maker);
    EXPECT_THAT(sentencesIn(sheet), Contains(code::planLayerThicker));
    EXPECT_NEAR(si(tableOf(sheet, "plan", "figures").rows[1][5]), 0.22, 1e-12);
}

TEST(AgainstPlan, TheLastPlanAdoptedSpeaks) {
    entries::PlanAdopted kept = somePlan();
    kept.days[0].mass = AsFedMass::fromTonnes(121);
    SeasonMaker maker = planned();
    maker.add(kept, at("2026-02-10T09:00:00Z"));
    EXPECT_THAT(sentencesIn(exampleSheet(maker)), Not(Contains(code::planMassLess)));
    SeasonMaker later = planned();
    later.add(kept, at("2026-02-10T23:00:00Z"));
    EXPECT_THAT(sentencesIn(exampleSheet(later)), Contains(code::planMassLess)) << "not yet adopted then";
}

TEST(AgainstPlan, IsCarriedIntoTheFollowingDays) {
    SeasonMaker maker = planned();
    maker.add(someLoad(12), at("2026-02-11T14:00:00Z"));
    const auto season = season::Season::fold(maker.entries);
    using namespace std::chrono_literals;
    const auto sheet =
        daySheet(season, LocalDay{2026y, std::chrono::February, 11d}, at("2026-02-11T18:00:00Z"));
    ASSERT_TRUE(sheet);
    EXPECT_THAT(sentencesIn(*sheet),
                testing::ElementsAre(code::planInForce, code::planNotThisDay, code::planSoFar));
}

TEST(AgainstPlan, AVoidedPlanIsNone) {
    SeasonMaker maker = exampleDay();
    const auto id = maker.add(somePlan(), at("2026-02-10T08:01:00Z"));
    maker.add(entries::VoidEntry{}, at("2026-02-10T08:02:00Z"), id);
    EXPECT_THAT(sentencesIn(exampleSheet(maker)), testing::ElementsAre(code::planNone));
}

}  // namespace
}  // namespace treadwell::review
