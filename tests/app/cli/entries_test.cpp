#include "core/base/atomic_file.h"
#include "tests/app/cli/json.h"
#include "tests/app/cli/refused.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>

namespace treadwell::cli {
namespace {

using testing::HasSubstr;

/// The example's farm, and a season in which nothing has happened.
class Entries : public testing::Test {
  protected:
    Entries() { ran({"new", season, "--farm", kExamples + "farm.json"}); }

    std::string ran(const std::vector<std::string>& arguments) {
        const Answered answered = runProgram(arguments);
        EXPECT_EQ(answered.status, 0) << answered.err << answered.out;
        EXPECT_EQ(answered.err, "");
        return answered.out;
    }
    std::string added(std::vector<std::string> arguments) {
        arguments.insert(arguments.begin(), {"add", season});
        arguments.emplace_back("--json");
        return Json{ran(arguments)}.text("/entry");
    }

    Folder folder;
    std::string season = folder.file("season.treadwell");
};

TEST_F(Entries, AnyKindIsAddedAndListed) {
    added({"load", "mass=12.3t", "ticket=17", "--at", "2026-09-15 14:25"});
    added({"weather-seen", "sky=rain", "rain=4mm", "--at", "2026-09-15 15:00"});
    added({"incident", "sort=nearMiss", "text=Slid on the ramp", "--at", "2026-09-16 09:00"});
    added({"tractor_defined", "name=Newcomer", "mass=9t", "track_width=1.2m"});
    const std::string text = ran({"list", season, "--date", "2026-09-15"});
    EXPECT_THAT(text, HasSubstr("2026-09-15 14:25"));
    EXPECT_THAT(text, HasSubstr("mass 12.3 t, silo Long bunker, source usual, ticket 17"));
    EXPECT_THAT(text, HasSubstr("weather seen"));
    EXPECT_THAT(text, testing::Not(HasSubstr("near miss")));
    const Json loads{ran({"list", season, "--kind", "load", "--silo", "Long bunker", "--json"})};
    EXPECT_EQ(simdjson::dom::array{loads.root.at_pointer("/entries")}.size(), 1u);
    EXPECT_EQ(loads.text("/entries/0/happened"), "2026-09-15T12:25:00Z") << "the farm's clock, in summer";
    EXPECT_EQ(loads.number("/entries/0/fields/mass_kg"), 12300);
}

TEST_F(Entries, AThingDefinedAnewIsWhatItWasButForWhatIsTyped) {
    added({"tractor_defined", "name=Newcomer", "mass=9t", "hourly_cost=70/h"});
    added({"tractor_defined", "name=Newcomer", "mass=11t"});
    const Json listed{ran({"list", season, "--kind", "tractor_defined", "--json"})};
    const auto all = simdjson::dom::array{listed.root.at_pointer("/entries")};
    const std::string last = "/entries/" + std::to_string(all.size() - 1);
    const std::string before = "/entries/" + std::to_string(all.size() - 2);
    EXPECT_EQ(listed.number(last + "/fields/tractor/mass_kg"), 11000);
    EXPECT_NEAR(listed.number(last + "/fields/tractor/hourly_cost_per_s"), 70.0 / 3600, 1e-12);
    EXPECT_EQ(listed.text(last + "/fields/tractor/id"), listed.text(before + "/fields/tractor/id"));
}

TEST_F(Entries, ACorrectionAndAVoidKeepTheHistory) {
    const std::string load = added({"load", "mass=12t", "--at", "2026-09-15 14:25"});
    const std::string ending = load.substr(load.size() - 8);
    ran({"correct", season, ending, "mass=13t"});
    EXPECT_THAT(ran({"list", season, "--kind", "load"}), HasSubstr("corrected  mass 13.0 t"));
    ran({"void", season, ending, "--reason", "weighed twice"});
    EXPECT_THAT(ran({"list", season, "--kind", "load"}), HasSubstr("voided"));
    const Json history{ran({"history", season, ending, "--json"})};
    EXPECT_EQ(history.text("/history/0/role"), "stated");
    EXPECT_THAT(history.text("/history/0/text"), HasSubstr("mass 12.0 t"));
    EXPECT_EQ(history.text("/history/1/role"), "corrected");
    EXPECT_EQ(history.text("/history/2/role"), "voided");
    EXPECT_EQ(history.text("/history/2/text"), "reason weighed twice");
    EXPECT_THAT(ran({"history", season, ending}), HasSubstr("reason weighed twice"));
    // Taking the void back states the load anew.
    const std::string voided = history.text("/history/2/entry");
    ran({"void", season, voided});
    EXPECT_THAT(ran({"list", season, "--kind", "load"}), HasSubstr("stands    mass 13.0 t"));
}

TEST_F(Entries, ASampleMayNameTheLoadThatItSpeaksOf) {
    const std::string load = added({"load", "mass=12t", "--at", "2026-09-15 14:25"});
    added({"load", "mass=12t", "--at", "2026-09-15 14:35"});
    added({"dry_matter_sample", "dry_matter=41%", "load=" + load, "--at", "2026-09-15 14:26"});
    const std::string loads = ran({"export", season, "loads"});
    EXPECT_THAT(loads, HasSubstr(",41,loadSample,"));
    EXPECT_THAT(loads, HasSubstr(",41,fieldSample,"));
}

TEST_F(Entries, PeopleAreNamedRenamedAndErased) {
    ran({"people", season, "--add", "Anna Feldweg"});
    added({"shift", "person=Anna Feldweg", "duty=packing", "--author", "Anna Feldweg", "--at",
           "2026-09-15 06:00"});
    ran({"people", season, "--rename", "Anna Feldweg", "--to", "Anna Grund"});
    EXPECT_EQ(ran({"people", season}), "Anna Grund\n");
    EXPECT_THAT(ran({"list", season, "--kind", "shift"}), HasSubstr("person Anna Grund"));
    EXPECT_EQ(ran({"people", season, "--erase", "Anna Grund"}), "");
    EXPECT_THAT(ran({"list", season, "--kind", "shift"}), testing::Not(HasSubstr("Anna")));
    EXPECT_THAT(ran({"check", season}), HasSubstr("every chain whole"));
}

TEST_F(Entries, TakingASampleBackTellsWhatItChanged) {
    const auto told = [&](const std::vector<std::string>& arguments) {
        const Json json{ran(arguments)};
        return std::pair{json.text("/entry"), json.text("/changed/0/text")};
    };
    const auto sampled = [&](const char* dryMatter, const char* at) {
        return told({"add", season, "dry_matter_sample", dryMatter, "--at", at, "--json"});
    };
    const auto [first, start] = sampled("dry_matter=33%", "2026-09-15 09:00");
    EXPECT_THAT(start, HasSubstr("The first sample"));
    const auto [second, moved] = sampled("dry_matter=38%", "2026-09-15 14:00");
    const auto [taken, back] = told({"void", season, second, "--json"});
    EXPECT_THAT(back, HasSubstr("33.0 % (+-")) << back;
    EXPECT_LT(back.find(" before"), back.find("33.0 % (+-")) << "back to where it was: " << back;
    EXPECT_EQ(told({"void", season, taken, "--json"}).second, moved) << "the void taken back";
    const Json corrected{ran({"correct", season, first, "dry_matter=36%", "--json"})};
    EXPECT_EQ(corrected.text("/changed/0/code"), "sampleMovedCrop");
    const std::string change = Json{ran({"history", season, first, "--json"})}.text("/history/1/entry");
    EXPECT_EQ(Json{ran({"void", season, change, "--json"})}.text("/changed/0/code"), "sampleMovedCrop");
}

TEST_F(Entries, WithoutItsOnlySampleTheNextLoadsAreAssumed) {
    const std::string only = added({"dry_matter_sample", "dry_matter=33%", "--at", "2026-09-15 09:00"});
    EXPECT_EQ(Json{ran({"void", season, only, "--json"})}.text("/changed/0/code"), "sampleNoneLeft");
}

TEST_F(Entries, ACopyAndAnExportRestoreTheSameSeason) {
    added({"load", "mass=12t", "ticket==1+1", "--at", "2026-09-15 14:25"});
    const std::string copy = folder.file("copy.treadwell");
    const std::string document = folder.file("season.json");
    const std::string head = Json{ran({"backup", season, copy, "--json"})}.text("/head");
    ran({"export", season, "--output", document});
    EXPECT_EQ(Json{ran({"restore", folder.file("one.treadwell"), copy, "--json"})}.text("/head"), head);
    EXPECT_EQ(Json{ran({"restore", folder.file("two.treadwell"), document, "--json"})}.text("/head"), head);
    EXPECT_EQ(ran({"export", folder.file("two.treadwell")}), ran({"export", season}));
    EXPECT_EQ(ran({"list", folder.file("one.treadwell")}), ran({"list", season}));
}

TEST_F(Entries, TablesAreCsvWithTheUnitInTheHeader) {
    added({"load", "mass=12t", "ticket==1+1", "--at", "2026-09-15 14:25"});
    added({"dry_matter_sample", "dry_matter=35%", "wet=100g", "dry=35g", "--at", "2026-09-15 14:30"});
    added({"tractor_work",
           "tractor=" + Json{ran({"list", season, "--kind", "tractor_defined", "--json"})}.text(
                            "/entries/0/fields/tractor/name"),
           "silo=Long bunker", "--at", "2026-09-15 13:00"});
    const std::string loads = ran({"export", season, "loads"});
    EXPECT_THAT(loads, HasSubstr(",mass_t,source,ticket,dry_matter_percent,"));
    EXPECT_THAT(
        loads,
        HasSubstr(",2026-09-15T12:25:00Z,2026-09-15,Long bunker,,,12,usual,'=1+1,35,fieldSample,4.2\r\n"));
    EXPECT_THAT(ran({"export", season, "samples"}), HasSubstr(",35,oven,100,35\r\n"));
    EXPECT_THAT(ran({"export", season, "tractorHours"}),
                HasSubstr("day,tractor,mass_t,packing_h,spreading_h"));
}

TEST_F(Entries, ANewSeasonCarriesAnEarlierOne) {
    const std::string next = folder.file("next.treadwell");
    ran({"new", next, "--carry", season, "--begins", "2027-09-01T06:00:00+02:00"});
    EXPECT_THAT(ran({"list", next, "--kind", "season_carried"}), HasSubstr("Ostrelmark"));
    const Json old{ran({"list", season, "--kind", "silo_defined", "--json"})};
    const Json carried{ran({"list", next, "--kind", "silo_defined", "--json"})};
    EXPECT_EQ(carried.text("/entries/0/text"), old.text("/entries/0/text"));
}

TEST_F(Entries, ANewSeasonGoesOnFromTheCoresOfAnEarlierOne) {
    ran({"import", season, "--tickets", kExamples + "tickets.csv", "--tractors",
         kExamples + "tractor_log.csv", "--heights", kExamples + "heights.csv"});
    const std::string next = folder.file("next.treadwell");
    ran({"new", next, "--carry", season, "--begins", "2027-09-01T06:00:00+02:00"});
    const auto learnt = [&](const std::string& file) {
        return Json{ran({"calibration", file, "--at", "2027-09-02T00:00:00Z", "--json"})};
    };
    const Json then = learnt(season), now = learnt(next);
    EXPECT_GT(then.number("/silos/0/surveys"), 0);
    for (const char* number : {"/site/log_mean", "/site/log_sd", "/silo_to_silo/log_sd",
                               "/next_silo/half_band_after_kg_dm_m3", "/silos/0/level/log_mean"}) {
        EXPECT_EQ(now.number(number), then.number(number)) << number;
    }
    EXPECT_EQ(now.text("/evidence/0/carried_from"), now.text("/silos/0/carried_from"));
    EXPECT_THAT(ran({"calibration", next, "--at", "2027-09-02T00:00:00Z"}),
                HasSubstr("Long bunker, season of 2026-09-"));
    EXPECT_THAT(ran({"calibration", next, "--at", "2027-09-02T00:00:00Z", "--csv"}),
                HasSubstr("Long bunker,survey,2027-09-01T04:00:00Z,2026-09-"));
}

// The validator is of another hand: python3-jsonschema (Debian), for draft 2020-12.
TEST_F(Entries, TheExportedExampleKeepsToThePublishedSchema) {
    ran({"import", season, "--tickets", kExamples + "tickets.csv", "--tractors",
         kExamples + "tractor_log.csv", "--samples", kExamples + "samples.csv", "--heights",
         kExamples + "heights.csv", "--layers", kExamples + "layers.csv"});
    ran({"people", season, "--add", "Anna Feldweg"});
    added({"additive", "product=Acid", "mass=30kg"});
    const std::string document = folder.file("season.json");
    ran({"export", season, "--names", "--output", document});
    const auto holds = [&](const std::string& instance) {
        const std::string command = "/usr/bin/python3 -m jsonschema -i '" + instance +
                                    "' '" TREADWELL_SOURCE "/resources/season.schema.json' >/dev/null 2>&1";
        return std::system(command.c_str()) == 0;
    };
    EXPECT_TRUE(holds(document));
    std::string wrong = *readFile(document);
    const std::size_t mass = wrong.find("\"mass_kg\":11");
    ASSERT_NE(mass, std::string::npos);
    EXPECT_FALSE(holds(folder.file("wrong.json", wrong.replace(mass, 10, "\"mass_lb\":"))));
}

TEST_F(Entries, WhatCannotBeMeantIsSaidInOneLine) {
    const std::string load = added({"load", "mass=12t", "--at", "2026-09-15 14:25"});
    const std::vector<Refused> cases{
        {{"add", season, "moonPhase"}, 2, "season_started, silo_defined"},
        {{"add", season, "load"}, 2, "mass: Nothing is given here"},
        {{"add", season, "load", "mass"}, 2, "write it like mass=12.3t"},
        {{"add", season, "load", "mass=12"}, 2, "has no unit"},
        {{"add", season, "load", "mass=120t"}, 2, "outside"},
        {{"add", season, "load", "mass=12t", "colour=red"}, 2, "its fields are evidence, field, mass"},
        {{"add", season, "load", "mass=12t", "--at", "noon"}, 2, "--at: \"noon\" is not a date and time"},
        {{"add", season, "load", "mass=12t", "--at", "2026-10-25 02:30"}, 2, "write the offset too"},
        {{"add", season, "load", "mass=12t", "--author", "Nobody"}, 2, "nobody is called \"Nobody\""},
        {{"correct", season, load}, 2, "nothing to correct"},
        {{"correct", season, "ffffffffffff", "mass=13t"}, 2, "is the id of no entry"},
        {{"void", season, "1"}, 2, "give more of the id's end"},
        {{"people", season, "--erase", "Nobody"}, 2, "nobody is called"},
        {{"people", season, "--add", "A", "--erase", "B"}, 2, "give one of"},
        {{"backup", season, season}, 1, "is there already"},
        {{"restore", season, season}, 1, "is there already"},
        {{"restore", folder.file("new.treadwell"), folder.file("x.json", "{\"a\":1}")}, 1, "not of a season"},
        {{"export", season, "moons"}, 2, "use one of season, loads"},
        {{"export", season, "--output", season}, 1, "is there already"},
        {{"new", folder.file("new.treadwell")}, 2, "give --farm, or --carry"},
    };
    expectRefused(cases);
}

TEST_F(Entries, ACopyGoesToTheSecondPlaceAfterTheDaysClose) {
    const std::string place = folder.file("stick");
    const auto chosen = [this] { return Json{ran({"second-place", "--json"})}.text("/second_place"); };
    expectRefused({{{"second-place", place}, 1, "it is no folder"},
                   {{"second-place", season, "--none"}, 2, "give a folder or --none"}});
    EXPECT_EQ(chosen(), "");
    std::filesystem::create_directory(place);
    ran({"second-place", place});
    EXPECT_EQ(chosen(), place);
    added({"load", "mass=12.3t"});
    EXPECT_TRUE(std::filesystem::is_empty(place));
    added({"day_closed", "day=2026-09-15", "begin=2026-09-15 00:00", "end=2026-09-16 00:00"});
    ASSERT_FALSE(std::filesystem::is_empty(place));
    const std::string copy = std::filesystem::directory_iterator(place)->path().string();
    EXPECT_THAT(ran({"check", copy}), HasSubstr("every chain whole"));
    EXPECT_THAT(ran({"second-place", "--season", season}), HasSubstr("the newest there was made"));
    ran({"second-place", "--season", season, "--copy-now"});
    const auto copies =
        std::ranges::count_if(std::filesystem::directory_iterator{place},
                              [](const auto& each) { return each.path().extension() == ".treadwell"; });
    EXPECT_EQ(copies, 2);
    expectRefused({{{"second-place", "--copy-now"}, 2, "say of which season"}});
    ran({"second-place", "--none"});
    EXPECT_EQ(chosen(), "");
}

}  // namespace
}  // namespace treadwell::cli
