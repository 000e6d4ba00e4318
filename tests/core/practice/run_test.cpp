#include "core/practice/run.h"

#include "core/practice/codes.h"
#include "core/practice/debrief.h"
#include "core/practice/drive.h"
#include "core/practice/shipped.h"

#include <gtest/gtest.h>

namespace treadwell::practice {
namespace {

using attention::Caution;

Lesson lessonCalled(std::string_view id) {
    for (const Lesson& lesson : shippedLessons()) {
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
        {"wall", code::debriefLeftWallLoose, [](Plan& p) { p.nearWall = Length::fromMetres(1.2); }},
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
        if (finding.message.code == code::debriefLeftWallLoose) {
            EXPECT_LE(finding.place.value().y1_m, 0.5);
        }
        if (finding.message.code == code::debriefRightWallLoose) {
            EXPECT_GE(finding.place.value().y0_m, 11.5);
        }
    }
}

TEST(Practice, ScoresAddUpToAHundredAtMost) {
    for (const Lesson& lesson : shippedLessons()) {
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

TEST(Practice, EachCautionOfALessonIsSaid) {
    for (const Lesson& lesson : shippedLessons()) {
        const LessonRun run = LessonRun::start(lesson, {}).value();
        EXPECT_FALSE(lesson.cautions.empty()) << lesson.id;
        EXPECT_EQ(cautionTexts(run, lesson.cautions).size(), lesson.cautions.size() + 1) << lesson.id;
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
    run.halt();
    ASSERT_TRUE(run.advance(std::chrono::seconds{60}));
    const auto before = run.pad().passes;
    EXPECT_EQ(std::count(before.begin(), before.end(), 0), static_cast<std::ptrdiff_t>(before.size()));
    run.steerTo({0, 6});
    ASSERT_TRUE(run.advance(std::chrono::seconds{28}));
    EXPECT_TRUE(run.hand()->stands());
    EXPECT_NEAR(run.facts().rolled.count(), 27, 0.1);
    const auto& after = run.pad().passes;
    EXPECT_GT(std::count(after.begin(), after.end(), 1), 60);
    ASSERT_TRUE(run.advance(std::chrono::seconds{60}));
    EXPECT_EQ(run.places()[0]->x_m, 0);
}

/// Out and back, side by side by the width of a tyre from wall to wall, or always in the same track.
Drive lanes(bool wholeWidth) {
    Drive drive{true, {}};
    for (int lane = 0; lane < 13; ++lane) {
        const Length y = Length::fromMetres(wholeWidth ? 1.55 + lane * 0.74 : 6.0);
        for (const double x_m : {0.0, 30.0}) drive.legs.push_back({{}, Length::fromMetres(x_m), y});
    }
    return drive;
}

TEST(Practice, AScriptedHandThatCoversTheWidthBeatsOneThatDoesNot) {
    const LessonRun good = runDriven(lessonCalled("whole-width"), {}, lanes(true)).value();
    const LessonRun bad = runDriven(lessonCalled("whole-width"), {}, lanes(false)).value();
    const Debrief first = debriefOf(good), second = debriefOf(bad);
    EXPECT_GT(first.score, second.score + 10);
    EXPECT_FALSE(tells(first, code::debriefUnrolled));
    EXPECT_TRUE(tells(second, code::debriefUnrolled));
    EXPECT_GT(pointsOf(first, ScorePart::coverage), pointsOf(second, ScorePart::coverage) + 5);
    const auto place =
        std::find_if(second.findings.begin(), second.findings.end(), [](const Finding& finding) {
            return finding.message.code == code::debriefUnrolled;
        })->place;
    ASSERT_TRUE(place);
    EXPECT_TRUE(place->y1_m < 6 || place->y0_m > 6) << place->y0_m;
}

TEST(Practice, AHandInTheWayOfAnotherIsTold) {
    Plan plan;
    plan.pattern = passes::Pattern::middle;
    const LessonRun run = runDriven(lessonCalled("two-tractors"), plan, lanes(false)).value();
    EXPECT_GT(run.facts().close.count(), 60);
    const Debrief debrief = debriefOf(run);
    EXPECT_TRUE(tells(debrief, code::debriefClose));
    EXPECT_EQ(std::count(debrief.cautions.begin(), debrief.cautions.end(), Caution::workingWidth), 1);
}

TEST(Practice, AHandThatDrivesOnBesidePeopleIsTold) {
    Plan plan;
    EXPECT_FALSE(
        tells(debriefOf(runDriven(lessonCalled("night"), plan, lanes(true)).value()), code::debriefPeople));
    plan.stopForPeople = false;
    EXPECT_TRUE(
        tells(debriefOf(runDriven(lessonCalled("night"), plan, lanes(true)).value()), code::debriefPeople));
}

TEST(Practice, ADriversFileSaysWhatIsWrong) {
    const std::string good =
        R"({"format":"treadwell drive","version":1,"again":false,"legs":[{"at_s":5,"x_m":1,"y_m":2},)"
        R"({"x_m":3,"y_m":4}]})";
    const auto drive = driveFromJson(good);
    ASSERT_TRUE(drive) << drive.error().field;
    EXPECT_EQ(drive->legs[0].at, Seconds{5});
    EXPECT_FALSE(drive->legs[1].at);
    EXPECT_EQ(drive->legs[1].y.metres(), 4);
    const auto with = [&](const std::string& from, const std::string& to) {
        std::string changed = good;
        changed.replace(changed.find(from), from.size(), to);
        return driveFromJson(changed);
    };
    EXPECT_EQ(with("\"again\"", "\"twice\"").error().code(), code::fieldUnknown);
    EXPECT_EQ(with("{\"x_m\":3", "{\"at_s\":4,\"x_m\":3").error().field, "legs[1].at_s");
    EXPECT_EQ(
        driveFromJson(R"({"format":"treadwell drive","version":1,"again":true,"legs":[]})").error().code(),
        code::lessonOrderWrong);
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
