#include "core/plan/compare.h"

#include "core/plan/codes.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace treadwell::plan {
namespace {

std::vector<Code> codesOf(const std::vector<Message>& messages) {
    std::vector<Code> codes;
    for (const Message& message : messages) codes.push_back(message.code);
    return codes;
}

TEST(Scenarios, OfTheSameInputsDifferInNothing) {
    const auto summary = summaryOf(exampleInputs());
    ASSERT_TRUE(summary);
    EXPECT_THAT(codesOf(differencesOf(*summary, *summary)), testing::ElementsAre(code::planDiffersInNothing));
}

TEST(Scenarios, OneTractorFewerIsLooserAndCheaperAnHour) {
    Inputs fewer = exampleInputs();
    fewer.name = "Two tractors";
    fewer.tractors.erase(fewer.tractors.begin());
    const auto all = summaryOf(exampleInputs()), two = summaryOf(fewer);
    ASSERT_TRUE(all && two);
    EXPECT_LT(two->density, all->density);
    EXPECT_LT(two->hour, all->hour);
    EXPECT_EQ(two->delivery, all->delivery) << "packing holds no truck up";
    const auto differences = codesOf(differencesOf(*all, *two));
    EXPECT_THAT(differences, testing::IsSupersetOf({code::planDiffersInDensity, code::planDiffersInCost}));
    EXPECT_THAT(differences, testing::Not(testing::Contains(code::planDiffersInDays)));
}

TEST(Scenarios, TwiceTheTrucksTakeFewerDays) {
    Inputs more = exampleInputs();
    more.haulage.trucks = 12;
    const auto few = summaryOf(exampleInputs()), many = summaryOf(more);
    ASSERT_TRUE(few && many);
    EXPECT_LT(many->days, few->days);
    EXPECT_THAT(codesOf(differencesOf(*few, *many)), testing::Contains(code::planDiffersInDays));
}

}  // namespace
}  // namespace treadwell::plan
