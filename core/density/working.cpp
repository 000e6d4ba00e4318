#include "core/base/number_text.h"
#include "core/density/codes.h"
#include "core/density/messages.h"
#include "core/density/regression.h"

#include <cmath>

namespace treadwell::density {

namespace {

constexpr Source kOurs{"", Evidence::assumed};
constexpr Source kTang{"Tang, Jofriet & LeLievre 1988, Canadian Agricultural Engineering 30(1):93-98",
                       Evidence::published};
constexpr Source kPoreFree{"Richard, Veeken, de Wilde & Hamelers 2004, Biotechnol. Prog. 20:1372-1381",
                           Evidence::fromMemory};
constexpr Source kUsualGoal{"14 lb DM/ft3 and porosity 0.40, usual advice", Evidence::published};
constexpr Source kCalibration{"Measured on this farm", Evidence::derived};
constexpr Source kSurveyResidual{
    "Residual of Muck & Holmes 2000, Applied Engineering in Agriculture 16(6):613-619", Evidence::derived};

std::vector<entries::EntryId> joined(std::vector<entries::EntryId> first,
                                     const std::vector<entries::EntryId>& second) {
    first.insert(first.end(), second.begin(), second.end());
    return first;
}

void showPacking(const Situation& situation, const Estimate& estimate, const Grounds& grounds,
                 std::vector<WorkingStep>& steps) {
    const Source& source = fieldRegression().source;
    if (grounds.layers) {
        steps.push_back(
            {grounds.layers->what, grounds.layers->formula, {"", Evidence::derived}, grounds.loads});
    }
    steps.push_back({{code::workingLayer, {estimate.layer.layerAmount()}},
                     "L, 10 to 40 cm",
                     situation.layer ? source : kOurs,
                     grounds.layersSeen});
    steps.push_back({{code::workingPackingTime,
                      {estimate.packing.countedTime.amount(), estimate.packing.allTime.amount(),
                       static_cast<std::int64_t>(estimate.packing.counted.size()),
                       static_cast<std::int64_t>(situation.machines.size())}},
                     "T = sum(t)",
                     source,
                     joined(grounds.work, grounds.loads)});
    steps.push_back(
        {{code::workingPackingFactor,
          {estimate.packing.factor.si, estimate.packing.factor.us(), situation.dryMatter.amount()}},
         "P = sum(t w) / sqrt(sum(t)) sqrt(DM) / L",
         source,
         grounds.samples});
}

void showDepth(const Situation& situation, const Grounds& grounds, std::vector<WorkingStep>& steps) {
    const Source& source = fieldRegression().source;
    if (grounds.layers) {
        const bool full = grounds.layers->filled == Filled::whenFull;
        steps.push_back({{full ? code::workingDepthWhenFull : code::workingDepthAsItLies,
                          {grounds.layers->depth.amount(), grounds.layers->factor}},
                         "f = 0.818 + 0.0892388 d",
                         source});
        return;
    }
    const double factor = FieldEquation::meanFactor(situation.meanDepth.metres());
    steps.push_back({{code::workingDepthFactor, {situation.meanDepth.amount(), factor}},
                     "f = 0.818 + 0.0446194 D",
                     source});
}

std::string medianFormula(const Options& options, const Grounds& grounds) {
    const bool level = options.residual.level != 0.0;
    if (grounds.layers && grounds.layers->several) {
        return level ? "sum(m) / sum(m / min(r f k, limit))" : "sum(m) / sum(m / min(r f, limit))";
    }
    return level ? "min(r f k, limit)" : "min(r f, limit)";
}

void showDensity(const Situation& situation, const Options& options, const Estimate& estimate,
                 const Grounds& grounds, std::vector<WorkingStep>& steps) {
    const Source& source = fieldRegression().source;
    steps.push_back({{code::workingBracket, {bracketOf(estimate.packing.factor).amount()}},
                     "r = 136.157 + 0.170959 P",
                     source});
    showDepth(situation, grounds, steps);
    if (options.residual.level != 0.0) {
        steps.push_back({{code::workingLevel, {std::exp(options.residual.level)}}, "k", kCalibration});
    }
    const Limit& limit = estimate.target.limit;
    steps.push_back({{limit.saturation ? code::workingSaturation : code::workingPoreFree,
                      {limit.density.amount(), situation.dryMatter.amount()}},
                     limit.saturation ? "961 - 992 (1 - DM)" : "DM / ((1 - DM)/1000 + DM v)",
                     limit.saturation ? kTang : kPoreFree,
                     grounds.samples});
    steps.push_back({{code::workingMedian, {estimate.density.median().amount()}},
                     medianFormula(options, grounds),
                     source});
}

void showJudgement(const Estimate& estimate, std::vector<WorkingStep>& steps) {
    const Distribution& density = estimate.density;
    steps.push_back(
        {{code::workingBand, {density.low80().amount(), density.high80().amount(), density.sigma()}},
         "median exp(-+" + fixedText(density.halfBand80(), 4) + " s)",
         kSurveyResidual});
    const Target& target = estimate.target;
    steps.push_back({{code::workingTarget,
                      {target.density.amount(), target.minimum.amount(), target.atPorosity.amount(),
                       target.limit.density.amount()}},
                     "min(max(minimum, at porosity), limit)",
                     kUsualGoal});
    steps.push_back({{code::workingChance, {estimate.chance.amount()}}, "Phi(ln(r f / target) / s)", kOurs});
}

}  // namespace

std::vector<WorkingStep> workingOf(const Situation& situation, const Options& options,
                                   const Estimate& estimate, const Grounds& grounds) {
    std::vector<WorkingStep> steps;
    showPacking(situation, estimate, grounds, steps);
    showDensity(situation, options, estimate, grounds, steps);
    showJudgement(estimate, steps);
    return steps;
}

}  // namespace treadwell::density
