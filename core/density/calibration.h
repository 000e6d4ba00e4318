#pragma once

#include "core/density/spread.h"
#include "core/entries/density_evidence.h"
#include "core/stats/gaussian.h"
#include "core/stats/inverse_chi_square.h"

#include <limits>
#include <span>
#include <vector>

namespace treadwell::density {

using entries::DensityEvidence;

/// What is taken to be known before any evidence, as variances of ln(measured / predicted). Assumed: the
/// split of the survey's residual, the degrees of freedom, method and way to opening (rule B10).
struct CalibrationPrior {
    Residual survey = {};
    double surveyMethod = 0.05 * 0.05;  ///< common to all surveys of the farm
    double toOpening = 0.05 * 0.05;     ///< common to a silo's: loss over settling from survey to opening
    double degreesOfFreedom = 4.0;      ///< of the silo's and the place's variance; infinite: they are known
};

/// One layer at one face, as far as its cores tell: ln(truth / predicted).
struct PlacePosterior {
    std::int64_t place = 0;
    std::int64_t cores = 0;
    stats::Scalar spot;   ///< of that layer at that face
    stats::Scalar layer;  ///< of that layer over the silo, the face's own part left out
};

struct FacePosterior {
    std::int64_t face = 0;
    std::int64_t cores = 0;
    std::int64_t balances = 0;
    stats::Scalar level;
    std::vector<PlacePosterior> places;
};

struct SiloPosterior {
    std::string season;
    farm::SiloId silo;
    std::int64_t cores = 0;
    std::int64_t balances = 0;
    std::int64_t surveys = 0;
    DryDensity predicted;      ///< geometric mean over the evidence
    double inputs = 0.0;       ///< variance through its entries
    double logSdBefore = 0.0;  ///< of the silo without any evidence
    stats::Scalar level;       ///< ln(truth / predicted) of the whole silo
    Residual residual;         ///< for its readings
    std::vector<FacePosterior> faces;

    /// For readings of a layer that has cores of its own.
    [[nodiscard]] Residual residualOf(const PlacePosterior& place) const;
};

/// What cores, face balances and surveys make of the survey's residual on one farm.
struct Calibration {
    stats::Scalar site;
    stats::Scalar surveyMethod;
    stats::InverseChiSquare
        siloVariance;  ///< variance of a silo against the farm: 4 + n - 1 degrees of freedom
    stats::InverseChiSquare placeVariance;  ///< variance of one core within its face, layer and spot
    std::vector<SiloPosterior> silos;
    Residual next;  ///< for a silo without evidence of its own: the farm's next
    bool converged = true;
    int steps = 0;

    /// None where the silo has no evidence.
    [[nodiscard]] const SiloPosterior* find(farm::SiloId of, std::string_view season = {}) const;
    /// Its own, or the farm's next.
    [[nodiscard]] const Residual& residualOf(farm::SiloId of, std::string_view season = {}) const;
};

/// The posterior of
///   core:        r = site + silo + inputs + face + layer + spot + error
///   faceBalance: r = site + silo + inputs + face + error
///   survey:      r = site + silo + inputs + method + way to opening + layer / layers + error
/// with r = ln(measured / predicted), all parts normal; `inputs` is what the silo's entries err in common. In
/// closed form given the variances. Site and face variance stay the prior's on one farm. The silo's and the
/// place's are scaled inverse chi-square with 4 prior degrees of freedom: the place's scaled as a whole by
/// the cores' misfit within their faces, the silo's by what the silos are expected to differ, in steps that
/// are repeated until the variance moves by less than 1e-10 of itself (`converged`). A band then follows
/// Student's t by Residual::varianceDoubt. Without evidence: the survey's residual as it stands.
///
/// Cost: in proportion to the evidence, and to the square of the silos. Errors: those of
/// entries::validate(DensityEvidence), the field `evidence[i].error` and so on. Nothing non-finite leaves.
/// Sources: Gelman et al. 2013, Bayesian Data Analysis, 3rd ed., ch. 5 and 13.7; Satterthwaite 1946,
/// Biometrics Bulletin 2(6):110-114; the components derived from Muck & Holmes 2000 (rule B10).
[[nodiscard]] Result<Calibration> calibrate(std::span<const DensityEvidence> evidence,
                                            const CalibrationPrior& prior = {});

}  // namespace treadwell::density
