#pragma once

#include "core/plan/fleet.h"

#include <optional>
#include <vector>

namespace treadwell::plan {

/// A fleet with its money, as it is shown.
struct FleetMoney {
    Fleet fleet;
    density::Estimate estimate;  ///< of the silos when full
};

/// What one more tractor would have to save.
struct BreakEven {
    Loss loss;           ///< of the dry matter: cost / (delivery * value)
    DryDensity density;  ///< rise of density that saves so much by the rows' slope
};

/// cost / (delivery * value of a tonne as fed); the density by the slope of outcome::lossAt(). Delivery and
/// value above 0.
[[nodiscard]] BreakEven breakEvenOf(CostRate hour, AsFedRate delivery, double value_per_tonne) noexcept;

/// One more tractor, heaviest first.
struct OneMore {
    std::string tractor;
    CostRate hour;                      ///< what it costs
    BreakEven breakEven;                ///< at the planned delivery
    DryDensity gain;                    ///< of the median, at the planned delivery
    double margin_per_h = 0.0;          ///< what it brings beyond its cost, money an hour
    std::optional<AsFedRate> paysFrom;  ///< delivery from which it does; none up to kFastestDelivery
};

inline constexpr AsFedRate kFastestDelivery = AsFedRate::fromTonnesPerHour(500);

struct Pay {
    FleetMoney planned;  ///< all tractors and the planned trucks
    FleetMoney best;
    std::vector<CostRate> tractorHours;  ///< in the order of the inputs
    std::vector<OneMore> oneMore;        ///< the tractors joining one by one, heaviest first
    std::size_t compared = 0;            ///< fleets
};

/// Money in the farm's own currency. Errors: those of validate().
[[nodiscard]] Result<Pay> payOf(const Inputs& inputs);

}  // namespace treadwell::plan
