#pragma once

#include "core/base/error.h"
#include "core/quantity/relations.h"
#include "core/quantity/work.h"

#include <optional>
#include <span>

namespace treadwell::samples {

/// Dry matter of a dish's content: dry / wet, both net. Errors: valueNotFinite (`wet`, `dry`);
/// dishImpossible (`dry`) unless 0 < dry < wet.
[[nodiscard]] Result<DryMatter> dryMatterOfDish(AsFedMass wet, DryMass dry);

/// The net of a weighing on a dish of known weight. Errors: valueNotFinite; grossBelowTare (`gross`) unless
/// the whole weighs more than the dish.
[[nodiscard]] Result<AsFedMass> netOfDish(AsFedMass gross, AsFedMass dish);

/// A microwave sample is dry once a further step takes less than this off. Source: extension practice for
/// 100 g of sample, common practice.
inline constexpr DryMass kDryEnough = DryMass::fromKilograms(0.001);
/// Below it a loss just under 1 g is more than a point and a quarter of dry matter.
inline constexpr AsFedMass kSmallestMicrowaveSample = AsFedMass::fromKilograms(0.080);

/// What to do next with a sample in the microwave.
struct DryingStep {
    bool isDry = false;
    Seconds heat{};                      ///< before the next weighing; 0 once it is dry
    std::optional<DryMatter> dryMatter;  ///< by the last weighing: at most this, until it is dry
    std::optional<DryMass> lastLoss;     ///< of the last step; none before the second weighing
    bool small = false;                  ///< less than 80 g: take more, the 1 g counts for too much
};

/// Guides a sample that is heated and weighed until it is constant: 3 minutes, then 1 minute, then steps of
/// 30 s, until a step takes less than 1 g off (common practice: 100 g, 2-4 min, 1 min, 30 s). All weights
/// net. Errors: valueNotFinite; valueOutOfRange for a sample outside 20 g to 1 kg (`wet`), dishImpossible for
/// a weighing that is not between 0 and the wet weight, weighingGained for one that is more than 0.5 g
/// heavier than the one before (`weighings[i]`).
[[nodiscard]] Result<DryingStep> nextDryingStep(AsFedMass wet, std::span<const DryMass> weighings);

}  // namespace treadwell::samples
