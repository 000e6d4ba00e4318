#pragma once

#include "core/density/estimate.h"

namespace treadwell::density {

/// The main job of the command line: 14 t packing all the time and 10 t half of it.
inline Situation exampleSituation() {
    return {.work = AsFedRate::fromTonnesPerHour(120),
            .dryMatter = DryMatter::fromPercent(35),
            .layer = Length::fromCentimetres(15),
            .meanDepth = Length::fromMetres(3),
            .machines = {{.mass = MachineMass::fromTonnes(14)},
                         {.mass = MachineMass::fromTonnes(10), .share = Share::fromPercent(50)}},
            .crop = crop::Crop::maize,
            .target = {}};
}

}  // namespace treadwell::density
