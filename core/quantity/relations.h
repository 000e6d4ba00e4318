#pragma once

#include "core/quantity/fraction.h"
#include "core/quantity/geometry.h"
#include "core/quantity/mass.h"
#include "core/quantity/work.h"

namespace treadwell {

// The only products and quotients between different quantities. What is not here does not compile.

// Dry-matter content is the one bridge between as fed and dry.
[[nodiscard]] constexpr DryMass operator*(AsFedMass mass, DryMatter dm) noexcept {
    return DryMass::fromSi(mass.si() * dm.si());
}
[[nodiscard]] constexpr AsFedMass operator/(DryMass mass, DryMatter dm) noexcept {
    return AsFedMass::fromSi(mass.si() / dm.si());
}
[[nodiscard]] constexpr DryMatter operator/(DryMass dry, AsFedMass mass) noexcept {
    return DryMatter::fromSi(dry.si() / mass.si());
}
[[nodiscard]] constexpr DryDensity operator*(AsFedDensity density, DryMatter dm) noexcept {
    return DryDensity::fromSi(density.si() * dm.si());
}
[[nodiscard]] constexpr AsFedDensity operator/(DryDensity density, DryMatter dm) noexcept {
    return AsFedDensity::fromSi(density.si() / dm.si());
}
[[nodiscard]] constexpr DryRate operator*(AsFedRate rate, DryMatter dm) noexcept {
    return DryRate::fromSi(rate.si() * dm.si());
}
[[nodiscard]] constexpr AsFedRate operator/(DryRate rate, DryMatter dm) noexcept {
    return AsFedRate::fromSi(rate.si() / dm.si());
}

[[nodiscard]] constexpr Area operator*(Length a, Length b) noexcept {
    return Area::fromSi(a.si() * b.si());
}
[[nodiscard]] constexpr Volume operator*(Area area, Length height) noexcept {
    return Volume::fromSi(area.si() * height.si());
}
[[nodiscard]] constexpr Length operator/(Volume volume, Area area) noexcept {
    return Length::fromSi(volume.si() / area.si());
}

[[nodiscard]] constexpr AsFedDensity operator/(AsFedMass mass, Volume volume) noexcept {
    return AsFedDensity::fromSi(mass.si() / volume.si());
}
[[nodiscard]] constexpr DryDensity operator/(DryMass mass, Volume volume) noexcept {
    return DryDensity::fromSi(mass.si() / volume.si());
}
[[nodiscard]] constexpr AsFedMass operator*(AsFedDensity density, Volume volume) noexcept {
    return AsFedMass::fromSi(density.si() * volume.si());
}
[[nodiscard]] constexpr DryMass operator*(DryDensity density, Volume volume) noexcept {
    return DryMass::fromSi(density.si() * volume.si());
}
[[nodiscard]] constexpr Volume operator/(AsFedMass mass, AsFedDensity density) noexcept {
    return Volume::fromSi(mass.si() / density.si());
}
[[nodiscard]] constexpr Volume operator/(DryMass mass, DryDensity density) noexcept {
    return Volume::fromSi(mass.si() / density.si());
}

[[nodiscard]] constexpr AsFedRate operator/(AsFedMass mass, Seconds time) noexcept {
    return AsFedRate::fromSi(mass.si() / time.count());
}
[[nodiscard]] constexpr AsFedMass operator*(AsFedRate rate, Seconds time) noexcept {
    return AsFedMass::fromSi(rate.si() * time.count());
}
[[nodiscard]] constexpr PackingIntensity operator/(Seconds time, AsFedMass mass) noexcept {
    return PackingIntensity::fromSi(time.count() / mass.si());
}
[[nodiscard]] constexpr Seconds operator*(PackingIntensity intensity, AsFedMass mass) noexcept {
    return Seconds{intensity.si() * mass.si()};
}
[[nodiscard]] constexpr MachineMass operator*(MassPerRate rule, AsFedRate rate) noexcept {
    return MachineMass::fromSi(rule.si() * rate.si());
}

}  // namespace treadwell
