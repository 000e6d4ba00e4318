#pragma once

#include "core/density/calibration.h"
#include "core/stats/level_summary.h"

namespace treadwell::density {

/// A face's evidence as sums: what its layers' cores say of the layer, and all of it of the face.
struct FaceSums {
    std::int64_t face = 0;
    std::int64_t balances = 0;
    stats::LevelSummary level;  ///< of site + silo + inputs + face
    struct Place {
        std::int64_t place = 0;
        std::int64_t cores = 0;
        stats::LevelSummary level;  ///< and + layer
    };
    std::vector<Place> places;
};

/// One filling's evidence as sums.
struct SiloSums {
    std::string season;
    farm::SiloId silo;
    std::int64_t cores = 0;
    std::int64_t balances = 0;
    std::int64_t surveys = 0;
    double logPredicted = 0.0;  ///< mean
    double inputs = 0.0;        ///< mean variance
    std::vector<FaceSums> faces;
    stats::LevelSummary opened;    ///< of site + silo + inputs
    stats::LevelSummary surveyed;  ///< of site + silo + inputs + method + way to opening
};

/// Evidence grouped by filling, face and place, in that order of their names.
struct GroupedEvidence {
    std::vector<SiloSums> silos;
    stats::InverseChiSquare place;  ///< variance of layer and spot after the cores' misfit within their faces
    CalibrationPrior learnt;        ///< the prior, with that in its survey's residual
};

/// Errors: those of calibrate().
[[nodiscard]] Result<GroupedEvidence> groupedEvidence(std::span<const DensityEvidence> evidence,
                                                      const CalibrationPrior& prior);

/// Faces and places of a filling whose level is `level`.
[[nodiscard]] std::vector<FacePosterior> facesOf(const SiloSums& silo, const stats::Scalar& level,
                                                 const Residual& residual);

}  // namespace treadwell::density
