// The real program on a machine whose clock is wrong.
#include "tests/app/cli/json.h"
#include "tests/app/cli/program.h"
#include "tests/support/wire.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <chrono>
#include <cstdlib>
#include <fstream>

namespace treadwell::cli {
namespace {

using testing::HasSubstr;
using testing::Not;
using namespace std::chrono_literals;

/// Runs the program while the clock is off by so much.
Answered runShifted(std::chrono::seconds shift, const std::vector<std::string>& arguments) {
    setenv("LD_PRELOAD", TREADWELL_CLOCK_SHIFT, 1);
    setenv("CLOCK_SHIFT_SECONDS", std::to_string(shift.count()).c_str(), 1);
    // The sanitizers' own library need not come first.
    const char* asan = std::getenv("ASAN_OPTIONS");
    const std::string before = asan == nullptr ? "" : asan;
    setenv("ASAN_OPTIONS", (before + ":verify_asan_link_order=0").c_str(), 1);
    Answered answered = runProgram(arguments);
    asan == nullptr ? unsetenv("ASAN_OPTIONS") : setenv("ASAN_OPTIONS", before.c_str(), 1);
    unsetenv("CLOCK_SHIFT_SECONDS");
    unsetenv("LD_PRELOAD");
    return answered;
}

std::chrono::seconds sinceTheEpoch() {
    return std::chrono::duration_cast<std::chrono::seconds>(
        std::chrono::system_clock::now().time_since_epoch());
}

class WrongClock : public testing::Test {
  protected:
    WrongClock() {
        EXPECT_EQ(runProgram({"new", season, "--farm", TREADWELL_SOURCE "/examples/farm.json"}).status, 0);
    }
    std::vector<std::string> load(const std::vector<std::string>& more = {}) const {
        std::vector<std::string> arguments{"add", season, "load", "mass=12t", "silo=Long bunker", "--json"};
        arguments.insert(arguments.end(), more.begin(), more.end());
        return arguments;
    }

