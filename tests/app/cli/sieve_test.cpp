#include "tests/app/cli/json.h"
#include "tests/app/cli/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace treadwell::cli {
namespace {

using testing::HasSubstr;

// The sample printed in Lisowski et al. 2008: 7.406 mm and 2.655 by the standard's sums, top screen 48 mm.
TEST(Sieve, FiveScreensByEachMethod) {
    const Answered answered = runProgram({"sieve", "--stack", "fiveScreens", "--mass", "85.6g", "--mass",
                                          "88.6g", "--mass", "551.3g", "--mass", "397.7g", "--mass", "255.4g",
                                          "--mass", "141.4g", "--top-length", "48mm", "--json"});
    ASSERT_EQ(answered.status, 0) << answered.err;
    const Json json{answered.out};
    EXPECT_EQ(json.text("/sizes/1/method"), "standard");
    EXPECT_NEAR(json.number("/sizes/1/geometric_mean_mm"), 7.406, 0.0005);
    EXPECT_NEAR(json.number("/sizes/1/spread"), 2.655, 0.0005);
    EXPECT_NEAR(json.number("/sizes/2/geometric_mean_mm"), 7.365, 0.0005);
}

TEST(Sieve, FineChopAtSixteenMillimetres) {
    const std::vector<std::string> arguments{"sieve",  "--part",  "2%",     "--part", "36%",
                                             "--part", "50%",     "--part", "12%",    "--cut",
                                             "16mm",   "--fibre", "41%"};
    const Answered text = runProgram(arguments);
    EXPECT_EQ(text.status, 0) << text.err;
    EXPECT_THAT(text.out, HasSubstr("Fine: 62 % below 8.0 mm, the most is 52 %"));
    EXPECT_THAT(text.out, HasSubstr("Lengthen the cut from 16.0 mm to 18.0 mm"));
    EXPECT_THAT(text.out, HasSubstr("Check the knives and the shear bar"));
    EXPECT_THAT(text.out, HasSubstr("15.6 % physically effective from 8.0 mm on"));
}

TEST(Sieve, SaysWhatIsWrong) {
    const auto complaint = [](std::vector<std::string> arguments) {
        arguments.insert(arguments.begin(), "sieve");
        const Answered answered = runProgram(arguments);
        EXPECT_EQ(answered.status, 2);
        EXPECT_EQ(answered.out, "");
        return answered.err;
    };
    EXPECT_THAT(complaint({}), HasSubstr("--mass: give one for each sieve"));
    EXPECT_THAT(complaint({"--mass", "12g", "--mass", "5g"}), HasSubstr("2 readings for 3 sieves"));
    EXPECT_THAT(complaint({"--part", "50%", "--part", "20%", "--part", "10%", "--part", "5%"}),
                HasSubstr("The parts make 85.0 %"));
    EXPECT_THAT(complaint({"--mass", "12"}), HasSubstr("has no unit"));
    EXPECT_THAT(complaint({"--stack", "tower", "--mass", "1g"}), HasSubstr("use one of threeTo4"));
}

TEST(Dry, GuidesUntilTheLossIsBelowAGram) {
    const auto says = [](std::vector<std::string> weighings) {
        std::vector<std::string> arguments{"dry", "--wet", "100g", "--json"};
        for (const std::string& weighed : weighings) {
            arguments.push_back("--weighed");
            arguments.push_back(weighed);
        }
        return runProgram(arguments).out;
    };
    EXPECT_NEAR(Json{says({})}.number("/heat_s"), 180, 1e-9);
    EXPECT_NEAR(Json{says({"45g", "38g"})}.number("/heat_s"), 30, 1e-9);
    const Json dry{says({"45g", "36g", "35.3g"})};
    EXPECT_NEAR(dry.number("/dry_matter"), 0.353, 1e-12);
    EXPECT_NEAR(dry.number("/heat_s"), 0, 1e-12);
    const Answered gained = runProgram({"dry", "--wet", "100g", "--weighed", "40g", "--weighed", "42g"});
    EXPECT_EQ(gained.status, 2);
    EXPECT_THAT(gained.err, HasSubstr("42.0 g after 40.0 g"));
}

}  // namespace
}  // namespace treadwell::cli
