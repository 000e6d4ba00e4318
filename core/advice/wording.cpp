#include "core/advice/wording.h"

#include "core/advice/codes.h"

#include <algorithm>
#include <array>

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

Message gainOf(const Outcome& now, const Outcome& then, const density::Target& target) {
    return {code::adviceGain,
            {now.density.amount(), then.density.amount(), target.density.amount(), now.chance.amount(),
             then.chance.amount()}};
}

Message thinnerOf(const Outcome& now, const Outcome& then) {
    return {code::adviceThinnerGain, {now.passes, then.passes, then.upTo.value_or(then.density).amount()}};
}

Message actionNamed(std::string_view part) {
    if (part == "layer") return {code::adviceThinner, {}};
    if (part == "delivery") return {code::adviceSlower, {}};
    const std::size_t colon = part.find(':');
    if (colon == std::string_view::npos) return {code::adviceAsNow, {}};
    const std::string_view token = part.substr(0, colon);
    std::string name{part.substr(colon + 1)};
    if (token == "spread") return {code::adviceSpread, {std::move(name)}};
    if (token == "leave") return {code::adviceLeave, {std::move(name)}};
    if (token == "pack") return {code::advicePack, {std::move(name)}};
    return {code::advicePackSome, {std::move(name)}};
}

bool beginsAction(std::string_view part) {
    constexpr std::array<std::string_view, 4> kTokens{"spread:", "leave:", "pack:", "packPart:"};
    return part == "layer" || part == "delivery" ||
           std::any_of(kTokens.begin(), kTokens.end(),
                       [part](std::string_view token) { return part.starts_with(token); });
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
    if (change.delivery) {
        const bool held = *change.delivery == situation.delivery;
        actions.push_back({held ? code::adviceHold : code::adviceDelivery, {change.delivery->amount()}});
    }
    if (actions.empty()) actions.push_back({code::adviceAsNow, {}});
    return actions;
}

std::vector<Message> actionsNamed(std::string_view name) {
    std::vector<std::string> parts;
    for (std::size_t from = 0; from <= name.size();) {
        const std::size_t plus = std::min(name.find('+', from), name.size());
        const std::string_view part = name.substr(from, plus - from);
        // A tractor's own name may hold the sign.
        if (parts.empty() || beginsAction(part)) {
            parts.emplace_back(part);
        } else {
            parts.back() += '+' + std::string{part};
        }
        from = plus + 1;
    }
    std::vector<Message> actions;
    for (const std::string& part : parts) actions.push_back(actionNamed(part));
    return actions;
}

std::vector<Message> effectOf(const Outcome& now, const Outcome& then, const density::Target& target) {
    std::vector<Message> says;
    if (then.density != now.density) {
        says.push_back(gainOf(now, then, target));
    } else if (then.upTo) {
        says.push_back(thinnerOf(now, then));
    } else {
        says.push_back({code::adviceKeeps, {target.density.amount(), then.chance.amount()}});
    }
    addCost(then, says);
    return says;
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
            says.push_back(gainOf(now, after, advice.target));
            break;
        case Verdict::canLeave:
            says.push_back({code::adviceKeeps, {target, after.chance.amount()}});
            break;
        case Verdict::thinner:
            says.push_back(thinnerOf(now, after));
            break;
        case Verdict::saturated:
            says.push_back({code::adviceSaturated, {advice.target.limit.density.amount()}});
            break;
        case Verdict::closest:
            says.push_back(gainOf(now, after, advice.target));
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
