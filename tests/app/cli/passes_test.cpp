#include "tests/app/cli/json.h"
#include "tests/app/cli/refused.h"

namespace treadwell::cli {
namespace {

const std::string kExamples = TREADWELL_SOURCE "/examples/";
constexpr const char* kWhen = "2026-09-16T15:00:00+02:00";

/// The example season by its second afternoon.
class Passes : public testing::Test {
  protected:
    Passes() {
        EXPECT_EQ(runProgram({"new", season, "--farm", kExamples + "farm.json"}).status, 0);
        EXPECT_EQ(runProgram({"import", season, "--tickets", kExamples + "tickets.csv", "--tractors",
                              kExamples + "tractor_log.csv", "--samples", kExamples + "samples.csv",
                              "--layers", kExamples + "layers.csv"})
                      .status,
                  0);
    }

    Folder folder;
    std::string season = folder.file("season.treadwell");
};

TEST_F(Passes, AReplayStandsBesideTheRegression) {
    const Answered answered = runProgram({"replay", season, "--at", kWhen, "--json"});
    ASSERT_EQ(answered.status, 0) << answered.err;
    const Json json{answered.out};
    const double simulated = json.number("/simulation_kg_dm_m3/median");
    EXPECT_GT(simulated, json.number("/regression_kg_dm_m3/low80"));
    EXPECT_LT(simulated, json.number("/regression_kg_dm_m3/high80"));
    EXPECT_LT(json.number("/simulation_kg_dm_m3/low80"), simulated);
    EXPECT_GT(json.number("/layers/0/passes"), 1.0);
    EXPECT_EQ(answered.out, runProgram({"replay", season, "--at", kWhen, "--json"}).out);
}

TEST_F(Passes, TracksInTheMiddleLeaveItLooser) {
    const auto median = [&](const char* pattern) {
        return Json{runProgram({"replay", season, "--at", kWhen, "--pattern", pattern, "--json"}).out}.number(
            "/simulation_kg_dm_m3/median");
    };
    EXPECT_LT(median("middle"), median("wholeWidth"));
}

TEST_F(Passes, ReplayRefusesWhatItCannotRead) {
    expectRefused({{{"replay", season, "--pattern", "spiral"}, 2, "wholeWidth, middle, anywhere"},
                   {{"replay", season, "--seed", "-1"}, 2, "--seed"},
                   {{"replay", season, "--silo", "Nowhere"}, 2, "none is called \"Nowhere\""}});
}

}  // namespace
}  // namespace treadwell::cli
