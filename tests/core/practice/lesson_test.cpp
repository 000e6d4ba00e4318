#include "core/practice/lesson.h"

#include "core/base/atomic_file.h"
#include "core/entries/codes.h"
#include "core/practice/codes.h"
#include "core/practice/schema.h"
#include "core/practice/shipped.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

namespace treadwell::practice {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

TEST(Lesson, EightThatBuildOnEachOtherInBothLanguages) {
    const std::vector<Lesson>& lessons = shippedLessons();
    ASSERT_GE(lessons.size(), 8);
    for (std::size_t i = 0; i < lessons.size(); ++i) {
        EXPECT_EQ(lessons[i].order, static_cast<int>(i) + 1);
        EXPECT_EQ(lessons[i].texts.size(), 2);
        EXPECT_NE(lessons[i].text("pt_BR").story, lessons[i].text("en").story) << lessons[i].id;
        EXPECT_EQ(lessons[i].text("fi").title, lessons[i].text("en").title);
    }
}

TEST(Lesson, WrittenAndReadBackIsTheSame) {
    for (const Lesson& lesson : shippedLessons()) {
        const auto again = lessonFromJson(toJson(lesson));
        ASSERT_TRUE(again);
        EXPECT_EQ(toJson(*again), toJson(lesson));
    }
}

TEST(Lesson, SaysWhichFieldIsWrong) {
    const std::string json = toJson(shippedLessons().front());
    const auto with = [&](const std::string& from, const std::string& to) {
        std::string changed = json;
        changed.replace(changed.find(from), from.size(), to);
        return lessonFromJson(changed);
    };
    EXPECT_EQ(with("\"version\":1", "\"version\":9").error().code(), code::lessonVersion);
    EXPECT_EQ(with("\"dark\"", "\"murk\"").error().code(), code::fieldUnknown);
    EXPECT_EQ(with("\"at_s\":900", "\"at_s\":9000").error().field, "deliveries[1].at_s");
    EXPECT_EQ(with("\"at_s\":900", "\"at_s\":1900").error().code(), code::lessonOrderWrong);
    EXPECT_EQ(with("\"width_m\":12", "\"width_m\":1").error().field, "pad.width_m");
    EXPECT_EQ(with("\"language\":\"en\"", "\"language\":\"fi\"").error().code(), code::lessonTextMissing);
    EXPECT_FALSE(lessonFromJson("{"));
}

TEST(Lesson, SchemasAreThoseThatArePublished) {
    const auto published = [](const char* name) {
        return readFile(std::string{TREADWELL_SOURCE "/resources/"} + name + ".schema.json").value();
    };
    EXPECT_TRUE(published("lesson") == lessonSchema())
        << "write it anew: build/bin/treadwell-cli schema lesson > resources/lesson.schema.json";
    EXPECT_TRUE(published("drive") == driveSchema())
        << "write it anew: build/bin/treadwell-cli schema drive > resources/drive.schema.json";
}

TEST(Lesson, OfARealDay) {
    SeasonMaker maker;
    const Instant start = at("2026-02-10T08:00:00Z");
    maker.add(entries::SiloDefined{someSilo()}, start);
    maker.add(entries::TractorDefined{someTractor(1, 14)}, start);
    maker.add(entries::DryMatterSample{DryMatter::fromPercent(33), {}, {}, {}, {}}, start);
    maker.add(someWork(1, farm::Activity::packing), start);
    for (int i = 0; i < 5; ++i) maker.add(someLoad(11.0 + i), start + 1h + i * 7min);
    maker.add(someLoad(20, 2), start + 3h);
    const season::Season season = season::Season::fold(maker.entries);
    const LessonText text{"en", "Tuesday", "As it was.", "Better."};
    const auto lesson = lessonFromDay(season, *season.days().back(), someSilo(), text);
    ASSERT_TRUE(lesson);
    ASSERT_EQ(lesson->deliveries.size(), 5);
    EXPECT_EQ(lesson->deliveries[0].at.count(), 0);
    EXPECT_EQ(lesson->deliveries[4].at, Seconds{28min});
    EXPECT_EQ(lesson->deliveries[4].mass.tonnes(), 15);
    EXPECT_NEAR(lesson->pad.dryMatter.percent(), 33, 1e-9);
    ASSERT_EQ(lesson->tractors.size(), 1);
    EXPECT_EQ(lesson->tractors[0].mass.tonnes(), 14);
    EXPECT_TRUE(lessonFromJson(toJson(*lesson)));
    farm::Silo other = someSilo(3);
    EXPECT_FALSE(lessonFromDay(season, *season.days().back(), other, text));
}

}  // namespace
}  // namespace treadwell::practice
