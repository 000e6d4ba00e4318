#pragma once

#include "core/density/silo_evidence.h"

namespace treadwell::density {

/// Site and survey method after all silos' evidence, and the silos' variance that goes with them.
struct FarmFit {
    stats::Gaussian farm;  ///< site, survey method
    stats::InverseChiSquare silo;
    bool converged = true;
    int steps = 0;
};

/// A silo beside the farm: its parts are normal together.
struct SiloFit {
    stats::Gaussian all;        ///< site, survey method, silo, inputs, way to opening
    Eigen::MatrixXd following;  ///< 3 x 2: how the last three move with the first two, all data given
    [[nodiscard]] stats::Scalar level() const;  ///< site + silo + inputs
};

/// `start` is where the silos' variance is sought from.
[[nodiscard]] FarmFit fitFarm(std::span<const SiloSums> silos, const CalibrationPrior& prior, double start);

[[nodiscard]] SiloFit fitSilo(const SiloSums& silo, const FarmFit& farm, const CalibrationPrior& prior);

/// What the silo's evidence reads as one number, its own error, and the mean of what it should read before
/// the silo itself is known.
struct WholeReading {
    double seen;
    stats::Scalar expected;
};
[[nodiscard]] WholeReading wholeReading(const SiloSums& silo, const FarmFit& others,
                                        const CalibrationPrior& prior);

/// Half the variance of the variance that the silos' estimated variance gives to a weighed sum of the first
/// two of FarmFit::farm and of one silo of the fitted ones, or of none (the farm's next).
[[nodiscard]] double doubtOf(std::span<const SiloFit> silos, const FarmFit& farm, const SiloFit* which);

}  // namespace treadwell::density
