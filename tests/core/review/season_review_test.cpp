#include "core/review/season_review.h"

#include "core/density/readings.h"
#include "core/review/codes.h"
#include "tests/core/review/example_day.h"

#include <gtest/gtest.h>

namespace treadwell::review {
namespace {

using namespace testing_support;
using std::chrono::minutes;

/// The example's day with its second tractor gone in the end, and two days later five loads of 10 t.
SeasonMaker twoDays() {
    SeasonMaker maker = exampleDay();
    maker.add(someWork(2, farm::Activity::away), at("2026-02-10T13:36:00Z"));
    for (int i = 0; i < 5; ++i) maker.add(someLoad(10), at("2026-02-12T12:00:00Z") + i * minutes{10});
    maker.add(someWork(1, farm::Activity::packing), at("2026-02-12T12:00:00Z"));
    maker.add(someWork(1, farm::Activity::away), at("2026-02-12T13:00:00Z"));
    return maker;
}

Document reviewOf(const SeasonMaker& maker) {
    return seasonReview(season::Season::fold(maker.entries), at("2026-03-01T00:00:00Z"));
}

TEST(SeasonReview, SetsTheDaysSideBySide) {
    const Document review = reviewOf(twoDays());
    const Table days = tableOf(review, "days", "days");
    ASSERT_EQ(days.rows.size(), 2u);
    EXPECT_EQ(days.rows[0][0], Cell{std::string{"2026-02-10"}});
    EXPECT_NEAR(siOf(days.rows[0][2]), 120'000, 1e-6);
    EXPECT_NEAR(siOf(days.rows[1][2]), 50'000, 1e-6);
    const Table silos = tableOf(review, "silos", "silos");
    ASSERT_EQ(silos.rows.size(), 1u);
    EXPECT_EQ(silos.rows[0][1], Cell{std::int64_t{15}});
    EXPECT_NEAR(siOf(silos.rows[0][2]), 170'000, 1e-6);
    EXPECT_LT(siOf(silos.rows[0][5]), siOf(silos.rows[0][4]));
}

// The estimate is what was said just before the heights were read: they must not have taught it.
TEST(SeasonReview, HoldsEachEveningAgainstTheEstimateBeforeIt) {
    SeasonMaker maker = exampleDay();
    const Table evenings = tableOf(reviewOf(maker), "evenings", "evenings");
    ASSERT_EQ(evenings.rows.size(), 1u);
    const auto& evening = evenings.rows.front();
    EXPECT_NEAR(siOf(evening[6]), siOf(evening[2]) / siOf(evening[5]) - 1.0, 1e-12);
    std::erase_if(maker.entries, [](const entries::Entry& entry) {
        return std::holds_alternative<entries::HeightSurvey>(entry.body);
    });
    const auto before = density::readingsAt(season::Season::fold(maker.entries), idOf<farm::SiloTag>(1),
                                            at("2026-02-10T13:25:00Z") - std::chrono::microseconds{1});
    EXPECT_NEAR(siOf(evening[5]), before.silo.asItLies->density.median().si(), 1e-3);
}

TEST(SeasonReview, OneMoreTractorNeverLoosens) {
    const Table further = tableOf(reviewOf(twoDays()), "further", "further");
    ASSERT_EQ(further.rows.size(), 2u);
    for (const auto& row : further.rows) {
        EXPECT_GT(siOf(row[3]), 0.0);
        EXPECT_LT(siOf(row[4]), siOf(row[3]));
        EXPECT_GT(siOf(row[5]), siOf(row[3]));
    }
}

// Half an hour after noon the silo is handed over, and five minutes later somebody else takes the tablet: one
// change of shift. Nobody is named.
TEST(SeasonReview, SetsShiftsSideBySide) {
    SeasonMaker maker = twoDays();
    const auto tablet = [](std::uint8_t person) {
        return entries::Shift{idOf<entries::PersonTag>(person), true, entries::Duty::supervising, true, {}};
    };
    maker.add(tablet(1), at("2026-02-10T11:50:00Z"));
    maker.add(entries::HandOver{"Mind the left wall"}, at("2026-02-10T12:30:00Z"));
    maker.add(tablet(2), at("2026-02-10T12:35:00Z"));
    const Table shifts = tableOf(reviewOf(maker), "shifts", "shifts");
    ASSERT_EQ(shifts.rows.size(), 3u) << "two of the first day, one of the last";
    EXPECT_EQ(shifts.rows[0][4], Cell{std::int64_t{5}});
    EXPECT_EQ(shifts.rows[1][4], Cell{std::int64_t{5}});
    EXPECT_EQ(shifts.rows[2][4], Cell{std::int64_t{5}});
    // 11:50 to 12:30 by the first tractor alone is counted from the day's begin: 40 min over 60 t.
    EXPECT_NEAR(siOf(shifts.rows[0][6]), PackingIntensity::fromMinutesPerTonne(40.0 / 60).si(), 1e-6);
    for (const auto& row : shifts.rows) EXPECT_LT(siOf(row[8]), siOf(row[7]));
}

// Noted ahead, for after the moment of the review: what comes later is not counted before.
TEST(SeasonReview, AHandOverToComeEndsNoShiftBeforeIt) {
    SeasonMaker maker = twoDays();
    maker.add(entries::HandOver{"Mind the left wall"}, at("2026-02-10T13:00:00Z"));
    const Document review = seasonReview(season::Season::fold(maker.entries), at("2026-02-10T12:15:00Z"));
    const Table shifts = tableOf(review, "shifts", "shifts");
    const Table days = tableOf(review, "days", "days");
    ASSERT_EQ(shifts.rows.size(), 1u);
    ASSERT_EQ(days.rows.size(), 1u);
    EXPECT_EQ(siOf(shifts.rows[0][5]), siOf(days.rows[0][2]));
}

TEST(SeasonReview, TellsWhatLimitedDensityForHowLong) {
    const Document review = reviewOf(twoDays());
    const Table limits = tableOf(review, "limits", "limits");
    ASSERT_FALSE(limits.rows.empty());
    std::int64_t hours = 0;
    double mass = 0.0;
    for (const auto& row : limits.rows) {
        hours += std::get<std::int64_t>(row[2]);
        mass += siOf(row[3]);
    }
    EXPECT_EQ(hours, 3) << "12, 13 o'clock of the first day, 12 of the last";
    EXPECT_NEAR(mass, 170'000, 1e-6) << "every tonne in one hour";
}

TEST(SeasonReview, OfNothingSaysSo) {
    const Document review = seasonReview(season::Season{}, at("2026-03-01T00:00:00Z"));
    ASSERT_EQ(review.sections.size(), 7u);
    for (const Section& section : review.sections)
        EXPECT_EQ(std::get<Message>(section.blocks.front()).code, code::reviewNothing) << section.key;
}

}  // namespace
}  // namespace treadwell::review
