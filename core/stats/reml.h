#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace treadwell::stats {

/// Numbers in groups within groups. `levels`, outermost first, each gives every number's group at that level;
/// equal names within different outer groups are different groups.
struct NestedSample {
    std::vector<double> values;                     ///< n
    std::vector<std::vector<std::int64_t>> levels;  ///< each n
};

enum class RemlOutcome : std::uint8_t {
    converged,
    evaluationsRanOut,
    notEstimable,  ///< a level, the outermost among them, has no two groups to compare, or no group two
                   ///< values
};

struct RemlFit {
    RemlOutcome outcome = RemlOutcome::notEstimable;
    double mean = 0.0;
    double meanVariance = 0.0;
    std::vector<double> components;  ///< variance of each level's groups, outermost first; may be 0
    double residual = 0.0;           ///< variance of the values within the innermost group
    double logLikelihood = 0.0;      ///< restricted
    int evaluations = 0;

    [[nodiscard]] bool isUsable() const noexcept { return outcome == RemlOutcome::converged; }
};

/// Variance components of y = mean + group + group within group + ... + residual, all normal, by restricted
/// maximum likelihood. The residual's variance is profiled out; each level is integrated out from the inside
/// by sums over its groups, so an evaluation costs as much as there are groups. Values finite, of any size;
/// components relative to 1e-5. Throws std::invalid_argument for shapes that do not fit and values not
/// finite. What no data can tell (a level with one group, such as the site on one farm) is told by `outcome`.
/// Sources: Patterson & Thompson 1971, Biometrika 58(3):545-554; Bates et al. 2015, Journal of Statistical
/// Software 67(1), eq. 41 (the profiled criterion).
[[nodiscard]] RemlFit reml(const NestedSample& sample);

}  // namespace treadwell::stats
