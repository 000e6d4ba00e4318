#pragma once

#include "core/quantity/quantity.h"

namespace treadwell {

/// The makers and readers that every fraction of one has.
template <class Self, Dimension kWhat>
class Fraction : public Quantity<Self, kWhat> {
  public:
    [[nodiscard]] static constexpr Self fromFraction(double value) noexcept { return Self::fromSi(value); }
    [[nodiscard]] static constexpr Self fromPercent(double value) noexcept {
        return Self::fromSi(value / 100.0);
    }
    [[nodiscard]] constexpr double fraction() const noexcept { return this->si(); }
    [[nodiscard]] constexpr double percent() const noexcept { return this->si() * 100.0; }
};

/// Dry matter as a part of the fresh mass.
class DryMatter final : public Fraction<DryMatter, Dimension::dryMatter> {};

/// The part of an interval in which a machine does what is spoken of.
class Share final : public Fraction<Share, Dimension::share> {};

/// A probability.
class Chance final : public Fraction<Chance, Dimension::chance> {};

/// The gas-filled part of the volume.
class Porosity final : public Fraction<Porosity, Dimension::porosity> {};

/// The part of the dry matter that is lost.
class Loss final : public Fraction<Loss, Dimension::loss> {};

/// The part of the mass as fed that is lost.
class Shrink final : public Fraction<Shrink, Dimension::shrink> {};

}  // namespace treadwell
