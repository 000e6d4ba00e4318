#pragma once

#include "core/quantity/quantity.h"

namespace treadwell {

/// The makers and readers that every mass has.
template <class Self, Dimension kWhat>
class Mass : public Quantity<Self, kWhat> {
  public:
    [[nodiscard]] static constexpr Self fromKilograms(double kg) noexcept { return Self::fromSi(kg); }
    [[nodiscard]] static constexpr Self fromTonnes(double t) noexcept {
        return Self::fromSi(t * conversion::kKilogramsPerTonne);
    }
    [[nodiscard]] static constexpr Self fromPounds(double lb) noexcept {
        return Self::fromSi(lb * conversion::kKilogramsPerPound);
    }
    [[nodiscard]] static constexpr Self fromShortTons(double ton) noexcept {
        return Self::fromSi(ton * conversion::kKilogramsPerShortTon);
    }
    [[nodiscard]] constexpr double kilograms() const noexcept { return this->si(); }
    [[nodiscard]] constexpr double tonnes() const noexcept {
        return this->si() / conversion::kKilogramsPerTonne;
    }
    [[nodiscard]] constexpr double pounds() const noexcept {
        return this->si() / conversion::kKilogramsPerPound;
    }
    [[nodiscard]] constexpr double shortTons() const noexcept {
        return this->si() / conversion::kKilogramsPerShortTon;
    }
};

/// Crop as it comes off the truck, water included.
class AsFedMass final : public Mass<AsFedMass, Dimension::asFedMass> {};

/// The crop's dry matter alone.
class DryMass final : public Mass<DryMass, Dimension::dryMass> {};

/// A machine, ready to work, ballast and driver included.
class MachineMass final : public Mass<MachineMass, Dimension::machineMass> {};

/// The makers and readers that every mass over time has; SI is kg/s.
template <class Self, Dimension kWhat>
class MassRate : public Quantity<Self, kWhat> {
  public:
    [[nodiscard]] static constexpr Self fromTonnesPerHour(double rate) noexcept {
        return Self::fromSi(rate * conversion::kKilogramsPerTonne / conversion::kSecondsPerHour);
    }
    [[nodiscard]] static constexpr Self fromShortTonsPerHour(double rate) noexcept {
        return Self::fromSi(rate * conversion::kKilogramsPerShortTon / conversion::kSecondsPerHour);
    }
    [[nodiscard]] constexpr double tonnesPerHour() const noexcept {
        return this->si() * conversion::kSecondsPerHour / conversion::kKilogramsPerTonne;
    }
    [[nodiscard]] constexpr double shortTonsPerHour() const noexcept {
        return this->si() * conversion::kSecondsPerHour / conversion::kKilogramsPerShortTon;
    }
};

class AsFedRate final : public MassRate<AsFedRate, Dimension::asFedRate> {};
class DryRate final : public MassRate<DryRate, Dimension::dryRate> {};

/// The makers and readers that every mass in a volume has; SI is kg/m3.
template <class Self, Dimension kWhat>
class Density : public Quantity<Self, kWhat> {
  public:
    [[nodiscard]] static constexpr Self fromKilogramsPerCubicMetre(double value) noexcept {
        return Self::fromSi(value);
    }
    [[nodiscard]] static constexpr Self fromPoundsPerCubicFoot(double value) noexcept {
        return Self::fromSi(value * conversion::kDensityPerPoundPerCubicFoot);
    }
    [[nodiscard]] constexpr double kilogramsPerCubicMetre() const noexcept { return this->si(); }
    [[nodiscard]] constexpr double poundsPerCubicFoot() const noexcept {
        return this->si() / conversion::kDensityPerPoundPerCubicFoot;
    }
};

class AsFedDensity final : public Density<AsFedDensity, Dimension::asFedDensity> {};
class DryDensity final : public Density<DryDensity, Dimension::dryDensity> {};

}  // namespace treadwell
