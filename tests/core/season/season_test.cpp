#include "core/season/season.h"

#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace treadwell::season {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;
using entries::Entry;

/// All that a day shows, for comparing two folds of the same journal.
void expectSameDays(const Season& a, const Season& b) {
    ASSERT_EQ(a.days().size(), b.days().size());
    EXPECT_EQ(a.zone().name(), b.zone().name());
    EXPECT_EQ(a.waiting().size(), b.waiting().size());
    for (std::size_t i = 0; i < a.days().size(); ++i) {
        const Day& x = *a.days()[i];
        const Day& y = *b.days()[i];
        EXPECT_EQ(x.date, y.date);
        EXPECT_EQ(x.begin, y.begin);
        EXPECT_EQ(x.end, y.end);
        EXPECT_EQ(x.loads, y.loads);
        EXPECT_EQ(x.samples, y.samples);
        EXPECT_EQ(x.work, y.work);
        EXPECT_EQ(x.pauses, y.pauses);
        EXPECT_EQ(x.layers, y.layers);
        EXPECT_EQ(x.surveys, y.surveys);
        EXPECT_EQ(x.shifts, y.shifts);
        EXPECT_EQ(x.records, y.records);
        EXPECT_TRUE(x.before == y.before);
        EXPECT_TRUE(x.after == y.after);
    }
}

Season oneByOne(std::span<const Entry> entries) {
    Season season;
    for (const Entry& entry : entries) season = season.with(entry);
    return season;
}

SeasonMaker startedFarm() {
    SeasonMaker maker;
    const Instant start = at("2026-02-09T08:00:00Z");
    maker.add(entries::SeasonStarted{"Farm", "America/Sao_Paulo"}, start);
    maker.add(entries::SiloDefined{someSilo()}, start);
    maker.add(entries::TractorDefined{someTractor(1, 14)}, start);
    maker.add(entries::TractorDefined{someTractor(2, 10)}, start);
    return maker;
}

/// Four days of everything, with corrections and voids, from two devices.
std::vector<Entry> busySeason(unsigned seed) {
    std::mt19937 random(seed);
    const auto below = [&](std::size_t n) { return static_cast<unsigned>(random() % n); };
    SeasonMaker one = startedFarm();
    SeasonMaker two(2);
    std::vector<entries::EntryId> known;
    for (int i = 0; i < 240; ++i) {
        SeasonMaker& maker = below(3) == 0 ? two : one;
        // Few distinct times, so that ties are common.
        const Instant happened = at("2026-02-10T09:00:00Z") + 10min * below(4 * 24 * 6);
        switch (below(10)) {
            case 0:
                known.push_back(maker.add(
                    entries::DryMatterSample{DryMatter::fromPercent(30 + below(10)), {}, {}, {}, {}},
                    happened));
                break;
            case 1:
                known.push_back(maker.add(
                    someWork(static_cast<std::uint8_t>(1 + below(2)), static_cast<farm::Activity>(below(3))),
                    happened));
                break;
            case 2:
                known.push_back(maker.add(entries::Pause{{}, below(2) == 0, "lunch"}, happened));
                break;
            case 3:
                if (!known.empty()) maker.add(entries::VoidEntry{}, happened, known[below(known.size())]);
                break;
            case 4: {
                if (known.empty()) break;
                const auto target = known[below(known.size())];
                maker.add(someLoad(20 + below(5)), happened, target);
                break;
            }
            case 5:
                known.push_back(
                    maker.add(entries::Shift{idOf<entries::PersonTag>(static_cast<std::uint8_t>(below(2))),
                                             below(2) == 0,
                                             {},
                                             false,
                                             {}},
                              happened));
                break;
            case 6:
                known.push_back(maker.add(entries::Note{"rain"}, happened));
                break;
            default:
                known.push_back(maker.add(someLoad(10 + below(5)), happened));
        }
    }
    std::vector<Entry> all = one.entries;
    all.insert(all.end(), two.entries.begin(), two.entries.end());
    return all;
}

TEST(Season, NothingIsAnEmptySeason) {
    const Season season = Season::fold({});
    EXPECT_TRUE(season.days().empty());
    EXPECT_TRUE(season.farm().silos.empty());
    EXPECT_EQ(season.fact({}), nullptr);
}

