#pragma once

#include "core/density/readings.h"

#include <memory>
#include <optional>
#include <vector>

namespace treadwell::fill {

/// What was coming in at one moment of the day; at a load, and at the end of the trace, also the density of
/// the layer under way and what the tractors could take. Between the loads nothing is laid that could be
/// dense.
struct TracePoint {
    struct Band {
        DryDensity median;
        DryDensity low80;
        DryDensity high80;
        friend bool operator==(const Band&, const Band&) = default;
    };
    Instant at;
    bool laid = false;                  ///< a load came, or it is the end of the trace
    AsFedRate delivered;                ///< over the site's display window
    std::optional<AsFedRate> capacity;  ///< none while there is no pace, or where any delivery would do
    std::optional<Band> density;
    std::optional<DryDensity> target;
    friend bool operator==(const TracePoint&, const TracePoint&) = default;
};

/// A silo's day up to a moment, and the season that it was read from.
struct DayTrace {
    season::Season season;
    farm::SiloId silo;
    std::vector<TracePoint> points;  ///< in order of time: loads, a grid between them, the moment itself
    /// What the points are read with: the layers of days that are past need not be laid anew.
    std::shared_ptr<density::ReadingsHistory> history = {};
};

/// The trace of the day of `now`. What `previous` has and nothing new speaks of is taken over, so that one
/// more entry costs one point; the result does not depend on it.
[[nodiscard]] DayTrace traceAt(const season::Season& season, farm::SiloId silo, Instant now,
                               const DayTrace& previous = {});

}  // namespace treadwell::fill
