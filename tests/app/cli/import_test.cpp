#include "tests/app/cli/json.h"
#include "tests/app/cli/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace treadwell::cli {
namespace {

using testing::HasSubstr;

const std::string kRows =
    "When;Vehicle;Weight\n"
    "15.09.2026 10:00;Amsel;12.340\n"
    "15.09.2026 10:20;Zebra;11.100\n"
    "15.09.2026 10:40;Biber;13.220\n";

/// A season without loads, and what this machine remembers of imports, both of the test's own.
class Importing : public testing::Test {
  protected:
    Importing() {
        setenv("XDG_STATE_HOME", folder.file("state").c_str(), 1);
        const Answered made = runProgram({"new", season, "--farm", TREADWELL_SOURCE "/examples/farm.json"});
        EXPECT_EQ(made.status, 0) << made.err;
    }
    ~Importing() override { unsetenv("XDG_STATE_HOME"); }

    Answered import(std::vector<std::string> more = {}) {
        std::vector<std::string> words{"import", season, "--tickets", tickets, "--json"};
        words.insert(words.end(), more.begin(), more.end());
        return runProgram(words);
    }

    Folder folder;
    std::string season = folder.file("season.treadwell");
    std::string tickets = folder.file("tickets.csv", kRows);
    const std::vector<std::string> answers{"--column",    "time=When", "--column",       "net=Weight",
                                           "--mass-unit", "kg",        "--decimal-sign", "comma"};
};

TEST_F(Importing, AnErrorNamesTheChoiceAndTheOption) {
    const Answered decimal = import();
    EXPECT_EQ(decimal.status, 1);
    EXPECT_THAT(decimal.err, HasSubstr("decimal sign"));
    EXPECT_THAT(decimal.err, HasSubstr("(--decimal-sign)"));
    EXPECT_THAT(import({"--decimal-sign", "comma"}).err, HasSubstr("(--column)"));
    EXPECT_EQ(import({"--column", "weight=Weight"}).status, 2);
    EXPECT_EQ(import({"--column", "net"}).status, 2);
    EXPECT_EQ(import({"--delimiter", ";"}).status, 2);
}

TEST_F(Importing, APreviewSaysAllThatIsOpenAndRecordsNothing) {
    const Answered open = import({"--preview"});
    ASSERT_EQ(open.status, 0) << open.err;
    const Json questions{open.out};
    EXPECT_EQ(questions.text("/files/0/delimiter"), "semicolon");
    EXPECT_EQ(questions.text("/files/0/columns/1/meaning"), "truck");
    EXPECT_EQ(questions.text("/files/0/open/0/code"), "decimalAmbiguous");
    EXPECT_EQ(questions.text("/files/0/open/1/code"), "columnMissing");

    std::vector<std::string> all = answers;
    all.emplace_back("--preview");
    const Json answered{import(all).out};
    EXPECT_EQ(answered.number("/files/0/used"), 2);
    EXPECT_EQ(answered.number("/added"), 0);
    EXPECT_EQ(import().status, 1);  // neither recorded nor remembered
}

TEST_F(Importing, APreviewOfAnyListRecordsNothing) {
    const std::string samples = TREADWELL_SOURCE "/examples/samples.csv";
    const Answered shown = runProgram({"import", season, "--samples", samples, "--preview"});
    ASSERT_EQ(shown.status, 0) << shown.err;
    EXPECT_THAT(shown.out, HasSubstr("a preview, nothing is recorded"));
    EXPECT_THAT(shown.out, HasSubstr("would be added"));
    const Answered taken = runProgram({"import", season, "--samples", samples, "--json"});
    EXPECT_GT(Json{taken.out}.number("/added"), 0);
}

TEST_F(Importing, WhatWasAnsweredOnceIsRememberedByTheHeader) {
    ASSERT_EQ(import(answers).status, 0);
    tickets = folder.file("more.csv", "When;Vehicle;Weight\n16.09.2026 10:00;Amsel;12.440\n");
    const Answered more = import();
    ASSERT_EQ(more.status, 0) << more.err;
    EXPECT_EQ(Json{more.out}.number("/added"), 1);
    tickets = folder.file("other.csv", "When;Truck;Weight\n16.09.2026 10:00;Amsel;12.440\n");
    EXPECT_EQ(import().status, 1);

    const std::string memory = folder.file("state/treadwell/import_maps.json");
    const std::string broken = folder.file("state/treadwell/import_maps.json", "{broken");
    EXPECT_EQ(broken, memory);
    EXPECT_THAT(import().err, HasSubstr("cannot be read: mend the file"));
}

TEST_F(Importing, RowsThatCannotBeReadStayAnOpenQuestionUntilTheyAreRead) {
    const Json first{import(answers).out};
    EXPECT_EQ(first.number("/files/0/used"), 2);
    const Json aside{runProgram({"set-aside", season, "--json"}).out};
    EXPECT_EQ(aside.text("/rows/0/file"), "tickets.csv");
    EXPECT_EQ(aside.number("/rows/0/line"), 3);
    EXPECT_EQ(aside.number("/rows/0/column"), 2);
    EXPECT_EQ(aside.text("/rows/0/code"), "nameUnknown");
    EXPECT_EQ(aside.text("/rows/0/raw"), "sep=;\nWhen;Vehicle;Weight\n15.09.2026 10:20;Zebra;11.100\n");
    EXPECT_THAT(runProgram({"set-aside", season}).out, HasSubstr("15.09.2026 10:20;Zebra;11.100"));
    EXPECT_THAT(runProgram({"day", season, "--date", "2026-09-15"}).out,
                HasSubstr("1 rows of imported files could not be read"));

    const Json again{import().out};
    EXPECT_EQ(again.number("/added"), 0);
    EXPECT_EQ(Json{runProgram({"set-aside", season, "--json"}).out}.text("/rows/0/code"), "nameUnknown");
    EXPECT_THAT(runProgram({"check", season}).out, HasSubstr("every chain whole"));
}

}  // namespace
}  // namespace treadwell::cli
