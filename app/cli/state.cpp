#include "app/cli/state.h"

#include "app/cli/density_output.h"
#include "app/cli/names.h"
#include "core/attention/matters.h"

#include <array>
#include <ostream>
#include <utility>

namespace treadwell::cli {

namespace {

using season::Delivered;
using season::Rolling;
using season::TractorNow;
using words::inWords;

std::array<std::pair<const char*, const density::SiloReading*>, 3> named(const density::Readings& readings) {
    return {{{"layer", &readings.layer}, {"today", &readings.today}, {"silo", &readings.silo}}};
}

void writeDelivered(JsonWriter& json, std::string_view name, const Delivered& delivered) {
    json.key(name).beginObject().member("loads", delivered.loads);
    writeAmount(json, "mass", delivered.mass.amount());
    writeAmount(json, "dry_matter_mass", delivered.dry.amount());
    if (const auto dryMatter = delivered.dryMatter()) json.member("dry_matter", dryMatter->fraction());
    json.endObject();
}

void writeTractors(JsonWriter& json, const season::Season& season, const Rolling& rolling) {
    json.key("tractors").beginArray();
    for (const TractorNow& tractor : rolling.tractors) {
        json.beginObject()
            .member("name", nameIn(season.farm().tractors, tractor.tractor))
            .member("activity", enumText(tractor.activity))
            .member("here", tractor.silo == rolling.silo)
            .member("packing_share", tractor.packing.fraction());
        writeAmount(json, "packed_today", durationAmount(tractor.packedToday));
        writeAmount(json, "worked_today", durationAmount(tractor.workedToday));
        json.endObject();
    }
    json.endArray();
}

void writeAttention(JsonWriter& json, const season::Season& season, const density::Readings& readings,
                    const words::Style& style) {
    json.key("attention").beginArray();
    for (const attention::MatterNow& matter : attention::mattersAt(season, readings)) {
        json.beginObject().member("matter", enumText(matter.matter)).key("message");
        writeMessage(json, matter.message, style);
        json.endObject();
    }
    json.endArray().key("grounds").beginArray();
    for (const attention::GroundNow& ground : attention::groundsAt(season, readings)) {
        json.beginObject().member("standing", enumText(ground.standing)).key("message");
        writeMessage(json, ground.message, style);
        json.endObject();
    }
    json.endArray();
}

void printAttention(const season::Season& season, const density::Readings& readings, const Answer& answer) {
    for (const attention::MatterNow& matter : attention::mattersAt(season, readings))
        printLine(answer.out, "Now", inWords(matter.message, answer.style));
    for (const attention::GroundNow& ground : attention::groundsAt(season, readings)) {
        const char* name = ground.standing == attention::Standing::known     ? "Known"
                           : ground.standing == attention::Standing::assumed ? "Assumed"
                                                                             : "Missing";
        printLine(answer.out, name, inWords(ground.message, answer.style));
    }
}

void writeState(const season::Season& season, const farm::Silo& silo, const density::Readings& readings,
                bool working, const Answer& answer) {
    const Rolling& rolling = readings.rolling;
    JsonWriter json{2};
    json.beginObject()
        .member("silo", silo.name)
        .member("at", toIso8601(rolling.at))
        .member("paused", rolling.paused);
    writeDelivered(json, "today", rolling.todayIn);
    writeDelivered(json, "in_silo", rolling.siloIn);
    writeAmount(json, "delivery_in_window", rolling.rateInWindow.amount());
    writeAmount(json, "delivery_today", rolling.rateToday.amount());
    if (readings.pace) writeAmount(json, "delivery_pace", readings.pace->delivery.amount());
    if (rolling.layer) writeAmount(json, "layer", rolling.layer->what.thickness.layerAmount());
    writeTractors(json, season, rolling);
    writeSurveys(json, readings, answer.style);
    writeMessages(json, "learnt", readings.learnt, answer.style);
    writeAttention(json, season, readings, answer.style);
    json.key("readings").beginObject();
    for (const auto& [name, reading] : named(readings)) {
        writeReading(json, name, *reading, density::doubtsOf(readings, *reading), working, answer.style);
    }
    json.endObject().endObject();
    answer.out << json.text() << '\n';
}

void printDelivered(std::string_view name, const Delivered& delivered, const Answer& answer) {
    std::string text = std::to_string(delivered.loads) + (delivered.loads == 1 ? " load, " : " loads, ") +
                       inWords(delivered.mass.amount(), answer.style) + ", " +
                       inWords(delivered.dry.amount(), answer.style);
    if (const auto dryMatter = delivered.dryMatter()) {
        text += ", dry matter " + inWords(dryMatter->amount(), answer.style);
    }
    printLine(answer.out, name, text);
}

void printTractor(const season::Season& season, const TractorNow& tractor, const Answer& answer) {
    std::string text{enumText(tractor.activity)};
    if (tractor.silo) text += " at " + nameIn(season.farm().silos, *tractor.silo);
    if (tractor.activity == farm::Activity::packing) {
        text += ", " + inWords(tractor.packing.amount(), answer.style) + " of its time";
    }
    text += ", packed today " + inWords(durationAmount(tractor.packedToday), answer.style);
    printLine(answer.out, nameIn(season.farm().tractors, tractor.tractor), text);
}

std::string titleOf(std::string_view reading) {
    if (reading == "layer") return "The layer now, once the silo is full";
    return reading == "today" ? "Today's layers, once the silo is full" : "The silo, when full";
}

}  // namespace

void printState(const season::Season& season, const farm::Silo& silo, Instant at, bool working,
                const Answer& answer) {
    const density::Readings readings = density::readingsAt(season, silo.id, at);
    if (answer.json) return writeState(season, silo, readings, working, answer);
    const Rolling& rolling = readings.rolling;
    answer.out << silo.name << ", " << inWords(at, answer.style) << (rolling.paused ? ", paused" : "")
               << '\n';
    printDelivered("Today", rolling.todayIn, answer);
    printDelivered("In the silo", rolling.siloIn, answer);
    if (readings.pace)
        printLine(answer.out, "Delivery", inWords(readings.pace->delivery.amount(), answer.style));
    for (const TractorNow& tractor : rolling.tractors) printTractor(season, tractor, answer);
    printSurveys(readings, answer);
    printAttention(season, readings, answer);
    for (const auto& [name, reading] : named(readings)) {
        answer.out << '\n' << titleOf(name) << '\n';
        printReading(*reading, density::doubtsOf(readings, *reading), working, answer);
    }
}

}  // namespace treadwell::cli
