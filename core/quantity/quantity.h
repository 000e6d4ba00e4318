#pragma once

#include "core/base/dimension.h"

#include <compare>

namespace treadwell {

/// The common part of every unit type: one double in SI behind a name. Sums keep the type, a ratio of two is
/// a plain number, and there is no product of a quantity with itself or with another unless relations.h gives
/// one.
template <class Self, Dimension kWhat>
class Quantity {
  public:
    static constexpr Dimension kDimension = kWhat;

    constexpr Quantity() noexcept = default;

    /// For kernels, which compute in SI.
    [[nodiscard]] static constexpr Self fromSi(double si) noexcept {
        Self self;
        self.m_si = si;
        return self;
    }
    [[nodiscard]] constexpr double si() const noexcept { return m_si; }
    [[nodiscard]] constexpr Amount amount() const noexcept { return {kWhat, m_si}; }

    friend constexpr Self operator+(Self a, Self b) noexcept { return fromSi(a.si() + b.si()); }
    friend constexpr Self operator-(Self a, Self b) noexcept { return fromSi(a.si() - b.si()); }
    friend constexpr Self operator-(Self a) noexcept { return fromSi(-a.si()); }
    friend constexpr Self operator*(Self a, double factor) noexcept { return fromSi(a.si() * factor); }
    friend constexpr Self operator*(double factor, Self a) noexcept { return fromSi(a.si() * factor); }
    friend constexpr Self operator/(Self a, double divisor) noexcept { return fromSi(a.si() / divisor); }
    friend constexpr double operator/(Self a, Self b) noexcept { return a.si() / b.si(); }
    constexpr Self& operator+=(Self other) noexcept {
        m_si += other.si();
        return static_cast<Self&>(*this);
    }
    constexpr Self& operator-=(Self other) noexcept {
        m_si -= other.si();
        return static_cast<Self&>(*this);
    }
    friend constexpr auto operator<=>(const Quantity&, const Quantity&) = default;

  private:
    double m_si = 0.0;
};

/// The exact conversions (international pound, foot and short ton; US liquid gallon).
namespace conversion {
inline constexpr double kKilogramsPerPound = 0.45359237;
inline constexpr double kMetresPerFoot = 0.3048;
inline constexpr double kMetresPerInch = 0.0254;
inline constexpr double kPoundsPerShortTon = 2000.0;
inline constexpr double kKilogramsPerShortTon = kKilogramsPerPound * kPoundsPerShortTon;
inline constexpr double kCubicMetresPerCubicFoot = kMetresPerFoot * kMetresPerFoot * kMetresPerFoot;
inline constexpr double kDensityPerPoundPerCubicFoot = kKilogramsPerPound / kCubicMetresPerCubicFoot;
inline constexpr double kSecondsPerHour = 3600.0;
inline constexpr double kSecondsPerMinute = 60.0;
inline constexpr double kKilogramsPerTonne = 1000.0;
inline constexpr double kKelvinPerFahrenheit = 5.0 / 9.0;
inline constexpr double kSecondsPerDay = 24.0 * kSecondsPerHour;
inline constexpr double kLitresPerCubicMetre = 1000.0;
inline constexpr double kCubicMetresPerGallon = 0.003785411784;  // 231 cubic inches
}  // namespace conversion

}  // namespace treadwell
