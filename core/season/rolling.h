#pragma once

#include "core/quantity/relations.h"
#include "core/season/season.h"

#include <map>
#include <optional>
#include <vector>

namespace treadwell::season {

/// One tractor as it stands at a moment.
struct TractorNow {
    farm::TractorId tractor;
    farm::Activity activity = farm::Activity::away;
    std::optional<farm::SiloId> silo;
    Share packing;                 ///< of its time, now
    std::optional<Instant> since;  ///< of what it does now, at the earliest the day's start
    Seconds packedToday{};         ///< stretches by their shares, all silos
    Seconds workedToday{};         ///< packing and spreading
};

/// What is known of one silo at one moment. Facts that happen later are not seen.
struct Rolling {
    Instant at;
    farm::SiloId silo;
    std::optional<LocalDay> today;  ///< none before the season's first day
    Delivered todayIn;
    Delivered siloIn;
    AsFedRate rateInWindow;  ///< over the site's display window (usually 60 min), pauses included
    AsFedRate rateToday;     ///< since the day's first load, declared pauses cut out
    std::optional<Sample> lastSample;
    std::optional<LayerNote> layer;
    std::vector<TractorNow> tractors;  ///< every tractor of the farm, in the order of their ids
    PackingIntensity packingInWindow;
    PackingIntensity packingToday;  ///< since the day's first load
    bool paused = false;
};

[[nodiscard]] Rolling rollingAt(const Season& season, farm::SiloId silo, Instant now);

/// The longest that anybody has been on shift who is so at `now`; none where nobody is.
[[nodiscard]] std::optional<Seconds> longestShift(const Season& season, Instant now);

/// No shift lasts so long: whose end nobody entered is not at work any more (assumed).
inline constexpr std::chrono::hours kShiftIsOver{16};

/// The shift of who enters what happens at `now`: the last who took the tablet and is on shift since less
/// than kShiftIsOver.
[[nodiscard]] std::optional<ShiftSpan> tabletHolder(const Season& season, Instant now);

/// The loads of a silo with `from <= at < to`, in order.
[[nodiscard]] std::vector<const LoadTipped*> loadsOf(const Season& season, farm::SiloId silo, Instant from,
                                                     Instant to);

/// Packing time of each tractor at a silo in [from, to): stretches by their shares. Only tractors that
/// packed.
[[nodiscard]] std::map<farm::TractorId, Seconds> packingOf(const Season& season, farm::SiloId silo,
                                                           Instant from, Instant to);

/// The part of [from, to) in which no pause was declared for the silo or for all.
[[nodiscard]] Seconds unpaused(const Season& season, farm::SiloId silo, Instant from, Instant to);

}  // namespace treadwell::season
