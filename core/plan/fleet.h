#pragma once

#include "core/plan/fleet_density.h"

#include <cstdint>
#include <functional>
#include <vector>

namespace treadwell::plan {

/// Expected loss of dry matter at a packing factor: the farm's own level and the published rows' slope from
/// there, over the whole distribution of the density; the rows are never extrapolated, so a density beyond
/// them counts as their end (outcome::lossSaved()). Never below 0.
class ExpectedLoss final {
  public:
    /// `frame` of density::caseFrame() without doubt of the variances.
    ExpectedLoss(const density::CaseFrame& frame, const Prices& prices);

    [[nodiscard]] double at(double packingFactor) const noexcept;

  private:
    density::CaseFrame m_frame;
    double m_level, m_levelAt_kg_m3, m_slope_m3_kg, m_lowest_kg_m3, m_highest_kg_m3;
};

/// A choice of tractors and trucks with its money.
struct Fleet {
    std::vector<std::size_t> tractors;  ///< indices into the inputs, in order
    int trucks = 0;
    AsFedRate delivery;
    CostRate hour;                 ///< harvester, trucks and tractors
    Loss loss;                     ///< expected
    double margin_per_t_dm = 0.0;  ///< value left of a tonne of dry matter, less the hour's cost for it
};

/// What a search chooses from.
struct FleetChoice {
    struct Tractor {
        double mass_kg;
        double share;
        double hour;  ///< money
    };
    struct Trucks {
        int count;
        double delivery_t_h;
        double hour;  ///< money, all trucks and the harvester
    };
    std::vector<Tractor> tractors;  ///< heaviest first, at most kMostListed
    std::vector<Trucks> trucks;
    double layer_cm;
    double dryMatter;
    double value_per_t_dm;
};

struct FoundFleet {
    std::uint32_t tractors = 0;  ///< a bit for each
    std::size_t trucks = 0;      ///< index
    double margin_per_t_dm = 0.0;
};

/// The choice with the highest margin of a tonne of dry matter; among equals the first in order of the bits,
/// then of the trucks. No case is left out: a case is passed over only where even the least loss that a table
/// has for its stretch of packing factors leaves it below the best so far.
[[nodiscard]] FoundFleet bestFleet(const FleetChoice& choice, const ExpectedLoss& loss);

/// Packing factor of these tractors at a delivery [t/h] above 0.
[[nodiscard]] double packingFactorOf(const FleetChoice& choice, std::uint32_t tractors, double delivery_t_h);

/// The margin of one case, of which bestFleet() finds the highest.
[[nodiscard]] double marginOf(const FleetChoice& choice, const ExpectedLoss& loss, std::uint32_t tractors,
                              std::size_t trucks);

}  // namespace treadwell::plan
