#pragma once

#include "core/base/instant.h"
#include "core/quantity/quantity.h"

namespace treadwell {

/// Packing time for a mass as fed: the machines' minutes per tonne. SI is s/kg.
class PackingIntensity final : public Quantity<PackingIntensity, Dimension::packingIntensity> {
  public:
    [[nodiscard]] static constexpr PackingIntensity fromMinutesPerTonne(double value) noexcept {
        return fromSi(value * conversion::kSecondsPerMinute / conversion::kKilogramsPerTonne);
    }
    [[nodiscard]] static constexpr PackingIntensity fromMinutesPerShortTon(double value) noexcept {
        return fromSi(value * conversion::kSecondsPerMinute / conversion::kKilogramsPerShortTon);
    }
    [[nodiscard]] constexpr double minutesPerTonne() const noexcept {
        return si() * conversion::kKilogramsPerTonne / conversion::kSecondsPerMinute;
    }
    [[nodiscard]] constexpr double minutesPerShortTon() const noexcept {
        return si() * conversion::kKilogramsPerShortTon / conversion::kSecondsPerMinute;
    }
};

/// Money for an hour, in the farm's own currency. SI is money/s.
class CostRate final : public Quantity<CostRate, Dimension::costRate> {
  public:
    [[nodiscard]] static constexpr CostRate fromPerHour(double money) noexcept {
        return fromSi(money / conversion::kSecondsPerHour);
    }
    [[nodiscard]] constexpr double perHour() const noexcept { return si() * conversion::kSecondsPerHour; }
};

/// Machine mass asked for by a rate of delivery, the rule of thumb of packing. SI is kg per kg/s.
class MassPerRate final : public Quantity<MassPerRate, Dimension::massPerRate> {
  public:
    [[nodiscard]] static constexpr MassPerRate fromKilogramsPerTonnePerHour(double value) noexcept {
        return fromSi(value * conversion::kSecondsPerHour / conversion::kKilogramsPerTonne);
    }
    [[nodiscard]] constexpr double kilogramsPerTonnePerHour() const noexcept {
        return si() * conversion::kKilogramsPerTonne / conversion::kSecondsPerHour;
    }
};

[[nodiscard]] constexpr Amount durationAmount(Seconds time) noexcept {
    return {Dimension::duration, time.count()};
}

}  // namespace treadwell
