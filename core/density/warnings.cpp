#include "core/density/codes.h"
#include "core/density/messages.h"
#include "core/density/regression.h"

namespace treadwell::density {

namespace {

void aboutPacking(const Situation& situation, const Estimate& estimate, std::vector<Message>& warnings) {
    if (situation.machines.empty()) {
        warnings.push_back({code::noMachines, {}});
    } else if (estimate.packing.allTime <= PackingIntensity{}) {
        warnings.push_back({code::noPackingTime, {}});
    }
    for (const std::size_t i : estimate.packing.addNothing) {
        warnings.push_back({code::machineAddsNothing,
                            {static_cast<std::int64_t>(i + 1), situation.machines[i].mass.amount()}});
    }
}

void aboutEntries(const Situation& situation, const Estimate& estimate, std::vector<Message>& warnings) {
    if (!situation.layer) {
        warnings.push_back({code::layerAssumed, {estimate.layer.layerAmount()}});
    } else if (*situation.layer != estimate.layer) {
        warnings.push_back(
            {code::layerHeldToRange, {situation.layer->layerAmount(), estimate.layer.layerAmount()}});
    }
    const crop::Facts& facts = crop::factsOf(situation.crop);
    if (situation.dryMatter < facts.wettest || situation.dryMatter > facts.driest) {
        warnings.push_back({code::dryMatterOutsideCrop,
                            {situation.dryMatter.amount(), facts.wettest.amount(), facts.driest.amount()}});
    }
}

void aboutResult(const Situation& situation, const Estimate& estimate, std::vector<Message>& warnings) {
    const Target& target = estimate.target;
    if (!target.limit.saturation) {
        warnings.push_back(
            {code::saturationUnknown,
             {situation.dryMatter.amount(), crop::kSaturationFrom.amount(), crop::kSaturationTo.amount()}});
    } else if (estimate.density.isLimited()) {
        warnings.push_back({code::saturated, {target.limit.density.amount()}});
    }
    if (target.governs == Governs::saturation) {
        const DryDensity wanted = std::max(target.minimum, target.atPorosity);
        warnings.push_back({code::targetAboveSaturation, {wanted.amount(), target.limit.density.amount()}});
    }
    const Regression& field = fieldRegression();
    const DryDensity median = estimate.density.median();
    if (median < field.lowest || median > field.highest) {
        warnings.push_back(
            {code::densityOutsideSurvey, {median.amount(), field.lowest.amount(), field.highest.amount()}});
    }
    const Yardsticks& yardsticks = estimate.yardsticks;
    if (yardsticks.disagree()) {
        warnings.push_back({code::yardsticksDisagree, {yardsticks.reached, yardsticks.missed}});
    }
}

}  // namespace

std::vector<Message> warningsOf(const Situation& situation, const Estimate& estimate) {
    std::vector<Message> warnings;
    aboutPacking(situation, estimate, warnings);
    aboutEntries(situation, estimate, warnings);
    aboutResult(situation, estimate, warnings);
    return warnings;
}

}  // namespace treadwell::density
