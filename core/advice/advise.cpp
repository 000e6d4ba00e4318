#include "core/advice/advise.h"

#include "core/advice/codes.h"
#include "core/advice/wording.h"
#include "core/packing/passes.h"

#include <algorithm>
#include <functional>
#include <tuple>

namespace treadwell::advice {

namespace {

using Test = std::function<bool(const Candidate&)>;

/// A delivery rounded to the wanted chance must not miss it by rounding.
constexpr double kChanceRounding = 1e-9;
/// Less than this is no gain in chance.
constexpr double kNoGain = 1e-6;

/// Judges the candidates of one advice.
class Judge final {
  public:
    Judge(const AdviceSituation& situation, Advice& advice) : m_situation{situation}, m_advice{advice} {}

    void choose() {
        const Outcome& now = m_advice.now().outcome;
        if (now.saturated || reaches(m_advice.now())) {
            if (take(Verdict::canLeave, [&](const Candidate& c) { return canLeave(c); })) return;
            if (!now.saturated && takeThinner()) return;
            m_advice.verdict = now.saturated ? Verdict::saturated : Verdict::allIsWell;
            return;
        }
        if (take(Verdict::change, [&](const Candidate& c) { return reaches(c) && advisable(c); })) return;
        if (takeClosest() || takeThinner()) return;
        m_advice.verdict = Verdict::nothingHelps;
    }

    /// After the choice.
    [[nodiscard]] Message whyOf(const Candidate& candidate) const {
        const Outcome& outcome = candidate.outcome;
        if (&candidate == &m_advice.best()) return {code::adviceChosen, {}};
        if (&candidate == &m_advice.now()) return {code::adviceChangesNothing, {}};
        if (tooSlow(candidate)) {
            return {code::adviceTooSlow,
                    {candidate.change.delivery->amount(), m_situation.delivery.amount()}};
        }
        if (!reaches(candidate)) {
            return {code::adviceFallsShort, {outcome.chance.amount(), m_situation.wantedChance.amount()}};
        }
        if (outcome.passes < packing::kLeastPasses && (candidate.change.layer || lessPacking(candidate))) {
            return {code::adviceFewPasses, {outcome.passes, packing::kLeastPasses}};
        }
        return m_advice.verdict == Verdict::change ? Message{code::adviceDearer, {}}
                                                   : Message{code::adviceNotNeeded, {}};
    }

  private:
    [[nodiscard]] bool reaches(const Candidate& candidate) const {
        return candidate.outcome.chance.fraction() >= m_situation.wantedChance.fraction() - kChanceRounding;
    }

    [[nodiscard]] bool tooSlow(const Candidate& candidate) const {
        return candidate.change.delivery && *candidate.change.delivery < m_situation.delivery * kSlowestPart;
    }

    [[nodiscard]] bool enoughPasses(const Candidate& candidate) const {
        return candidate.outcome.passes >= packing::kLeastPasses;
    }

    /// A layer is thinned for its passes or not at all.
    [[nodiscard]] bool advisable(const Candidate& candidate) const {
        return !tooSlow(candidate) && (!candidate.change.layer || enoughPasses(candidate));
    }

    [[nodiscard]] bool lessPacking(const Candidate& candidate) const {
        return candidate.outcome.packing < m_advice.now().outcome.packing;
    }

    [[nodiscard]] bool canLeave(const Candidate& candidate) const {
        const auto& duties = candidate.change.duties;
        const bool leaves = duties.size() == 1 && duties.front().activity == farm::Activity::away;
        return leaves && enoughPasses(candidate) && (reaches(candidate) || candidate.outcome.saturated);
    }

    bool take(Verdict verdict, const Test& test) {
        const Candidate* best = nullptr;
        for (const Candidate& candidate : m_advice.candidates) {
            if (&candidate != &m_advice.now() && test(candidate) &&
                (best == nullptr || cheaper(candidate, *best))) {
                best = &candidate;
            }
        }
        if (best == nullptr) return false;
        m_advice.verdict = verdict;
        m_advice.chosen = static_cast<std::size_t>(best - m_advice.candidates.data());
        return true;
    }

    bool takeThinner() {
        return take(Verdict::thinner, [&](const Candidate& c) {
            return c.change.layer && enoughPasses(c) && (c.change.duties.empty() || reaches(m_advice.now()));
        });
    }

    bool takeClosest() {
        double best = m_advice.now().outcome.chance.fraction() + kNoGain;
        for (const Candidate& candidate : m_advice.candidates) {
            if (advisable(candidate)) best = std::max(best, candidate.outcome.chance.fraction());
        }
        return take(Verdict::closest,
                    [&](const Candidate& c) { return advisable(c) && c.outcome.chance.fraction() >= best; });
    }

    /// A total order that does not know the tractors' order.
    [[nodiscard]] bool cheaper(const Candidate& a, const Candidate& b) const {
        const auto key = [&](const Candidate& c) {
            return std::tuple{c.change.delivery.has_value(),
                              c.outcome.costForRanking,
                              c.change.duties.size() + (c.change.layer ? 1U : 0U),
                              massMoved(c),
                              -c.outcome.chance.fraction(),
                              std::string_view{c.name}};
        };
        return key(a) < key(b);
    }

    [[nodiscard]] double massMoved(const Candidate& candidate) const {
        double mass = 0.0;
        for (const Duty& duty : candidate.change.duties) mass += m_situation.tractors[duty.tractor].mass.si();
        return mass;
    }

    const AdviceSituation& m_situation;
    Advice& m_advice;
};

}  // namespace

Result<Advice> advise(const AdviceSituation& situation) {
    if (const auto checked = check(situation); !checked) return tl::unexpected{checked.error()};
    const Comparer comparer{situation};
    LiveChanges live = liveChanges(situation, comparer);

    Advice advice;
    advice.target = comparer.target();
    advice.left = live.left;
    advice.candidates.reserve(live.changes.size());
    for (Change& change : live.changes) {
        const Outcome outcome = comparer.outcomeOf(change);
        const DryDensity before = advice.candidates.empty() ? outcome.density : advice.now().outcome.density;
        advice.candidates.push_back({.name = nameOf(situation, change),
                                     .change = change,
                                     .actions = actionsOf(situation, change),
                                     .outcome = outcome,
                                     .effect = density::effectOf(before, outcome.density),
                                     .why = {code::adviceChangesNothing, {}}});
    }
    Judge judge{situation, advice};
    judge.choose();
    for (Candidate& candidate : advice.candidates) candidate.why = judge.whyOf(candidate);
    advice.says = saysOf(situation, advice);
    return advice;
}

const Candidate* find(const Advice& advice, std::string_view name) noexcept {
    const auto found = std::find_if(advice.candidates.begin(), advice.candidates.end(),
                                    [&](const Candidate& candidate) { return candidate.name == name; });
    return found == advice.candidates.end() ? nullptr : &*found;
}

}  // namespace treadwell::advice
