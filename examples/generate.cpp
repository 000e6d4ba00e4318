// Writes the example: an invented farm that fills one bunker in three days.
//   treadwell-example-maker FOLDER
// All that is drawn by lot comes from one engine whose numbers the standard fixes, and is reckoned in
// integers, so that the files are the same on every machine.
#include "core/base/atomic_file.h"
#include "core/base/instant.h"
#include "core/base/json_writer.h"
#include "core/base/uuid.h"
#include "core/quantity/geometry.h"
#include "core/quantity/mass.h"
#include "core/quantity/work.h"
#include "examples/drawing.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <filesystem>
#include <iostream>
#include <string>
#include <string_view>
#include <vector>

using namespace treadwell;

namespace {

using namespace example;

struct TractorFacts {
    const char* name;
    double tonnes, trackMetres, costPerHour;
};
constexpr std::array<TractorFacts, 4> kTractors{
    {{"Bison", 14, 1.5, 96}, {"Widder", 10, 1.3, 78}, {"Auerochse", 18, 1.7, 118}, {"Eber", 8, 1.2, 66}}};

struct TruckFacts {
    const char* name;
    int usualKilograms, tareKilograms, boxCubicMetres;
};
constexpr std::array<TruckFacts, 6> kTrucks{{{"Amsel", 12400, 11860, 38},
                                             {"Biber", 13600, 12240, 41},
                                             {"Dachs", 11800, 11480, 36},
                                             {"Elster", 14200, 12780, 43},
                                             {"Falke", 13000, 12060, 40},
                                             {"K\u00E4fer", 15200, 13140, 46}}};

constexpr std::array<const char*, 3> kFields{"Lurrenbreite", "Quornstieg", "Vellerbruch"};
constexpr const char* kSilo = "Long bunker";

// The dry matter of each day's field in tenths of a percent; the third is the drier one.
constexpr std::array<int, 3> kDryMatterPerMille{331, 347, 388};
// What the tonnage and the heights of an evening give for all that lies there, kg DM/m3.
constexpr std::array<std::int64_t, 3> kEveningDensity{216, 223, 226};

// Trucks arrive between `from` and `to`; between two spells lies lunch or a shower.
struct Spell {
    WallSeconds from, to;
    int tonnesPerHour;
};
constexpr std::array<Spell, 7> kSpells{{{at(1, 10, 0), at(1, 12, 20), 88},
                                        {at(1, 13, 5), at(1, 15, 25), 94},
                                        {at(2, 9, 30), at(2, 12, 15), 140},
                                        {at(2, 13, 0), at(2, 13, 50), 148},  // then a shower
                                        {at(2, 14, 40), at(2, 15, 40), 156},
                                        {at(3, 9, 40), at(3, 12, 0), 204},
                                        {at(3, 12, 40), at(3, 13, 36), 222}}};

struct Load {
    WallSeconds time;
    std::size_t truck;
    std::int64_t tareKilograms, netKilograms;

