#pragma once

#include "core/density/calibration.h"
#include "core/stats/reml.h"

#include <optional>

namespace treadwell::density {

/// What a silo's evidence reads beside what the other silos' alone would have said of it, as
/// ln(measured / predicted).
struct LeftOut {
    std::string season;
    farm::SiloId silo;
    double seen = 0.0;
    stats::Scalar expected;
    double degreesOfFreedom = 0.0;  ///< of the expectation; infinite where all variances are known
    [[nodiscard]] double error() const noexcept { return seen - expected.mean; }
    /// Within the central 80 % band.
    [[nodiscard]] bool isInside() const;
};

struct CalibrationCheck {
    std::vector<LeftOut> silos;  ///< none below two silos
    /// Plain REML of the cores (silo, face, place, residual), as a check alone: its bands are too narrow with
    /// few silos (64, 70 and 73 % instead of 80 at 3, 5 and 8). Not usable below three silos.
    stats::RemlFit reml;

    /// Root mean square of the errors of ln(density); none below two silos.
    [[nodiscard]] std::optional<double> error() const;
};

/// Calibrates once without each silo. Errors: those of calibrate().
[[nodiscard]] Result<CalibrationCheck> checkCalibration(std::span<const DensityEvidence> evidence,
                                                        const CalibrationPrior& prior = {});

}  // namespace treadwell::density