TEST(Season, FoldedAtOnceOrEntryByEntryIsTheSame) {
    for (unsigned seed = 1; seed <= 5; ++seed) {
        const auto entries = busySeason(seed);
        expectSameDays(Season::fold(entries), oneByOne(entries));
    }
}

TEST(Season, TheOrderOfArrivalDoesNotMatter) {
    auto entries = busySeason(7);
    const Season straight = Season::fold(entries);
    std::mt19937 random(11);
    for (int round = 0; round < 5; ++round) {
        std::shuffle(entries.begin(), entries.end(), random);
        expectSameDays(straight, Season::fold(entries));
        expectSameDays(straight, oneByOne(entries));
    }
}

TEST(Season, AnEntryThatComesTwiceCountsOnce) {
    const auto entries = busySeason(3);
    auto doubled = entries;
    doubled.insert(doubled.end(), entries.begin(), entries.end());
    expectSameDays(Season::fold(entries), Season::fold(doubled));
    expectSameDays(Season::fold(entries), oneByOne(doubled));
}

TEST(Season, LocalDaysFollowTheFarmsZone) {
    SeasonMaker maker = startedFarm();
    maker.add(someLoad(12), at("2026-02-11T01:30:00Z"));
    const Season season = Season::fold(maker.entries);
    const Day* day = season.day(*dayFromIso8601("2026-02-10"));
    ASSERT_NE(day, nullptr);
    EXPECT_EQ(day->loads.size(), 1u);
    EXPECT_EQ(day->end, at("2026-02-11T03:00:00Z"));
}

TEST(Season, ACorrectionReplacesTheWholeAndKeepsHistory) {
    SeasonMaker maker = startedFarm();
    const auto load = maker.add(someLoad(12), at("2026-02-10T12:00:00Z"));
    maker.add(someLoad(13), at("2026-02-11T12:00:00Z"), load);
    const Season season = Season::fold(maker.entries);
    EXPECT_EQ(season.day(*dayFromIso8601("2026-02-10")), nullptr);
    const Day* day = season.day(*dayFromIso8601("2026-02-11"));
    ASSERT_NE(day, nullptr);
    EXPECT_EQ(day->loads.at(0).load.mass, AsFedMass::fromTonnes(13));
    EXPECT_EQ(day->loads.at(0).entry, load);
    const FactPointer fact = season.fact(load);
    EXPECT_EQ(std::get<entries::Load>(fact->stated().body).mass, AsFedMass::fromTonnes(12));
    EXPECT_EQ(fact->changes().size(), 1u);
}

TEST(Season, AVoidBeatsACorrectionAndACorrectionOfAnotherKindChangesNothing) {
    SeasonMaker maker = startedFarm();
    const auto load = maker.add(someLoad(12), at("2026-02-10T12:00:00Z"));
    maker.add(entries::Note{"not a load"}, at("2026-02-10T12:00:00Z"), load);
    EXPECT_EQ(Season::fold(maker.entries).days().back()->loads.size(), 1u);
    maker.add(entries::VoidEntry{"twice"}, at("2026-02-10T12:05:00Z"), load);
    maker.add(someLoad(13), at("2026-02-10T12:00:00Z"), load);
    const Season season = Season::fold(maker.entries);
    EXPECT_TRUE(season.days().back()->loads.empty());
    EXPECT_TRUE(season.fact(load)->isVoid());
}

