#pragma once

#include "app/desktop/fill/day_trace.h"
#include "app/desktop/fill/say.h"
#include "app/desktop/plots/timeline.h"
#include "app/desktop/widgets/density_gauge.h"
#include "app/desktop/widgets/pad_plan.h"
#include "app/desktop/widgets/truck_board.h"
#include "core/density/readings.h"

namespace treadwell::fill {

// From a season at a moment to what the widgets show. All are pure: nothing later than `now` is seen, and
// what is not committed yet is added by the page.

/// Every truck of the farm with the last load it brought.
[[nodiscard]] std::vector<widgets::TruckView> trucksAt(const season::Season& season, Instant now);

/// The last load of this silo's day.
[[nodiscard]] std::optional<season::LoadTipped> lastLoadAt(const season::Season& season, farm::SiloId silo,
                                                           Instant now);

/// An undo stays for so long; what is older is found in the list of the day's loads.
inline constexpr std::chrono::minutes kUndoStays{1};

/// The load that undo takes back: the one of this silo that was recorded last, while that is fresh.
[[nodiscard]] std::optional<season::LoadTipped> undoableAt(const season::Season& season, farm::SiloId silo,
                                                           Instant now);

/// The pause of this silo, or of all, that goes on; the longest of several.
[[nodiscard]] std::optional<season::PauseSpan> pauseAt(const season::Season& season, farm::SiloId silo,
                                                       Instant now);

/// `Amsel, 12.4 t`
[[nodiscard]] QString loadName(const season::LoadTipped& load, const season::FarmBook& farm,
                               const settings::DisplayUnits& units);

/// A tractor at work at another silo is away from this one.
[[nodiscard]] std::vector<widgets::TractorView> tractorsAt(const season::Season& season,
                                                           const season::Rolling& rolling);

[[nodiscard]] widgets::GaugeView gaugeOf(const density::SiloReading& reading, const Speech& speech);

/// The local day up to `now`, the end of the trace, from half an hour before its first load or sample.
[[nodiscard]] plots::TimelineView timelineAt(const DayTrace& trace, Instant now);

/// A reading at a glance with its age; `overdue` once it is older than the site asks for.
struct AgedReading {
    QString text;
    bool overdue = false;
};
[[nodiscard]] AgedReading dryMatterAt(const season::Rolling& rolling, const farm::SiteRules& rules,
                                      const settings::DisplayUnits& units);
[[nodiscard]] QString layerAt(const season::Rolling& rolling, const settings::DisplayUnits& units);

/// `25 min ago`, `3 h 05 min ago`, `2 days ago`
[[nodiscard]] QString ageText(Seconds age);

[[nodiscard]] QString methodName(entries::DryMatterMethod method);

}  // namespace treadwell::fill
