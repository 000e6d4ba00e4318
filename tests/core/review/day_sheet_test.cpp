#include "core/review/day_sheet.h"

#include "core/density/readings.h"
#include "core/review/codes.h"
#include "core/season/dry_matter.h"
#include "tests/core/review/example_day.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace treadwell::review {
namespace {

using namespace testing_support;
using std::chrono::minutes;

std::vector<Code> questionsIn(const Document& sheet) {
    std::vector<Code> codes;
    for (const Block& block : sectionOf(sheet, "questions").blocks) {
        codes.push_back(std::get<Message>(block).code);
    }
    return codes;
}

TEST(DaySheet, SumsWhatCameInByHand) {
    const Document sheet = exampleSheet();
    const Table& silo = tableOf(sheet, "deliveries", "bySilo");
    ASSERT_EQ(silo.rows.size(), 1u);
    EXPECT_EQ(silo.rows[0][0], Cell{std::string{"Bunker 1"}});
    EXPECT_EQ(silo.rows[0][1], Cell{std::int64_t{10}});
    EXPECT_NEAR(siOf(silo.rows[0][2]), 120'000, 1e-6);
    // 84 t at 36 % and 36 t at 32 %.
    EXPECT_NEAR(siOf(silo.rows[0][3]), 84'000 * 0.36 + 36'000 * 0.32, 1e-6);
    EXPECT_NEAR(siOf(silo.rows[0][4]), 0.348, 1e-12);
}

TEST(DaySheet, EveryTableOfLoadsHasTheSameTotal) {
    const Document sheet = exampleSheet();
    for (const char* key : {"byTruck", "byField", "byHour"}) {
        const Table& table = tableOf(sheet, "deliveries", key);
        std::int64_t loads = 0;
        double mass = 0;
        for (std::size_t i = 0; i + 1 < table.rows.size(); ++i) {
            loads += std::get<std::int64_t>(table.rows[i][1]);
            mass += siOf(table.rows[i][2]);
        }
        EXPECT_EQ(table.rows.back()[0], (Cell{Message{code::reviewTotal, {}}})) << key;
        EXPECT_EQ(table.rows.back()[1], Cell{loads}) << key;
        EXPECT_EQ(loads, 10) << key;
        EXPECT_NEAR(siOf(table.rows.back()[2]), mass, 1e-6) << key;
    }
}

// The example's ten loads lie on a ramp whose height the tonnes give, so that layers are thin at first and
// more than twelve: put together by the hour. All dry matter, all minutes and the loosest stand in it.
TEST(DaySheet, LayersAreListedByTheHourWithTheLoosest) {
    const SeasonMaker maker = exampleDay();
    const Document sheet = exampleSheet(maker);
    const auto season = season::Season::fold(maker.entries);
    const Instant until = at("2026-02-10T13:36:00Z");
    const auto readings = density::readingsAt(season, idOf<farm::SiloTag>(1), until);
    const Table& hours = tableOf(sheet, "laidLayers", "byHour");
    double mass = 0, packing = 0, volume = 0, dry = 0;
    for (const auto& row : hours.rows) {
        mass += siOf(row[4]);
        packing += siOf(row[4]) * siOf(row[6]);
    }
    EXPECT_NEAR(mass, 120'000, 1e-6);
    EXPECT_NEAR(packing / mass, readings.silo.asItLies->packing.allTime.si(), 1e-12);
    for (std::size_t k = 0; k < readings.layers->layers.size(); ++k) {
        const packing::Layer& layer = *readings.layers->layers[k].layer;
        if (layer.begin >= at("2026-02-10T13:00:00Z")) continue;
        dry += layer.dry.si();
        volume += readings.layers->whenFull.layers[k].volume.si();
    }
    EXPECT_NEAR(siOf(hours.rows[0][8]), dry / volume, 1e-9);
    const Table& loosest = tableOf(sheet, "laidLayers", "loosest");
    ASSERT_EQ(loosest.rows.size(), 3u);
    double least = 1e9;
    for (const auto& layer : readings.layers->whenFull.layers) least = std::min(least, layer.density.si());
    EXPECT_NEAR(siOf(loosest.rows[0][8]), least, 1e-9);
    EXPECT_LE(siOf(loosest.rows[0][8]), siOf(loosest.rows[1][8]));
    EXPECT_LE(siOf(loosest.rows[1][8]), siOf(loosest.rows[2][8]));
}

TEST(DaySheet, FewLayersHaveARowEach) {
    SeasonMaker maker = exampleDay();
    maker.add(entries::LayerSeen{idOf<farm::SiloTag>(1), Length::fromCentimetres(60), {}},
              at("2026-02-10T11:00:00Z"));
    const Table& table = tableOf(exampleSheet(maker), "laidLayers", "byLayer");
    ASSERT_LE(table.rows.size(), 12u);
    double mass = 0;
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        EXPECT_EQ(table.rows[i][1], Cell{static_cast<std::int64_t>(i + 1)});
        EXPECT_NEAR(siOf(table.rows[i][5]), 0.60, 1e-12);
        mass += siOf(table.rows[i][4]);
    }
    EXPECT_NEAR(mass, 120'000, 1e-6);
}

TEST(DaySheet, ALoadWithoutATruckHasItsOwnRow) {
    const Table& trucks = tableOf(exampleSheet(), "deliveries", "byTruck");
    ASSERT_EQ(trucks.rows.size(), 4u);
    EXPECT_EQ(trucks.rows[0][0], (Cell{Message{code::reviewNotNamed, {}}}));
    EXPECT_EQ(trucks.rows[0][1], Cell{std::int64_t{1}});
}

TEST(DaySheet, TheSeriesHoldsTheHourlyDelivery) {
    const Document sheet = exampleSheet();
    const auto series = std::get<Series>(sectionOf(sheet, "deliveries").blocks.back());
    ASSERT_EQ(series.points.size(), 2u);
    EXPECT_EQ(series.points[0].first, at("2026-02-10T12:00:00Z"));
    EXPECT_NEAR(AsFedRate::fromSi(series.points[0].second + series.points[1].second).tonnesPerHour(), 120,
                1e-9);
}

TEST(DaySheet, CountsTheTractorsHoursAndCost) {
    const Table& tractors = tableOf(exampleSheet(), "tractors", "tractors");
    ASSERT_EQ(tractors.rows.size(), 3u);
    EXPECT_NEAR(std::get<double>(tractors.rows[0][2]), 100.0 / 60, 1e-9);
    EXPECT_NEAR(std::get<double>(tractors.rows[0][5]), 150, 1e-9);
    // 12:30 to 13:36, half of it packing.
    EXPECT_NEAR(std::get<double>(tractors.rows[1][2]), 0.55, 1e-9);
    EXPECT_NEAR(std::get<double>(tractors.rows[1][3]), 0.55, 1e-9);
    EXPECT_EQ(tractors.rows[1][5], Cell{});
    EXPECT_EQ(tractors.rows[2][5], Cell{}) << "a total without one tractor's cost would be a wrong total";
}

// 60 L and 40 L for the first tractor, the second without a price.
TEST(DaySheet, SumsTheFuelAndItsCost) {
    testing_support::SeasonMaker maker = exampleDay();
    const auto fill = [&](std::uint8_t tractor, double litres, std::optional<double> cost, const char* when) {
        maker.add(entries::FuelTaken{testing_support::idOf<farm::TractorTag>(tractor),
                                     ProductVolume::fromLitres(litres), cost},
                  testing_support::at(when));
    };
    fill(1, 60, 78, "2026-02-10T12:10:00Z");
    fill(1, 40, 52, "2026-02-10T13:10:00Z");
    fill(2, 30, {}, "2026-02-10T13:20:00Z");
    fill(2, 30, {}, "2026-02-10T13:50:00Z");  // after the sheet's moment
    const Table table = tableOf(exampleSheet(maker), "tractors", "tractors");
    const auto litres = [&](std::size_t row) { return std::get<Amount>(table.rows[row][6]).si * 1000.0; };
    ASSERT_EQ(table.rows.size(), 3u);
    EXPECT_NEAR(litres(0), 100, 1e-9);
    EXPECT_EQ(table.rows[0][7], Cell{130.0});
    EXPECT_NEAR(litres(1), 30, 1e-9);
    EXPECT_EQ(table.rows[1][7], Cell{});
    EXPECT_NEAR(litres(2), 130, 1e-9);
}

TEST(DaySheet, CarriesTheHandOverAndWhatWasFed) {
    testing_support::SeasonMaker maker = exampleDay();
    const auto silo = testing_support::idOf<farm::SiloTag>(1);
    const Instant when = testing_support::at("2026-02-10T13:00:00Z");
    maker.add(entries::HandOver{"Left wall is loose"}, when);
    maker.add(entries::FeedRemoved{silo, AsFedMass::fromTonnes(9), DryMatter::fromPercent(33), {}}, when);
    maker.add(
        entries::FaceTemperature{silo, Temperature::fromCelsius(31), Temperature::fromCelsius(24), {}, {}},
        when);
    const Document sheet = exampleSheet(maker);
    EXPECT_EQ(tableOf(sheet, "handOver", "handOver").rows,
              (std::vector<std::vector<Cell>>{{when, std::string{"Left wall is loose"}}}));
    EXPECT_EQ(tableOf(sheet, "feeding", "fed").rows[0][2], Cell{AsFedMass::fromTonnes(9).amount()});
    EXPECT_EQ(tableOf(sheet, "feeding", "heat").rows[0][2], Cell{Temperature::fromCelsius(31).amount()});
}

// Every tonne of the day stands in one hour; the first cause by which an hour lies below the silo's mean is
// what limited it.
TEST(DaySheet, TellsWhatLimitedDensityHourByHour) {
    const Document sheet = exampleSheet();
    const Table limited = tableOf(sheet, "limited", "limited");
    double mass = 0.0;
    for (const auto& row : limited.rows) {
        mass += std::get<Amount>(row[2]).si;
        EXPECT_LT(std::get<Amount>(row[4]).si, std::get<Amount>(row[3]).si);
    }
    EXPECT_NEAR(mass, 120'000, 1e-6);
}

TEST(DaySheet, TellsWhatAFurtherTractorWouldHaveBrought) {
    const Section further = sectionOf(exampleSheet(), "further");
    ASSERT_EQ(further.blocks.size(), 2u);
    const auto& message = std::get<Message>(further.blocks[0]);
    EXPECT_EQ(message.code, code::furtherWould);
    EXPECT_GT(std::get<Amount>(message.arguments[2]).si, 0.0);
}

// 14 t packs all of its time, 10 t half of it.
TEST(DaySheet, TellsTheShareOfTimeThatPacked) {
    const Table& tractors = tableOf(exampleSheet(), "tractors", "tractors");
    EXPECT_NEAR(siOf(tractors.rows[0][4]), 1.0, 1e-12);
    EXPECT_NEAR(siOf(tractors.rows[1][4]), 0.5, 1e-12);
    EXPECT_NEAR(siOf(tractors.rows[2][4]), (100.0 / 60 + 0.55) / (100.0 / 60 + 1.1), 1e-12);
}

TEST(DaySheet, TheSummaryAgreesWithTheTables) {
    const Document sheet = exampleSheet();
    const Section summary = sectionOf(sheet, kSummary);
    const auto cameIn = std::get<Message>(summary.blocks[0]);
    const auto total = tableOf(sheet, "deliveries", "byTruck").rows.back();
    EXPECT_EQ(cameIn.arguments[0], Argument{std::get<std::int64_t>(total[1])});
    for (std::size_t i = 1; i < 4; ++i)
        EXPECT_EQ(cameIn.arguments[i], Argument{std::get<Amount>(total[i + 1])});
    const auto density = std::get<Message>(summary.blocks[2]);
    const auto today = tableOf(sheet, "density", "readings").rows[0];
    for (std::size_t i = 1; i < 6; ++i)
        EXPECT_EQ(density.arguments[i], Argument{std::get<Amount>(today[i + 1])});
    EXPECT_EQ(std::get<Message>(summary.blocks.back()).arguments[0],
              Argument{static_cast<std::int64_t>(questionsIn(sheet).size())});
}

TEST(DaySheet, CarriesWhoClosedItAndTheHeadOfTheFile) {
    SeasonMaker maker = exampleDay();
    Hash head{};
    head[0] = 0xab;
    const auto state = [&](const char* now) {
        const auto sheet =
            daySheet(season::Season::fold(maker.entries), exampleDate(), at(now), {"Anna", head});
        std::vector<Code> codes;
        for (const Block& block : sectionOf(sheet.value(), "state").blocks)
            codes.push_back(std::get<Message>(block).code);
        return codes;
    };
    EXPECT_THAT(state("2026-02-10T13:36:00Z"), testing::ElementsAre(code::reviewNotClosed, code::reviewHead));
    maker.add(entries::DayClosed{exampleDate(), at("2026-02-10T03:00:00Z"), at("2026-02-11T03:00:00Z")},
              at("2026-02-10T13:30:00Z"));
    EXPECT_THAT(state("2026-02-10T13:36:00Z"),
                testing::ElementsAre(code::reviewClosed, code::reviewClosedBy, code::reviewHead));
}

TEST(DaySheet, NamesTheWeakPlacesWithTheirCauses) {
    const SeasonMaker maker = exampleDay();
    const Document sheet = exampleSheet(maker);
    const Table& places = tableOf(sheet, "weakPlaces", "weakPlaces");
    ASSERT_FALSE(places.rows.empty());
    EXPECT_LT(siOf(places.rows[0][4]), siOf(tableOf(sheet, "density", "readings").rows[1][2]))
        << "looser than the silo's mean";
    EXPECT_FALSE(tableOf(sheet, "weakPlaces", "causes").rows.empty());
}

// Ten loads of 12 t the day before; half as many are five less.
TEST(DaySheet, StandsBesideTheDayBefore) {
    SeasonMaker maker = exampleDay();
    for (int i = 0; i < 5; ++i) maker.add(someLoad(10), at("2026-02-12T12:00:00Z") + i * minutes{10});
    maker.add(someWork(1, farm::Activity::packing), at("2026-02-12T12:00:00Z"));
    const auto sheet = daySheet(season::Season::fold(maker.entries), dayAfter(dayAfter(exampleDate())),
                                at("2026-02-12T13:00:00Z"));
    const Table& days = tableOf(sheet.value(), "dayBefore", "days");
    ASSERT_EQ(days.rows.size(), 3u);
    EXPECT_EQ(days.rows[1][0], Cell{std::string{"2026-02-10"}});
    EXPECT_EQ(days.rows[2][1], Cell{std::int64_t{-5}});
    EXPECT_NEAR(siOf(days.rows[2][2]), 50'000 - 120'000, 1e-6);
    const Table& density = tableOf(sheet.value(), "dayBefore", "density");
    ASSERT_EQ(density.rows.size(), 3u);
    EXPECT_NEAR(siOf(density.rows[2][2]), siOf(density.rows[0][2]) - siOf(density.rows[1][2]), 1e-9);
    EXPECT_EQ(density.rows[2][3], Cell{});
    EXPECT_EQ(std::get<Message>(sectionOf(exampleSheet(), "dayBefore").blocks[0]).code,
              code::reviewNoDayBefore);
}

// Advice at 12:29: layers begun 11:29 to 12:29 before it, to 13:29 after it. The bare sums of the layers.
TEST(DaySheet, TellsWhatFollowedAnAdvice) {
    const SeasonMaker maker = exampleDay();
    const Table& followed = tableOf(exampleSheet(maker), "advice", "followed");
    ASSERT_EQ(followed.rows.size(), 1u);
    const auto season = season::Season::fold(maker.entries);
    const auto readings = density::readingsAt(season, idOf<farm::SiloTag>(1), at("2026-02-10T13:36:00Z"));
    double minutesBefore = 0, massBefore = 0, minutesAfter = 0, massAfter = 0;
    for (const auto& facts : readings.layers->layers) {
        const bool before = facts.layer->begin < at("2026-02-10T12:29:00Z");
        (before ? minutesBefore : minutesAfter) += facts.layer->packingTime().count();
        (before ? massBefore : massAfter) += facts.layer->mass.si();
    }
    EXPECT_NEAR(siOf(followed.rows[0][3]), minutesBefore / massBefore, 1e-9);
    EXPECT_NEAR(siOf(followed.rows[0][4]), minutesAfter / massAfter, 1e-9);
    EXPECT_GT(siOf(followed.rows[0][5]), 0);
    EXPECT_GT(siOf(followed.rows[0][6]), 0);
}

TEST(DaySheet, ShowsTheReadingsWithTheirBand) {
    const SeasonMaker maker = exampleDay();
    const auto season = season::Season::fold(maker.entries);
    const auto readings = density::readingsAt(season, idOf<farm::SiloTag>(1), at("2026-02-10T13:36:00Z"));
    const Table& table = tableOf(exampleSheet(maker), "density", "readings");
    ASSERT_EQ(table.rows.size(), 2u);
    const density::Estimate& silo = *readings.silo.estimate;
    EXPECT_EQ(table.rows[1][1], (Cell{Message{code::readingSilo, {}}}));
    EXPECT_EQ(table.rows[1][2], Cell{silo.density.median().amount()});
    EXPECT_LT(siOf(table.rows[1][3]), siOf(table.rows[1][2]));
    EXPECT_GT(siOf(table.rows[1][4]), siOf(table.rows[1][2]));
    EXPECT_EQ(table.rows[1][6], Cell{silo.chance.amount()});
    EXPECT_EQ(table.rows[1][10], Cell{silo.packing.allTime.amount()});
}

TEST(DaySheet, ListsWhatWasRecorded) {
    const Document sheet = exampleSheet();
    EXPECT_EQ(tableOf(sheet, "dryMatter", "samples").rows.size(), 2u);
    EXPECT_EQ(tableOf(sheet, "advice", "advice").rows[0][3], (Cell{Message{code::adviceWasAccepted, {}}}));
    const Table& pauses = tableOf(sheet, "pauses", "pauses");
    EXPECT_EQ(pauses.rows[0][0], Cell{at("2026-02-10T12:25:00Z")});
    EXPECT_EQ(pauses.rows[0][1], Cell{at("2026-02-10T12:55:00Z")});
    const Table& heights = tableOf(sheet, "heights", "heights");
    EXPECT_EQ(heights.rows[0][2], Cell{std::int64_t{3}});
    EXPECT_NEAR(siOf(heights.rows[0][4]), 1.6, 1e-12);
    EXPECT_EQ(tableOf(sheet, "notes", "notes").rows[0][1], Cell{std::string{"Shower at two"}});
    EXPECT_EQ(tableOf(sheet, "cautions", "shown").rows[0][1], Cell{std::string{"siloGas"}});
    EXPECT_EQ(sectionOf(sheet, "layers").blocks, (std::vector<Block>{Message{code::reviewNothing, {}}}));
}

TEST(DaySheet, TellsTheDryMatterWithItsMeanAndItsDoubt) {
    const SeasonMaker maker = exampleDay();
    const Document sheet = exampleSheet(maker);
    const Table& samples = tableOf(sheet, "dryMatter", "samples");
    EXPECT_EQ(samples.rows[0],
              (std::vector<Cell>{at("2026-02-10T11:55:00Z"), std::string{"Field 1"},
                                 DryMatter::fromPercent(36).amount(), Message{code::methodOven, {}}}));
    EXPECT_EQ(samples.rows[1],
              (std::vector<Cell>{at("2026-02-10T12:40:00Z"), std::string{"Field 2"},
                                 DryMatter::fromPercent(32).amount(), Message{code::methodMeter, {}}}));
    std::vector<Message> said;
    for (const Block& block : sectionOf(sheet, "dryMatter").blocks) {
        if (const auto* message = std::get_if<Message>(&block)) said.push_back(*message);
    }
    ASSERT_EQ(said.size(), 2u);
    EXPECT_EQ(said[0], (Message{code::reviewSampleSpread,
                                {DryMatter::fromPercent(32).amount(), DryMatter::fromPercent(36).amount()}}));
    EXPECT_EQ(said[1].code, code::reviewMeanDryMatter);
    // By mass over the loads, seven of a field at 36 % and three of one at 32 % by the meter.
    const auto season = season::Season::fold(maker.entries);
    std::vector<const season::LoadTipped*> loads;
    double sum = 0;
    for (const season::LoadTipped& load : season.days().front()->loads) {
        loads.push_back(&load);
        sum += load.dryMatter.fraction() / 10;
    }
    ASSERT_EQ(loads.size(), 10u);
    const auto amountOf = [&](std::size_t i) { return std::get<Amount>(said[1].arguments[i]).si; };
    EXPECT_NEAR(amountOf(0), sum, 1e-12);
    EXPECT_NEAR(amountOf(0), 0.348, 0.004);
    EXPECT_NEAR(amountOf(1), season::meanDryMatter(loads)->half80().fraction(), 1e-12);
    EXPECT_GT(amountOf(1), 0.02);
    EXPECT_EQ(said[1].arguments[2], Argument{std::int64_t{2}});
    EXPECT_EQ(sectionOf(exampleSheet(maker, "2026-02-10T11:50:00Z"), "dryMatter").blocks,
              (std::vector<Block>{Message{code::reviewNothing, {}}}));
}

TEST(DaySheet, AsksWhatIsStillOpen) {
    EXPECT_THAT(
        questionsIn(exampleSheet()),
        testing::ElementsAre(code::questionNotWeighed, code::questionLayerNotSeen, code::questionNoCost));
    const auto first = std::get<Message>(sectionOf(exampleSheet(), "questions").blocks[0]);
    EXPECT_EQ(first.arguments, (std::vector<Argument>{std::int64_t{2}, std::int64_t{10}}));
}

TEST(DaySheet, AsksForASampleAfterTheSitesInterval) {
    SeasonMaker maker = exampleDay();
    maker.add(someLoad(12), at("2026-02-10T13:41:00Z"));
    EXPECT_THAT(questionsIn(exampleSheet(maker, "2026-02-10T14:00:00Z")),
                testing::Contains(code::questionSampleOverdue));
    EXPECT_THAT(questionsIn(exampleSheet(maker, "2026-02-10T14:00:00Z")),
                testing::Contains(code::questionNoField));
}

TEST(DaySheet, AsksAboutRowsSetAsideUntilTheyAreSettled) {
    SeasonMaker maker = exampleDay();
    const entries::RowSetAside row{"t.csv", "tickets", 2, 1, "truck", "nameUnknown", "Zebra is unknown", {}};
    const auto first = maker.add(row, at("2026-02-10T12:10:00Z"));
    maker.add(row, at("2026-02-10T12:20:00Z"));
    const auto asked = Message{code::questionRowsSetAside, {std::int64_t{2}}};
    EXPECT_THAT(sectionOf(exampleSheet(maker), "questions").blocks, testing::Contains(Block{asked}));
    maker.add(entries::VoidEntry{"t.csv"}, at("2026-02-10T12:30:00Z"), first);
    const auto left = Message{code::questionRowsSetAside, {std::int64_t{1}}};
    EXPECT_THAT(sectionOf(exampleSheet(maker), "questions").blocks, testing::Contains(Block{left}));
    EXPECT_THAT(questionsIn(exampleSheet(maker, "2026-02-10T12:15:00Z")),
                testing::Not(testing::Contains(code::questionRowsSetAside)));
}

TEST(DaySheet, AClosedDayAsksForTheTractorLeftOn) {
    SeasonMaker maker = exampleDay();
    const Instant begin = at("2026-02-10T03:00:00Z");
    maker.add(entries::DayClosed{exampleDate(), begin, begin + std::chrono::hours{24}},
              at("2026-02-10T22:00:00Z"));
    const Document sheet = exampleSheet(maker, "2026-02-12T12:00:00Z");
    EXPECT_THAT(questionsIn(sheet), testing::Contains(code::questionStillAtWork));
    EXPECT_EQ(std::get<Message>(sectionOf(sheet, "state").blocks[0]).code, code::reviewClosed);
}

TEST(DaySheet, WhatHappensLaterIsNotSeen) {
    const Document sheet = exampleSheet(exampleDay(), "2026-02-10T12:20:00Z");
    EXPECT_EQ(tableOf(sheet, "deliveries", "bySilo").rows[0][1], Cell{std::int64_t{4}});
    EXPECT_EQ(sectionOf(sheet, "notes").blocks, (std::vector<Block>{Message{code::reviewNothing, {}}}));
    EXPECT_EQ(tableOf(sheet, "dryMatter", "samples").rows.size(), 1u);
}

TEST(DaySheet, EveryRowHasACellForEachColumn) {
    for (const Section& section : exampleSheet().sections) {
        EXPECT_FALSE(section.blocks.empty()) << section.key;
        for (const Block& block : section.blocks) {
            const auto* table = std::get_if<Table>(&block);
            if (table == nullptr) continue;
            for (const auto& row : table->rows) EXPECT_EQ(row.size(), table->columns.size()) << table->key;
        }
    }
}

TEST(DaySheet, AnUnknownDayIsAnError) {
    const auto season = season::Season::fold(exampleDay().entries);
    const auto sheet =
        daySheet(season, LocalDay{std::chrono::year{2027}, std::chrono::May, std::chrono::day{1}},
                 at("2027-05-01T12:00:00Z"));
    ASSERT_FALSE(sheet);
    EXPECT_EQ(sheet.error().code(), code::dayUnknown);
}

TEST(DaySheet, ShowsWhatHappenedAroundThePacking) {
    testing_support::SeasonMaker maker = exampleDay();
    const auto silo = idOf<farm::SiloTag>(1);
    const Instant noon = at("2026-02-10T12:00:00Z");
    maker.add(entries::WeatherSeen{entries::Sky::rain, Length::fromCentimetres(0.4), {}, {}}, noon);
    maker.add(entries::Incident{entries::IncidentSort::nearMiss, "Slid on the ramp", silo, {}}, noon);
    maker.add(entries::Cover{silo, entries::CoverStep::wallSheets, {}}, noon - minutes{60});
    maker.add(entries::Additive{silo, {"Acid", ProductMass::fromKilograms(30), {}}}, noon + minutes{80});
    maker.add(entries::Additive{silo, {"Acid", ProductMass::fromKilograms(18), {}}}, noon + minutes{90});
    maker.add(entries::SurfaceTreatment{silo, {"Salt", {}, ProductVolume::fromLitres(20)}, {}},
              noon + minutes{92});
    const Document sheet = exampleSheet(maker);
    EXPECT_EQ(tableOf(sheet, "weather", "weather").rows.at(0)[1], Cell{Word{"rain"}});
    EXPECT_EQ(tableOf(sheet, "incidents", "incidents").rows.at(0)[4], Cell{std::string{"Slid on the ramp"}});
    EXPECT_EQ(tableOf(sheet, "cover", "cover").rows.at(0)[2], Cell{Word{"wallSheets"}});
    EXPECT_EQ(tableOf(sheet, "additives", "additives").rows.size(), 3u);
    const Table& dosage = tableOf(sheet, "additives", "dosage");
    ASSERT_EQ(dosage.rows.size(), 1u) << "a treatment is not mixed into the crop";
    // 48 kg on the ten loads of 12 t.
    EXPECT_NEAR(std::get<double>(dosage.rows[0][2]), 48'000.0 / 120.0, 1e-9);
    EXPECT_EQ(dosage.rows[0][3], Cell{});
}

TEST(DaySheet, AShiftOfMoreThanEightHoursIsCautionedAbout) {
    testing_support::SeasonMaker maker = exampleDay();
    const entries::Shift shift{idOf<entries::PersonTag>(1), true, entries::Duty::packing, true,
                               idOf<farm::TractorTag>(1)};
    maker.add(shift, at("2026-02-10T05:00:00Z"));
    const auto cautioned = [&](const char* now) {
        return sectionOf(exampleSheet(maker, now), "shifts").blocks.size() > 1;
    };
    EXPECT_FALSE(cautioned("2026-02-10T12:59:00Z"));
    EXPECT_TRUE(cautioned("2026-02-10T13:01:00Z")) << "HSE: caution at 8 hours";
    const Table& shifts = tableOf(exampleSheet(maker, "2026-02-10T13:30:00Z"), "shifts", "shifts");
    EXPECT_EQ(shifts.rows.at(0)[2], Cell{Word{"packing"}});
    EXPECT_EQ(shifts.rows.at(0)[3], Cell{std::string{"Tractor 1"}});
    EXPECT_NEAR(std::get<double>(shifts.rows.at(0)[5]), 8.5, 1e-9);
    maker.add(entries::DayClosed{exampleDate(), at("2026-02-10T03:00:00Z"), at("2026-02-11T03:00:00Z")},
              at("2026-02-10T13:30:00Z"));
    EXPECT_THAT(questionsIn(exampleSheet(maker)), testing::Contains(code::questionStillOnShift));
}

TEST(DaySheet, AShiftThatEndsWithoutABeginIsAskedAbout) {
    testing_support::SeasonMaker maker = exampleDay();
    entries::Shift shift{idOf<entries::PersonTag>(1), false, entries::Duty::packing, false, {}};
    const auto end = maker.add(shift, at("2026-02-10T13:00:00Z"));
    const auto asks = [&](const char* now) {
        return testing::Value(questionsIn(exampleSheet(maker, now)),
                              testing::Contains(code::questionShiftNotBegun));
    };
    EXPECT_FALSE(asks("2026-02-10T12:59:00Z"));
    EXPECT_TRUE(asks("2026-02-10T13:01:00Z")) << "at once: whoever knows is still there";
    shift.begins = true;
    const auto begin = maker.add(shift, at("2026-02-10T05:00:00Z"));
    EXPECT_FALSE(asks("2026-02-10T13:01:00Z")) << "its begin was entered late";
    maker.add(entries::VoidEntry{"somebody else's"}, at("2026-02-10T13:05:00Z"), begin);
    EXPECT_TRUE(asks("2026-02-10T13:10:00Z"));
    maker.add(entries::VoidEntry{"nor was this"}, at("2026-02-10T13:06:00Z"), end);
    EXPECT_FALSE(asks("2026-02-10T13:10:00Z"));
}

}  // namespace
}  // namespace treadwell::review
