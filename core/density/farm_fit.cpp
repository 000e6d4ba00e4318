#include "core/density/farm_fit.h"

#include <Eigen/Cholesky>

#include <cmath>

namespace treadwell::density {

namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr Eigen::Index kFarmParts = 2;  // site, survey method
constexpr Eigen::Index kOwnParts = 3;   // silo, inputs, way to opening
constexpr Eigen::Index kSilo = kFarmParts;

/// A silo's evidence as at most two readings: seen = ofFarm farm + ofOwn own + error.
struct CoreReadings {
    MatrixXd ofFarm, ofOwn;
    VectorXd seen;
    MatrixXd noise;
};

CoreReadings readingsOf(const SiloSums& silo) {
    const bool opened = silo.opened.precision > 0.0;
    const bool surveyed = silo.surveyed.precision > 0.0;
    const Eigen::Index count = (opened ? 1 : 0) + (surveyed ? 1 : 0);
    CoreReadings readings{MatrixXd::Zero(count, kFarmParts), MatrixXd::Zero(count, kOwnParts),
                          VectorXd(count), MatrixXd::Zero(count, count)};
    Eigen::Index row = 0;
    const auto add = [&](const stats::LevelSummary& sums, double method) {
        readings.ofFarm.row(row) << 1.0, method;
        readings.ofOwn.row(row) << 1.0, 1.0, method;
        readings.seen(row) = sums.level();
        readings.noise(row, row) = 1.0 / sums.precision;
        ++row;
    };
    if (opened) add(silo.opened, 0.0);
    if (surveyed) add(silo.surveyed, 1.0);
    return readings;
}

MatrixXd ownPrior(const SiloSums& silo, double siloVariance, const CalibrationPrior& prior) {
    return Eigen::Vector3d{siloVariance, silo.inputs, prior.toOpening}.asDiagonal();
}

stats::Gaussian farmPrior(const CalibrationPrior& prior) {
    return {Eigen::Vector2d{prior.survey.level, 0.0},
            Eigen::Vector2d{prior.survey.site, prior.surveyMethod}.asDiagonal()};
}

/// One silo after another; given the farm they tell nothing of each other.
stats::Gaussian farmGiven(std::span<const SiloSums> silos, const CalibrationPrior& prior,
                          double siloVariance) {
    stats::Gaussian farm = farmPrior(prior);
    for (const SiloSums& silo : silos) {
        const CoreReadings readings = readingsOf(silo);
        const MatrixXd spread =
            readings.ofOwn * ownPrior(silo, siloVariance, prior) * readings.ofOwn.transpose() +
            readings.noise;
        farm = stats::conditioned(farm, readings.ofFarm, readings.seen, spread);
    }
    return farm;
}

}  // namespace

stats::Scalar SiloFit::level() const {
    VectorXd weights(kFarmParts + kOwnParts);
    weights << 1.0, 0.0, 1.0, 1.0, 0.0;
    return stats::combined(all, weights);
}

SiloFit fitSilo(const SiloSums& silo, const FarmFit& farm, const CalibrationPrior& prior) {
    const CoreReadings readings = readingsOf(silo);
    const MatrixXd own = ownPrior(silo, farm.silo.scale, prior);
    const stats::Gaussian given =
        stats::conditioned({VectorXd::Zero(kOwnParts), own}, readings.ofOwn, readings.seen, readings.noise);
    const MatrixXd crossed = readings.ofOwn * own;
    const MatrixXd spread = crossed * readings.ofOwn.transpose() + readings.noise;
    const MatrixXd follows = -(spread.ldlt().solve(crossed).transpose() * readings.ofFarm);
    SiloFit fit{{VectorXd(kFarmParts + kOwnParts), MatrixXd(kFarmParts + kOwnParts, kFarmParts + kOwnParts)},
                follows};
    fit.all.mean << farm.farm.mean, given.mean + follows * farm.farm.mean;
    const MatrixXd with = follows * farm.farm.covariance;
    fit.all.covariance << farm.farm.covariance, with.transpose(), with,
        given.covariance + with * follows.transpose();
    return fit;
}

