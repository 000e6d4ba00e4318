#pragma once

#include "core/quantity/relations.h"
#include "core/stats/log_normal.h"

#include <algorithm>
#include <limits>

namespace treadwell::density {

/// A density as it is always shown: log-normal about the estimate and cut at the limit, where the mass beyond
/// it lies (rule B9). Where its spread was itself estimated, ln(density) follows Student's t.
class Distribution final {
  public:
    /// `degreesOfFreedom` at least 1 (std::invalid_argument); infinite for a spread that is known.
    Distribution(stats::LogNormal uncapped, DryDensity limit, double degreesOfFreedom = kSpreadKnown);

    /// min(quantile without the limit, limit). Throws std::invalid_argument unless 0 < probability < 1.
    [[nodiscard]] DryDensity quantile(double probability) const;
    [[nodiscard]] DryDensity median() const;
    /// The ends of the central 80 % band: median * exp(-+halfBand80 sigma), each at most the limit.
    [[nodiscard]] DryDensity low80() const;
    [[nodiscard]] DryDensity high80() const;
    /// For tonnes: exp(sigma^2 / 2) above the median where the limit is far. Of the normal law with the same
    /// sigma in any case, since ln(density) after Student's t has no mean density.
    [[nodiscard]] DryDensity mean() const noexcept;
    /// 1 up to 0, 0 above the limit.
    [[nodiscard]] Chance chanceOfAtLeast(DryDensity density) const;

    [[nodiscard]] double sigma() const noexcept { return m_uncapped.sigma; }
    [[nodiscard]] double degreesOfFreedom() const noexcept { return m_degreesOfFreedom; }
    /// Half the width of the central 80 % band in sigmas: 1.2816, more where the spread was estimated.
    [[nodiscard]] double halfBand80() const noexcept { return m_halfBand80; }
    [[nodiscard]] DryDensity limit() const noexcept { return m_limit; }
    [[nodiscard]] bool isLimited() const noexcept { return m_uncapped.median > m_limit.si(); }

  private:
    [[nodiscard]] DryDensity at(double standardScore) const;
    static constexpr double kSpreadKnown = std::numeric_limits<double>::infinity();

    stats::LogNormal m_uncapped;
    DryDensity m_limit;
    double m_degreesOfFreedom;
    double m_halfBand80;
};

/// The gas-filled porosity that goes with a density's distribution at a known dry matter; dense is not
/// porous, so its low end belongs to the high end of the density.
class PorosityDistribution final {
  public:
    PorosityDistribution(Distribution density, DryDensity poreFree) noexcept
        : m_density{density}, m_poreFree{poreFree} {}

    /// Throws std::invalid_argument unless 0 < probability < 1.
    [[nodiscard]] Porosity quantile(double probability) const {
        return at(m_density.quantile(1.0 - probability));
    }
    [[nodiscard]] Porosity median() const { return at(m_density.median()); }
    [[nodiscard]] Porosity low80() const { return at(m_density.high80()); }
    [[nodiscard]] Porosity high80() const { return at(m_density.low80()); }

  private:
    [[nodiscard]] Porosity at(DryDensity density) const noexcept {
        return Porosity::fromFraction(std::max(0.0, 1.0 - density / m_poreFree));
    }
    Distribution m_density;
    DryDensity m_poreFree;
};

}  // namespace treadwell::density
