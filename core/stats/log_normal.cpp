#include "core/stats/log_normal.h"

#include "core/stats/normal.h"

#include <algorithm>
#include <cmath>

namespace treadwell::stats {

double LogNormal::quantile(double probability) const {
    return median * std::exp(sigma * normalQuantile(probability));
}

double LogNormal::cdf(double x) const noexcept {
    if (x <= 0.0) return 0.0;
    if (sigma == 0.0) return x < median ? 0.0 : 1.0;
    return normalCdf(std::log(x / median) / sigma);
}

double LogNormal::mean() const noexcept {
    return median * std::exp(0.5 * sigma * sigma);
}

double LogNormal::meanUpTo(double cap) const noexcept {
    if (sigma == 0.0) return std::min(median, cap);
    const double z = std::log(cap / median) / sigma;
    return mean() * normalCdf(z - sigma) + cap * normalCdf(-z);
}

}  // namespace treadwell::stats
