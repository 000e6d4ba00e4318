#pragma once

#include "core/density/field.h"
#include "core/density/silo_layers.h"

#include <span>

namespace treadwell::density {

/// The field of a silo's layers: a layer's own error is what its reading has for the place, all else is in
/// common. None where a layer has no estimate.
[[nodiscard]] std::optional<Field> fieldOf(const season::Season& season, const SiloLayers& layers,
                                           Filled filled);

/// Layers that follow each other and lie loose beside the silo's others, and why.
struct WeakPlace {
    LayerSpan layers;
    Instant begin;  ///< tipping of its first crop
    Instant end;    ///< the next layer's begin; for the topmost its own end
    AsFedMass mass;
    DryMass dry;
    Length lower;  ///< edges as those of StackedLayer
    Length upper;
    Distribution density;  ///< of all of it
    /// How the crop came and who packed, where that is known; then what makes it weak, first what counts
    /// most.
    std::vector<Message> causes;
};

/// What runs of a silo's layers amount to and what makes them looser than the silo; a run without an estimate
/// is left out. A cause is as below.
[[nodiscard]] std::vector<WeakPlace> placesOf(const season::Season& season, const SiloLayers& layers,
                                              Filled filled, std::span<const LayerSpan> spans);

/// The share of the dry matter in the loosest layers, from which weak places are made.
inline constexpr Share kWeakShare = Share::fromFraction(0.20);

/// The weakest places of a silo, weakest first, at most `most`.
///
/// The loosest layers that hold a fifth of the dry matter are taken, and those that follow each other are one
/// place. A cause is a factor of the field regression by which the place lies below the silo's mean, in
/// ln(density): minutes a tonne and dry matter with half the elasticity, machine mass and thickness with all
/// of it, and depth. Less than 1 % is not named. Layers that nobody packed have no other cause.
[[nodiscard]] std::vector<WeakPlace> weakestPlaces(const season::Season& season, const SiloLayers& layers,
                                                   Filled filled, std::size_t most);

}  // namespace treadwell::density
