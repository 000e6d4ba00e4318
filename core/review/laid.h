#pragma once

#include "core/density/effect.h"
#include "core/density/weak_places.h"
#include "core/season/season.h"

#include <optional>
#include <vector>

namespace treadwell::review {

/// The layers whose first crop was tipped in [begin, end).
[[nodiscard]] density::LayerSpan laidBetween(const density::SiloLayers& layers, Instant begin, Instant end);

/// The full hour of a farm's day, counted from its start, so that the hour of a changed clock counts as one.
[[nodiscard]] Instant hourOf(const season::Day& day, Instant at);

/// An hour's layers of one silo.
struct HourLaid {
    Instant hour;
    density::WeakPlace laid;
    Code limit;  ///< what holds it back most beside the silo's mean: limitedBy...
};
[[nodiscard]] std::vector<HourLaid> hoursOf(const season::Season& season, const density::SiloLayers& layers,
                                            const season::Day& day, Instant until);

/// The same crop with one more tractor, as heavy as the farm's heaviest, packing as long as the longest did;
/// none where nobody packed.
[[nodiscard]] std::optional<density::Effect> withFurtherTractor(const season::Season& season,
                                                                density::Situation situation);

}  // namespace treadwell::review
