#pragma once

#include "core/density/field_equation.h"

#include <algorithm>

namespace treadwell::density {

/// How dense one layer lies at any depth, as a kernel in kg DM/m3 and metres: bracket * factor(depth), held
/// at the limit from some depth on (rules B2 and B9).
class LayerLaw final {
  public:
    /// Both above 0.
    LayerLaw(double bracket_kg_m3, double limit_kg_m3) noexcept
        : m_bracket{bracket_kg_m3},
          m_cap{limit_kg_m3 / bracket_kg_m3},
          m_from{std::max(0.0, (m_cap - FieldEquation::kSurfaceFactor) / FieldEquation::kFactorSlope)},
          m_integralThere{FieldEquation::factorIntegral(m_from)} {}

    [[nodiscard]] double bracket() const noexcept { return m_bracket; }
    /// The depth from which the limit holds.
    [[nodiscard]] double cappedFrom_m() const noexcept { return m_from; }

    [[nodiscard]] double factor(double depth_m) const noexcept {
        return std::min(FieldEquation::factor(depth_m), m_cap);
    }
    [[nodiscard]] double density(double depth_m) const noexcept { return m_bracket * factor(depth_m); }

    /// Integral of factor() from the surface down.
    [[nodiscard]] double integral(double depth_m) const noexcept {
        if (depth_m <= m_from) return FieldEquation::factorIntegral(depth_m);
        return m_integralThere + m_cap * (depth_m - m_from);
    }
    /// Its inverse, for 0 or more.
    [[nodiscard]] double depthOf(double integral_m) const noexcept {
        if (integral_m <= m_integralThere) return FieldEquation::depthOfIntegral(integral_m);
        return m_from + (integral_m - m_integralThere) / m_cap;
    }

    /// Means of factor() and of integral() over depths that change evenly from one to the other.
    [[nodiscard]] double meanFactor(double first_m, double last_m) const noexcept {
        if (std::max(first_m, last_m) <= m_from) return FieldEquation::factor(0.5 * (first_m + last_m));
        if (std::min(first_m, last_m) >= m_from) return m_cap;
        return (integral(last_m) - integral(first_m)) / (last_m - first_m);
    }
    [[nodiscard]] double meanIntegral(double first_m, double last_m) const noexcept;

  private:
    double m_bracket;
    double m_cap;  ///< limit / bracket
    double m_from;
    double m_integralThere;
};

/// integral() is a parabola and then a straight line, on each of which Simpson's rule is exact.
inline double LayerLaw::meanIntegral(double first_m, double last_m) const noexcept {
    const auto simpson = [this](double a, double b) {
        return (integral(a) + 4.0 * integral(0.5 * (a + b)) + integral(b)) / 6.0;
    };
    const double low = std::min(first_m, last_m), high = std::max(first_m, last_m);
    if (high <= m_from || low >= m_from) return simpson(low, high);
    return ((m_from - low) * simpson(low, m_from) + (high - m_from) * simpson(m_from, high)) / (high - low);
}

}  // namespace treadwell::density
