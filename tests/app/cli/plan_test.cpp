#include "tests/app/cli/json.h"
#include "tests/app/cli/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace treadwell::cli {
namespace {

using testing::HasSubstr;

/// The example's inputs, with fewer days.
std::string exampleFile(const Folder& folder) {
    const Answered example = runProgram({"plan", "--example"});
    EXPECT_EQ(example.status, 0) << example.err;
    std::string json = example.out;
    const std::string days = "\"days\":400";
    const auto at = json.find(days);
    EXPECT_NE(at, std::string::npos);
    return folder.file("plan.json", json.replace(at, days.size(), "\"days\":20"));
}

TEST(Plan, TellsWhereTheCropGoes) {
    const Folder folder;
    const std::string file = exampleFile(folder);
    const Answered text = runProgram({"plan", file, "fits"});
    ASSERT_EQ(text.status, 0) << text.err;
    EXPECT_THAT(text.out, HasSubstr("Long bunker"));
    EXPECT_THAT(text.out, HasSubstr("Where the crop goes"));
    const Json json{runProgram({"plan", file, "fits", "--json"}).out};
    EXPECT_NEAR(json.number("/season/0/crop_t"), 2500, 1e-9);
    double placed = json.number("/season/0/left_over_median_t");
    for (const auto placement : simdjson::dom::array{json.root["placements"]})
        placed += double{placement["mass_t"]};
    EXPECT_NEAR(placed, 2500, 1e-6);
    EXPECT_LT(json.number("/silos/0/holds_low80_t"), json.number("/silos/0/holds_median_t"));
}

TEST(Plan, NamesTheSlowestLinkAndShowsTheBand) {
    const Folder folder;
    const Json json{runProgram({"plan", exampleFile(folder), "flows", "--json"}).out};
    EXPECT_EQ(json.text("/chain/1/slowest"), "packing");
    EXPECT_EQ(json.text("/chain_remarks/1/code"), "planPackingSlowest");
    EXPECT_EQ(json.text("/days/0/what"), "loads_per_h");
    EXPECT_GT(json.number("/chain/1/trucks_wanted"), json.number("/chain/0/trucks_wanted"));
    EXPECT_LE(json.number("/days/0/low80"), json.number("/days/0/median"));
    EXPECT_LT(json.number("/density/0/density_low80_kg_dm_m3"),
              json.number("/density/0/density_median_kg_dm_m3"));
}

TEST(Plan, ShowsWhatPaysWithABand) {
    const Folder folder;
    const std::string file = exampleFile(folder);
    const Json json{runProgram({"plan", file, "pays", "--json"}).out};
    EXPECT_EQ(json.text("/fleets/0/which"), "planned");
    EXPECT_GE(json.number("/fleets/1/margin_per_t_dm"), json.number("/fleets/0/margin_per_t_dm"));
    EXPECT_LT(json.number("/fleets/0/density_low80_kg_dm_m3"),
              json.number("/fleets/0/density_median_kg_dm_m3"));
    EXPECT_EQ(json.text("/one_more/0/tractor"), "Auerochse");
}

TEST(Plan, CoversAndFeedsOut) {
    const Folder folder;
    const Json json{runProgram({"plan", exampleFile(folder), "--json"}).out};
    EXPECT_EQ(json.number("/seals/0/sheets"), 7);
    EXPECT_EQ(json.text("/seals/0/full"), "2026-09-15");
    EXPECT_EQ(json.text("/feeds/0/gas_until"), "2026-10-06");
    EXPECT_EQ(json.number("/feeds/0/effluent_litres"), 0);
}

TEST(Plan, StandsBesideOthers) {
    const Folder folder;
    const std::string file = exampleFile(folder);
    std::string other = runProgram({"plan", "--example"}).out;
    const std::string trucks = "\"trucks\":6", name = "As last year";
    other.replace(other.find(trucks), trucks.size(), "\"trucks\":12");
    other.replace(other.find(name), name.size(), "Twelve trucks");
    const Answered beside = runProgram({"plan", file, "--against", folder.file("other.json", other)});
    ASSERT_EQ(beside.status, 0) << beside.err;
    EXPECT_THAT(beside.out, HasSubstr("As last year"));
    EXPECT_THAT(beside.out, HasSubstr("Twelve trucks: "));
    EXPECT_THAT(beside.out, HasSubstr("days of harvest instead of"));
}

TEST(Plan, SaysWhatIsWrongAndWhere) {
    const Folder folder;
    std::string json = runProgram({"plan", "--example"}).out;
    json.replace(json.find("\"trucks\":6"), 10, "\"trucks\":600");
    const std::string file = folder.file("wrong.json", json);
    const Answered wrong = runProgram({"plan", file});
    EXPECT_EQ(wrong.status, 1);
    EXPECT_THAT(wrong.err, HasSubstr("wrong.json"));
    EXPECT_THAT(wrong.err, HasSubstr("haulage trucks"));
    EXPECT_EQ(runProgram({"plan"}).status, 2);
    const Answered unknown = runProgram({"plan", exampleFile(folder), "sings"});
    EXPECT_EQ(unknown.status, 2);
    EXPECT_THAT(unknown.err, HasSubstr("fits, flows, pays, seals, feeds, all"));
}

TEST(Plan, CautionsWhereASlopeIsSteep) {
    const Folder folder;
    std::string json = runProgram({"plan", "--example"}).out;
    const std::string slope = "\"ramp_run_per_rise\":3";
    json.replace(json.find(slope), slope.size(), "\"ramp_run_per_rise\":2");
    const std::string file = folder.file("steep.json", json);
    const auto cautions = [](const std::string& out) {
        std::vector<std::string> codes;
        const Json read{out};
        for (const auto remark : simdjson::dom::array{read.root["silos_remarks"]})
            codes.emplace_back(std::string_view{remark["code"]});
        return codes;
    };
    EXPECT_THAT(cautions(runProgram({"plan", file, "fits", "--json"}).out),
                testing::Contains("cautionRampSteep"));
    EXPECT_THAT(cautions(runProgram({"plan", exampleFile(folder), "fits", "--json"}).out),
                testing::Not(testing::Contains("cautionRampSteep")));
}

TEST(Sealing, AStepIsRecordedAndShown) {
    const Folder folder;
    const std::string season = folder.file("season.treadwell"), plan = exampleFile(folder);
    ASSERT_EQ(runProgram({"new", season, "--farm", TREADWELL_SOURCE "/examples/farm.json"}).status, 0);
    const Json before{runProgram({"sealing", season, "--plan", plan, "--json"}).out};
    EXPECT_EQ(before.text("/sealing/0/step"), "wallSheets");
    EXPECT_EQ(before.number("/sealing/0/done_percent"), 0);
    const Answered done = runProgram({"sealing", season, "--plan", plan, "--done", "wallSheets", "--to",
                                      "30m", "--at", "2026-09-15T08:00:00+02:00", "--json"});
    ASSERT_EQ(done.status, 0) << done.err;
    EXPECT_NEAR(Json{done.out}.number("/sealing/0/done_percent"), 50, 1e-9);
    EXPECT_EQ(Json{done.out}.text("/sealing_remarks/0/code"), "planSiloUnknown") << "the farm has no pile";
    EXPECT_THAT(runProgram({"list", season}).out, HasSubstr("wall sheets"));
    const Answered wrong = runProgram({"sealing", season, "--plan", plan, "--done", "roof"});
    EXPECT_EQ(wrong.status, 2);
    EXPECT_THAT(wrong.err, HasSubstr("edgesSealed"));
}

/// A season of the example farm with its plan adopted.
class Adopted : public testing::Test {
  protected:
    Adopted() {
        EXPECT_EQ(runProgram({"new", season, "--farm", TREADWELL_SOURCE "/examples/farm.json"}).status, 0);
        EXPECT_EQ(runProgram({"people", season, "--add", "Anna"}).status, 0);
        adopted = runProgram({"plan", kPlan, "--adopt", season, "--author", "Anna", "--at",
                              "2026-09-14T18:00:00+02:00", "--json"});
    }
    static constexpr const char* kPlan = TREADWELL_SOURCE "/examples/adopted.plan.json";
    Folder folder;
    std::string season = folder.file("season.treadwell");
    Answered adopted;
};

TEST_F(Adopted, IsAnEntryWithItsDays) {
    ASSERT_EQ(adopted.status, 0) << adopted.err;
    const Json json{adopted.out};
    EXPECT_EQ(json.text("/kind"), "plan_adopted");
    EXPECT_EQ(json.text("/plan/name"), "Three tractors");
    EXPECT_EQ(json.text("/plan/days/0/day"), "2026-09-15");
    EXPECT_GT(json.number("/plan/days/0/mass_kg"), 100'000);
    EXPECT_LT(json.number("/plan/figures/density_low80_kg_dm_m3"),
              json.number("/plan/figures/density_kg_dm_m3"));
    const Answered list = runProgram({"list", season});
    EXPECT_THAT(list.out, HasSubstr("plan adopted"));
    EXPECT_THAT(list.out, testing::Not(HasSubstr("crop_per_t_dm"))) << "the inputs are for programs";
}

TEST_F(Adopted, OpensAgainAsItWas) {
    const Answered back = runProgram({"plan", "--adopted", season});
    ASSERT_EQ(back.status, 0) << back.err;
    const Answered example = runProgram({"plan", kPlan, "fits", "--json"});
    EXPECT_EQ(runProgram({"plan", folder.file("back.json", back.out), "fits", "--json"}).out, example.out);
}

TEST_F(Adopted, APlanBeginsWithTheFarm) {
    const Answered begun = runProgram({"plan", "--of", season});
    ASSERT_EQ(begun.status, 0) << begun.err;
    const Json json{begun.out};
    EXPECT_EQ(json.text("/silos/0/name"), "Long bunker");
    EXPECT_EQ(json.number("/haulage/trucks"), 6);
    EXPECT_EQ(runProgram({"plan", folder.file("begun.json", begun.out), "fits"}).status, 0);
}

TEST_F(Adopted, ASeasonWithoutAPlanSaysWhatToDo) {
    const std::string bare = folder.file("bare.treadwell");
    ASSERT_EQ(runProgram({"new", bare, "--farm", TREADWELL_SOURCE "/examples/farm.json"}).status, 0);
    const Answered none = runProgram({"plan", "--adopted", bare});
    EXPECT_EQ(none.status, 1);
    EXPECT_THAT(none.err, HasSubstr("adopt one first"));
    EXPECT_EQ(runProgram({"sealing", bare}).status, 1);
}

TEST_F(Adopted, SealingGoesByTheSeasonsPlan) {
    const Json before{runProgram({"sealing", season, "--json"}).out};
    EXPECT_EQ(before.text("/sealing/0/step"), "wallSheets");
    const Answered done = runProgram({"sealing", season, "--done", "wallSheets", "--author", "Anna", "--at",
                                      "2026-09-15T08:00:00+02:00", "--json"});
    ASSERT_EQ(done.status, 0) << done.err;
    EXPECT_NEAR(Json{done.out}.number("/sealing/0/done_percent"), 100, 1e-9);
}

}  // namespace
}  // namespace treadwell::cli
