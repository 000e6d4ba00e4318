#include "app/desktop/fill/advice_state.h"

#include "core/advice/wording.h"

#include <QStringList>
#include <algorithm>
#include <stdexcept>

namespace treadwell::fill {

namespace {

using namespace std::chrono_literals;
using entries::AdviceDecision;

constexpr auto kListened = 30min;

template <class Wanted>
bool hasNote(const season::Season& season, farm::SiloId silo, const advice::Voice& voice, Instant now,
             Wanted wanted) {
    const season::Day* day = season.day(season.zone().dayOf(now));
    if (day == nullptr) return false;
    const auto& notes = day->records.of<entries::AdviceDecided>();
    return std::any_of(notes.begin(), notes.end(), [&](const auto& note) {
        return note.what.silo == silo && note.what.advice == voice.said && note.at >= voice.saidSince &&
               note.at <= now && wanted(note.what.decision);
    });
}

/// What the advice would say had it chosen this candidate.
std::vector<Message> effectOf(const AdviceState& state, const advice::Candidate& said) {
    const advice::Advice& advice = *state.advice;
    if (said.name == advice.best().name) return advice.says;
    return advice::effectOf(advice.now().outcome, said.outcome, advice.target);
}

QString joined(const std::vector<Message>& messages, const Speech& speech, const QString& between) {
    QStringList parts;
    for (const Message& message : messages) parts << speech.say(message);
    return parts.join(between);
}

}  // namespace

const advice::Candidate* AdviceState::said() const noexcept {
    if (!advice || voice.said.empty()) return nullptr;
    return advice::find(*advice, voice.said);
}

AdviceState adviceAt(const season::Season& season, const density::Readings& readings,
                     const advice::Voice& before) {
    AdviceState state{before, advice::situationFrom(season, readings), std::nullopt};
    if (!state.situation) return state;
    auto found = advice::advise(*state.situation);
    if (!found) return state;
    state.advice = std::move(*found);
    state.voice = advice::hear(before, *state.advice, readings.rolling.at);
    return state;
}

advice::Voice voiceAt(const season::Season& season, farm::SiloId silo, Instant now) {
    advice::Voice voice;
    density::ReadingsHistory history;
    for (Instant at = now - kListened; at < now; at += 1min) {
        voice = adviceAt(season, history.at(season, silo, at), voice).voice;
    }
    return voice;
}

bool isDecided(const season::Season& season, farm::SiloId silo, const advice::Voice& voice, Instant now) {
    return hasNote(season, silo, voice, now,
                   [](AdviceDecision decision) { return decision != AdviceDecision::shown; });
}

bool isRecorded(const season::Season& season, farm::SiloId silo, const advice::Voice& voice, Instant now) {
    return hasNote(season, silo, voice, now, [](AdviceDecision) { return true; });
}

std::optional<QString> sentenceOf(const AdviceState& state, const Speech& speech) {
    const advice::Candidate* said = state.said();
    if (said == nullptr) return std::nullopt;
    const QString comma = QStringLiteral(", ");
    return joined(said->actions, speech, comma) + QStringLiteral(": ") +
           joined(effectOf(state, *said), speech, comma);
}

std::optional<QString> silenceOf(const AdviceState& state, const density::Readings& readings,
                                 const Speech& speech) {
    if (readings.layer.reason) return speech.say(*readings.layer.reason);
    if (!state.advice) return std::nullopt;
    const auto why = advice::whySilent(*state.advice);
    return why ? std::optional{speech.say(*why)} : std::nullopt;
}

entries::AdviceDecided decisionOn(const AdviceState& state, farm::SiloId silo, AdviceDecision decision) {
    const advice::Candidate* said = state.said();
    if (said == nullptr) throw std::logic_error("no advice is being said");
    const advice::Outcome& now = state.advice->now().outcome;
    return {.silo = silo,
            .advice = said->name,
            .decision = decision,
            .before = now.density,
            .after = said->outcome.density,
            .chanceBefore = now.chance,
            .chanceAfter = said->outcome.chance};
}

}  // namespace treadwell::fill