FarmFit fitFarm(std::span<const SiloSums> silos, const CalibrationPrior& prior, double start) {
    constexpr int kMostSteps = 2000, kHastySteps = 40;
    constexpr double kSettled = 1e-10;
    const stats::InverseChiSquare before{prior.degreesOfFreedom, prior.survey.silo};
    FarmFit fit{farmPrior(prior), before, true, 0};
    if (silos.empty()) return fit;
    if (std::isinf(prior.degreesOfFreedom) || !(prior.survey.silo > 0.0)) {
        fit.farm = farmGiven(silos, prior, before.scale);
        return fit;
    }
    const auto count = static_cast<double>(silos.size());
    fit.silo = {before.degreesOfFreedom + count - 1.0, start};  // one degree goes to the farm's mean
    // The variance that the silos are expected to differ by, if `scale` is their variance.
    const auto expected = [&](double scale) {
        fit.silo.scale = scale;
        fit.farm = farmGiven(silos, prior, scale);
        double squares = 0.0;
        for (const SiloSums& silo : silos) {
            const stats::Gaussian all = fitSilo(silo, fit, prior).all;
            squares += all.mean(kSilo) * all.mean(kSilo) + all.covariance(kSilo, kSilo);
        }
        ++fit.steps;
        return before.after(squares, count).scale;
    };
    // Steffensen's method: two steps, then to where they lead, as long as that soon settles; plain steps
    // always do, if slowly. The fit is that of the last scale asked for.
    for (double scale = start; fit.steps < kMostSteps;) {
        const double once = expected(scale);
        if (fit.converged = std::abs(once - scale) <= kSettled * scale; fit.converged) return fit;
        const double twice = expected(once);
        if (fit.converged = std::abs(twice - once) <= kSettled * once; fit.converged) return fit;
        const double bend = (twice - once) - (once - scale);
        const double ahead = scale - (once - scale) * (once - scale) / bend;
        const bool leads = fit.steps < kHastySteps && ahead > 0.1 * twice && ahead < 10.0 * twice;
        scale = leads ? ahead : twice;
    }
    return fit;
}

WholeReading wholeReading(const SiloSums& silo, const FarmFit& others, const CalibrationPrior& prior) {
    const CoreReadings readings = readingsOf(silo);
    const MatrixXd own = ownPrior(silo, others.silo.scale, prior);
    const MatrixXd spread = readings.ofOwn * own * readings.ofOwn.transpose() + readings.noise +
                            readings.ofFarm * others.farm.covariance * readings.ofFarm.transpose();
    const VectorXd expected = readings.ofFarm * others.farm.mean;
    // Opened silo and surveys are weighed as the best reading of one level would.
    const VectorXd weights = spread.ldlt().solve(VectorXd::Ones(readings.seen.size()));
    const double sum = weights.sum();
    return {weights.dot(readings.seen) / sum, {weights.dot(expected) / sum, 1.0 / sum}};
}

double doubtOf(std::span<const SiloFit> silos, const FarmFit& farm, const SiloFit* which) {
    if (std::isinf(farm.silo.degreesOfFreedom)) return 0.0;
    const double variance = farm.silo.scale;
    Eigen::RowVector2d withFarm = farm.farm.covariance.row(0);
    VectorXd level(kFarmParts + kOwnParts);
    level << 1.0, 0.0, 1.0, 1.0, 0.0;
    if (which != nullptr) withFarm = (which->all.covariance * level).head(kFarmParts).transpose();
    // d(variance of the sum) / d(silo variance) = sum over silos of (covariance with the silo's part / silo
    // variance)^2, and all of a silo's that no evidence touches.
    double change = which == nullptr ? 1.0 : 0.0;
    for (const SiloFit& silo : silos) {
        const double covariance =
            &silo == which ? (silo.all.covariance * level)(kSilo) : withFarm.dot(silo.following.row(0));
        change += covariance * covariance / (variance * variance);
    }
    return change * change * variance * variance / farm.silo.degreesOfFreedom;
}

}  // namespace treadwell::density
