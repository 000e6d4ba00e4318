// The example season: its files are what their maker writes, and the readers take all of it.
#include "core/base/atomic_file.h"
#include "core/intake/codes.h"
#include "core/intake/farm_file.h"
#include "core/intake/logs.h"
#include "core/intake/sample_logs.h"
#include "core/intake/tickets.h"
#include "core/quantity/relations.h"
#include "tests/core/intake/farm_context.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>

namespace treadwell::intake {
namespace {

std::string example(const std::string& name) {
    return *readFile(std::filesystem::path{TREADWELL_SOURCE} / "examples" / name);
}

Context exampleFarm() {
    Context context;
    record(context, *readFarm(example("farm.json"), context));
    context.silo = *context.silos.find("Long bunker", "silo");
    return context;
}

Intake readExample(Result<Intake> (*reader)(std::string_view, const Context&), const std::string& name) {
    auto intake = reader(example(name), exampleFarm());
    if (!intake) throw std::runtime_error(std::string{toText(intake.error().code())});
    EXPECT_TRUE(intake->quarantine.empty()) << name;
    EXPECT_TRUE(intake->ignoredColumns.empty()) << name;
    EXPECT_EQ(accountedFor(*intake), intake->rows) << name;
    return *std::move(intake);
}

struct Loads {
    AsFedMass total;
    std::map<LocalDay, AsFedMass> byDay;
};

Loads loadsOf(const Intake& tickets, const FarmZone& zone) {
    Loads loads;
    for (const Proposal& proposal : tickets.proposals) {
        const AsFedMass mass = std::get<entries::Load>(proposal.body).mass;
        loads.total += mass;
        loads.byDay[zone.dayOf(proposal.happened)] += mass;
    }
    return loads;
}

TEST(Example, ItsMakerWritesTheFilesThatAreKept) {
    const auto folder = std::filesystem::path{TREADWELL_BINARY} / "example";
    std::filesystem::create_directories(folder);
    const std::string maker = TREADWELL_BINARY "/bin/treadwell-example-maker";
    ASSERT_EQ(std::system(('"' + maker + "\" \"" + folder.string() + '"').c_str()), 0);
    for (const char* name :
         {"farm.json", "tickets.csv", "tractor_log.csv", "samples.csv", "heights.csv", "layers.csv",
          "sieves.csv", "kernels.csv", "chop.csv", "temperatures.csv", "fields.csv", "adopted.plan.json",
          "last_year.plan.json", "more_trucks.plan.json"}) {
        EXPECT_EQ(*readFile(folder / name), example(name)) << name;
    }
}

TEST(Example, TheFarmIsWholeAndNamed) {
    const auto farm = readFarm(example("farm.json"), Context{});
    ASSERT_TRUE(farm);
    std::map<std::string_view, int> kinds;
    for (const Proposal& proposal : farm->proposals) ++kinds[entries::kindOf(proposal.body).kind];
    EXPECT_EQ(kinds, (std::map<std::string_view, int>{{"season_started", 1},
                                                      {"silo_defined", 1},
                                                      {"tractor_defined", 4},
                                                      {"truck_defined", 6},
                                                      {"field_defined", 3},
                                                      {"rules_set", 1}}));
}

TEST(Example, TheTicketsHoldOneOfEachOddity) {
    const Intake tickets = readExample(readTickets, "tickets.csv");
    EXPECT_EQ(tickets.duplicates, 1);
    EXPECT_EQ(tickets.voided, 2);
    EXPECT_EQ(tickets.totals, 1);
    int swapped = 0;
    for (const Proposal& proposal : tickets.proposals)
        swapped +=
            static_cast<int>(!proposal.notes.empty() && proposal.notes[0].code == code::weighingsSwapped);
    EXPECT_EQ(swapped, 1);
    EXPECT_GT(tickets.used, 120);
}

TEST(Example, TheSumAtTheFootIsThatOfTheLoads) {
    const std::string file = example("tickets.csv");
    const std::string foot = file.substr(file.find("Total;;;;;;;") + 12);
    const auto total = formats::numberFromCell(foot.substr(0, foot.find(';')), formats::DecimalSign::comma);
    ASSERT_TRUE(total);
    const Loads loads = loadsOf(readExample(readTickets, "tickets.csv"), exampleFarm().zone);
    EXPECT_DOUBLE_EQ(loads.total.kilograms(), *total);
    EXPECT_EQ(loads.byDay.size(), 3u);
}

TEST(Example, TheLogsAreReadToTheLastRow) {
    EXPECT_GT(readExample(readTractorLog, "tractor_log.csv").used, 30);
    EXPECT_EQ(readExample(readSamples, "samples.csv").used, 12);
    EXPECT_EQ(readExample(readLayers, "layers.csv").used, 6);
    EXPECT_EQ(readExample(readSieveTests, "sieves.csv").used, 7);
    EXPECT_EQ(readExample(readKernelTests, "kernels.csv").used, 6);
    EXPECT_EQ(readExample(readChopSettings, "chop.csv").used, 3);
    EXPECT_EQ(readExample(readTemperatures, "temperatures.csv").used, 63);
    EXPECT_EQ(readExample(readFieldVisits, "fields.csv").used, 12);
    EXPECT_EQ(readExample(readHeights, "heights.csv").proposals.size(), 3u);
}

// What lies there, by the evening's heights, against what came in: a density that a bunker of chopped maize
// can have.
TEST(Example, TheHeightsFitTheTonnage) {
    const Context context = exampleFarm();
    const Loads loads = loadsOf(readExample(readTickets, "tickets.csv"), context.zone);
    std::map<LocalDay, std::pair<double, int>> dryMatter;
    for (const Proposal& proposal : readExample(readSamples, "samples.csv").proposals) {
        auto& [sum, count] = dryMatter[context.zone.dayOf(proposal.happened)];
        sum += std::get<entries::DryMatterSample>(proposal.body).dryMatter.fraction();
        ++count;
    }
    DryMass dry;
    for (const Proposal& proposal : readExample(readHeights, "heights.csv").proposals) {
        const LocalDay day = context.zone.dayOf(proposal.happened);
        const auto& [sum, count] = dryMatter.at(day);
        dry += loads.byDay.at(day) * DryMatter::fromFraction(sum / count);
        const auto& readings = std::get<entries::HeightSurvey>(proposal.body).readings;
        Length heights;
        for (const entries::HeightReading& reading : readings) heights += reading.height;
        // Each reading stands for the same part of the floor.
        const Volume volume = Length::fromMetres(60) * Length::fromMetres(14) *
                              (heights / static_cast<double>(readings.size()));
        EXPECT_NEAR((dry / volume).kilogramsPerCubicMetre(), 225, 15) << toIso8601(day);
    }
}

}  // namespace
}  // namespace treadwell::intake
