#include "core/density/distribution.h"

#include "core/stats/normal.h"
#include "core/stats/student.h"

#include <algorithm>
#include <cmath>

namespace treadwell::density {

Distribution::Distribution(stats::LogNormal uncapped, DryDensity limit, double degreesOfFreedom)
    : m_uncapped{uncapped},
      m_limit{limit},
      m_degreesOfFreedom{degreesOfFreedom},
      m_halfBand80{std::isinf(degreesOfFreedom) ? stats::kHalfBand80
                                                : stats::studentQuantile(0.9, degreesOfFreedom)} {}

DryDensity Distribution::at(double standardScore) const {
    return std::min(DryDensity::fromSi(m_uncapped.median * std::exp(m_uncapped.sigma * standardScore)),
                    m_limit);
}

DryDensity Distribution::quantile(double probability) const {
    return at(stats::studentQuantile(probability, m_degreesOfFreedom));
}

DryDensity Distribution::median() const {
    return at(0.0);
}

DryDensity Distribution::low80() const {
    return at(-m_halfBand80);
}

DryDensity Distribution::high80() const {
    return at(m_halfBand80);
}

DryDensity Distribution::mean() const noexcept {
    return DryDensity::fromSi(m_uncapped.meanUpTo(m_limit.si()));
}

Chance Distribution::chanceOfAtLeast(DryDensity density) const {
    if (density > m_limit) return Chance::fromFraction(0.0);
    // The upper tail itself, since 1 - cdf loses the digits of a small chance.
    if (density <= DryDensity{}) return Chance::fromFraction(1.0);
    if (m_uncapped.sigma == 0.0) return Chance::fromFraction(density.si() <= m_uncapped.median ? 1.0 : 0.0);
    const double score = std::log(m_uncapped.median / density.si()) / m_uncapped.sigma;
    return Chance::fromFraction(stats::studentCdf(score, m_degreesOfFreedom));
}

}  // namespace treadwell::density