    Folder folder;
    std::string season = folder.file("season.treadwell");
};

TEST_F(WrongClock, GoneBackItIsAskedAboutAndNothingIsReordered) {
    const Answered before = runProgram(load());
    ASSERT_EQ(before.status, 0) << before.err;
    const Answered asked = runShifted(-2h, load());
    EXPECT_EQ(asked.status, 2);
    EXPECT_THAT(asked.err, HasSubstr("--at: say when it happened, since the clock is in question"));
    EXPECT_THAT(asked.err, HasSubstr("is the clock right?"));
    // Said when, it is recorded, and told of once more.
    const std::string when = Json{before.out}.text("/happened");
    const Answered said = runShifted(-2h, load({"--at", when}));
    EXPECT_EQ(said.status, 0) << said.err;
    EXPECT_THAT(said.err, HasSubstr("is the clock right?"));
    const Json listed{runProgram({"list", season, "--kind", "load", "--json"}).out};
    EXPECT_EQ(simdjson::dom::array{listed.root.at_pointer("/entries")}.size(), 2u);
    EXPECT_EQ(listed.text("/entries/0/entry"), Json{before.out}.text("/entry"));
    EXPECT_EQ(listed.text("/entries/1/entry"), Json{said.out}.text("/entry"));
    EXPECT_EQ(runProgram({"check", season}).status, 0);
    // The clock set, the season goes on.
    const Answered after = runProgram(load());
    EXPECT_EQ(after.status, 0) << after.err;
    EXPECT_EQ(after.err, "");
}

TEST_F(WrongClock, DeadItIsAskedAbout) {
    const Answered dead = runShifted(-sinceTheEpoch(), load());
    EXPECT_EQ(dead.status, 2);
    EXPECT_THAT(dead.err, HasSubstr("1970-01-01"));
    const Answered said = runShifted(-sinceTheEpoch(), load({"--at", "2026-09-15 14:25"}));
    EXPECT_EQ(said.status, 0) << said.err;
    EXPECT_EQ(Json{said.out}.text("/happened"), "2026-09-15T12:25:00Z");
    EXPECT_EQ(runProgram({"check", season}).status, 0);
    // Reading asks nothing.
    EXPECT_EQ(runShifted(-sinceTheEpoch(), {"check", season}).err, "");
}

TEST_F(WrongClock, NothingIsRecordedByItWithoutATimeWhateverTheCommand) {
    const Answered known = runProgram(load());
    ASSERT_EQ(known.status, 0) << known.err;
    const std::string plan = folder.file("plan.json");
    const Answered begun = runProgram({"plan", "--example"});
    ASSERT_EQ(begun.status, 0) << begun.err;
    std::ofstream{plan} << begun.out;
    const std::string tickets = folder.file("tickets.csv");
    std::ofstream{tickets} << "ticket,time,truck,net kg\n1,2026-09-15 10:00,,12000\n";
    const std::string entry = Json{known.out}.text("/entry");
    const auto listed = [&] { return runProgram({"list", season}).out; };
    const std::vector<std::vector<std::string>> commands{
        {"sealing", season, "--plan", plan, "--done", "wallSheets"},
        {"plan", plan, "--adopt", season},
        {"close", season, "--anyway"},
        {"void", season, entry},
        {"import", season, "--tickets", tickets}};
    for (const auto& command : commands) {
        const std::string before = listed();
        const Answered asked = runShifted(-sinceTheEpoch(), command);
        EXPECT_EQ(asked.status, 2) << command[0];
        EXPECT_THAT(asked.err, HasSubstr("since the clock is in question")) << command[0];
        EXPECT_EQ(listed(), before) << command[0];
        auto said = command;
        said.insert(said.end(), {"--at", "2027-03-01T12:00:00Z"});
        const Answered recorded = runShifted(-sinceTheEpoch(), said);
        EXPECT_EQ(recorded.status, 0) << command[0] << ": " << recorded.err;
    }
    EXPECT_THAT(runProgram({"list", season}).out, Not(HasSubstr("1970-")));
}

TEST_F(WrongClock, ALoadFromTheScaleIsAskedAboutToo) {
    testing_support::PseudoTerminal scale;
    std::vector<std::string> weigh{"weigh",     season,   "--line", scale.place(),
                                   "--profile", "commas", "--wait", "5"};
    const Answered asked = runShifted(-sinceTheEpoch(), weigh);
    EXPECT_EQ(asked.status, 2);
    EXPECT_THAT(asked.err, HasSubstr("since the clock is in question"));
    scale.play("\r\nST,NT,+   8320,kg\r\nST,NT,+   8320,kg\r\nST,NT,+   8320,kg\r\n");
    weigh.insert(weigh.end(), {"--at", "2026-09-15T12:25:00Z"});
    const Answered said = runShifted(-sinceTheEpoch(), weigh);
    ASSERT_EQ(said.status, 0) << said.err;
    const Json listed{runProgram({"list", season, "--kind", "load", "--json"}).out};
    EXPECT_EQ(listed.text("/entries/0/happened"), "2026-09-15T12:25:00Z");
}

TEST_F(WrongClock, DeadItBeginsNoSeason) {
    const std::string second = folder.file("second.treadwell");
    const std::vector<std::string> begin{"new", second, "--farm", TREADWELL_SOURCE "/examples/farm.json"};
    const Answered dead = runShifted(-sinceTheEpoch(), begin);
    EXPECT_EQ(dead.status, 1);
    EXPECT_THAT(dead.err, HasSubstr("the machine's clock shows 1970-01-01"));
    EXPECT_FALSE(std::filesystem::exists(second));
    EXPECT_EQ(runProgram(begin).status, 0);
}

TEST_F(WrongClock, ATimeServicesStepIsNoQuestion) {
    ASSERT_EQ(runProgram(load()).status, 0);
    const Answered stepped = runShifted(-60s, load());
    EXPECT_EQ(stepped.status, 0) << stepped.err;
    EXPECT_EQ(stepped.err, "");
}

}  // namespace
}  // namespace treadwell::cli
