#include "core/practice/run.h"

#include "core/practice/codes.h"
#include "core/practice/debrief.h"
#include "tests/core/practice/lesson_files.h"

#include <gtest/gtest.h>

namespace treadwell::practice {
namespace {

using attention::Caution;

Lesson lessonCalled(std::string_view id) {
    for (Lesson& lesson : everyLesson()) {
        if (lesson.id == id) return lesson;
    }
    throw std::logic_error("no such lesson");
}

Debrief after(std::string_view id, const Plan& plan) {
    return debriefOf(runLesson(lessonCalled(id), plan).value());
}

bool tells(const Debrief& debrief, Code code) {
    return std::any_of(debrief.findings.begin(), debrief.findings.end(),
                       [&](const Finding& finding) { return finding.message.code == code; });
}

double pointsOf(const Debrief& debrief, ScorePart part) {
    return debrief.points.at(static_cast<std::size_t>(part)).points;
}

Plan goodPlan() {
    Plan plan;
    plan.callTractors = Seconds{2700};
    return plan;
}

// For each lesson a good driver and one who makes the mistake that it is about: the good one scores higher,
// and the debrief of the other names the mistake.
TEST(Practice, EachLessonTellsAGoodDriverFromABadOne) {
    struct Mistake {
        const char* lesson;
        Code told;
        std::function<void(Plan&)> make;
    };
    const std::vector<Mistake> mistakes{
        {"layer", code::debriefLayerThick, [](Plan& p) { p.layer = Length::fromCentimetres(35); }},
        {"whole-width", code::debriefUnrolled, [](Plan& p) { p.pattern = passes::Pattern::middle; }},
        {"wall", code::debriefWallLoose, [](Plan& p) { p.nearWall = Length::fromMetres(1.2); }},
        {"speed", code::debriefTooFast, [](Plan& p) { p.speed = Speed::fromKilometresPerHour(12); }},
        {"ramp", code::debriefRampSteep, [](Plan& p) { p.ramp = Slope::fromRunPerRise(2); }},
        {"two-tractors", code::debriefTraffic, [](Plan& p) { p.oneWay = false; }},
        {"rate-rises", code::debriefOutrun, [](Plan& p) { p.callTractors.reset(); }},
        {"night", code::debriefPeople, [](Plan& p) { p.stopForPeople = false; }},
        {"night", code::debriefDark, [](Plan& p) { p.lights = false; }}};
    for (const Mistake& mistake : mistakes) {
        Plan bad = goodPlan();
        if (std::string_view{mistake.lesson} != "rate-rises") bad.callTractors.reset();
        Plan good = bad;
        good.callTractors = std::string_view{mistake.lesson} == "rate-rises" ? Seconds{2100} : Seconds{0};
        mistake.make(bad);
        const Debrief first = after(mistake.lesson, good), second = after(mistake.lesson, bad);
        EXPECT_FALSE(tells(first, mistake.told)) << mistake.lesson << ' ' << mistake.told.name();
        EXPECT_TRUE(tells(second, mistake.told)) << mistake.lesson << ' ' << mistake.told.name();
        EXPECT_GT(first.score, second.score + 3.0) << mistake.lesson;
        EXPECT_GT(first.score, 75.0) << mistake.lesson;
    }
}

TEST(Practice, AMistakeCostsThePointsThatItBelongsTo) {
    const Debrief good = after("night", {});
    Plan plan;
    plan.stopForPeople = false;
    const Debrief bad = after("night", plan);
    EXPECT_EQ(pointsOf(good, ScorePart::cautions), 20);
    EXPECT_EQ(pointsOf(bad, ScorePart::cautions), 10);
    EXPECT_EQ(bad.findings.front().message.code, code::debriefPeople);
    EXPECT_EQ(bad.findings.front().caution, Caution::peopleOnFoot);
    plan = {};
    plan.pattern = passes::Pattern::middle;
    EXPECT_LT(pointsOf(after("whole-width", plan), ScorePart::coverage),
              pointsOf(after("whole-width", {}), ScorePart::coverage) - 5);
}

TEST(Practice, TheWallThatLiesLooseIsShown) {
    Plan plan;
    plan.nearWall = Length::fromMetres(1.2);
    for (const Finding& finding : after("wall", plan).findings) {
        if (finding.message.code != code::debriefWallLoose) continue;
        ASSERT_TRUE(finding.place);
        EXPECT_TRUE(finding.place->y1_m <= 0.5 || finding.place->y0_m >= 11.5);
    }
}

TEST(Practice, ScoresAddUpToAHundredAtMost) {
    for (const Lesson& lesson : everyLesson()) {
        const Debrief debrief = after(lesson.id, {});
        double sum = 0, most = 0;
        for (const Points& points : debrief.points) {
            EXPECT_GE(points.points, 0);
            EXPECT_LE(points.points, points.most);
            sum += points.points;
            most += points.most;
        }
        EXPECT_NEAR(debrief.score, sum, 1e-9);
        EXPECT_EQ(most, 100);
        EXPECT_LT(debrief.density.low80(), debrief.density.median());
        for (const Caution caution : lesson.cautions) {
            EXPECT_EQ(std::count(debrief.cautions.begin(), debrief.cautions.end(), caution), 1);
        }
    }
}

TEST(Practice, AnyStepsAndThreadsGiveTheSameAndLoseNothing) {
    const Lesson lesson = lessonCalled("layer");
    const LessonRun whole = runLesson(lesson, {}).value();
    LessonRun steps = LessonRun::start(lesson, {}, 3).value();
    for (int i = 0; !steps.isOver(); ++i) ASSERT_TRUE(steps.advance(std::chrono::seconds{1 + i % 89}));
    EXPECT_EQ(whole.pad().volume_m3_kg, steps.pad().volume_m3_kg);
    EXPECT_EQ(whole.pad().passes, steps.pad().passes);
    const double dry_kg = whole.facts().tipped.kilograms() * 0.35;
    EXPECT_NEAR(passes::dryMass(whole.pad()).kilograms() / dry_kg, 1.0, 1e-9);
}

TEST(Practice, AHandDrivesTheFirstTractor) {
    LessonRun run = LessonRun::start(lessonCalled("layer"), {}).value();
    ASSERT_TRUE(run.advance(std::chrono::seconds{1}));
    const std::vector<passes::WheelPass> by{{0, 6, 30, 6, 0}};
    run.drive(by, Seconds{27});
    const auto before = run.pad().passes;
    EXPECT_GT(std::count(before.begin(), before.end(), 1), 60);
    ASSERT_TRUE(run.advance(std::chrono::seconds{60}));
    EXPECT_EQ(run.pad().passes, before);
    EXPECT_TRUE(run.lastPasses().empty());
}

TEST(Practice, APlanIsHeldToWhatCanBeMeant) {
    const Lesson lesson = lessonCalled("layer");
    Plan plan;
    plan.speed = Speed::fromKilometresPerHour(40);
    EXPECT_EQ(runLesson(lesson, plan).error().field, "speed");
    LessonRun run = LessonRun::start(lesson, {}).value();
    plan = {};
    plan.layer = Length::fromMetres(2);
    EXPECT_EQ(run.change(plan).error().field, "layer");
}

}  // namespace
}  // namespace treadwell::practice
