#pragma once

#include "core/base/error.h"
#include "core/quantity/relations.h"

namespace treadwell::crop {

/// The volume that a kilogram of dry matter fills without any pores [m3/kg DM].
/// Organic matter weighs 1,600 and ash 2,500 kg/m3, water 1,000 (Richard, Veeken, de Wilde & Hamelers 2004,
/// Biotechnol. Prog. 20:1372-1381; values from memory). Particle densities from 1,421 (McNulty & Kennedy
/// 1982, Ir. J. agric. Res. 21:75-83) to 1,640 kg/m3 move the porosity by 0.02: two decimals are worth
/// showing, never three.
class Solids final {
  public:
    /// `organicMatter` is a part of the dry matter, 0 to 1.
    [[nodiscard]] static constexpr Solids fromOrganicMatter(double organicMatter) noexcept {
        return Solids{organicMatter / 1600.0 + (1.0 - organicMatter) / 2500.0};
    }
    /// `kg_m3` above 0.
    [[nodiscard]] static constexpr Solids fromParticleDensity(double kg_m3) noexcept {
        return Solids{1.0 / kg_m3};
    }

    /// The pore-free volume of a kilogram as fed [m3/kg] at `dm`, the dry matter as a fraction.
    [[nodiscard]] constexpr double asFedVolume(double dm) const noexcept {
        return (1.0 - dm) / 1000.0 + dm * m_volume;
    }

  private:
    explicit constexpr Solids(double volume) noexcept : m_volume{volume} {}
    double m_volume;
};

/// Gas-filled porosity: 1 - density / pore-free density, density 0 or more, dry matter in (0, 1].
/// Errors: valueNotFinite, valueOutOfRange (`dryMatter`, `density`); densityImpossible (`density`) where the
/// porosity would be below 0.
[[nodiscard]] Result<Porosity> porosity(DryDensity density, DryMatter dryMatter, Solids solids);

/// The density without any gas: dry matter in (0, 1], not checked.
[[nodiscard]] constexpr DryDensity poreFreeDensity(DryMatter dryMatter, Solids solids) noexcept {
    return DryDensity::fromSi(dryMatter.fraction() / solids.asFedVolume(dryMatter.fraction()));
}

/// The inverse of porosity(): porosity in [0, 1], dry matter in (0, 1], not checked.
[[nodiscard]] constexpr DryDensity densityAtPorosity(Porosity porosity, DryMatter dryMatter,
                                                     Solids solids) noexcept {
    return poreFreeDensity(dryMatter, solids) * (1.0 - porosity.fraction());
}

}  // namespace treadwell::crop