TEST(Season, DryMatterIsCarriedToLoadsAndSaysWhereFrom) {
    SeasonMaker maker = startedFarm();
    const auto load = [&](const char* iso, std::uint8_t field) {
        entries::Load tipped = someLoad(12);
        tipped.field = idOf<farm::FieldTag>(field);
        maker.add(tipped, at(iso));
    };
    const auto sample = [&](const char* iso, double percent, std::uint8_t field) {
        return maker.add(
            entries::DryMatterSample{
                DryMatter::fromPercent(percent), {}, idOf<farm::FieldTag>(field), {}, {}},
            at(iso));
    };
    load("2026-02-09T12:00:00Z", 1);
    load("2026-02-10T12:00:00Z", 1);
    sample("2026-02-10T13:00:00Z", 33, 1);
    load("2026-02-10T14:00:00Z", 1);
    const auto later = sample("2026-02-10T15:00:00Z", 36, 1);
    load("2026-02-10T16:00:00Z", 1);
    load("2026-02-10T17:00:00Z", 2);
    load("2026-02-11T12:00:00Z", 1);
    const Season season = Season::fold(maker.entries);
    const Day& first = *season.day(*dayFromIso8601("2026-02-09"));
    EXPECT_EQ(first.loads[0].basis, DryMatterBasis::assumed);
    EXPECT_NEAR(first.loads[0].dryMatter.percent(), 35, 1e-12);
    const Day& second = *season.day(*dayFromIso8601("2026-02-10"));
    EXPECT_NEAR(second.loads[0].dryMatter.percent(), 33, 1e-12)
        << "before the day's first sample that one speaks";
    EXPECT_NEAR(second.loads[1].dryMatter.percent(), 33, 1e-12);
    EXPECT_NEAR(second.loads[1].dryMatterSd.percent(), std::hypot(3.7, 1.0), 1e-9) << "an hour old";
    // Two hours on: 3.7^2 + 2 against 3.7^2 of the second sample.
    const double gain = (3.7 * 3.7 + 2) / (2 * 3.7 * 3.7 + 2);
    EXPECT_NEAR(second.loads[2].dryMatter.percent(), 33 + 3 * gain, 1e-9);
    EXPECT_NEAR(second.loads[2].dryMatterSd.percent(), std::sqrt(gain * 3.7 * 3.7 + 1), 1e-9);
    EXPECT_EQ(second.loads[2].sample, later);
    EXPECT_EQ(second.loads[3].basis, DryMatterBasis::otherSample);
    EXPECT_EQ(second.loads[3].dryMatter, second.loads[2].dryMatter);
    EXPECT_NEAR(second.loads[3].dryMatterSd.percent(), std::sqrt(gain * 3.7 * 3.7 + 2 + 16), 1e-9);
    const Day& third = *season.day(*dayFromIso8601("2026-02-11"));
    EXPECT_EQ(third.loads[0].basis, DryMatterBasis::fieldSample);
    EXPECT_EQ(third.loads[0].dryMatter, second.loads[2].dryMatter);
    EXPECT_NEAR(third.loads[0].dryMatterSd.percent(), std::sqrt(gain * 3.7 * 3.7 + 21), 1e-9);
}

TEST(Season, WorkRunsOnOverMidnightAndIsCutThere) {
    SeasonMaker maker = startedFarm();
    maker.add(someWork(1, farm::Activity::packing, 0.5), at("2026-02-11T02:00:00Z"));
    maker.add(someWork(1, farm::Activity::away), at("2026-02-11T04:00:00Z"));
    const Season season = Season::fold(maker.entries);
    const Day& evening = *season.day(*dayFromIso8601("2026-02-10"));
    ASSERT_EQ(evening.work.size(), 1u);
    EXPECT_FALSE(evening.work[0].end);
    EXPECT_EQ(evening.endOf(evening.work[0].begin, evening.work[0].end, at("2026-02-12T00:00:00Z")),
              at("2026-02-11T03:00:00Z"));
    const Day& night = *season.day(*dayFromIso8601("2026-02-11"));
    ASSERT_EQ(night.work.size(), 1u);
    EXPECT_EQ(night.work[0].begin, at("2026-02-11T03:00:00Z"));
    EXPECT_EQ(night.work[0].end, at("2026-02-11T04:00:00Z"));
    EXPECT_EQ(night.work[0].packing, Share::fromFraction(0.5));
}

TEST(Season, SpreadingPacksNothing) {
    SeasonMaker maker = startedFarm();
    maker.add(someWork(1, farm::Activity::spreading, 1.0), at("2026-02-10T12:00:00Z"));
    const Season season = Season::fold(maker.entries);
    EXPECT_EQ(season.days().back()->work.at(0).packing, Share{});
}