    [[nodiscard]] std::size_t day() const { return static_cast<std::size_t>(time / kDay); }
};

std::vector<Load> deliver(Lot& lot) {
    std::vector<Load> loads;
    std::vector<std::size_t> queue{0, 1, 2, 3, 4, 5};  // the truck in front was away for longest
    for (const Spell& spell : kSpells) {
        for (WallSeconds time = spell.from + lot.between(20, 200); time < spell.to;) {
            const auto place = static_cast<std::size_t>(lot.between(0, 5) == 0 ? 1 : 0);  // one overtakes
            const std::size_t truck = queue[place];
            queue.erase(queue.begin() + static_cast<std::ptrdiff_t>(place));
            queue.push_back(truck);
            // The scale shows steps of 20 kg.
            const std::int64_t net = kTrucks[truck].usualKilograms * lot.between(930, 1060) / 1000 / 20 * 20;
            loads.push_back({time, truck, kTrucks[truck].tareKilograms + 20 * lot.between(-3, 6), net});
            time += net * 36 / spell.tonnesPerHour * lot.between(70, 130) / 1000;
        }
    }
    return loads;
}

void writeSilo(JsonWriter& json, const std::string& id) {
    json.beginObject().member("id", id).member("name", kSilo).member("length_m", 60.0);
    json.member("width_m", 14.0).member("wall_height_m", 3.5).member("ramp_run_per_rise", 3.0);
    json.member("ramp_ends", 1).member("crown_m", 0.5).member("planned_depth_m", 3.5);
    json.member("filling", "wedge").endObject();
}

void writeRules(JsonWriter& json) {
    json.key("rules").beginObject().member("minimum_density_kg_dm_m3", 225.0);
    json.member("porosity_goal", 0.40).member("wanted_chance", 0.5).member("maximum_layer_m", 0.15);
    json.member("dry_matter_low", 0.32).member("dry_matter_high", 0.38);
    json.member("sample_interval_s", 3600.0).member("rate_window_s", 3600.0).endObject();
}

std::string farmFile() {
    UuidSource ids{20260914};
    const Instant begins = *instantFromIso8601("2026-09-14T08:00:00+02:00");
    const auto next = [&] { return ids.next(begins).text(); };
    JsonWriter json{2};
    json.beginObject().member("format", "treadwell farm").member("version", 1);
    json.member("begins", "2026-09-14T08:00:00+02:00").member("farm", "Ostrelmark farm");
    json.member("zone", "Europe/Berlin").key("silos").beginArray();
    writeSilo(json, next());
    json.endArray().key("tractors").beginArray();
    for (const TractorFacts& tractor : kTractors) {
        json.beginObject().member("id", next()).member("name", tractor.name);
        json.member("mass_kg", MachineMass::fromTonnes(tractor.tonnes).si()).member("mass_known", true);
        json.member("track_width_m", tractor.trackMetres);
        json.member("speed_m_per_s", Speed::fromKilometresPerHour(4).si());
        json.member("hourly_cost_per_s", CostRate::fromPerHour(tractor.costPerHour).si());
        json.member("usual_role", tractor.tonnes < 9 ? "spreading" : "packing").endObject();
    }
    json.endArray().key("trucks").beginArray();
    for (const TruckFacts& truck : kTrucks) {
        json.beginObject().member("id", next()).member("name", truck.name);
        json.member("usual_load_kg", double(truck.usualKilograms));
        json.member("box_volume_m3", double(truck.boxCubicMetres)).endObject();
    }
    json.endArray().key("fields").beginArray();
    for (const char* field : kFields)
        json.beginObject().member("id", next()).member("name", field).member("crop", "maize").endObject();
    json.endArray();
    writeRules(json);
    json.endObject();
    return json.take() + '\n';
}

// A scale's export: semicolons, decimal commas, and what such files hold besides plain tickets.
std::string ticketFile(const std::vector<Load>& loads) {
    constexpr std::size_t kTareFirst = 23, kVoided = 41, kDoubled = 77;
    const auto kilograms = [](std::int64_t kg) { return decimal(kg * 10, 1, ','); };
    std::string text = "Ticket;Date;Time;Vehicle;Field;Gross kg;Tare kg;Net kg;Status\r\n";
    std::int64_t total = 0;
    for (std::size_t i = 0; i < loads.size(); ++i) {
        const Load& load = loads[i];
        const std::string first = kilograms(load.tareKilograms + load.netKilograms);
        const std::string second = kilograms(load.tareKilograms);
        const std::string stem = std::to_string(20418 + i) + ';' + std::to_string(dayOfMonth(load.time)) +
                                 ".09.2026;" + clock(load.time) + ';' + kTrucks[load.truck].name + ';' +
                                 kFields[load.day()] + ';' +
                                 (i == kTareFirst ? second + ';' + first : first + ';' + second) + ';' +
                                 kilograms(load.netKilograms);
        text += stem + ";ok\r\n";
        if (i == kDoubled) text += stem + ";ok\r\n";
        if (i == kVoided) {
            text += stem + ";void\r\n";
        } else {
            total += load.netKilograms;
        }
    }
    return text + "Total;;;;;;;" + kilograms(total) + ";\r\n";
}

std::string tractorFile() {
    struct Turn {
        WallSeconds time;
        std::size_t tractor;
        const char* activity;
        int sharePercent;
    };
    constexpr std::array kTurns{
        Turn{at(1, 9, 50), 0, "packing", 100},  Turn{at(1, 9, 55), 1, "packing", 50},
        Turn{at(1, 12, 25), 1, "away", 0},      Turn{at(1, 12, 40), 0, "away", 0},
        Turn{at(1, 13, 0), 0, "packing", 100},  Turn{at(1, 13, 5), 1, "packing", 50},
        Turn{at(1, 15, 45), 1, "away", 0},      Turn{at(1, 16, 20), 0, "away", 0},
        Turn{at(2, 9, 20), 0, "packing", 100},  Turn{at(2, 9, 25), 1, "packing", 50},
        Turn{at(2, 9, 40), 2, "packing", 100},  Turn{at(2, 12, 20), 0, "away", 0},
        Turn{at(2, 12, 20), 1, "away", 0},      Turn{at(2, 12, 35), 2, "away", 0},
        Turn{at(2, 12, 55), 0, "packing", 100}, Turn{at(2, 12, 55), 2, "packing", 100},
        Turn{at(2, 13, 0), 1, "packing", 50},   Turn{at(2, 13, 55), 0, "away", 0},
        Turn{at(2, 13, 55), 1, "away", 0},      Turn{at(2, 13, 55), 2, "away", 0},
        Turn{at(2, 14, 35), 0, "packing", 100}, Turn{at(2, 14, 35), 2, "packing", 100},
        Turn{at(2, 14, 40), 1, "packing", 50},  Turn{at(2, 16, 0), 1, "away", 0},
        Turn{at(2, 16, 30), 0, "away", 0},      Turn{at(2, 16, 30), 2, "away", 0},
        Turn{at(3, 9, 30), 0, "packing", 100},  Turn{at(3, 9, 30), 2, "packing", 100},
        Turn{at(3, 9, 35), 1, "packing", 100},  Turn{at(3, 9, 35), 3, "spreading", 0},
        Turn{at(3, 11, 10), 3, "packing", 40},  Turn{at(3, 12, 5), 1, "away", 0},
        Turn{at(3, 12, 5), 3, "away", 0},       Turn{at(3, 12, 15), 0, "away", 0},
        Turn{at(3, 12, 35), 0, "packing", 100}, Turn{at(3, 12, 35), 1, "packing", 100},
        Turn{at(3, 12, 35), 3, "packing", 40},  Turn{at(3, 14, 15), 3, "away", 0},
        Turn{at(3, 14, 40), 1, "away", 0},      Turn{at(3, 15, 10), 0, "away", 0},
        Turn{at(3, 15, 10), 2, "away", 0}};
    std::string text = "time,tractor,activity,share_percent\n";
    for (const Turn& turn : kTurns)
        text += stamp(turn.time) + ',' + kTractors[turn.tractor].name + ',' + turn.activity + ',' +
                std::to_string(turn.sharePercent) + '\n';
    return text;
}

std::string sampleFile(Lot& lot) {
    std::string text = "time,field,wet_g,dry_g,method\n";
    constexpr std::array kTimes{at(1, 10, 15), at(1, 11, 40), at(1, 13, 30), at(1, 15, 5),
                                at(2, 9, 50),  at(2, 11, 20), at(2, 13, 25), at(2, 15, 0),
                                at(3, 9, 55),  at(3, 10, 50), at(3, 11, 45), at(3, 13, 10)};
    for (const WallSeconds time : kTimes) {
        const auto day = static_cast<std::size_t>(time / kDay);
        const std::int64_t wetDecigrams = lot.between(1480, 1530);
        const std::int64_t perMille = kDryMatterPerMille[day] + lot.between(-9, 9);
        text += stamp(time) + ',' + kFields[day] + ',' + decimal(wetDecigrams, 1) + ',' +
                decimal(wetDecigrams * perMille / 1000, 1) + ',' +
                (time % kDay < 10 * 3600 + 1800 ? "oven" : "microwave") + '\n';
    }
    return text;
}

// The filling's profile from its volume: a ramp of 1:3 that moves forward under a level top, and what goes
// beyond it raises the middle into the crown.
struct Profile {
    static constexpr std::int64_t kWidth = 14000, kLength = 60000, kWall = 3500;  // millimetres

