#pragma once

#include "core/quantity/quantity.h"

namespace treadwell {

/// Lengths in metres.
class Length final : public Quantity<Length, Dimension::length> {
  public:
    [[nodiscard]] static constexpr Length fromMetres(double m) noexcept { return fromSi(m); }
    [[nodiscard]] static constexpr Length fromCentimetres(double cm) noexcept { return fromSi(cm / 100.0); }
    [[nodiscard]] static constexpr Length fromFeet(double ft) noexcept {
        return fromSi(ft * conversion::kMetresPerFoot);
    }
    [[nodiscard]] static constexpr Length fromInches(double in) noexcept {
        return fromSi(in * conversion::kMetresPerInch);
    }
    [[nodiscard]] constexpr double metres() const noexcept { return si(); }
    [[nodiscard]] constexpr double centimetres() const noexcept { return si() * 100.0; }
    [[nodiscard]] constexpr double feet() const noexcept { return si() / conversion::kMetresPerFoot; }
    [[nodiscard]] constexpr double inches() const noexcept { return si() / conversion::kMetresPerInch; }

    [[nodiscard]] static constexpr Length fromMillimetres(double mm) noexcept { return fromSi(mm / 1000.0); }
    [[nodiscard]] constexpr double millimetres() const noexcept { return si() * 1000.0; }

    /// The same length spoken of as chopped crop: in millimetres or hundredths of an inch.
    [[nodiscard]] constexpr Amount chopAmount() const noexcept { return {Dimension::chopLength, si()}; }

    /// The same length spoken of as a layer: in centimetres or inches.
    [[nodiscard]] constexpr Amount layerAmount() const noexcept { return {Dimension::layerThickness, si()}; }
};

class Area final : public Quantity<Area, Dimension::area> {
  public:
    [[nodiscard]] static constexpr Area fromSquareMetres(double m2) noexcept { return fromSi(m2); }
    [[nodiscard]] constexpr double squareMetres() const noexcept { return si(); }
};

class Volume final : public Quantity<Volume, Dimension::volume> {
  public:
    [[nodiscard]] static constexpr Volume fromCubicMetres(double m3) noexcept { return fromSi(m3); }
    [[nodiscard]] static constexpr Volume fromCubicFeet(double ft3) noexcept {
        return fromSi(ft3 * conversion::kCubicMetresPerCubicFoot);
    }
    [[nodiscard]] constexpr double cubicMetres() const noexcept { return si(); }
    [[nodiscard]] constexpr double cubicFeet() const noexcept {
        return si() / conversion::kCubicMetresPerCubicFoot;
    }
};

/// Driving speed; SI is m/s.
class Speed final : public Quantity<Speed, Dimension::speed> {
  public:
    [[nodiscard]] static constexpr Speed fromKilometresPerHour(double kmh) noexcept {
        return fromSi(kmh / 3.6);
    }
    [[nodiscard]] constexpr double kilometresPerHour() const noexcept { return si() * 3.6; }
    [[nodiscard]] constexpr double metresPerSecond() const noexcept { return si(); }
};

/// How far one goes for one up: 3 means 1:3. A larger number is flatter.
class Slope final : public Quantity<Slope, Dimension::slope> {
  public:
    [[nodiscard]] static constexpr Slope fromRunPerRise(double run) noexcept { return fromSi(run); }
    [[nodiscard]] constexpr double runPerRise() const noexcept { return si(); }
};

}  // namespace treadwell