TEST(Season, PausesPairUpAndOneGoesOn) {
    SeasonMaker maker = startedFarm();
    maker.add(entries::Pause{{}, true, "lunch"}, at("2026-02-10T15:00:00Z"));
    maker.add(entries::Pause{{}, true, "lunch still"}, at("2026-02-10T15:10:00Z"));
    maker.add(entries::Pause{{}, false, ""}, at("2026-02-10T16:00:00Z"));
    maker.add(entries::Pause{{}, false, ""}, at("2026-02-10T16:10:00Z"));
    maker.add(entries::Pause{{}, true, "shower"}, at("2026-02-10T18:00:00Z"));
    const Season season = Season::fold(maker.entries);
    const Day& day = *season.days().back();
    ASSERT_EQ(day.pauses.size(), 2u);
    EXPECT_EQ(day.pauses[0].end, at("2026-02-10T16:00:00Z"));
    EXPECT_EQ(day.pauses[1].reason, "shower");
    EXPECT_FALSE(day.pauses[1].end);
}

TEST(Season, ADayKeepsRecordsAsTheyStand) {
    SeasonMaker maker = startedFarm();
    const auto rain =
        maker.add(entries::WeatherSeen{entries::Sky::rain, {}, {}, {}}, at("2026-02-10T15:00:00Z"));
    const auto fog =
        maker.add(entries::WeatherSeen{entries::Sky::fog, {}, {}, {}}, at("2026-02-10T09:00:00Z"));
    maker.add(entries::Note{"late"}, at("2026-02-10T10:00:00Z"));
    maker.add(entries::WeatherSeen{entries::Sky::showers, {}, {}, {}}, at("2026-02-10T15:00:00Z"), rain);
    const Season season = Season::fold(maker.entries);
    const auto& seen = season.days().back()->records.of<entries::WeatherSeen>();
    ASSERT_EQ(seen.size(), 2u);
    EXPECT_EQ(seen[0].entry, fog);
    EXPECT_EQ(seen[1].what.sky, entries::Sky::showers);
    EXPECT_EQ(season.days().back()->records.of<entries::Note>().size(), 1u);
}

TEST(Season, AShiftGoesOnOverMidnightAndChangesOfDuty) {
    SeasonMaker maker = startedFarm();
    entries::Shift shift{idOf<entries::PersonTag>(1), true, entries::Duty::hauling, false, {}};
    maker.add(shift, at("2026-02-10T22:00:00Z"));
    shift.duty = entries::Duty::packing;
    maker.add(shift, at("2026-02-11T02:00:00Z"));
    shift.begins = false;
    maker.add(shift, at("2026-02-11T06:00:00Z"));
    const Season season = Season::fold(maker.entries);
    const Day& evening = *season.day(*dayFromIso8601("2026-02-10"));
    ASSERT_EQ(evening.shifts.size(), 2u);
    EXPECT_EQ(evening.shifts[0].duty, entries::Duty::hauling);
    EXPECT_EQ(evening.shifts[0].end, at("2026-02-11T02:00:00Z"));
    EXPECT_FALSE(evening.shifts[1].end);
    const Day& night = *season.day(*dayFromIso8601("2026-02-11"));
    ASSERT_EQ(night.shifts.size(), 1u);
    EXPECT_EQ(night.shifts[0].onShiftSince, at("2026-02-10T22:00:00Z"));
    EXPECT_EQ(night.shifts[0].end, at("2026-02-11T06:00:00Z"));
    EXPECT_TRUE(night.after.shifts.empty());
}

TEST(Season, AZoneThatArrivesLastStillRules) {
    SeasonMaker maker;
    maker.add(someLoad(12), at("2026-02-11T01:30:00Z"));
    maker.add(entries::SeasonStarted{"Farm", "America/Sao_Paulo"}, at("2026-02-09T08:00:00Z"));
    const Season season = oneByOne(maker.entries);
    EXPECT_EQ(season.days().back()->date, *dayFromIso8601("2026-02-10"));
}

TEST(Season, UnknownKindsAreKeptAndCounted) {
    SeasonMaker maker = startedFarm();
    Entry unknown;
    unknown.header.id = idOf<entries::EntryTag>(99);
    unknown.header.kind = "moonPhase";
    unknown.header.happened = at("2026-02-10T12:00:00Z");
    const Season season = Season::fold(maker.entries).with(unknown);
    EXPECT_EQ(season.unknownKinds(), 1);
    EXPECT_NE(season.fact(unknown.header.id), nullptr);
}

}  // namespace
}  // namespace treadwell::season
