#pragma once

#include "core/advice/situation.h"
#include "core/density/readings.h"

namespace treadwell::advice {

/// What advice looks at in a silo at the moment of these readings: the layer under way, the tractors at this
/// silo, and those of the farm that stand by. None while the pace is unknown; the layer reading then has the
/// reason.
[[nodiscard]] std::optional<AdviceSituation> situationFrom(const season::Season& season,
                                                           const density::Readings& readings);

}  // namespace treadwell::advice
