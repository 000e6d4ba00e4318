#include "core/density/yardsticks.h"

#include "core/density/codes.h"
#include "core/packing/passes.h"

namespace treadwell::density {

namespace {

Verdict verdict(bool reached) {
    return reached ? Verdict::reached : Verdict::missed;
}

void judgeMass(const Situation& situation, Yardsticks& yardsticks) {
    for (const Machine& machine : situation.machines) {
        yardsticks.massPacking += machine.mass * machine.share.fraction();
    }
    std::optional<AsFedRate> rate;
    if (const auto* delivery = std::get_if<AsFedRate>(&situation.work)) rate = *delivery;
    if (const auto* packed = std::get_if<PackedMass>(&situation.work)) rate = packed->delivery;
    if (!rate) return;
    for (const packing::MassRuleFacts& rule : packing::massRules()) {
        const MachineMass asked = packing::requiredMass(rule, *rate, situation.dryMatter);
        yardsticks.massRules.push_back({rule.rule, asked, verdict(yardsticks.massPacking >= asked)});
    }
}

/// The machines' rolling, for a tonne as fed.
std::vector<packing::Roller> rollersOf(const Situation& situation, Yardsticks& yardsticks) {
    const std::vector<MachineWork> works = machineWork(situation);
    std::vector<packing::Roller> rollers;
    rollers.reserve(works.size());
    for (std::size_t i = 0; i < works.size(); ++i) {
        const Machine& machine = situation.machines[i];
        yardsticks.tracksAssumed |= !machine.speed || !machine.trackWidth;
        rollers.push_back({works[i].packing, machine.speed.value_or(packing::kUsualSpeed),
                           machine.trackWidth.value_or(packing::kUsualTrackWidth)});
    }
    return rollers;
}

void judgePasses(const Situation& situation, Yardsticks& yardsticks) {
    const std::vector<packing::Roller> rollers = rollersOf(situation, yardsticks);
    // The passes are counted over what was spread, so the thickness is not held to the equation's range.
    const Length layer = situation.layer.value_or(kAssumedLayer);
    const AsFedDensity loose = crop::looseAsFed(situation.crop, situation.dryMatter);
    yardsticks.passes = packing::passesPerLayer(rollers, loose, layer);
    yardsticks.passesVerdict = verdict(yardsticks.passes >= packing::kLeastPasses);
    if (yardsticks.passes > 0.0) {
        PackingIntensity now;
        for (const packing::Roller& roller : rollers) now += roller.rolling;
        yardsticks.timeForThreePasses = now * (packing::kLeastPasses / yardsticks.passes);
    } else {
        yardsticks.timeForThreePasses = packing::intensityForPasses(
            packing::kLeastPasses, loose, layer, packing::kUsualSpeed, packing::kUsualTrackWidth);
    }
}

/// Which are reached and which missed. Full pores are left out: a crop short of saturation is no fault.
void name(Yardsticks& yardsticks) {
    const auto file = [&](Code code, Verdict verdict) {
        if (verdict == Verdict::reached) yardsticks.reached.push_back(code);
        if (verdict == Verdict::missed) yardsticks.missed.push_back(code);
    };
    for (const MassYardstick& mass : yardsticks.massRules) {
        file(packing::factsOf(mass.rule).words, mass.verdict);
    }
    file(code::yardstickPasses, yardsticks.passesVerdict);
    file(code::yardstickTarget, yardsticks.targetVerdict);
}

}  // namespace

Yardsticks yardsticksFor(const Situation& situation, PackingFactor factor, DryDensity median, bool saturated,
                         const Target& target) {
    Yardsticks yardsticks;
    const DryMatter dryMatter = situation.dryMatter;
    for (const Regression* regression : regressions()) {
        yardsticks.regressions.push_back(
            {regression, regression->value({factor, dryMatter, situation.meanDepth}),
             dryMatter >= regression->wettest && dryMatter <= regression->driest});
    }
    judgeMass(situation, yardsticks);
    judgePasses(situation, yardsticks);
    if (saturated) yardsticks.saturationVerdict = Verdict::reached;
    yardsticks.targetVerdict = verdict(median >= target.density);
    name(yardsticks);
    return yardsticks;
}

}  // namespace treadwell::density
