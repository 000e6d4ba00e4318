#pragma once

#include "core/density/readings.h"

#include <optional>
#include <vector>

namespace treadwell::advice {

/// Advice that was followed or declined, beside what came of it.
struct LookedBack {
    Instant at;
    entries::AdviceDecided what;          ///< as it was promised
    Instant lookedAt;                     ///< kUntilItShows later
    std::optional<DryDensity> came = {};  ///< median of the layer then; none before that, or unknown
    friend bool operator==(const LookedBack&, const LookedBack&) = default;
};

/// Until a change shows in the layer under way: several loads lie between (assumed).
inline constexpr std::chrono::minutes kUntilItShows{45};

/// What was decided at a silo on the local day of `now` up to then, the newest first.
[[nodiscard]] std::vector<LookedBack> lookBack(const season::Season& season, farm::SiloId silo, Instant now,
                                               density::ReadingsHistory& history);

}  // namespace treadwell::advice
