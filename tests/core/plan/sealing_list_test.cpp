#include "core/plan/sealing_list.h"

#include "core/plan/codes.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

namespace treadwell::plan {
namespace {

using namespace testing_support;

/// The plan's first silo under its name in the season; its pile is not defined there.
Inputs twoSilos() {
    Inputs inputs = exampleInputs();
    inputs.days = 20;
    inputs.silos[0].name = "Bunker 1";
    inputs.sealing.treatment_L_per_m2 = 2;
    return inputs;
}

SeasonMaker filled() {
    SeasonMaker maker;
    maker.add(entries::SeasonStarted{"Lindenhof", "Europe/Berlin"}, at("2026-09-14T06:00:00Z"));
    maker.add(entries::SiloDefined{someSilo()}, at("2026-09-14T06:00:00Z"));
    return maker;
}

std::vector<SealTask> listOf(const SeasonMaker& maker, const char* now = "2026-09-20T12:00:00Z") {
    const Inputs inputs = twoSilos();
    return sealingList(*sealsOf(inputs), inputs.begins, season::Season::fold(maker.entries), at(now));
}

entries::Cover covered(entries::CoverStep step, std::optional<double> from = {},
                       std::optional<double> to = {}) {
    entries::Cover cover{idOf<farm::SiloTag>(1), step, {}};
    if (from) cover.stretch.begin = Length::fromMetres(*from);
    if (to) cover.stretch.end = Length::fromMetres(*to);
    return cover;
}

TEST(SealingList, GoesByTheOrderOfFilling) {
    const auto tasks = listOf(filled());
    ASSERT_EQ(tasks.size(), 6U + 5U) << "the pile has no walls to hang sheets on";
    for (std::size_t i = 0; i < 6; ++i) {
        EXPECT_EQ(tasks[i].silo, "Bunker 1");
        EXPECT_EQ(tasks[i].step, static_cast<SealStep>(i));
        EXPECT_FALSE(tasks[i].at);
    }
    EXPECT_EQ(tasks[0].due, exampleInputs().begins) << "side sheets hang before the first load";
    const auto seals = sealsOf(twoSilos());
    EXPECT_EQ(tasks[1].due, seals->front().full);
    EXPECT_EQ(tasks[1].litres, seals->front().treatment_L);
    EXPECT_EQ(tasks[4].tyres, seals->front().tyres);
    EXPECT_EQ(tasks[6].silo, "Yard pile");
    EXPECT_FALSE(tasks[6].id);
}

TEST(SealingList, LeavesTheTreatmentOutWhereThereIsNone) {
    Inputs inputs = twoSilos();
    inputs.sealing.treatment_L_per_m2 = 0;
    const auto season = season::Season::fold(filled().entries);
    for (const SealTask& task :
         sealingList(*sealsOf(inputs), inputs.begins, season, at("2026-09-20T12:00:00Z")))
        EXPECT_NE(task.step, SealStep::treatment);
}

TEST(SealingList, KnowsWhatTheEntriesSayIsDone) {
    SeasonMaker maker = filled();
    maker.add(covered(entries::CoverStep::barrierFilm), at("2026-09-16T15:00:00Z"));
    maker.add(covered(entries::CoverStep::sheet, 0, 30), at("2026-09-16T16:00:00Z"));
    maker.add(covered(entries::CoverStep::sheet, 15, 45), at("2026-09-16T17:00:00Z"));
    maker.add(covered(entries::CoverStep::damaged), at("2026-09-18T08:00:00Z"));
    const auto tasks = listOf(maker);
    EXPECT_NEAR(tasks[2].done.fraction(), 1, 1e-12);
    EXPECT_EQ(tasks[2].at, at("2026-09-16T15:00:00Z"));
    EXPECT_NEAR(tasks[3].done.fraction(), 0.75, 1e-12) << "45 of 60 m, the common part once";
    EXPECT_EQ(tasks[3].at, at("2026-09-16T17:00:00Z"));
    EXPECT_EQ(tasks[4].done.fraction(), 0);
    EXPECT_EQ(tasks[8].done.fraction(), 0) << "another silo";
    const auto earlier = listOf(maker, "2026-09-16T16:30:00Z");
    EXPECT_NEAR(earlier[3].done.fraction(), 0.5, 1e-12);
}

TEST(SealingList, AStepDoneIsAnEntryThatTheListFinds) {
    SeasonMaker maker = filled();
    for (const SealTask& task : listOf(maker)) {
        const auto body = doneEntry(task, {}, "Salt water");
        if (!task.id) {
            EXPECT_EQ(body.error().code(), code::planSiloUnknown);
            continue;
        }
        ASSERT_TRUE(body);
        maker.add(*body, at("2026-09-17T10:00:00Z"));
    }
    const auto tasks = listOf(maker);
    for (std::size_t i = 0; i < 6; ++i) {
        EXPECT_NEAR(tasks[i].done.fraction(), 1, 1e-12) << enumText(tasks[i].step);
        EXPECT_EQ(tasks[i].at, at("2026-09-17T10:00:00Z"));
    }
}

TEST(SealingList, ATreatedStretchTakesItsPartOfTheLitres) {
    const auto tasks = listOf(filled());
    const auto body = doneEntry(tasks[1], {Length::fromMetres(0), Length::fromMetres(15)}, "Salt water");
    ASSERT_TRUE(body);
    EXPECT_NEAR(std::get<entries::SurfaceTreatment>(*body).dose.volume->litres(), *tasks[1].litres / 4, 1e-9);
    EXPECT_FALSE(doneEntry(tasks[1], {}, "")) << "a product has a name";
}

}  // namespace
}  // namespace treadwell::plan
