// What advice must obey, whatever the coefficients.
#include "core/advice/advise.h"
#include "core/advice/codes.h"
#include "core/advice/voice.h"
#include "tests/core/density/generators.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace treadwell::advice {
namespace {

using density::generated;
using farm::Activity;

AdviceSituation generatedSite() {
    const density::Situation silo = density::generatedSituation();
    AdviceSituation situation{.delivery = std::get<AsFedRate>(silo.work),
                              .dryMatter = silo.dryMatter,
                              .layer = silo.layer,
                              .meanDepth = silo.meanDepth,
                              .crop = silo.crop};
    situation.wantedChance = Chance::fromPercent(*generated(5, 95));
    for (std::size_t i = 0; i < silo.machines.size(); ++i) {
        Tractor tractor{.name = std::string(1, static_cast<char>('A' + i)), .mass = silo.machines[i].mass};
        tractor.activity = *rc::gen::element(Activity::packing, Activity::spreading, Activity::away);
        tractor.share = silo.machines[i].share;
        if (*rc::gen::inRange(0, 3) > 0) tractor.hourlyCost = CostRate::fromPerHour(*generated(0, 200));
        situation.tractors.push_back(tractor);
    }
    return situation;
}

RC_GTEST_PROP(AdviceProperty, TheChosenIsNeverCostlierThanAnotherThatDoes, ()) {
    const AdviceSituation situation = generatedSite();
    const Advice advice = advise(situation).value();
    if (advice.verdict != Verdict::change) return;
    RC_ASSERT(advice.best().outcome.chance.fraction() >= situation.wantedChance.fraction() - 1e-9);
    for (const Candidate& candidate : advice.candidates) {
        if (candidate.why.code != code::adviceDearer) continue;
        if (!candidate.outcome.cost || !advice.best().outcome.cost) continue;
        RC_ASSERT(*advice.best().outcome.cost <= *candidate.outcome.cost);
    }
}

RC_GTEST_PROP(AdviceProperty, WhatReachesTheTargetIsCalledSo, ()) {
    const AdviceSituation situation = generatedSite();
    const Advice advice = advise(situation).value();
    for (const Candidate& candidate : advice.candidates) {
        if (candidate.why.code != code::adviceFallsShort) continue;
        RC_ASSERT(candidate.outcome.chance < situation.wantedChance);
    }
}

RC_GTEST_PROP(AdviceProperty, AnotherTractorNeverLowersTheDensity, ()) {
    const Advice advice = advise(generatedSite()).value();
    for (const Candidate& candidate : advice.candidates) {
        const bool onlyAdds = !candidate.change.delivery && !candidate.change.layer &&
                              std::all_of(candidate.actions.begin(), candidate.actions.end(),
                                          [](const Message& m) { return m.code == code::advicePack; });
        if (onlyAdds) RC_ASSERT(candidate.effect.change.si() >= -1e-9);
    }
}

RC_GTEST_PROP(AdviceProperty, OneFewerNeverRaisesIt, ()) {
    const Advice advice = advise(generatedSite()).value();
    for (const Candidate& candidate : advice.candidates) {
        if (candidate.actions.front().code != code::adviceLeave) continue;
        RC_ASSERT(candidate.effect.change.si() <= 1e-9);
    }
}

RC_GTEST_PROP(AdviceProperty, TheOrderOfTheTractorsChangesNothing, ()) {
    AdviceSituation situation = generatedSite();
    const Advice advice = advise(situation).value();
    std::reverse(situation.tractors.begin(), situation.tractors.end());
    if (situation.tractors.size() > 2) std::swap(situation.tractors[0], situation.tractors[1]);
    const Advice permuted = advise(situation).value();
    RC_ASSERT(advice.verdict == permuted.verdict);
    RC_ASSERT(advice.chosen == permuted.chosen);
    RC_ASSERT(advice.says == permuted.says);
    RC_ASSERT(advice.candidates.size() == permuted.candidates.size());
    for (std::size_t i = 0; i < advice.candidates.size(); ++i) {
        RC_ASSERT(advice.candidates[i].name == permuted.candidates[i].name);
        RC_ASSERT(advice.candidates[i].outcome.density == permuted.candidates[i].outcome.density);
        RC_ASSERT(advice.candidates[i].why == permuted.candidates[i].why);
    }
}

RC_GTEST_PROP(AdviceProperty, EveryNumberIsFinite, ()) {
    const Advice advice = advise(generatedSite()).value();
    RC_ASSERT(advice.candidates.size() <= kMostCandidates);
    for (const Candidate& candidate : advice.candidates) {
        RC_ASSERT(std::isfinite(candidate.outcome.density.si()));
        RC_ASSERT(std::isfinite(candidate.outcome.chance.fraction()));
        RC_ASSERT(std::isfinite(candidate.outcome.passes));
        RC_ASSERT(std::isfinite(candidate.effect.sd.si()));
    }
}

}  // namespace
}  // namespace treadwell::advice
