#pragma once

#include "core/density/doubts.h"
#include "core/packing/pace.h"

namespace treadwell::density {

/// One reading of a silo: the situation that the season gives, and its estimate or the reason why there is
/// none.
struct SiloReading {
    Situation situation;
    Options options;
    std::vector<farm::TractorId> tractors;  ///< in the order of situation.machines
    std::optional<Estimate> estimate;
    std::optional<Message> reason;
};

/// The three readings of a silo at one moment, all "when full": at the planned mean depth.
struct Readings {
    season::Rolling rolling;
    std::optional<packing::Pace> pace;
    SiloReading layer;  ///< the layer under way: the pace and the tractors of now
    SiloReading today;  ///< the day's tonnes and the minutes packed on them
    SiloReading silo;   ///< all that lies in it
};

/// What the band of one of the readings is made of, and what would narrow it; nothing without an estimate.
[[nodiscard]] Doubts doubtsOf(const Readings& readings, const SiloReading& reading);

/// Needs no silo that is known: of one that the farm has not defined every reading has a reason.
[[nodiscard]] Readings readingsAt(const season::Season& season, farm::SiloId silo, Instant now);

}  // namespace treadwell::density
