#pragma once

#include "core/base/error.h"
#include "core/quantity/relations.h"

#include <span>

namespace treadwell::outcome {

/// One row of the survey of dry-matter loss against density.
struct LossRow {
    DryDensity density;
    Loss loss;
};

/// Six rows for lucerne in bunkers, 180 days: 10 lb DM/ft3 and 20.2 % to 22 lb DM/ft3 and 10.0 %.
/// Source: Ruppel 1992, published.
[[nodiscard]] std::span<const LossRow> lossRows() noexcept;

/// Loss at a density by the least-squares line through the rows, 28.68 - 0.05303 * density [% of dry matter].
/// Its level is one survey's: well-sealed maize loses far less, so use the slope, lossSaved(), and the farm's
/// own level. Valid 160.2-352.4 kg DM/m3 (10-22 lb/ft3), never extrapolated. Errors: valueNotFinite;
/// valueOutOfRange naming `density` with the ends.
[[nodiscard]] Result<Loss> lossAt(DryDensity density);

/// What a denser pack saves.
struct LossSaved {
    Loss saved;       ///< below 0 where the pack got looser
    bool heldToRows;  ///< a density outside the rows' range counted as its end: the true figure is not known
                      ///< beyond
};

/// The line's slope times the change, both densities held to 160.2-352.4 kg DM/m3. Independent check of the
/// slope: maize bags in bunkers, 9.5 lb/ft3 11.7 % and 16.8 lb/ft3 5.6 % (published). Errors: valueNotFinite;
/// valueOutOfRange for a density below 0 or above 1,000, naming `before` or `after`.
[[nodiscard]] Result<LossSaved> lossSaved(DryDensity before, DryDensity after);

/// Loss counts dry matter against dry matter, shrink tonnes as fed against tonnes as fed. Where only dry
/// matter leaves, shrink = loss * dry matter.
[[nodiscard]] constexpr Shrink shrinkOf(Loss loss, DryMatter dryMatter) noexcept {
    return Shrink::fromFraction(loss.fraction() * dryMatter.fraction());
}
/// The inverse; dry matter above 0.
[[nodiscard]] constexpr Loss lossOf(Shrink shrink, DryMatter dryMatter) noexcept {
    return Loss::fromFraction(shrink.fraction() / dryMatter.fraction());
}

/// Cost of a tonne that is left: cost / (1 - loss), on the same basis as the cost (dry matter with Loss, as
/// fed with Shrink). Multiplying by 1 + loss would understate it. `cost` in the farm's currency, 0 or more.
/// Errors: valueNotFinite, valueOutOfRange naming `cost`, `loss` or `shrink`; a loss is 0 to 0.99.
[[nodiscard]] Result<double> costPerTonneLeft(double cost, Loss loss);
[[nodiscard]] Result<double> costPerTonneLeft(double cost, Shrink shrink);

}  // namespace treadwell::outcome
