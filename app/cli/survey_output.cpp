#include "app/cli/density_output.h"

namespace treadwell::cli {

namespace {

using words::inWords;

void writeBalance(JsonWriter& json, std::string_view name, const std::optional<density::MassBalance>& balance,
                  const std::optional<Message>& reason, const words::Style& style) {
    json.key(name).beginObject();
    if (balance) {
        const density::Distribution& density = balance->density;
        json.member("median_kg_dm_m3", density.median().kilogramsPerCubicMetre())
            .member("low80_kg_dm_m3", density.low80().kilogramsPerCubicMetre())
            .member("high80_kg_dm_m3", density.high80().kilogramsPerCubicMetre())
            .member("log_sd", density.sigma())
            .member("loads", balance->loads);
        writeAmount(json, "volume", balance->volume.amount());
        writeAmount(json, "dry_matter_mass", balance->dry.amount());
    } else if (reason) {
        json.key("reason");
        writeMessage(json, *reason, style);
    }
    json.endObject();
}

}  // namespace

void writeSurveys(JsonWriter& json, const density::Readings& readings, const words::Style& style) {
    json.key("surveys").beginArray();
    if (readings.surveyed) {
        for (const density::MeasuredSilo& survey : readings.surveyed->surveys) {
            json.beginObject().member("at", toIso8601(survey.at));
            writeBalance(json, "whole", survey.whole, survey.reason, style);
            writeBalance(json, "placed", survey.placed, survey.placedReason, style);
            json.endObject();
        }
    }
    json.endArray();
}

void printSurveys(const density::Readings& readings, const Answer& answer) {
    if (!readings.surveyed) return;
    const density::MeasuredSilo& last = readings.surveyed->surveys.back();
    const auto print = [&](const Message& message) {
        printLine(answer.out, "Measured", inWords(message, answer.style));
    };
    for (const Message& message : density::messagesOf(last)) print(message);
    for (const Message& message : readings.learnt) {
        printLine(answer.out, "Learnt", inWords(message, answer.style));
    }
}

}  // namespace treadwell::cli
