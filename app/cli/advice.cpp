#include "app/cli/density_output.h"
#include "app/cli/state.h"
#include "core/advice/advise.h"
#include "core/advice/from_season.h"

#include <ostream>

namespace treadwell::cli {

namespace {

using advice::Advice;
using advice::Candidate;
using words::inWords;

/// The one sentence: what to do, then what that brings and costs.
std::string sentenceOf(const Advice& advice, const words::Style& style) {
    std::string sentence;
    const auto join = [&](const Message& message, const char* between) {
        sentence += (sentence.empty() ? "" : between) + inWords(message, style);
    };
    const bool change = advice.chosen != 0;
    if (change) {
        for (const Message& action : advice.best().actions) join(action, ", ");
    }
    const char* between = change ? ": " : "; ";
    for (const Message& said : advice.says) {
        join(said, between);
        between = "; ";
    }
    return sentence;
}

void writeCandidate(JsonWriter& json, const Candidate& candidate, const words::Style& style) {
    json.beginObject()
        .member("name", candidate.name)
        .member("density_kg_dm_m3", candidate.outcome.density.kilogramsPerCubicMetre())
        .member("chance_of_target", candidate.outcome.chance.fraction());
    json.key("effect_kg_dm_m3")
        .beginObject()
        .member("median", candidate.effect.change.si())
        .member("low80", candidate.effect.low80.si())
        .member("high80", candidate.effect.high80.si())
        .endObject();
    json.member("passes", candidate.outcome.passes)
        .member("packing_minutes_per_t", candidate.outcome.packing.minutesPerTonne());
    if (candidate.outcome.cost) writeAmount(json, "cost", candidate.outcome.cost->amount());
    writeMessages(json, "actions", candidate.actions, style);
    json.key("why");
    writeMessage(json, candidate.why, style);
    json.endObject();
}

void writeAdvice(const farm::Silo& silo, Instant at, const Advice& advice, const Answer& answer) {
    JsonWriter json{2};
    json.beginObject()
        .member("silo", silo.name)
        .member("at", toIso8601(at))
        .member("verdict", enumText(advice.verdict))
        .member("text", sentenceOf(advice, answer.style))
        .member("target_kg_dm_m3", advice.target.density.kilogramsPerCubicMetre())
        .member("chosen", advice.best().name)
        .member("not_compared", static_cast<std::int64_t>(advice.left));
    json.key("candidates").beginArray();
    for (const Candidate& candidate : advice.candidates) writeCandidate(json, candidate, answer.style);
    json.endArray().endObject();
    answer.out << json.text() << '\n';
}

void printCandidate(const Candidate& candidate, const Answer& answer) {
    std::string actions;
    for (const Message& action : candidate.actions) {
        actions += (actions.empty() ? "" : ", ") + inWords(action, answer.style);
    }
    answer.out << "  " << actions << ": " << inWords(candidate.outcome.density.amount(), answer.style)
               << ", chance " << inWords(candidate.outcome.chance.amount(), answer.style) << ". "
               << inWords(candidate.why, answer.style) << '\n';
}

/// No advice is an answer too.
void answerNone(const farm::Silo& silo, Instant at, const Message& reason, const Answer& answer) {
    if (!answer.json) {
        printLine(answer.out, "No advice", inWords(reason, answer.style));
        return;
    }
    JsonWriter json{2};
    json.beginObject().member("silo", silo.name).member("at", toIso8601(at)).key("reason");
    writeMessage(json, reason, answer.style);
    json.endObject();
    answer.out << json.text() << '\n';
}

}  // namespace

Outcome printAdvice(const season::Season& season, const farm::Silo& silo, Instant at, const Answer& answer) {
    const density::Readings readings = density::readingsAt(season, silo.id, at);
    const auto situation = advice::situationFrom(season, readings);
    if (!situation) {
        answerNone(silo, at, *readings.layer.reason, answer);
        return {};
    }
    const auto advised = advice::advise(*situation);
    if (!advised) return failed(advised.error(), answer.style);
    if (answer.json) {
        writeAdvice(silo, at, *advised, answer);
        return {};
    }
    answer.out << silo.name << ", " << inWords(at, answer.style) << '\n'
               << sentenceOf(*advised, answer.style);
    answer.out << "\n\nWeighed against each other\n";
    for (const Candidate& candidate : advised->candidates) printCandidate(candidate, answer);
    return {};
}

}  // namespace treadwell::cli
