#include "tests/app/cli/json.h"
#include "tests/app/cli/program.h"
#include "tests/support/wire.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <thread>

namespace treadwell::cli {
namespace {

using testing::HasSubstr;
using testing_support::PseudoTerminal;
using testing_support::ScalePort;
using namespace std::string_literals;

/// What a scale sends while a truck drives onto it: the tail of a frame, motion, noise of a wrong speed, a
/// frame with a character lost, an overload, and a weight that stands still.
const std::string kArrival =
    "340,kg\r\nUS,GS,+   4120,kg\r\nUS,GS,+  17860,kg\r\n\x9A\xC3\x7F\xFF\x00\xE1\r\nST,GS,+2018,kg\r\n"
    "OL,GS,+  99999,kg\r\nST,GS,+  20160,kg\r\nST,GS,+  20180,kg\r\nST,GS,+  20180,kg\r\nST,GS,+  2"s;
const std::string kAtRest = "0180,kg\r\n";

class Weighing : public testing::Test {
  protected:
    Weighing() {
        const Answered made = runProgram({"new", season, "--farm", TREADWELL_SOURCE "/examples/farm.json"});
        EXPECT_EQ(made.status, 0) << made.err;
    }

    Answered weigh(const std::string& line, std::vector<std::string> more = {}) {
        std::vector<std::string> words{"weigh", season, "--line", line, "--profile", "commas"};
        if (std::find(more.begin(), more.end(), "--wait") == more.end())
            words.insert(words.end(), {"--wait", "5"});
        words.insert(words.end(), more.begin(), more.end());
        return runProgram(words);
    }

    std::int64_t loads() {
        const Json json{runProgram({"check", season, "--json"}).out};
        return static_cast<std::int64_t>(json.number("/facts"));
    }

    Folder folder;
    std::string season = folder.file("season.treadwell");
    PseudoTerminal terminal;
};

TEST_F(Weighing, RecordsALoadOnceItStandsStill) {
    const std::int64_t before = loads();
    terminal.play(kArrival);
    std::thread later{[&] {
        std::this_thread::sleep_for(std::chrono::milliseconds{150});
        terminal.play(kAtRest);
    }};
    const Answered answered = weigh(terminal.place(), {"--truck", "Amsel", "--tare", "11860kg", "--json"});
    later.join();
    ASSERT_EQ(answered.status, 0) << answered.err;
    const Json json{answered.out};
    EXPECT_EQ(json.number("/net_kg"), 8320);
    EXPECT_EQ(json.number("/shown_kg"), 20180);
    EXPECT_EQ(json.text("/truck"), "Amsel");
    EXPECT_EQ(loads(), before + 1);
}

TEST_F(Weighing, RecordsNothingThatDoesNotStandStill) {
    const std::int64_t before = loads();
    terminal.play("\r\nUS,GS,+  20160,kg\r\nST,GS,+  20180,kg\r\nUS,GS,+  20180,kg\r\nrubbish\r\n");
    const Answered unsteady = weigh(terminal.place(), {"--tare", "11860kg", "--wait", "1"});
    EXPECT_EQ(unsteady.status, 1);
    EXPECT_THAT(unsteady.err, HasSubstr("frames: 4, unreadable: 1"));
    const Answered silent = weigh(terminal.place(), {"--wait", "1"});
    EXPECT_EQ(silent.status, 1);
    EXPECT_THAT(silent.err, HasSubstr("Nothing came from the scale"));
    EXPECT_EQ(loads(), before);
}

TEST_F(Weighing, AsksForTheTareAndForTheRightOrder) {
    const std::string steady = "\r\nST,GS,+  20180,kg\r\nST,GS,+  20180,kg\r\nST,GS,+  20180,kg\r\n";
    terminal.play(steady);
    EXPECT_THAT(weigh(terminal.place()).err, HasSubstr("give the truck's empty weight"));
    terminal.play(steady);
    EXPECT_THAT(weigh(terminal.place(), {"--tare", "31t"}).err, HasSubstr("the wrong way round"));
    terminal.play("\r\nST,NT,-   8320,kg\r\nST,NT,-   8320,kg\r\nST,NT,-   8320,kg\r\n");
    EXPECT_THAT(weigh(terminal.place()).err, HasSubstr("the wrong way round"));
}

TEST_F(Weighing, ListensOverAConnection) {
    ScalePort port;
    std::thread scale{
        [&] { port.playOnce("\r\nST,NT,+   8320,kg\r\nST,NT,+   8320,kg\r\nST,NT,+   8320,kg\r\n"); }};
    const Answered answered = weigh(port.place(), {"--truck", "Amsel"});
    scale.join();
    ASSERT_EQ(answered.status, 0) << answered.err;
    EXPECT_THAT(answered.out, HasSubstr("8.3 t recorded in Long bunker from Amsel"));
}

TEST_F(Weighing, AScaleThatWaitsIsAsked) {
    std::thread scale{[&] {
        for (int i = 0; i < 4; ++i) {
            EXPECT_EQ(terminal.asked(), "W\r");
            terminal.play(i == 0 ? "\r\n" : "ST,NT,+   8320,kg\r\n");
        }
    }};
    const Answered answered = weigh(terminal.place(), {"--ask", "W"});
    scale.join();
    EXPECT_EQ(answered.status, 0) << answered.err;
}

TEST_F(Weighing, ListenShowsTheRawBytesOfEveryFrame) {
    terminal.play(kArrival + kAtRest);
    const Answered answered =
        runProgram({"listen", "--line", terminal.place(), "--profile", "commas", "--wait", "1", "--json"});
    ASSERT_EQ(answered.status, 0) << answered.err;
    const Json json{answered.out};
    EXPECT_EQ(json.text("/frames/0/error/code"), "frameCut");
    EXPECT_EQ(json.text("/frames/1/state"), "motion");
    EXPECT_EQ(json.text("/frames/3/raw"), "<9A><C3><7F><FF><00><E1>");
    EXPECT_EQ(json.number("/frames/9/weight_kg"), 20180);
    EXPECT_EQ(json.number("/unreadable"), 2);
}

TEST_F(Weighing, SaysWhatCannotBeUsed) {
    EXPECT_THAT(weigh("/no/such/device").err, HasSubstr("cannot be reached"));
    const Answered profile = runProgram({"listen", "--line", terminal.place(), "--profile", "unheard"});
    EXPECT_EQ(profile.status, 2);
    EXPECT_THAT(profile.err, HasSubstr("commas, commasShort"));
    EXPECT_EQ(weigh(terminal.place(), {"--truck", "Zebra"}).status, 2);
    EXPECT_EQ(weigh(terminal.place(), {"--baud", "fast"}).status, 2);
    EXPECT_EQ(weigh(terminal.place(), {"--characters", "8O2"}).status, 2);
    EXPECT_EQ(weigh(terminal.place(), {"--tare", "heavy"}).status, 2);
}

}  // namespace
}  // namespace treadwell::cli
