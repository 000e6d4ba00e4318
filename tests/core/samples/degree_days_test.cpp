#include "core/samples/degree_days.h"

#include "core/samples/codes.h"
#include "tests/support/brief.h"

#include <gtest/gtest.h>

namespace treadwell::samples {
namespace {

using testing_support::on;

DayTemperatures warm(const char* day, double low, double high) {
    return {on(day), Temperature::fromCelsius(low), Temperature::fromCelsius(high)};
}

TEST(DegreesOf, TwoScalesAreOneWarmth) {
    const auto celsius = degreesOf(warm("2026-08-01", 12, 26));
    EXPECT_NEAR(celsius->celsius(), 9, 1e-9);
    EXPECT_NEAR(celsius->fahrenheit(), 16.2, 1e-9);
    EXPECT_EQ(degreesOf(warm("2026-08-01", 2, 8))->celsius(), 0);
    EXPECT_EQ(degreesOf(warm("2026-08-01", 31, 40))->celsius(), 20);
}

TEST(DegreesOf, RefusesWhatCannotBe) {
    EXPECT_EQ(degreesOf(warm("2026-08-01", 20, 12)).error().code(), code::temperaturesSwapped);
    EXPECT_EQ(degreesOf(warm("2026-08-01", 20, 90)).error().field, "high");
}

TEST(DegreesBetween, SaysWhatIsMissingAndFillsItWithTheMean) {
    const std::vector days{warm("2026-08-01", 10, 20), warm("2026-08-03", 10, 30),
                           warm("2026-08-09", 10, 30)};
    const auto sum = degreesBetween(days, on("2026-08-01"), on("2026-08-04"));
    EXPECT_EQ(sum->days, 4);
    EXPECT_EQ(sum->missing, 2);
    EXPECT_NEAR(sum->sum.celsius(), 2 * (5 + 10), 1e-9);
    EXPECT_EQ(degreesBetween(days, on("2026-08-05"), on("2026-08-06")).error().code(), code::readingsMissing);
    EXPECT_EQ(degreesBetween(days, on("2026-08-06"), on("2026-08-05")).error().code(), code::daysReversed);
    const std::vector twice{days[0], days[0]};
    const auto refused = degreesBetween(twice, on("2026-08-01"), on("2026-08-02"));
    EXPECT_EQ(refused.error().code(), code::dayTwice);
    EXPECT_EQ(refused.error().field, "days[1].day");
}

// By hand: 10 C days on each of five days from silking, then as warm as lately.
TEST(WhenWarmthReaches, WithinTheDaysKnownAndBeyond) {
    std::vector<DayTemperatures> days;
    for (const char* day : {"2026-08-01", "2026-08-02", "2026-08-03", "2026-08-04", "2026-08-05"})
        days.push_back(warm(day, 10, 30));
    const auto known = whenWarmthReaches(days, on("2026-08-01"), DegreeDays::fromCelsius(30));
    EXPECT_EQ(known->day, on("2026-08-03"));
    EXPECT_FALSE(known->reckoned);
    const auto beyond = whenWarmthReaches(days, on("2026-08-01"), DegreeDays::fromCelsius(95));
    EXPECT_EQ(beyond->day, on("2026-08-10"));
    EXPECT_TRUE(beyond->reckoned);
    EXPECT_NEAR(beyond->soFar.celsius(), 50, 1e-9);
}

TEST(WhenWarmthReaches, RefusesWithoutDaysOrWarmth) {
    const std::vector cold{warm("2026-08-01", 1, 5)};
    EXPECT_EQ(whenWarmthReaches(cold, on("2026-08-01"), DegreeDays::fromCelsius(1)).error().code(),
              code::warmthNotReached);
    EXPECT_EQ(whenWarmthReaches(cold, on("2026-08-02"), DegreeDays::fromCelsius(1)).error().code(),
              code::readingsMissing);
    EXPECT_EQ(whenWarmthReaches({}, on("2026-08-02"), DegreeDays::fromCelsius(1)).error().code(),
              code::readingsMissing);
}

}  // namespace
}  // namespace treadwell::samples
