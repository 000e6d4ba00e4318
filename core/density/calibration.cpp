#include "core/density/calibration.h"

#include "core/density/farm_fit.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <string>

namespace treadwell::density {

namespace {

using stats::Scalar;

Result<void> check(std::span<const Evidence> evidence) {
    for (std::size_t i = 0; i < evidence.size(); ++i) {
        if (auto valid = validate(evidence[i]); !valid) {
            Error error = valid.error();
            error.field = "evidence[" + std::to_string(i) + "]." + error.field;
            return Unexpected{std::move(error)};
        }
    }
    return {};
}

/// Layer and spot as the cores' misfit has them, in the prior's proportion.
Residual withPlace(Residual residual, const stats::InverseChiSquare& place) {
    const double before = residual.layer + residual.spot;
    if (!(before > 0.0)) return residual;
    residual.layer *= place.scale / before;
    residual.spot *= place.scale / before;
    return residual;
}

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

void leaveOut(std::vector<SiloPosterior>& posteriors, const std::vector<SiloSums>& silos,
              const CalibrationPrior& prior, double start) {
    if (silos.size() < 2) return;
    std::vector<SiloSums> others{silos.begin() + 1, silos.end()};
    for (std::size_t i = 0; i < silos.size(); ++i) {
        if (i > 0) others[i - 1] = silos[i - 1];
        const FarmFit fit = fitFarm(others, prior, start);
        const WholeReading reading = wholeReading(silos[i], fit, prior);
        const double doubt = fit.silo.scale * fit.silo.scale / fit.silo.degreesOfFreedom;
        const double degrees = degreesOfFreedom(reading.expected.variance, doubt);
        posteriors[i].leftOut = LeftOut{reading.expected, reading.seen, degrees};
    }
}

stats::RemlFit remlOf(std::span<const Evidence> evidence) {
    stats::NestedSample sample;
    sample.levels.resize(3);
    std::map<std::pair<std::string, farm::SiloId>, std::int64_t> silos;
    for (const Evidence& each : evidence) {
        if (each.kind != entries::EvidenceKind::core) continue;
        const auto number = static_cast<std::int64_t>(silos.size());
        sample.values.push_back(each.logRatio());
        sample.levels[0].push_back(silos.try_emplace({each.season, each.silo}, number).first->second);
        sample.levels[1].push_back(each.face);
        sample.levels[2].push_back(each.place);
    }
    constexpr std::size_t kFewestSilos = 3;
    return silos.size() < kFewestSilos ? stats::RemlFit{} : stats::reml(sample);
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

std::optional<double> Calibration::leaveOneOutError() const {
    if (silos.size() < 2) return std::nullopt;
    double squares = 0.0;
    for (const SiloPosterior& each : silos) squares += each.leftOut->error() * each.leftOut->error();
    return std::sqrt(squares / static_cast<double>(silos.size()));
}

Result<Calibration> calibrate(std::span<const Evidence> evidence, const CalibrationPrior& prior) {
    if (const auto valid = check(evidence); !valid) return Unexpected{valid.error()};
    Calibration calibration;
    calibration.placeVariance =
        placeVariance(sumsOf(evidence, prior.survey), prior.survey, prior.degreesOfFreedom);
    CalibrationPrior learnt = prior;
    learnt.survey = withPlace(prior.survey, calibration.placeVariance);
    const std::vector<SiloSums> silos = sumsOf(evidence, learnt.survey);
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
    leaveOut(calibration.silos, silos, learnt, farm.silo.scale);
    calibration.reml = remlOf(evidence);
    return calibration;
}

}  // namespace treadwell::density
