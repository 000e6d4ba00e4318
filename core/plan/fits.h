#pragma once

#include "core/density/distribution.h"
#include "core/plan/inputs.h"

#include <vector>

namespace treadwell::plan {

struct HeightVolume {
    Length height;  ///< of the middle
    Volume volume;
};

/// The same three readings that every estimate has.
struct MassBand {
    AsFedMass low80;
    AsFedMass median;
    AsFedMass high80;
};

struct SiloFit {
    std::string name;
    farm::Body body;
    std::vector<HeightVolume> byHeight;  ///< from the floor to the full height
    density::Distribution density;       ///< that these tractors reach at the mean delivery, when full
    MassBand holds;                      ///< as fed
    AsFedMass placed;                    ///< of what the fields bring
};

/// Crop of one field that goes into one silo.
struct Placement {
    std::size_t field;
    std::size_t silo;
    AsFedMass mass;
};

/// Where the season's crop goes.
struct Fit {
    AsFedRate delivery;  ///< mean over all fields, fixed times
    AsFedMass crop;
    std::vector<SiloFit> silos;
    std::vector<Placement> placements;  ///< by the median capacities, in order of harvest and filling
    MassBand leftOver;                  ///< low80: where the density turns out at its high end
    Chance fits;                        ///< that all of it finds room
};

/// Capacity = volume * density, a distribution since the density is one. The silos of a farm are taken to err
/// together (assumed), so the sum's quantiles are the sums of the quantiles. Errors: those of validate().
[[nodiscard]] Result<Fit> fitOf(const Inputs& inputs);

}  // namespace treadwell::plan
