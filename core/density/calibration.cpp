#include "core/density/calibration.h"

#include "core/density/farm_fit.h"

#include <algorithm>
#include <cmath>

namespace treadwell::density {

namespace {

using stats::Scalar;

/// The level's variance, told apart as its parts were before they were seen together.
Residual sharedOut(Residual residual, const Scalar& level, double siloVariance, double inputs) {
    const double before = residual.site + siloVariance + inputs;
    const double left = before > 0.0 ? level.variance / before : 0.0;
    residual.level = level.mean;
    residual.site *= left;
    residual.silo = siloVariance * left;
    residual.ordinaryInputs = inputs * left;
    residual.inputsCounted = inputs;
    return residual;
}

SiloPosterior posteriorOf(const SiloSums& sums, const SiloFit& fit, const FarmFit& farm,
                          const CalibrationPrior& prior) {
    SiloPosterior posterior;
    posterior.season = sums.season;
    posterior.silo = sums.silo;
    posterior.cores = sums.cores;
    posterior.balances = sums.balances;
    posterior.surveys = sums.surveys;
    posterior.predicted = DryDensity::fromSi(std::exp(sums.logPredicted));
    posterior.inputs = sums.inputs;
    const Residual& survey = prior.survey;
    posterior.logSdBefore = std::sqrt(survey.site + survey.silo + survey.ordinaryInputs +
                                      std::max(0.0, sums.inputs - survey.inputsCounted));
    posterior.level = fit.level();
    posterior.residual = sharedOut(survey, posterior.level, farm.silo.scale, sums.inputs);
    posterior.faces = facesOf(sums, posterior.level, survey);
    return posterior;
}

}  // namespace

Residual SiloPosterior::residualOf(const PlacePosterior& place) const {
    Residual own = residual;
    own.level = place.layer.mean;
    const double whole = own.site + own.silo + own.ordinaryInputs;
    const double left = whole > 0.0 ? std::min(1.0, place.layer.variance / whole) : 0.0;
    for (double* part : {&own.site, &own.silo, &own.ordinaryInputs}) *part *= left;
    own.layer = std::max(0.0, place.layer.variance - whole);
    return own;
}

const SiloPosterior* Calibration::find(farm::SiloId of, std::string_view season) const {
    const auto found = std::find_if(silos.begin(), silos.end(), [&](const SiloPosterior& each) {
        return each.silo == of && each.season == season;
    });
    return found == silos.end() ? nullptr : &*found;
}

const Residual& Calibration::residualOf(farm::SiloId of, std::string_view season) const {
    const SiloPosterior* found = find(of, season);
    return found == nullptr ? next : found->residual;
}

Result<Calibration> calibrate(std::span<const DensityEvidence> evidence, const CalibrationPrior& prior) {
    const auto grouped = groupedEvidence(evidence, prior);
    if (!grouped) return Unexpected{grouped.error()};
    const auto& [silos, place, learnt] = *grouped;
    Calibration calibration;
    calibration.placeVariance = place;
    const FarmFit farm = fitFarm(silos, learnt, learnt.survey.silo);
    calibration.site = {farm.farm.mean(0), farm.farm.covariance(0, 0)};
    calibration.surveyMethod = {farm.farm.mean(1), farm.farm.covariance(1, 1)};
    calibration.siloVariance = farm.silo;
    calibration.converged = farm.converged;
    calibration.steps = farm.steps;
    calibration.next = prior.survey;
    if (silos.empty()) return calibration;

    std::vector<SiloFit> fits;
    for (const SiloSums& silo : silos) fits.push_back(fitSilo(silo, farm, learnt));
    for (std::size_t i = 0; i < silos.size(); ++i) {
        calibration.silos.push_back(posteriorOf(silos[i], fits[i], farm, learnt));
        calibration.silos.back().residual.varianceDoubt = doubtOf(fits, farm, &fits[i]);
    }
    calibration.next = learnt.survey;
    calibration.next.level = calibration.site.mean;
    calibration.next.site = calibration.site.variance;
    calibration.next.silo = farm.silo.scale;
    calibration.next.ordinaryInputs = calibration.next.inputsCounted = 0.0;
    calibration.next.varianceDoubt = doubtOf(fits, farm, nullptr);
    return calibration;
}

}  // namespace treadwell::density