    std::int64_t foot;   // of the ramp, from the back wall, mm
    std::int64_t crown;  // rise of the middle, mm

    static Profile ofVolume(std::int64_t cubicMillimetres) {
        const std::int64_t foot = cubicMillimetres / (kWidth * kWall) + 3 * kWall / 2;
        if (foot <= kLength) return {foot, 0};
        const std::int64_t full = kWidth * kWall * (kLength - 3 * kWall / 2);
        // The crown is a parabola across: two thirds of its middle on average.
        return {kLength, (cubicMillimetres - full) * 3 / 2 / (kWidth * (kLength - 3 * kWall))};
    }

    [[nodiscard]] std::int64_t heightAt(std::int64_t along, std::int64_t across) const {
        if (along >= foot) return 0;
        if (foot - along < 3 * kWall) return (foot - along) / 3;
        const std::int64_t fromWall = std::min(across, kWidth - across);
        return kWall + crown * 4 * fromWall * (kWidth - fromWall) / (kWidth * kWidth);
    }
};

std::string heightFile(const std::vector<Load>& loads, Lot& lot) {
    std::string text = "time,silo,along_m,across_m,height_m\n";
    std::int64_t dryGrams = 0;
    std::size_t next = 0;
    for (std::size_t day = 0; day < 3; ++day) {
        for (; next < loads.size() && loads[next].day() == day; ++next)
            dryGrams += loads[next].netKilograms * kDryMatterPerMille[day];
        const auto profile = Profile::ofVolume(dryGrams * 1'000'000 / kEveningDensity[day]);
        const std::string time = stamp(at(static_cast<int>(day) + 1, 17, 30));
        for (std::int64_t along = 2500; along < Profile::kLength; along += 5000) {
            for (const std::int64_t across : {2000, 7000, 12000}) {
                const std::int64_t height = profile.heightAt(along, across);
                const std::int64_t seen =
                    height == 0 ? 0 : std::max<std::int64_t>(0, height + lot.between(-40, 40));
                text += time + ',' + kSilo + ',' + decimal(along / 100, 1) + ',' +
                        std::to_string(across / 1000) + ',' + decimal((seen + 5) / 10, 2) + '\n';
            }
        }
    }
    return text;
}

std::string layerFile() {
    struct Seen {
        WallSeconds time;
        int centimetres;
        const char* method;
    };
    constexpr std::array kSeen{
        Seen{at(1, 10, 30), 15, "measured"},      Seen{at(1, 14, 0), 17, "measured"},
        Seen{at(2, 10, 0), 15, "measured"},       Seen{at(2, 13, 20), 18, "loadsPerCover"},
        Seen{at(3, 10, 10), 15, "loadsPerCover"}, Seen{at(3, 13, 0), 12, "measured"}};
    std::string text = "time,silo,thickness_cm,method\n";
    for (const Seen& seen : kSeen)
        text += stamp(seen.time) + ',' + kSilo + ',' + std::to_string(seen.centimetres) + ',' + seen.method +
                '\n';
    return text;
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 2) {
        std::cerr << "Name the folder to write the example into: treadwell-example-maker FOLDER\n";
        return 2;
    }
    const std::filesystem::path folder{argv[1]};
    Lot lot{20260915};
    const std::vector<Load> loads = deliver(lot);
    const std::pair<const char*, std::string> files[] = {{"farm.json", farmFile()},
                                                         {"tickets.csv", ticketFile(loads)},
                                                         {"tractor_log.csv", tractorFile()},
                                                         {"samples.csv", sampleFile(lot)},
                                                         {"heights.csv", heightFile(loads, lot)},
                                                         {"layers.csv", layerFile()},
                                                         {"sieves.csv", sieveFile()},
                                                         {"kernels.csv", kernelFile()},
                                                         {"chop.csv", chopFile()},
                                                         {"temperatures.csv", temperatureFile()},
                                                         {"fields.csv", fieldFile()},
                                                         {"adopted.plan.json", adoptedPlan()},
                                                         {"last_year.plan.json", plainPlan()},
                                                         {"more_trucks.plan.json", swiftPlan()}};
    for (const auto& [name, content] : files) {
        if (const auto written = writeFileAtomically(folder / name, content); !written) {
            std::cerr << name << " cannot be written into " << folder
                      << ": check the folder and its rights\n";
            return 1;
        }
    }
}
