#include "core/density/movement.h"

#include "core/density/codes.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <ostream>

namespace treadwell::density {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

const Instant kNoon = at("2026-02-10T12:00:00Z");

/// 12 t every 6 minutes (120 t/h) for two hours; a 14 t tractor packs, one of 8 t stands by.
SeasonMaker twoHours() {
    SeasonMaker maker;
    const Instant start = kNoon - 4h;
    maker.add(entries::SiloDefined{someSilo()}, start);
    maker.add(entries::TractorDefined{someTractor(1, 14)}, start);
    maker.add(entries::TractorDefined{someTractor(2, 8)}, start);
    maker.add(entries::LayerSeen{kBunker, Length::fromCentimetres(15), {}}, start);
    maker.add(entries::DryMatterSample{DryMatter::fromPercent(35), {}, {}, {}, {}}, start);
    maker.add(someWork(1, farm::Activity::packing), start);
    for (int i = 0; i < 20; ++i) maker.add(someLoad(12), kNoon + i * 6min);
    return maker;
}

void loadsEvery(SeasonMaker& maker, std::chrono::minutes gap) {
    for (Instant at = kNoon + 2h; at <= kNoon + 150min; at += gap) maker.add(someLoad(12), at);
}

Movement movementAfter(const SeasonMaker& maker, SiloReading Readings::*which = &Readings::layer) {
    const auto season = season::Season::fold(maker.entries);
    const Readings before = readingsAt(season, kBunker, kNoon + 119min);
    const Readings after = readingsAt(season, kBunker, kNoon + 151min);
    return movementOf(before, after, which).value();
}

struct News {
    const char* what;
    std::function<void(SeasonMaker&)> add;
    MovedBy by;
    Code code;
    bool falls;
    friend void PrintTo(const News& news, std::ostream* out) { *out << news.what; }
};

class MovementAfter : public testing::TestWithParam<News> {};

TEST_P(MovementAfter, NamesTheCauseFirstAndAddsUp) {
    SeasonMaker maker = twoHours();
    GetParam().add(maker);
    const Movement movement = movementAfter(maker);
    ASSERT_FALSE(movement.moves.empty());
    const Move& first = movement.moves.front();
    EXPECT_EQ(first.by, GetParam().by);
    EXPECT_EQ(first.what.code, GetParam().code);
    EXPECT_EQ(first.change.si() < 0.0, GetParam().falls) << first.change.si();
    DryDensity sum;
    for (const Move& move : movement.moves) sum += move.change;
    EXPECT_NEAR(sum.si(), movement.change().si(), 1e-9);
}

INSTANTIATE_TEST_SUITE_P(
    News, MovementAfter,
    testing::Values(
        News{"fasterLoads", [](SeasonMaker& maker) { loadsEvery(maker, 3min); }, MovedBy::packingTime,
             code::movedFasterLoads, true},
        News{"slowerLoads", [](SeasonMaker& maker) { loadsEvery(maker, 10min); }, MovedBy::packingTime,
             code::movedSlowerLoads, false},
        News{"noLoad", [](SeasonMaker&) {}, MovedBy::packingTime, code::movedNoLoad, false},
        News{"drierSample",
             [](SeasonMaker& maker) {
                 maker.add(entries::DryMatterSample{DryMatter::fromPercent(42), {}, {}, {}, {}},
                           kNoon + 119min + 30s);
                 loadsEvery(maker, 6min);
             },
             MovedBy::dryMatter, code::movedSample, false},
        News{
            "thickerLayer",
            [](SeasonMaker& maker) {
                maker.add(entries::LayerSeen{kBunker, Length::fromCentimetres(25), {}}, kNoon + 119min + 30s);
                loadsEvery(maker, 6min);
            },
            MovedBy::layer, code::movedLayer, true},
        News{"lighterTractor",
             [](SeasonMaker& maker) {
                 maker.add(someWork(1, farm::Activity::away), kNoon + 119min + 30s);
                 maker.add(someWork(2, farm::Activity::packing), kNoon + 119min + 30s);
                 loadsEvery(maker, 6min);
             },
             MovedBy::machines, code::movedMachines, true}),
    [](const auto& each) { return std::string{each.param.what}; });

TEST(Movement, SaysHowManyLoadsCameAndHowFast) {
    SeasonMaker maker = twoHours();
    loadsEvery(maker, 3min);
    const Message what = movementAfter(maker).moves.front().what;
    ASSERT_EQ(what.arguments.size(), 3u);
    EXPECT_EQ(what.arguments[0], Argument{std::int64_t{11}});
    EXPECT_NEAR(AsFedRate::fromSi(std::get<Amount>(what.arguments[1]).si).tonnesPerHour(), 120, 2);
    EXPECT_NEAR(AsFedRate::fromSi(std::get<Amount>(what.arguments[2]).si).tonnesPerHour(), 240, 10);
}

TEST(Movement, NamesTheHeightsThatMovedTheSilo) {
    SeasonMaker maker = twoHours();
    loadsEvery(maker, 6min);
    entries::HeightSurvey survey{kBunker, {}};
    // 312 t of 35 % dry matter over some 520 m3.
    for (const auto& [along, height] :
         {std::pair{1.0, 2.5}, {4.0, 2.5}, {7.0, 2.5}, {10.0, 2.5}, {14.75, 1.25}})
        survey.readings.push_back(
            {Length::fromMetres(along), Length::fromMetres(7), Length::fromMetres(height)});
    maker.add(survey, kNoon + 150min + 30s);
    const Movement movement = movementAfter(maker, &Readings::silo);
    const auto heights = std::find_if(movement.moves.begin(), movement.moves.end(),
                                      [](const Move& move) { return move.by == MovedBy::measurement; });
    ASSERT_NE(heights, movement.moves.end());
    EXPECT_EQ(heights->what.code, code::movedHeights);
}

TEST(Movement, NothingMovesBetweenAReadingAndItself) {
    const auto season = season::Season::fold(twoHours().entries);
    const Readings readings = readingsAt(season, kBunker, kNoon + 119min);
    for (const auto which : {&Readings::layer, &Readings::today, &Readings::silo}) {
        const auto movement = movementOf(readings, readings, which);
        ASSERT_TRUE(movement);
        EXPECT_EQ(movement->change(), DryDensity{});
        EXPECT_TRUE(movement->moves.empty());
    }
}

TEST(Movement, OfNoEstimateThereIsNone) {
    const auto season = season::Season::fold(twoHours().entries);
    const Readings early = readingsAt(season, kBunker, kNoon + 1min);
    const Readings late = readingsAt(season, kBunker, kNoon + 119min);
    EXPECT_FALSE(movementOf(early, late, &Readings::layer)) << "one load makes no pace";
}

// What is packed until no gas is left goes no further: how much of the minutes came to nothing is told.
TEST(Movement, TellsWhatTheSaturationLimitHeldBack) {
    SeasonMaker maker = twoHours();
    maker.add(entries::TractorDefined{someTractor(3, 40)}, kNoon);
    maker.add(someWork(3, farm::Activity::packing), kNoon + 119min + 30s);
    maker.add(entries::LayerSeen{kBunker, Length::fromCentimetres(5), {}}, kNoon + 2h);
    const Movement movement = movementAfter(maker);
    const auto part = [&](MovedBy by) {
        return std::find_if(movement.moves.begin(), movement.moves.end(),
                            [by](const Move& move) { return move.by == by; });
    };
    ASSERT_NE(part(MovedBy::limit), movement.moves.end());
    EXPECT_EQ(part(MovedBy::limit)->what.code, code::movedLimit);
    EXPECT_LT(part(MovedBy::limit)->change, DryDensity{});
    EXPECT_EQ(part(MovedBy::other), movement.moves.end());
    DryDensity sum;
    for (const Move& move : movement.moves) sum += move.change;
    EXPECT_NEAR(sum / movement.change(), 1.0, 1e-9);
}

// Packing begins: there are no minutes to compare with.
TEST(Movement, PackingThatBeginsIsPackingTime) {
    SeasonMaker maker;
    maker.add(entries::SiloDefined{someSilo()}, kNoon - 1h);
    maker.add(entries::TractorDefined{someTractor(1, 14)}, kNoon - 1h);
    for (int i = 0; i < 25; ++i) maker.add(someLoad(12), kNoon + i * 6min);
    maker.add(someWork(1, farm::Activity::packing), kNoon + 2h);
    const Movement movement = movementAfter(maker);
    EXPECT_EQ(movement.moves.front().by, MovedBy::packingTime);
    EXPECT_GT(movement.moves.front().change, DryDensity{});
    for (const Move& move : movement.moves) EXPECT_TRUE(std::isfinite(move.change.si()));
}

}  // namespace
}  // namespace treadwell::density
