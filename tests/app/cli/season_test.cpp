#include "tests/app/cli/json.h"
#include "tests/app/cli/refused.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <charconv>
#include <fstream>
#include <iterator>
#include <regex>

namespace treadwell::cli {
namespace {

using testing::HasSubstr;

/// The example season, made by the program as app/run makes it.
class Example : public testing::Test {
  protected:
    Example() {
        made = runProgram({"new", season, "--farm", kExamples + "farm.json"});
        imported = importAll();
        adopted = runProgram({"plan", kExamples + "adopted.plan.json", "--adopt", season, "--at",
                              "2026-09-14T18:00:00+02:00", "--json"});
    }

    Answered importAll() {
        return runProgram({"import",         season,
                           "--tickets",      kExamples + "tickets.csv",
                           "--tractors",     kExamples + "tractor_log.csv",
                           "--samples",      kExamples + "samples.csv",
                           "--heights",      kExamples + "heights.csv",
                           "--layers",       kExamples + "layers.csv",
                           "--sieves",       kExamples + "sieves.csv",
                           "--kernels",      kExamples + "kernels.csv",
                           "--chop",         kExamples + "chop.csv",
                           "--temperatures", kExamples + "temperatures.csv",
                           "--fields",       kExamples + "fields.csv",
                           "--json"});
    }

