#include "core/intake/wall_clock.h"

#include "core/intake/codes.h"
#include "tests/core/intake/farm_context.h"

#include <gtest/gtest.h>

namespace treadwell::intake {
namespace {

using namespace std::chrono_literals;

struct DateText {
    const char* text;
    DateOrder order;
    std::optional<LocalDay> day;
};

class Dates : public testing::TestWithParam<DateText> {};

TEST_P(Dates, AreReadInTheFilesOrder) {
    EXPECT_EQ(dayFromText(GetParam().text, GetParam().order), GetParam().day);
}

constexpr LocalDay kMay4 = 2026y / 5 / 4;
constexpr LocalDay kApril5 = 2026y / 4 / 5;

INSTANTIATE_TEST_SUITE_P(Shapes, Dates,
                         testing::Values(DateText{"2026-05-04", DateOrder::monthFirst, kMay4},
                                         DateText{"2026-05-04", DateOrder::dayFirst, kMay4},
                                         DateText{"04.05.2026", DateOrder::monthFirst, kMay4},
                                         DateText{"4.5.26", DateOrder::dayFirst, kMay4},
                                         DateText{"04/05/2026", DateOrder::dayFirst, kMay4},
                                         DateText{"04/05/2026", DateOrder::monthFirst, kApril5},
                                         DateText{"04-05-26", DateOrder::dayFirst, kMay4},
                                         DateText{"31.02.2026", DateOrder::dayFirst, std::nullopt},
                                         DateText{"13/13/2026", DateOrder::dayFirst, std::nullopt},
                                         DateText{"4.5.", DateOrder::dayFirst, std::nullopt},
                                         DateText{"4.5.202", DateOrder::dayFirst, std::nullopt},
                                         DateText{"", DateOrder::dayFirst, std::nullopt},
                                         DateText{"04.05/2026", DateOrder::dayFirst, std::nullopt},
                                         DateText{"00.05.2026", DateOrder::dayFirst, std::nullopt}));

TEST(TimeOfDay, IsReadFromClocksOf24And12Hours) {
    EXPECT_EQ(timeOfDayFromText("14:25"), 14h + 25min);
    EXPECT_EQ(timeOfDayFromText("7:05:09"), 7h + 5min + 9s);
    EXPECT_EQ(timeOfDayFromText("2:25 PM"), 14h + 25min);
    EXPECT_EQ(timeOfDayFromText("12:00am"), 0h);
    EXPECT_EQ(timeOfDayFromText("12:00 pm"), 12h);
    for (const char* bad :
         {"", "14", "24:00", "14:60", "14:25:60", "13:00 pm", "0:30 am", "14:5", "a:25", "14.25", "pm"})
        EXPECT_EQ(timeOfDayFromText(bad), std::nullopt) << bad;
}

Result<DateOrder> orderOf(std::vector<std::string> dates) {
    std::vector<formats::CsvRecord> records;
    for (std::string& date : dates)
        records.push_back({static_cast<std::int64_t>(records.size()) + 2, {"x", std::move(date)}, {}});
    return dateOrderOf(records, 1);
}

TEST(DateOrderOf, IsOfTheWholeFile) {
    EXPECT_EQ(orderOf({"04/05/2026", "17/05/2026"}), DateOrder::dayFirst);
    EXPECT_EQ(orderOf({"04/05/2026 10:00", "05/17/2026 11:00"}), DateOrder::monthFirst);
    EXPECT_EQ(orderOf({"04.05.2026", "2026-05-04", "05/05/2026", "?"}), DateOrder::dayFirst);
    EXPECT_EQ(orderOf({}), DateOrder::dayFirst);
}

TEST(DateOrderOf, AsksWhereNothingTells) {
    for (const auto& dates :
         {std::vector<std::string>{"x", "04/05/2026"}, {"", "04/05/2026", "17/05/2026", "05/17/2026"}}) {
        const auto order = orderOf(dates);
        ASSERT_FALSE(order);
        EXPECT_EQ(order.error().code(), code::dateOrderAmbiguous);
        EXPECT_EQ(order.error().place, (Place{"", 3, 2}));
    }
}

TEST(MomentFromText, FollowsTheFarmsZone) {
    const FarmZone saoPaulo = *FarmZone::named("America/Sao_Paulo");
    EXPECT_EQ(momentFromText("15.04.2026 10:00", DateOrder::dayFirst, saoPaulo)->at,
              utc("2026-04-15T13:00:00Z"));
    EXPECT_EQ(momentFromText("2026-04-15T10:00:30", DateOrder::dayFirst, saoPaulo)->at,
              utc("2026-04-15T13:00:30Z"));
    EXPECT_EQ(momentFromText("2026-04-15T10:00:00+02:00", DateOrder::dayFirst, saoPaulo)->at,
              utc("2026-04-15T08:00:00Z"));
    const auto bad = momentFromText("15.04.2026", DateOrder::dayFirst, saoPaulo);
    ASSERT_FALSE(bad);
    EXPECT_EQ(bad.error().code(), code::wallTimeUnreadable);
}

// Central European clocks went back at 3:00 on 25 October 2026, so 2:30 was shown twice.
TEST(MomentFromText, SaysWhereTheClockShowedATimeTwice) {
    const FarmZone berlin = *FarmZone::named("Europe/Berlin");
    const auto twice = momentFromText("25.10.2026 02:30", DateOrder::dayFirst, berlin);
    ASSERT_TRUE(twice);
    EXPECT_TRUE(twice->ambiguous);
    EXPECT_EQ(twice->at, utc("2026-10-25T00:30:00Z"));
}

}  // namespace
}  // namespace treadwell::intake
