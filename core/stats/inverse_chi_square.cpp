#include "core/stats/inverse_chi_square.h"

#include "core/stats/bisect.h"

#include <unsupported/Eigen/SpecialFunctions>

#include <cmath>
#include <stdexcept>

namespace treadwell::stats {

double InverseChiSquare::cdf(double variance) const {
    if (!(variance > 0.0)) return 0.0;
    return Eigen::numext::igammac(0.5 * degreesOfFreedom, 0.5 * degreesOfFreedom * scale / variance);
}

double InverseChiSquare::quantile(double probability) const {
    if (!(probability > 0.0 && probability < 1.0)) throw std::invalid_argument("probability outside (0, 1)");
    double low = scale;
    double high = scale;
    while (cdf(low) >= probability) low *= 0.5;
    while (cdf(high) <= probability) high *= 2.0;
    return bisected([&](double variance) { return cdf(variance); }, probability, low, high);
}

}  // namespace treadwell::stats
