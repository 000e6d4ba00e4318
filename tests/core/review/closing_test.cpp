#include "core/review/closing.h"

#include "core/review/codes.h"
#include "tests/core/review/example_day.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace treadwell::review {
namespace {

using namespace testing_support;
using testing::Contains;
using testing::Not;

std::vector<Code> codesOf(const std::vector<OpenPoint>& points) {
    std::vector<Code> codes;
    for (const OpenPoint& point : points) codes.push_back(point.question.code);
    return codes;
}

Result<Closing> closing(const SeasonMaker& maker, const char* now) {
    return closingOf(season::Season::fold(maker.entries), exampleDate(), at(now));
}

// The example's second tractor packs on, no layer was seen, two loads were not weighed; heights were read.
TEST(Closing, TellsWhatIsMissing) {
    const auto found = closing(exampleDay(), "2026-02-10T22:00:00Z");
    ASSERT_TRUE(found);
    const std::vector<Code> missing = codesOf(found->missing);
    EXPECT_THAT(missing, Contains(code::questionStillAtWork));
    EXPECT_THAT(missing, Contains(code::questionLayerNotSeen));
    EXPECT_THAT(missing, Contains(code::questionNotWeighed));
    EXPECT_THAT(missing, Not(Contains(code::questionHeightsNotRead)));
    for (const OpenPoint& point : found->missing) {
        if (point.question.code == code::questionStillAtWork) {
            EXPECT_EQ(point.subject, Subject{idOf<farm::TractorTag>(2)});
        }
        if (point.question.code == code::questionLayerNotSeen) {
            EXPECT_EQ(point.subject, Subject{idOf<farm::SiloTag>(1)});
        }
    }
}

TEST(Closing, AsksForHeightsWhereNoneWereRead) {
    SeasonMaker maker = exampleDay();
    std::erase_if(maker.entries, [](const entries::Entry& entry) {
        return std::holds_alternative<entries::HeightSurvey>(entry.body);
    });
    EXPECT_THAT(codesOf(closing(maker, "2026-02-10T22:00:00Z")->missing),
                Contains(code::questionHeightsNotRead));
}

TEST(Closing, AsksForTheBeginOfAShiftThatEnded) {
    SeasonMaker maker = exampleDay();
    maker.add(entries::Shift{idOf<entries::PersonTag>(1), false, {}, false, {}}, at("2026-02-10T13:00:00Z"));
    EXPECT_THAT(codesOf(closing(maker, "2026-02-10T22:00:00Z")->missing),
                Contains(code::questionShiftNotBegun));
}

// Sao Paulo's day: 03:00 UTC to 03:00. Closed the morning after it still belongs to its own day.
TEST(Closing, BelongsToItsDayWithItsBounds) {
    SeasonMaker maker = exampleDay();
    const auto late = closing(maker, "2026-02-11T12:00:00Z");
    ASSERT_TRUE(late);
    EXPECT_EQ(late->entry.begin, at("2026-02-10T03:00:00Z"));
    EXPECT_EQ(late->entry.end, at("2026-02-11T03:00:00Z"));
    EXPECT_EQ(late->happened, late->entry.end - std::chrono::microseconds{1});
    const auto evening = closing(maker, "2026-02-10T22:00:00Z");
    EXPECT_EQ(evening->happened, at("2026-02-10T22:00:00Z"));
    maker.add(late->entry, late->happened);
    EXPECT_TRUE(season::Season::fold(maker.entries).day(exampleDate())->closed);
}

TEST(Closing, IsRefusedTwiceAndTooEarly) {
    SeasonMaker maker = exampleDay();
    EXPECT_EQ(closing(maker, "2026-02-10T02:00:00Z").error().code(), code::dayNotBegun);
    const auto first = closing(maker, "2026-02-10T22:00:00Z");
    const auto entry = maker.add(first->entry, first->happened);
    EXPECT_EQ(closing(maker, "2026-02-10T23:00:00Z").error().code(), code::dayIsClosed);
    maker.add(entries::VoidEntry{"a load was missing"}, at("2026-02-10T23:10:00Z"), entry);
    EXPECT_TRUE(closing(maker, "2026-02-10T23:20:00Z")) << "taken back, the day is open again";
    EXPECT_EQ(
        closingOf(season::Season::fold(maker.entries), dayAfter(exampleDate()), at("2026-02-12T00:00:00Z"))
            .error()
            .code(),
        code::dayUnknown);
}

}  // namespace
}  // namespace treadwell::review
