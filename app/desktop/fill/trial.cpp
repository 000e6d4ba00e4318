#include "app/desktop/fill/trial.h"

#include "app/desktop/fill/zones.h"
#include "core/advice/wording.h"

#include <QCoreApplication>
#include <algorithm>

namespace treadwell::fill {

namespace {

struct TrialText {
    Q_DECLARE_TR_FUNCTIONS(Trial)
};

QString joined(const std::vector<Message>& messages, const Speech& speech) {
    QStringList parts;
    for (const Message& message : messages) parts << speech.say(message);
    return parts.join(QStringLiteral(", "));
}

}  // namespace

void Trial::move(farm::TractorId tractor, widgets::Zone zone, Share share) {
    m_moves[tractor] = {zone, share};
}

void Trial::clear() {
    m_moves.clear();
    m_layer.reset();
}

void Trial::show(std::vector<widgets::TractorView>& tractors) const {
    for (widgets::TractorView& view : tractors) {
        const auto moved = m_moves.find(farm::TractorId{view.id});
        if (moved == m_moves.end()) continue;
        view.zone = moved->second.zone;
        view.share = moved->second.share;
        view.running = Seconds{0};
    }
}

std::vector<entries::TractorWork> Trial::work(farm::SiloId silo) const {
    std::vector<entries::TractorWork> all;
    for (const auto& [tractor, move] : m_moves) {
        entries::TractorWork work{tractor, activityOf(move.zone), std::nullopt, move.share};
        if (move.zone != widgets::Zone::away) work.silo = silo;
        all.push_back(work);
    }
    return all;
}

advice::Change Trial::change(const advice::AdviceSituation& situation, const season::FarmBook& farm) const {
    advice::Change change;
    for (const auto& [id, move] : m_moves) {
        const auto known = farm.tractors.find(id);
        if (known == farm.tractors.end()) continue;
        const auto found =
            std::find_if(situation.tractors.begin(), situation.tractors.end(),
                         [&](const advice::Tractor& each) { return each.name == known->second.name; });
        if (found == situation.tractors.end()) continue;
        change.duties.push_back({static_cast<std::size_t>(found - situation.tractors.begin()),
                                 activityOf(move.zone), move.share});
    }
    change.layer = m_layer;
    return change;
}

Trial trialOf(const advice::Change& change, const advice::AdviceSituation& situation,
              const season::FarmBook& farm) {
    Trial trial;
    for (const advice::Duty& duty : change.duties) {
        const std::string& name = situation.tractors[duty.tractor].name;
        const auto known = std::find_if(farm.tractors.begin(), farm.tractors.end(),
                                        [&](const auto& each) { return each.second.name == name; });
        if (known == farm.tractors.end()) continue;
        const bool packs = duty.activity == farm::Activity::packing;
        trial.move(known->first, zoneOf(duty.activity), packs ? duty.share : Share::fromFraction(1));
    }
    if (change.layer) trial.spread(*change.layer);
    return trial;
}

QString sentenceOf(const Trial& trial, const AdviceState& state, const season::FarmBook& farm,
                   const Speech& speech) {
    if (trial.isEmpty()) return TrialText::tr("What if? Move a tractor or record a layer: it is only tried.");
    if (!state.situation || !state.advice) return TrialText::tr("What if: not enough is known to say.");
    const advice::Change change = trial.change(*state.situation, farm);
    const auto then = advice::whatIf(*state.situation, change);
    if (!then) return speech.say(then.error());
    return TrialText::tr("What if: %1: %2", "what is tried and what it would come to")
        .arg(joined(advice::actionsOf(*state.situation, change), speech),
             joined(advice::effectOf(state.advice->now().outcome, *then, state.advice->target), speech));
}

std::optional<entries::AdviceDecided> decisionOn(const Trial& trial, const AdviceState& state,
                                                 const season::FarmBook& farm, farm::SiloId silo) {
    if (!state.situation || !state.advice) return std::nullopt;
    const advice::Change change = trial.change(*state.situation, farm);
    const auto then = advice::whatIf(*state.situation, change);
    if (!then) return std::nullopt;
    const advice::Outcome& now = state.advice->now().outcome;
    return entries::AdviceDecided{.silo = silo,
                                  .advice = advice::nameOf(*state.situation, change),
                                  .decision = entries::AdviceDecision::accepted,
                                  .before = now.density,
                                  .after = then->density,
                                  .chanceBefore = now.chance,
                                  .chanceAfter = then->chance};
}

}  // namespace treadwell::fill
