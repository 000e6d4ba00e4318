#include "tests/app/cli/json.h"
#include "tests/app/cli/refused.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>

namespace treadwell::cli {
namespace {

using testing::HasSubstr;

std::string ran(const std::vector<std::string>& arguments) {
    const Answered answered = runProgram(arguments);
    EXPECT_EQ(answered.status, 0) << answered.err;
    return answered.out;
}

std::vector<std::string> found(const Json& json) {
    std::vector<std::string> codes;
    for (const auto finding : json.root["findings"].get_array())
        codes.emplace_back(std::string_view{finding["code"]});
    return codes;
}

// The validator is of another hand: python3-jsonschema (Debian), for draft 2020-12.
bool holds(const std::string& instance, const std::string& schema) {
    const std::string command = "/usr/bin/python3 -m jsonschema -i '" + instance +
                                "' '" TREADWELL_SOURCE "/resources/" + schema +
                                ".schema.json' >/dev/null 2>&1";
    return std::system(command.c_str()) == 0;
}

TEST(PracticeVerbs, ListsTheLessons) {
    const Json json{ran({"lessons", "--json"})};
    EXPECT_GE(json.root["lessons"].get_array().size(), 8);
    EXPECT_EQ(json.text("/lessons/0/id"), "layer");
    EXPECT_THAT(ran({"lessons"}), HasSubstr("two-tractors"));
}

TEST(PracticeVerbs, APlanIsRunScoredAndExplained) {
    const Json good{ran({"lesson", "wall", "--json"})};
    const Json bad{ran({"lesson", "wall", "--near-wall", "1.2m", "--json"})};
    EXPECT_GT(good.number("/score"), bad.number("/score") + 3);
    EXPECT_THAT(found(good), testing::Not(testing::Contains("debriefLeftWallLoose")));
    EXPECT_THAT(found(bad), testing::Contains("debriefLeftWallLoose"));
    EXPECT_LT(bad.number("/density_kg_dm_m3/low80"), bad.number("/density_kg_dm_m3/median"));
    EXPECT_EQ(bad.number("/points/4/most"), 20);
    const std::string text = ran({"lesson", "wall", "--near-wall", "4ft", "--units", "us"});
    EXPECT_THAT(text, HasSubstr("of 100"));
    EXPECT_THAT(text, HasSubstr("lb DM/ft3"));
    EXPECT_THAT(text, HasSubstr("Drive along the wall"));
    EXPECT_THAT(text, HasSubstr("stop work"));
}

TEST(PracticeVerbs, AnyNumberOfThreadsAnswersTheSame) {
    EXPECT_EQ(ran({"lesson", "two-tractors", "--json"}),
              ran({"lesson", "two-tractors", "--json", "--threads", "4"}));
}

TEST(PracticeVerbs, ADriversFileIsFollowed) {
    const Folder folder;
    const std::string drive = folder.file(
        "drive.json", R"({"format":"treadwell drive","version":1,"again":true,"legs":[{"x_m":0,"y_m":6},)"
                      R"({"x_m":30,"y_m":6}]})");
    EXPECT_TRUE(holds(drive, "drive"));
    EXPECT_THAT(found(Json{ran({"lesson", "whole-width", "--drive", drive, "--json"})}),
                testing::Contains("debriefUnrolled"));
}

TEST(PracticeVerbs, EveryLessonKeepsToThePublishedSchema) {
    std::size_t held = 0;
    for (const auto& file : std::filesystem::directory_iterator{TREADWELL_SOURCE "/resources/lessons"}) {
        EXPECT_TRUE(holds(file.path().string(), "lesson")) << file.path();
        ++held;
    }
    EXPECT_GE(held, 8);
    const Folder folder;
    EXPECT_FALSE(holds(folder.file("wrong.json", R"({"format":"treadwell lesson","version":1})"), "lesson"));
}

TEST(PracticeVerbs, ALessonIsMadeOfARealDayAndRun) {
    const Folder folder;
    const std::string season = folder.file("season.treadwell"), file = folder.file("day.json");
    ran({"new", season, "--farm", kExamples + "farm.json"});
    ran({"import", season, "--tickets", kExamples + "tickets.csv", "--tractors",
         kExamples + "tractor_log.csv", "--samples", kExamples + "samples.csv"});
    ran({"lesson-of-day", season, "--date", "2026-09-15", "--title", "The first day", "--output", file});
    EXPECT_TRUE(holds(file, "lesson"));
    const Json json{ran({"lesson", file, "--json"})};
    EXPECT_EQ(json.text("/id"), "2026-09-15");
    EXPECT_EQ(json.text("/title"), "The first day");
    EXPECT_GT(json.number("/loads"), 5);
    EXPECT_GT(json.number("/score"), 0);
    expectRefused({{{"lesson-of-day", season, "--date", "2026-09-15", "--title", "A", "--output", file},
                    1,
                    "is there already"},
                   {{"lesson-of-day", season, "--date", "2025-01-01", "--title", "A"}, 2, "--date"}});
}

TEST(PracticeVerbs, ProgressIsKeptForANameAndForgotten) {
    ran({"lesson", "wall", "--trainee", "Ida Testname"});
    ran({"lesson", "wall", "--near-wall", "1.2m", "--trainee", "Ida Testname"});
    const Json kept{ran({"trainees", "--json"})};
    EXPECT_EQ(kept.text("/trainees/0/name"), "Ida Testname");
    EXPECT_EQ(kept.number("/trainees/0/lessons/0/runs"), 2);
    EXPECT_EQ(kept.number("/trainees/0/lessons/0/best"),
              Json{ran({"lesson", "wall", "--json"})}.number("/score"));
    const std::string paper = ran({"certificate", "Ida Testname"});
    EXPECT_THAT(paper, HasSubstr("It is not a licence"));
    EXPECT_THAT(paper, HasSubstr("Ida Testname ran 1 of 8 lessons"));
    ran({"trainees", "--forget", "Ida Testname"});
    EXPECT_THAT(ran({"trainees"}), HasSubstr("Nobody"));
    expectRefused({{{"certificate", "Ida Testname"}, 2, "nobody who practises here is called"},
                   {{"trainees", "--forget", "Ida Testname"}, 2, "nobody who practises here is called"}});
}

TEST(PracticeVerbs, RefuseWhatTheyCannotMean) {
    const Folder folder;
    const std::string file = folder.file("drive.json", "{}");
    expectRefused({{{"lesson", "moon"}, 2, "use one of layer"},
                   {{"lesson", "wall", "--pattern", "spiral"}, 2, "wholeWidth, middle, anywhere"},
                   {{"lesson", "wall", "--speed", "40km/h"}, 2, "--speed"},
                   {{"lesson", "wall", "--near-wall", "9m"}, 2, "--near-wall"},
                   {{"lesson", "wall", "--call", "20h"}, 2, "--call"},
                   {{"lesson", "wall", "--threads", "0"}, 2, "--threads"},
                   {{"lesson", "wall", "--drive", file}, 1, "drive.json"},
                   {{"lesson", file}, 1, "drive.json"},
                   {{"schema", "moon"}, 2, "season, lesson, drive"}});
}

}  // namespace
}  // namespace treadwell::cli
