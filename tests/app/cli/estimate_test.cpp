#include "tests/app/cli/json.h"
#include "tests/app/cli/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::cli {
namespace {

using testing::EndsWith;
using testing::HasSubstr;
using testing::StartsWith;

const std::vector<std::string> kExample{"estimate", "--rate",    "120t/h",  "--dry-matter", "35%",
                                        "--layer",  "15cm",      "--depth", "3m",           "--tractor",
                                        "14t",      "--tractor", "10t@0.5"};

std::vector<std::string> with(std::vector<std::string> arguments, std::initializer_list<std::string> more) {
    arguments.insert(arguments.end(), more);
    return arguments;
}

std::vector<std::string> keysOf(simdjson::dom::element element) {
    std::vector<std::string> keys;
    for (const auto& field : simdjson::dom::object{element}) keys.emplace_back(field.key);
    return keys;
}

// The contract on which scripts are built: exactly these names, in this order.
TEST(Estimate, JsonHasTheAgreedNames) {
    const Answered answered = runProgram(with(kExample, {"--json"}));
    ASSERT_EQ(answered.status, 0) << answered.err;
    EXPECT_EQ(answered.err, "");
    const Json json{answered.out};
    EXPECT_THAT(keysOf(json.root),
                testing::ElementsAre("density_kg_dm_m3", "packing_factor_us", "packing_minutes_per_t",
                                     "porosity", "target_kg_dm_m3", "chance_of_target", "tractors_counted",
                                     "warnings", "yardsticks", "doubts", "to_measure"));
    for (const char* band : {"/density_kg_dm_m3", "/porosity"}) {
        EXPECT_THAT(keysOf(json.root.at_pointer(band)), testing::ElementsAre("median", "low80", "high80"));
    }
    EXPECT_THAT(keysOf(json.root.at_pointer("/warnings/0")), testing::ElementsAre("code", "text"));
}

// Worked by hand in the units of Muck & Holmes 2000, Applied Engineering in Agriculture 16(6):613-619
// (coefficients from memory): PF = W/L sqrt(N DM/C), density = (8.5 + 0.0155 PF)(0.818 + 0.0136 D).
TEST(Estimate, JsonHasTheNumbersOfThePublishedEquation) {
    const Json json{runProgram(with(kExample, {"--json"})).out};
    const double meanMass_lb = (14000.0 + 0.5 * 10000.0) / 1.5 / 0.45359237;
    const double rate_ton_h = 120.0 / 0.90718474;
    const double packingFactor = meanMass_lb / (15.0 / 2.54) * std::sqrt(1.5 * 0.35 / rate_ton_h);
    const double density_lb_ft3 = (8.5 + 0.0155 * packingFactor) * (0.818 + 0.0136 * 3.0 / 0.3048);
    const double density = density_lb_ft3 * 0.45359237 / std::pow(0.3048, 3);
    EXPECT_NEAR(json.number("/packing_factor_us"), packingFactor, 1e-9 * packingFactor);
    EXPECT_NEAR(json.number("/density_kg_dm_m3/median"), density, 1e-9 * density);
    EXPECT_NEAR(json.number("/packing_minutes_per_t"), 1.5 * 60.0 / 120.0, 1e-12);
    EXPECT_EQ(json.number("/tractors_counted"), 2);
    EXPECT_LT(json.number("/density_kg_dm_m3/low80"), density);
    EXPECT_GT(json.number("/density_kg_dm_m3/high80"), density);
    EXPECT_LT(json.number("/porosity/low80"), json.number("/porosity/high80"));
    const double chance = json.number("/chance_of_target");
    EXPECT_TRUE(chance > 0 && chance < 0.5) << "the median is below the target";
}

TEST(Estimate, UnitsOfTheUsAreUnderstoodAndGiveTheSame) {
    const Json us{runProgram({"estimate", "--rate", "130ton/h", "--dry-matter", "35%", "--layer", "6in",
                              "--depth", "10ft", "--tractor", "20000lb", "--json", "--units", "us"})
                      .out};
    const Json metric{runProgram({"estimate", "--rate", "117.9340162t/h", "--dry-matter", "35%", "--layer",
                                  "152.4mm", "--depth", "3.048m", "--tractor", "9071.8474kg", "--json"})
                          .out};
    for (const char* number : {"/density_kg_dm_m3/median", "/packing_factor_us", "/chance_of_target"}) {
        EXPECT_NEAR(us.number(number), metric.number(number), 1e-9 * metric.number(number)) << number;
    }
}

TEST(Estimate, PackingTimeForEachTonneStandsInForTheDelivery) {
    const Json byTime{
        runProgram({"estimate", "--minutes-per-tonne", "0.75min/t", "--dry-matter", "35%", "--layer", "15cm",
                    "--depth", "3m", "--tractor", "14t", "--tractor", "10t@50%", "--json"})
            .out};
    const Json bare{
        runProgram({"estimate", "--minutes-per-tonne", "0.75", "--dry-matter", "35%", "--layer", "15cm",
                    "--depth", "3m", "--tractor", "14t", "--tractor", "10t@0.5", "--json"})
            .out};
    const Json byRate{runProgram(with(kExample, {"--json"})).out};
    for (const Json* json : {&byTime, &bare}) {
        EXPECT_NEAR(json->number("/density_kg_dm_m3/median"), byRate.number("/density_kg_dm_m3/median"),
                    1e-9);
    }
}

TEST(Estimate, TextSaysDensityWithItsBandAndTheChance) {
    const Answered answered = runProgram(kExample);
    EXPECT_EQ(answered.status, 0);
    EXPECT_EQ(answered.err, "");
    EXPECT_THAT(answered.out, HasSubstr("200 kg DM/m3, 80 % band 161 kg DM/m3 to 248 kg DM/m3"));
    EXPECT_THAT(answered.out, HasSubstr("chance of reaching it 16 %"));
    EXPECT_THAT(answered.out, HasSubstr("2 of 2 tractors count"));
    EXPECT_THAT(runProgram(with(kExample, {"--units", "us"})).out, HasSubstr("12.5 lb DM/ft3"));
}

TEST(Estimate, WorkingNamesFormulaAndSource) {
    const Answered answered = runProgram(with(kExample, {"--working"}));
    EXPECT_THAT(answered.out, HasSubstr("r = 136.157 + 0.170959 P; Muck & Holmes 2000"));
    EXPECT_THAT(answered.out, HasSubstr("Tang, Jofriet & LeLievre 1988"));
    EXPECT_THAT(answered.out, HasSubstr("The trade's yardsticks"));
    const Json json{runProgram(with(kExample, {"--working", "--json"})).out};
    EXPECT_THAT(keysOf(json.root.at_pointer("/working/0")),
                testing::ElementsAre("code", "text", "formula", "source", "evidence", "entries"));
    EXPECT_NEAR(json.number("/yardsticks/packing_mass_kg"), 14000.0 + 0.5 * 10000.0, 1e-6);
    EXPECT_EQ(std::string_view{json.root.at_pointer("/yardsticks/target_verdict")}, "missed");
    EXPECT_GT(simdjson::dom::array{json.root.at_pointer("/yardsticks/mass_rules")}.size(), 0u);
}

TEST(Estimate, WhatIsAssumedOrBeyondTheDataIsSaid) {
    const Answered answered = runProgram({"estimate", "--rate", "120t/h", "--dry-matter", "24%", "--depth",
                                          "3m", "--tractor", "14t", "--minimum", "240kg DM/m3"});
    EXPECT_EQ(answered.status, 0);
    EXPECT_THAT(answered.out, HasSubstr("Layer not seen: 15 cm assumed"));
    EXPECT_THAT(answered.out, HasSubstr("The wanted 240 kg DM/m3 cannot be reached"));
    EXPECT_THAT(answered.out, HasSubstr("24.0 % is outside the survey's"));
}

TEST(Estimate, JsonListsEveryYardstickAndTextSaysWhichDisagree) {
    const Answered text = runProgram(kExample);
    EXPECT_THAT(text.out, HasSubstr("Met: the packing mass of France, in dry matter"));
    EXPECT_THAT(text.out, HasSubstr("Not met: the packing mass of North America, as fed"));
    const Json json{runProgram(with(kExample, {"--json"})).out};
    EXPECT_EQ(std::string_view{json.root.at_pointer("/yardsticks/mass_rules/0/verdict")}, "missed");
    EXPECT_EQ(std::string_view{json.root.at_pointer("/yardsticks/mass_rules/3/verdict")}, "reached");
    EXPECT_EQ(std::string_view{json.root.at_pointer("/yardsticks/passes_verdict")}, "reached");
    EXPECT_EQ(json.number("/yardsticks/regressions/0/value_kg_dm_m3"),
              json.number("/density_kg_dm_m3/median"));
    EXPECT_EQ(bool{json.root.at_pointer("/yardsticks/regressions/1/in_range")}, false);
}

TEST(Estimate, SaysWhatTheBandIsMadeOfAndWhatWouldNarrowIt) {
    const Json json{runProgram(with(kExample, {"--json"})).out};
    double shares = 0.0;
    for (const auto& doubt : simdjson::dom::array{json.root.at_pointer("/doubts")}) {
        shares += double{doubt["share"]};
        EXPECT_THAT(keysOf(doubt), testing::ElementsAre("of", "share", "code", "text"));
    }
    EXPECT_NEAR(shares, 1.0, 1e-9);
    EXPECT_EQ(std::string_view{json.root.at_pointer("/to_measure/0/measurement")}, "heights");
    const Answered text = runProgram(kExample);
    EXPECT_THAT(text.out, HasSubstr("of the doubt: how this farm differs from the farms of the survey"));
    EXPECT_THAT(text.out, HasSubstr("Read 12 heights on the crop: +-43 kg DM/m3 -> "));
}

struct Misuse {
    std::vector<std::string> arguments;
    std::string says;
};

class EstimateMisused : public testing::TestWithParam<Misuse> {};

TEST_P(EstimateMisused, EndsWithTwoAndOneLineThatSaysWhatToDo) {
    const Answered answered = runProgram(GetParam().arguments);
    EXPECT_EQ(answered.status, 2);
    EXPECT_EQ(answered.out, "");
    EXPECT_THAT(answered.err, StartsWith("treadwell-cli: "));
    EXPECT_THAT(answered.err, HasSubstr(GetParam().says));
    EXPECT_EQ(answered.err.find('\n'), answered.err.size() - 1) << answered.err;
}

const std::vector<std::string> kRest{"estimate", "--dry-matter", "35%", "--depth", "3m"};

INSTANTIATE_TEST_SUITE_P(
    All, EstimateMisused,
    testing::Values(
        Misuse{{}, "say what to do"}, Misuse{{"dance"}, "dance: see --help"},
        Misuse{{"estimate", "--rate", "120t/h", "--depth", "3m"}, "--dry-matter is required"},
        Misuse{kRest, "--rate is missing: give the delivery"},
        Misuse{with(kRest, {"--rate", "120t/h", "--minutes-per-tonne", "1"}), "give one of them"},
        Misuse{with(kRest, {"--rate", "120"}), "--rate: \"120\" has no unit: add one of t/h, ton/h"},
        Misuse{with(kRest, {"--rate", "120kg"}), "use t/h, ton/h"},
        Misuse{with(kRest, {"--rate", "1,5t/h"}), "write it with a point"},
        Misuse{with(kRest, {"--rate", "-5t/h"}), "--rate: -5.0 t/h is outside 0.1 t/h to 5000.0 t/h"},
        Misuse{with(kRest, {"--rate", "1t/h", "--rate", "2t/h"}), "--rate"},
        Misuse{with(kRest, {"--rate", "120t/h", "--tractor", "14t", "10t"}), "not expected: 10t"},
        Misuse{with(kRest, {"--rate", "120t/h", "--tractor", "14t@1.5"}), "--tractor 1: 150 % is outside"},
        Misuse{with(kRest, {"--rate", "120t/h", "--tractor", "9t", "--tractor", "900t"}),
               "--tractor 2: 900.0 t"},
        Misuse{with(kRest, {"--rate", "120t/h", "--tractor", "9t@"}), "--tractor: Nothing is written here"},
        Misuse{with(kRest, {"--rate", "120t/h", "--crop", "hemp"}), "use one of maize, grass, lucerne"},
        Misuse{with(kRest, {"--rate", "120t/h", "--units", "old"}), "use metric or us"},
        Misuse{with(kRest, {"--rate", "120t/h", "--minimum", "14lb"}), "use kg DM/m3, lb DM/ft3"},
        Misuse{with(kRest, {"--rate", "120t/h", "--colour"}), "not expected: --colour"}));

TEST(Program, HelpAndVersionEndWellOnStdout) {
    const Answered version = runProgram({"--version"});
    EXPECT_EQ(version.status, 0);
    EXPECT_THAT(version.out, testing::MatchesRegex("treadwell-cli [0-9]+\\.[0-9]+\\.[0-9]+\n"));
    for (const auto& arguments : {std::vector<std::string>{"--help"}, {"estimate", "--help"}}) {
        const Answered help = runProgram(arguments);
        EXPECT_EQ(help.status, 0);
        EXPECT_EQ(help.err, "");
        EXPECT_THAT(help.out, HasSubstr("estimate"));
    }
}

TEST(Program, AnAnswerThatCannotBeWrittenIsAFailure) {
    const Answered answered = runProgram(kExample, "/dev/full");
    EXPECT_EQ(answered.status, 1);
    EXPECT_THAT(answered.err, EndsWith("check the disk or the pipe behind it\n"));
}

}  // namespace
}  // namespace treadwell::cli