    Folder folder;
    std::string season = folder.file("season.treadwell");
    Answered made, imported, adopted;
};

// Counted by hand in the ticket file: 138 rows, of which one ticket is voided by a second row, one stands
// twice and one is the sum at the foot; the sum, 1,781.000 t, is the file's own check.
TEST_F(Example, EveryTicketIsAccountedFor) {
    ASSERT_EQ(made.status, 0) << made.err;
    ASSERT_EQ(imported.status, 0) << imported.err;
    const Json json{imported.out};
    EXPECT_EQ(json.number("/files/0/rows"), 138);
    EXPECT_EQ(json.number("/files/0/added"), 134);
    EXPECT_EQ(json.number("/files/0/voided"), 2);
    EXPECT_EQ(json.number("/files/0/duplicates"), 1);
    EXPECT_EQ(json.number("/files/0/totals"), 1);
    for (const char* quarantine : {"/files/0/quarantine", "/files/1/quarantine", "/files/4/quarantine"}) {
        EXPECT_EQ(simdjson::dom::array{json.root.at_pointer(quarantine)}.size(), 0u) << imported.out;
    }
    const Json state{runProgram({"state", season, "--at", "2026-09-17T20:00:00+02:00", "--json"}).out};
    EXPECT_NEAR(state.number("/in_silo/mass_t"), 1781.0, 1e-9);
}

TEST_F(Example, ImportingTwiceAddsNothing) {
    const Json again{importAll().out};
    EXPECT_EQ(again.number("/added"), 0);
    EXPECT_EQ(again.number("/files/0/already_there"), 134);
}

TEST_F(Example, StateTellsLoadsTractorsAndThreeReadings) {
    const Json json{runProgram({"state", season, "--at", "2026-09-16T15:00:00+02:00", "--json"}).out};
    EXPECT_GT(json.number("/today/loads"), 10);
    EXPECT_GT(json.number("/in_silo/loads"), json.number("/today/loads"));
    for (const char* reading : {"/readings/layer", "/readings/today", "/readings/silo"}) {
        const double median = json.number(std::string{reading} + "/density_kg_dm_m3/median");
        EXPECT_LT(json.number(std::string{reading} + "/density_kg_dm_m3/low80"), median);
        EXPECT_GT(json.number(std::string{reading} + "/density_kg_dm_m3/high80"), median);
        EXPECT_LT(json.number(std::string{reading} + "/as_it_lies/density_kg_dm_m3/median"), median);
        EXPECT_GE(json.number(std::string{reading} + "/effective_layers"), 1.0);
    }
    EXPECT_GT(simdjson::dom::array{json.root.at_pointer("/grounds")}.size(), 3u);
    EXPECT_GT(simdjson::dom::array{json.root.at_pointer("/attention")}.size(), 3u);
    EXPECT_EQ(json.text("/attention/0/matter"), "packingBehind");
    const Answered text = runProgram({"state", season, "--at", "2026-09-16T15:00:00+02:00"});
    EXPECT_THAT(text.out, HasSubstr("Now "));
    EXPECT_THAT(text.out, HasSubstr("Known "));
    EXPECT_THAT(text.out, HasSubstr("Long bunker, 2026-09-16 15:00"));
    EXPECT_THAT(text.out, HasSubstr("The silo, when full"));
    EXPECT_THAT(text.out, HasSubstr("As it lies now"));
}

TEST_F(Example, TheWorkingOfAReadingNamesItsEntries) {
    const std::vector<std::string> asked{"state", season, "--at", "2026-09-16T15:00:00+02:00", "--working"};
    EXPECT_THAT(runProgram(asked).out, HasSubstr(" more entries"));
    auto withJson = asked;
    withJson.emplace_back("--json");
    const Json json{runProgram(withJson).out};
    EXPECT_EQ(json.text("/readings/silo/working/0/code"), "workingLayers");
    EXPECT_EQ(double(simdjson::dom::array{json.root.at_pointer("/readings/silo/working/0/entries")}.size()),
              json.number("/in_silo/loads"));
}

TEST_F(Example, SamplesTellOfChopKernelsAndFields) {
    const std::vector<std::string> arguments{"samples", season, "--date", "2026-09-17"};
    std::vector<std::string> withJson = arguments;
    withJson.push_back("--json");
    const Json json{runProgram(withJson).out};
    EXPECT_EQ(json.number("/dry_matter/samples"), 4);
    EXPECT_EQ(json.text("/chop/0/field"), "Vellerbruch");
    EXPECT_EQ(json.number("/chop/0/tests"), 3);
    EXPECT_LT(json.number("/chop_trend/mm_per_day"), 0);
    const auto field = [&json](const std::string& name) {
        for (const char* at : {"/fields/0", "/fields/1", "/fields/2"}) {
            if (json.text(std::string{at} + "/field") == name) return std::string{at};
        }
        return std::string{};
    };
    EXPECT_GT(json.number(field("Vellerbruch") + "/points_per_day"), 0.4);
    EXPECT_EQ(json.text(field("Lurrenbreite") + "/by_planting/first"), "2026-08-17");
    const Answered text = runProgram(arguments);
    EXPECT_THAT(text.out, HasSubstr("Chop Vellerbruch"));
    EXPECT_THAT(text.out, HasSubstr("in a cup"));
}

TEST_F(Example, SamplesTellMeansByMassAndTheMetersBias) {
    const Json json{runProgram({"samples", season, "--date", "2026-09-17", "--json"}).out};
    EXPECT_NEAR(json.number("/come_in/day/mean"), 0.384, 0.004) << "the dry field alone";
    EXPECT_GT(json.number("/come_in/day/half80"), json.number("/come_in/silos/0/half80"))
        << "three fields' samples err apart";
    EXPECT_EQ(simdjson::dom::array{json.root.at_pointer("/come_in/fields")}.size(), 3u);
    EXPECT_EQ(json.number("/meter/pairs"), 0);
    const Answered added = runProgram({"add", season, "dry_matter_sample", "dry_matter=41%", "method=meter",
                                       "field=Vellerbruch", "--at", "2026-09-17 13:20"});
    EXPECT_EQ(added.status, 0) << added.err;
    const Json after{runProgram({"samples", season, "--date", "2026-09-17", "--json"}).out};
    EXPECT_EQ(after.number("/meter/pairs"), 1);
    EXPECT_GT(after.number("/meter/bias"), 0);
    EXPECT_THAT(runProgram({"samples", season, "--date", "2026-09-17"}).out,
                HasSubstr("too much, by 1 dish"));
}

TEST_F(Example, ANewSampleTellsWhatItChanged) {
    const Answered text = runProgram({"add", season, "dry_matter_sample", "dry_matter=33%",
                                      "field=Vellerbruch", "--at", "2026-09-17 15:00"});
    EXPECT_EQ(text.status, 0) << text.err;
    EXPECT_THAT(text.out, HasSubstr("The next loads: 38."));
    EXPECT_THAT(text.out, HasSubstr("Their target goes from"));
    const Json json{runProgram({"add", season, "dry_matter_sample", "dry_matter=38%", "field=Vellerbruch",
                                "--at", "2026-09-17 10:00", "--json"})
                        .out};
    EXPECT_EQ(json.text("/changed/0/code"), "sampleMovedCrop");
}

TEST_F(Example, HarvestOrderCutsTheDryFieldFirst) {
    const std::vector<std::string> asked{"harvest_order", season,
                                         "--at",          "2026-09-14T18:00:00+02:00",
                                         "--capacity",    "700t",
                                         "--first",       "2026-09-15",
                                         "--field",       "Lurrenbreite=700t",
                                         "--field",       "Quornstieg=700t",
                                         "--field",       "Vellerbruch=700t",
                                         "--rain",        "2026-09-16"};
    const auto with = [&asked](std::initializer_list<std::string> more) {
        std::vector<std::string> arguments = asked;
        arguments.insert(arguments.end(), more);
        return arguments;
    };
    const Json best{runProgram(with({"--json"})).out};
    EXPECT_EQ(best.text("/order/0/field"), "Vellerbruch");
    EXPECT_EQ(best.text("/order/0/first"), "2026-09-15");
    EXPECT_EQ(best.text("/order/1/first"), "2026-09-17") << "it rains on the 16th";
    const Json given{runProgram(with({"--as-given", "--json"})).out};
    EXPECT_EQ(given.text("/order/0/field"), "Lurrenbreite");
    EXPECT_LT(best.number("/tonne_points_outside"), given.number("/tonne_points_outside"));
    EXPECT_THAT(runProgram(asked).out, HasSubstr("At the silo"));
    expectRefused(
        {{{"harvest_order", season, "--capacity", "700t", "--field", "Nowhere=1t"}, 2, "no field"},
         {{"harvest_order", season, "--capacity", "700t", "--field", "Vellerbruch"}, 2, "NAME=800t"},
         {with({"--rain", "16.9."}), 2, "2026-09-15"},
         {with({"--change", "1,5"}), 2, "no number"}});
}

TEST_F(Example, AdviceWeighsChangesAgainstAsNow) {
    const Json json{runProgram({"advise", season, "--at", "2026-09-16T15:00:00+02:00", "--json"}).out};
    EXPECT_EQ(json.text("/candidates/0/name"), "asNow");
    EXPECT_GT(simdjson::dom::array{json.root.at_pointer("/candidates")}.size(), 1u);
    EXPECT_FALSE(json.text("/text").empty());
    const Answered night = runProgram({"advise", season, "--at", "2026-09-16T02:00:00+02:00"});
    EXPECT_EQ(night.status, 0);
    EXPECT_THAT(night.out, HasSubstr("No advice"));
}

TEST_F(Example, TheDayIsTheLastOneWhereNoneIsGiven) {
    const Answered text = runProgram({"day", season});
    EXPECT_EQ(text.status, 0) << text.err;
    EXPECT_THAT(text.out, HasSubstr("2026-09-17"));
    EXPECT_THAT(text.out, HasSubstr("Day sheet of Ostrelmark farm, 2026-09-17"));
    EXPECT_THAT(text.out, HasSubstr("703.8"));
    EXPECT_EQ(Json{runProgram({"day", season, "--json"}).out}.text("/document"), "daySheet");
}

/// The only part that differs from one making of the example to the next: its chain of hashes.
std::string withoutHead(const std::string& text) {
    return std::regex_replace(text, std::regex{"[0-9a-f]{64}"}, "HEAD");
}

std::string golden(const std::string& name) {
    std::ifstream file{TREADWELL_TEST_DATA "/day_sheets/" + name};
    return {std::istreambuf_iterator<char>{file}, {}};
}

// The example's sheets as they were last looked through; a change of a figure shows here.
TEST_F(Example, TheSheetsReadAsBefore) {
    for (const std::string date : {"2026-09-15", "2026-09-16", "2026-09-17"}) {
        const std::vector<std::string> call{"day", season, "--date",
                                            date,  "--at", "2026-09-18T12:00:00+02:00"};
        EXPECT_EQ(withoutHead(runProgram(call).out), golden(date + ".txt")) << date;
        std::vector<std::string> message = call;
        message.emplace_back("--message");
        EXPECT_EQ(runProgram(message).out, golden(date + ".message.txt")) << date;
        std::vector<std::string> csv = call;
        csv.emplace_back("--csv");
        EXPECT_THAT(runProgram(csv).out,
                    HasSubstr("\r\ndeliveries,bySilo,silo,loads,mass_t,dryMass_t_dm,dryMatter_percent\r\n"));
    }
}

TEST_F(Example, AClosedDayNamesWhoClosedIt) {
    ASSERT_EQ(runProgram({"people", season, "--add", "Anna Lind"}).status, 0);
    const std::vector<std::string> call{"close",    season,      "--date", "2026-09-16",
                                        "--author", "Anna Lind", "--at",   "2026-09-16T19:00:00+02:00"};
    const Answered refused = runProgram(call);
    EXPECT_EQ(refused.status, 1);
    EXPECT_THAT(refused.out, HasSubstr("125 min without a dry-matter sample"));
    EXPECT_THAT(refused.err, HasSubstr("--anyway"));
    std::vector<std::string> anyway = call;
    anyway.emplace_back("--anyway");
    const Answered closed = runProgram(anyway);
    EXPECT_EQ(closed.status, 0) << closed.err;
    EXPECT_THAT(runProgram({"day", season, "--date", "2026-09-16"}).out,
                HasSubstr("\nClosed by Anna Lind\n"));
    const Answered again = runProgram(anyway);
    EXPECT_EQ(again.status, 1);
    EXPECT_THAT(again.err, HasSubstr("take that entry back"));
    ASSERT_EQ(runProgram({"people", season, "--erase", "Anna Lind"}).status, 0);
    EXPECT_THAT(runProgram({"day", season, "--date", "2026-09-16"}).out, testing::Not(HasSubstr("Anna")));
}

TEST_F(Example, ManySeasonsStandInOneTable) {
    const std::string missing = folder.file("none.treadwell");
    const Answered all = runProgram({"batch", season, missing, season, "--at", "2026-09-18T12:00:00+02:00"});
    EXPECT_EQ(all.status, 1);
    EXPECT_THAT(all.err, HasSubstr(missing + ": "));
    EXPECT_THAT(all.err, HasSubstr("1 of 3 files stopped"));
    const std::string row = ",Ostrelmark farm,Long bunker,134,1781,";
    const std::size_t first = all.out.find(season + row);
    ASSERT_NE(first, std::string::npos) << all.out;
    EXPECT_NE(all.out.find(season + row, first + 1), std::string::npos) << all.out;
    EXPECT_EQ(runProgram({"batch", season}).status, 0);
}

// 634 t of dry matter, less the loss, at 12 t of 33 % a day.
TEST_F(Example, FeedingOutEndsOnADayWithABand) {
    const Answered fed = runProgram({"feed-out", season, "--from", "2027-01-10", "--per-day", "12t",
                                     "--dry-matter", "33%", "--loss", "10%", "--at", "2026-10-01T00:00:00Z"});
    EXPECT_EQ(fed.status, 0) << fed.err;
    EXPECT_THAT(fed.out, HasSubstr("The last day with feed is 2027-0"));
    EXPECT_THAT(fed.out, HasSubstr("2027-01-16"));
    EXPECT_EQ(
        runProgram({"feed-out", season, "--from", "soon", "--per-day", "12t", "--dry-matter", "33%"}).status,
        2);
}

// A log of removals read from a file is the plan of what comes next; temperatures have their alarm.
TEST_F(Example, TheLogOfRemovalsIsThePlan) {
    const std::string fedFile =
        folder.file("fed.csv",
                    "time;mass t;dry matter percent;face m\n"
                    "2027-01-10 08:00;12,5;33,1;58,6\n2027-01-11 08:00;13,5;33,5;57,2\n");
    const std::string warmFile =
        folder.file("warm.csv", "time,behind face c,core c,across,height\n2027-01-11 08:30,31,24,3,2\n");
    for (const auto& [option, file] :
         {std::pair{"--removals", fedFile}, std::pair{"--face-temperatures", warmFile}}) {
        const Answered read = runProgram({"import", season, option, file});
        ASSERT_EQ(read.status, 0) << read.err << read.out;
    }
    const Answered fed = runProgram({"feed-out", season, "--at", "2027-01-12T00:00:00Z", "--loss", "10%"});
    EXPECT_EQ(fed.status, 0) << fed.err;
    EXPECT_THAT(fed.out, HasSubstr("2027-01-12"));
    EXPECT_THAT(fed.out, HasSubstr("the face heats"));
    EXPECT_THAT(fed.out, HasSubstr("shrink"));
    ASSERT_EQ(runProgram({"add", season, "feed_removed", "silo=Long bunker", "mass=14t", "dry_matter=33%",
                          "face=56.2m", "--at", "2027-01-12T08:00:00+01:00"})
                  .status,
              0);
    EXPECT_THAT(runProgram({"list", season, "--kind", "feed_removed"}).out, HasSubstr("14.0 t"));
}

TEST_F(Example, AFaceWithoutCoresSaysSo) {
    const Answered face = runProgram({"face", season, "--at", "2026-10-01T00:00:00Z"});
    EXPECT_EQ(face.status, 0) << face.err;
    EXPECT_THAT(face.out, HasSubstr("there is no map"));
    EXPECT_EQ(Json{runProgram({"review", season, "--json"}).out}.text("/document"), "seasonReview");
}

TEST_F(Example, EveryLayerHasTwoDensitiesWithTheirBands) {
    const Json json{runProgram({"layers", season, "--at", "2026-09-16T15:00:00+02:00", "--json"}).out};
    for (const std::string name : {"/density_when_full_kg_dm_m3", "/density_as_it_lies_kg_dm_m3"}) {
        const double median = json.number("/layers/9" + name + "/median");
        EXPECT_LT(json.number("/layers/9" + name + "/low80"), median);
        EXPECT_GT(json.number("/layers/9" + name + "/high80"), median);
    }
    EXPECT_GT(json.number("/layers/9/thickness_when_full_cm"), 0);
}

TEST_F(Example, TheFieldHoldsAllDryMatterAndSaysWhereItIsWeak) {
    const std::string at = "2026-09-17T20:00:00+02:00";
    const Json json{runProgram({"field", season, "--at", at, "--json"}).out};
    const Json state{runProgram({"state", season, "--at", at, "--json"}).out};
    const double dry = state.number("/in_silo/dry_matter_mass_t_dm");
    EXPECT_NEAR(json.number("/mean/dry_matter_mass_t_dm"), dry, 1e-6 * dry);
    double sections = 0;
    for (const auto section : simdjson::dom::array{json.root.at_pointer("/sections")})
        sections += double(section["dry_matter_mass_t_dm"]);
    EXPECT_NEAR(sections, dry, 1e-6 * dry);
    EXPECT_EQ(json.text("/weakest/0/causes/0/code"), "weakStretch");
    EXPECT_LT(json.number("/weakest/0/density_kg_dm_m3/median"),
              json.number("/mean/density_kg_dm_m3/median"));
    EXPECT_THAT(runProgram({"field", season, "--at", at}).out, HasSubstr("The weakest places"));
}

TEST_F(Example, TheFieldIsAskedByPlace) {
    const std::string at = "2026-09-16T15:00:00+02:00";
    const std::vector<std::string> place{"field", season, "--at", at, "--along", "4m", "--up", "3ft"};
    auto withForm = [&](const char* form) {
        auto arguments = place;
        arguments.emplace_back(form);
        return runProgram(arguments).out;
    };
    const Json middle{withForm("--json")};
    EXPECT_NEAR(middle.number("/places/0/up_m"), 0.9144, 1e-12);
    EXPECT_NEAR(middle.number("/places/0/across_m"), 7, 1e-12);
    const std::string csv = withForm("--csv");
    EXPECT_THAT(csv, testing::StartsWith("along_m,up_m,across_m,layer,laid,depth_m,density_kg_dm_m3,"));
    std::array<char, 32> density{};
    const auto end = std::to_chars(density.data(), density.data() + density.size(),
                                   middle.number("/places/0/density_kg_dm_m3/median"));
    EXPECT_THAT(csv, HasSubstr("," + std::string{density.data(), end.ptr} + ","))
        << "the same number as in the JSON";
    EXPECT_THAT(runProgram({"field", season, "--at", at, "--along", "59m", "--up", "2.9m"}).out,
                HasSubstr("No crop lies there."));
    EXPECT_EQ(runProgram({"field", season, "--at", at, "--along", "59"}).status, 2);
    const Answered before = runProgram({"field", season, "--at", "2026-09-14T15:00:00+02:00"});
    EXPECT_EQ(before.status, 1);
    EXPECT_THAT(before.err, HasSubstr("No load has come yet"));
}

// The same mass as the ticket file's own sum and the same minutes as the state, laid into layers.
TEST_F(Example, LayersHoldEveryTonneAndMinute) {
    const std::string at = "2026-09-17T20:00:00+02:00";
    const Json json{runProgram({"layers", season, "--at", at, "--json"}).out};
    double mass = 0, first = 0;
    for (const auto layer : simdjson::dom::array{json.root.at_pointer("/layers")}) {
        mass += double(layer["mass_t"]);
        first += double(layer["number"]) == 1 ? 1 : 0;
    }
    EXPECT_NEAR(mass, 1781.0, 1e-9);
    EXPECT_EQ(first, 1);
    EXPECT_EQ(json.text("/layers/0/thickness_basis"), "assumed");
    EXPECT_EQ(json.text("/layers/0/loads/0/mass_source"), "weighed");
    EXPECT_EQ(json.text("/layers/0/days/0"), "2026-09-15");
    EXPECT_GT(json.number("/before_first_load/0/packed_min"), 0);
    const Answered text = runProgram({"layers", season, "--at", at});
    EXPECT_THAT(text.out, HasSubstr("before the first load; that is not counted"));
}

TEST_F(Example, LayersAsCsvHaveTheirUnitsInTheHeader) {
    const Answered csv = runProgram({"layers", season, "--at", "2026-09-15T12:00:00+02:00", "--csv"});
    EXPECT_EQ(csv.status, 0) << csv.err;
    EXPECT_THAT(csv.out, testing::StartsWith("layer,begin,end,loads,mass_t,dry_matter_mass_t_dm,"));
    EXPECT_THAT(csv.out, HasSubstr("\r\n1,2026-09-15T08:00:47Z,"));
    const Answered empty = runProgram({"layers", season, "--at", "2026-09-14T12:00:00+02:00"});
    EXPECT_THAT(empty.out, HasSubstr("No crop was tipped here by then."));
    EXPECT_EQ(runProgram({"layers", season, "--csv", "--json"}).status, 2);
}

TEST_F(Example, CheckFindsEveryEntryAsItWasWritten) {
    const Answered checked = runProgram({"check", season, "--json"});
    EXPECT_EQ(checked.status, 0) << checked.err;
    const Json json{checked.out};
    EXPECT_GT(json.number("/facts"), 134);
    EXPECT_TRUE(bool(json.root.at_pointer("/whole")));
}

TEST_F(Example, AChangedFileIsFound) {
    std::ifstream in{season, std::ios::binary};
    std::string bytes{std::istreambuf_iterator<char>{in}, {}};
    const std::size_t mass = bytes.find("\"mass_kg\":11940");
    ASSERT_NE(mass, std::string::npos);
    bytes[mass + 10] = '2';
    std::ofstream{season, std::ios::binary} << bytes;
    const Answered checked = runProgram({"check", season});
    EXPECT_EQ(checked.status, 1);
    EXPECT_NE(checked.err, "");
}

TEST_F(Example, AnExistingSeasonIsNotOverwritten) {
    const Answered again = runProgram({"new", season, "--farm", kExamples + "farm.json"});
    EXPECT_EQ(again.status, 1);
    EXPECT_THAT(again.err, HasSubstr("season.treadwell"));
}

TEST_F(Example, RowsThatCannotBeUsedAreListed) {
    const std::string tickets = folder.file("bad.csv",
                                            "Ticket,Date,Time,Vehicle,Field,Net kg\n"
                                            "1,2026-09-18,10:00,Amsel,Lurrenbreite,12000\n"
                                            "2,2026-09-18,10:05,Nobody's,Lurrenbreite,12000\n"
                                            "3,2026-09-18,25:99,Amsel,Lurrenbreite,12000\n");
    const Answered text = runProgram({"import", season, "--tickets", tickets});
    EXPECT_EQ(text.status, 0) << text.err;
    EXPECT_THAT(text.out, HasSubstr("bad.csv: 3 rows, 1 added, 2 not used"));
    EXPECT_THAT(text.out, HasSubstr("bad.csv:3:4: "));
    EXPECT_THAT(text.out, HasSubstr("2,2026-09-18,10:05,Nobody's,Lurrenbreite,12000"));
    EXPECT_THAT(text.out, HasSubstr("bad.csv:4:3: "));
}

TEST_F(Example, WhatCannotBeReadOrMeantIsSaidInOneLine) {
    const std::vector<Refused> cases{
        {{"import", season}, 2, "nothing to import"},
        {{"import", season, "--tickets", folder.file("none.csv")}, 1, "none.csv cannot be read"},
        {{"import", season, "--tickets", kExamples + "tickets.csv", "--date-order", "x"}, 2, "dayFirst"},
        {{"state", folder.file("none.treadwell")}, 1, "none.treadwell"},
        {{"state", season, "--at", "noon"}, 2, "--at: \"noon\" is not a time"},
        {{"state", season, "--silo", "Short bunker"}, 2, "give one of Long bunker"},
        {{"day", season, "--date", "yesterday"}, 2, "write it like 2026-09-15"},
        {{"day", season, "--date", "2026-12-24"}, 2, "the season runs from"},
        {{"new", folder.file("other.treadwell"), "--farm", folder.file("farm.json", "{")}, 1, "farm.json"},
        {{"check", folder.file("text", "no season")}, 1, "text"},
    };
    expectRefused(cases);
}

}  // namespace
}  // namespace treadwell::cli
