#pragma once

#include "core/quantity/quantity.h"

namespace treadwell {

/// A temperature; SI is K. There is no sum of two: a difference of temperatures is another thing.
class Temperature final {
  public:
    static constexpr Dimension kDimension = Dimension::temperature;

    constexpr Temperature() noexcept = default;
    [[nodiscard]] static constexpr Temperature fromSi(double kelvin) noexcept { return Temperature{kelvin}; }
    [[nodiscard]] static constexpr Temperature fromCelsius(double value) noexcept {
        return Temperature{value + kCelsiusZero};
    }
    [[nodiscard]] static constexpr Temperature fromFahrenheit(double value) noexcept {
        return Temperature{(value + kFahrenheitBelowZero) * conversion::kKelvinPerFahrenheit};
    }
    [[nodiscard]] constexpr double si() const noexcept { return m_kelvin; }
    [[nodiscard]] constexpr double celsius() const noexcept { return m_kelvin - kCelsiusZero; }
    [[nodiscard]] constexpr double fahrenheit() const noexcept {
        return m_kelvin / conversion::kKelvinPerFahrenheit - kFahrenheitBelowZero;
    }
    [[nodiscard]] constexpr Amount amount() const noexcept { return {kDimension, m_kelvin}; }

    friend constexpr auto operator<=>(const Temperature&, const Temperature&) = default;

  private:
    static constexpr double kCelsiusZero = 273.15;
    static constexpr double kFahrenheitBelowZero = 459.67;

    explicit constexpr Temperature(double kelvin) noexcept : m_kelvin{kelvin} {}

    double m_kelvin = kCelsiusZero;
};

/// Warmth that a crop has had: degrees above a base, summed over days. SI is K s.
class DegreeDays final : public Quantity<DegreeDays, Dimension::degreeDays> {
  public:
    [[nodiscard]] static constexpr DegreeDays fromCelsius(double value) noexcept {
        return fromSi(value * conversion::kSecondsPerDay);
    }
    [[nodiscard]] static constexpr DegreeDays fromFahrenheit(double value) noexcept {
        return fromCelsius(value * conversion::kKelvinPerFahrenheit);
    }
    [[nodiscard]] constexpr double celsius() const noexcept { return si() / conversion::kSecondsPerDay; }
    [[nodiscard]] constexpr double fahrenheit() const noexcept {
        return celsius() / conversion::kKelvinPerFahrenheit;
    }
};

/// Dry matter that a standing crop gains. SI is 1/s.
class DryingRate final : public Quantity<DryingRate, Dimension::dryingRate> {
  public:
    [[nodiscard]] static constexpr DryingRate fromPointsPerDay(double points) noexcept {
        return fromSi(points / 100.0 / conversion::kSecondsPerDay);
    }
    [[nodiscard]] constexpr double pointsPerDay() const noexcept {
        return si() * 100.0 * conversion::kSecondsPerDay;
    }
};

}  // namespace treadwell
