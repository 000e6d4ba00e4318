#include "core/stats/reml.h"

#include "core/stats/level_summary.h"
#include "core/stats/minimise.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <stdexcept>

namespace treadwell::stats {

namespace {

/// The sample as sums: what the innermost groups hold, and each group's place in the level above.
struct Tree {
    std::vector<LevelSummary> innermost;
    std::vector<std::vector<std::size_t>> parents;  ///< by level, outermost first
    double shift = 0.0;                             ///< taken from every value, against cancellation
    double count = 0.0;
};

void check(const NestedSample& sample) {
    for (const auto& level : sample.levels) {
        if (level.size() != sample.values.size())
            throw std::invalid_argument("a level does not fit the values");
    }
    const auto finite = [](double value) { return std::isfinite(value); };
    if (!std::all_of(sample.values.begin(), sample.values.end(), finite))
        throw std::invalid_argument("a value is not finite");
}

Tree treeOf(const NestedSample& sample) {
    const std::size_t n = sample.values.size();
    std::vector<std::size_t> order(n);
    std::iota(order.begin(), order.end(), 0);
    const auto pathBefore = [&](std::size_t a, std::size_t b) {
        for (const auto& level : sample.levels) {
            if (level[a] != level[b]) return level[a] < level[b];
        }
        return false;
    };
    std::sort(order.begin(), order.end(), pathBefore);
    Tree tree;
    tree.count = static_cast<double>(n);
    tree.shift = std::accumulate(sample.values.begin(), sample.values.end(), 0.0) / std::max(1.0, tree.count);
    tree.parents.resize(sample.levels.size());
    for (std::size_t i = 0; i < n; ++i) {
        bool isNew = i == 0;
        for (std::size_t level = 0; level < sample.levels.size(); ++level) {
            isNew = isNew || sample.levels[level][order[i]] != sample.levels[level][order[i - 1]];
            if (isNew) tree.parents[level].push_back(level == 0 ? 0 : tree.parents[level - 1].size() - 1);
        }
        if (isNew) tree.innermost.emplace_back();
        const double value = sample.values[order[i]] - tree.shift;
        tree.innermost.back() += LevelSummary::of(value, 1.0);
    }
    return tree;
}

bool isEstimable(const Tree& tree) {
    if (tree.parents.empty() || tree.count <= static_cast<double>(tree.innermost.size())) return false;
    double within = 0.0;
    double whole = 0.0;
    for (const LevelSummary& group : tree.innermost) {
        within += group.misfit();
        whole += group.square;
    }
    if (!(within > 1e-14 * whole)) return false;  // the groups leave nothing but rounding
    std::size_t outer = 1;
    for (const auto& level : tree.parents) {
        if (level.size() <= outer) return false;
        outer = level.size();
    }
    return true;
}

/// Of the mean, every group integrated out; `ratios` are the components over the residual variance.
LevelSummary ofMean(const Tree& tree, const std::vector<double>& ratios) {
    std::vector<LevelSummary> groups = tree.innermost;
    for (std::size_t level = tree.parents.size(); level-- > 0;) {
        const auto& parents = tree.parents[level];
        std::vector<LevelSummary> outer(parents.back() + 1);
        for (std::size_t i = 0; i < groups.size(); ++i)
            outer[parents[i]] += groups[i].passedUp(ratios[level]);
        groups = std::move(outer);
    }
    return groups.front();
}

double residualOf(const Tree& tree, const LevelSummary& mean) {
    return mean.misfit() / (tree.count - 1.0);
}

/// -2 ln of the restricted likelihood, the residual variance at its best.
double criterion(const Tree& tree, const std::vector<double>& ratios) {
    const LevelSummary mean = ofMean(tree, ratios);
    const double degrees = tree.count - 1.0;
    return degrees * (1.0 + std::log(2.0 * std::numbers::pi * residualOf(tree, mean))) + mean.logDeterminant +
           std::log(mean.precision);
}

std::vector<double> squares(std::vector<double> roots) {
    for (double& root : roots) root *= root;
    return roots;
}

}  // namespace

RemlFit reml(const NestedSample& sample) {
    constexpr int kMostEvaluations = 20'000;
    check(sample);
    const Tree tree = treeOf(sample);
    RemlFit fit;
    if (!isEstimable(tree)) return fit;
    // Over the roots of the ratios: a component of 0 then lies inside the search, not at its edge.
    const Minimum best =
        minimised([&](const std::vector<double>& roots) { return criterion(tree, squares(roots)); },
                  std::vector<double>(tree.parents.size(), 1.0), 0.5, kMostEvaluations);
    const std::vector<double> ratios = squares(best.at);
    const LevelSummary mean = ofMean(tree, ratios);
    fit.residual = residualOf(tree, mean);
    fit.outcome = best.converged ? RemlOutcome::converged : RemlOutcome::evaluationsRanOut;
    fit.mean = tree.shift + mean.level();
    fit.meanVariance = fit.residual / mean.precision;
    for (const double ratio : ratios) fit.components.push_back(ratio * fit.residual);
    fit.logLikelihood = -0.5 * best.value;
    fit.evaluations = best.evaluations;
    return fit;
}

}  // namespace treadwell::stats
