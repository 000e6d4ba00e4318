#include "core/advice/wording.h"

#include "core/advice/codes.h"

namespace treadwell::advice {

namespace {

using farm::Activity;

bool packsAll(const Duty& duty) {
    return duty.activity == Activity::packing && duty.share >= Share::fromFraction(1.0);
}

std::string_view tokenOf(const Duty& duty) {
    if (duty.activity == Activity::spreading) return "spread";
    if (duty.activity == Activity::away) return "leave";
    return packsAll(duty) ? "pack" : "packPart";
}

Message actionOf(const Tractor& tractor, const Duty& duty) {
    if (duty.activity == Activity::spreading) return {code::adviceSpread, {tractor.name}};
    if (duty.activity == Activity::away) return {code::adviceLeave, {tractor.name}};
    if (packsAll(duty)) return {code::advicePack, {tractor.name}};
    return {code::advicePackPart, {tractor.name, duty.share.amount()}};
}

Message gainOf(const Advice& advice) {
    const Outcome& before = advice.now().outcome;
    const Outcome& after = advice.best().outcome;
    return {code::adviceGain,
            {before.density.amount(), after.density.amount(), advice.target.density.amount(),
             before.chance.amount(), after.chance.amount()}};
}

Message thinnerOf(const Advice& advice) {
    const Outcome& after = advice.best().outcome;
    return {code::adviceThinnerGain,
            {advice.now().outcome.passes, after.passes, after.upTo.value_or(after.density).amount()}};
}

void addCost(const Outcome& outcome, std::vector<Message>& says) {
    if (!outcome.cost || *outcome.cost == CostRate{}) return;
    if (*outcome.cost > CostRate{}) {
        says.push_back({code::adviceCosts, {outcome.cost->amount()}});
    } else {
        says.push_back({code::adviceSaves, {(-*outcome.cost).amount()}});
    }
}

}  // namespace

std::string nameOf(const AdviceSituation& situation, const Change& change) {
    std::string name;
    const auto join = [&](std::string_view part) {
        if (!name.empty()) name += '+';
        name += part;
    };
    for (const Duty& duty : change.duties) {
        join(tokenOf(duty));
        name += ':' + situation.tractors[duty.tractor].name;
    }
    if (change.layer) join("layer");
    if (change.delivery) join("delivery");
    return name.empty() ? "asNow" : name;
}

std::vector<Message> actionsOf(const AdviceSituation& situation, const Change& change) {
    std::vector<Message> actions;
    for (const Duty& duty : change.duties) {
        actions.push_back(actionOf(situation.tractors[duty.tractor], duty));
    }
    if (change.layer) actions.push_back({code::adviceLayer, {change.layer->layerAmount()}});
    if (change.delivery) actions.push_back({code::adviceDelivery, {change.delivery->amount()}});
    if (actions.empty()) actions.push_back({code::adviceAsNow, {}});
    return actions;
}

std::vector<Message> saysOf(const AdviceSituation& situation, const Advice& advice) {
    const Outcome& now = advice.now().outcome;
    const Outcome& after = advice.best().outcome;
    const Amount target = advice.target.density.amount();
    std::vector<Message> says;
    switch (advice.verdict) {
        case Verdict::allIsWell:
            says.push_back(
                {code::adviceAllIsWell, {target, now.chance.amount(), situation.wantedChance.amount()}});
            break;
        case Verdict::change:
            says.push_back(gainOf(advice));
            break;
        case Verdict::canLeave:
            says.push_back({code::adviceKeeps, {target, after.chance.amount()}});
            break;
        case Verdict::thinner:
            says.push_back(thinnerOf(advice));
            break;
        case Verdict::saturated:
            says.push_back({code::adviceSaturated, {advice.target.limit.density.amount()}});
            break;
        case Verdict::closest:
            says.push_back(gainOf(advice));
            says.push_back({code::adviceClosest, {situation.wantedChance.amount()}});
            break;
        case Verdict::nothingHelps:
            says.push_back({code::adviceNothingHelps, {target, now.chance.amount()}});
            break;
    }
    addCost(after, says);
    return says;
}

}  // namespace treadwell::advice
