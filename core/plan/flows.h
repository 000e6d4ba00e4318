#pragma once

#include "core/density/delivery_limit.h"
#include "core/density/estimate.h"
#include "core/plan/chain.h"
#include "core/plan/simulation.h"

#include <optional>
#include <vector>

namespace treadwell::plan {

/// What many simulated days have in common; each a band over the days.
struct DaysBand {
    Band loadsPerHour;
    Band harvesterWaiting;    ///< part of the day
    Band truckWaiting_min;    ///< a load
    Band minutesPerTonne;     ///< of all packing tractors
    Band density_kg_dm_m3;    ///< median estimate of each day, so the days' doubt alone
    Band passes;              ///< over each layer
    int daysWithoutLoad = 0;  ///< left out of the three bands above
};

/// The chain from one field.
struct FieldFlow {
    std::string field;
    Chain chain;                       ///< fixed times
    double queueLoadsPerHour;          ///< exponential filling, the harvester alone holding up
    DaysBand days;                     ///< random times
    std::optional<DaysBand> oneFewer;  ///< a truck has broken; none where there is but one
    std::optional<int> trucksWanted;   ///< for the harvester to wait at most kAcceptedWaiting of the median
                                       ///< day; none where no number up to kMostTrucks does
    density::Estimate estimate;        ///< at the median simulated delivery, with its whole band
    double harvestDays = 0.0;          ///< at that delivery
};

struct Flow {
    density::DeliveryLimit packing;  ///< the fastest delivery at which the tractors reach the target
    std::vector<FieldFlow> fields;
};

inline constexpr double kAcceptedWaiting = 0.05;  ///< assumed

/// Harvester, trucks, tipping, spreading and packing as one chain, by formula and by simulation. Errors:
/// those of validate(); planRoundTooLong where a field's round does not fit half the working day.
[[nodiscard]] Result<Flow> flowOf(const Inputs& inputs);

/// Whether every field's round fits half the working day. Error: planRoundTooLong.
[[nodiscard]] Result<void> checkRounds(const Inputs& inputs);

/// The same for one field and number of trucks, so many days.
[[nodiscard]] DaysBand daysBandOf(const Inputs& inputs, const PlannedField& field, int trucks, int days);

}  // namespace treadwell::plan
