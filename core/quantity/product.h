#pragma once

#include "core/quantity/mass.h"

namespace treadwell {

/// An additive or a treatment, as weighed out. Never crop.
class ProductMass final : public Mass<ProductMass, Dimension::productMass> {};

/// The same, as measured out.
class ProductVolume final : public Quantity<ProductVolume, Dimension::productVolume> {
  public:
    [[nodiscard]] static constexpr ProductVolume fromLitres(double litres) noexcept {
        return fromSi(litres / conversion::kLitresPerCubicMetre);
    }
    [[nodiscard]] constexpr double litres() const noexcept { return si() * conversion::kLitresPerCubicMetre; }
};

}  // namespace treadwell
