#include "core/stats/student.h"

#include "core/stats/bisect.h"
#include "core/stats/normal.h"

#include <unsupported/Eigen/SpecialFunctions>

#include <cmath>
#include <stdexcept>

namespace treadwell::stats {

double studentCdf(double x, double degreesOfFreedom) {
    if (!(degreesOfFreedom > 0.0)) throw std::invalid_argument("degrees of freedom not above 0");
    // Beyond this the two differ by less than the incomplete beta function errs.
    if (degreesOfFreedom > 1e7) return normalCdf(x);
    const double square = x * x / degreesOfFreedom;
    // Near the middle 1 / (1 + square) has lost the digits of x, so the function's mirror image is taken
    // there.
    const double tail =
        square < 1.0 / degreesOfFreedom
            ? 0.5 - 0.5 * Eigen::numext::betainc(0.5, 0.5 * degreesOfFreedom, square / (1.0 + square))
            : 0.5 * Eigen::numext::betainc(0.5 * degreesOfFreedom, 0.5, 1.0 / (1.0 + square));
    return x <= 0.0 ? tail : 1.0 - tail;
}

double studentQuantile(double probability, double degreesOfFreedom) {
    if (!(probability >= 1e-300 && probability < 1.0))
        throw std::invalid_argument("probability outside (0, 1)");
    if (!(degreesOfFreedom >= 1.0)) throw std::invalid_argument("degrees of freedom below 1");
    if (degreesOfFreedom > 1e7) return normalQuantile(probability);
    if (probability == 0.5) return 0.0;
    // In the lower tail, where the cdf keeps its digits; t lies beyond the normal quantile.
    const double lower = probability < 0.5 ? probability : 1.0 - probability;
    const double inner = normalQuantile(lower);
    double outer = 2.0 * inner;
    while (studentCdf(outer, degreesOfFreedom) > lower) outer *= 2.0;
    const double size =
        bisected([&](double x) { return studentCdf(x, degreesOfFreedom); }, lower, outer, inner);
    return probability < 0.5 ? size : -size;
}

}  // namespace treadwell::stats
