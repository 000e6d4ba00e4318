#pragma once

#include "app/desktop/settings/theme.h"
#include "core/quantity/relations.h"

#include <QColor>

namespace treadwell::widgets {

/// The colour of a density: darker is denser, by equal steps of lightness in Oklab (Ottosson 2020, "A
/// perceptual color space for image processing"), so that it reads the same in grey. Without hue outdoors.
/// The ends stand for what lies beyond them.
class DensityRamp final {
  public:
    static constexpr DryDensity kLoosest = DryDensity::fromKilogramsPerCubicMetre(120);
    static constexpr DryDensity kDensest = DryDensity::fromKilogramsPerCubicMetre(300);

    explicit DensityRamp(settings::Look look) noexcept : m_look{look} {}
    [[nodiscard]] QColor colour(DryDensity density) const noexcept;
    /// Lightness of a colour in Oklab, 0 to 1.
    [[nodiscard]] static double lightness(const QColor& colour) noexcept;

  private:
    settings::Look m_look;
};

}  // namespace treadwell::widgets
