#pragma once

#include <functional>
#include <vector>

namespace treadwell::stats {

struct Minimum {
    std::vector<double> at;
    double value;
    int evaluations;
    bool converged;  ///< the simplex has shrunk to rounding; false where the evaluations ran out
};

/// A local minimum of a function of a few variables that has no derivatives at hand, from `start` (not empty)
/// with a simplex of edges `step`. Converged when the simplex spans less than 1e-9 of its size in every
/// direction; the search then starts once more from where it ended, since a simplex may have collapsed. Where
/// the function is not finite it counts as larger than anywhere else.
/// Source: Nelder & Mead 1965, The Computer Journal 7(4):308-313.
[[nodiscard]] Minimum minimised(const std::function<double(const std::vector<double>&)>& function,
                                const std::vector<double>& start, double step, int mostEvaluations);

}  // namespace treadwell::stats
