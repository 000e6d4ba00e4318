#include "core/density/calibration_gain.h"

#include "core/density/codes.h"
#include "core/stats/normal.h"
#include "core/stats/student.h"

#include <algorithm>
#include <cmath>

namespace treadwell::density {

namespace {

DryDensity halfWidth(DryDensity median, double logSd, double degreesOfFreedom) {
    const double half =
        std::isinf(degreesOfFreedom) ? stats::kHalfBand80 : stats::studentQuantile(0.9, degreesOfFreedom);
    return median * std::sinh(half * logSd);
}

constexpr double kKnown = std::numeric_limits<double>::infinity();

}  // namespace

BandGain gainOf(const SiloPosterior& silo) {
    const double variance = silo.level.variance;
    return {silo.cores, silo.balances, silo.surveys, halfWidth(silo.predicted, silo.logSdBefore, kKnown),
            halfWidth(silo.predicted * std::exp(silo.level.mean), std::sqrt(variance),
                      degreesOfFreedom(variance, silo.residual.varianceDoubt))};
}

BandGain gainOfNext(const Calibration& calibration) {
    BandGain gain;
    if (calibration.silos.empty()) return gain;
    double logPredicted = 0.0, inputs = 0.0, before = 0.0;
    for (const SiloPosterior& silo : calibration.silos) {
        gain.cores += silo.cores;
        gain.balances += silo.balances;
        gain.surveys += silo.surveys;
        logPredicted += std::log(silo.predicted.si());
        inputs += silo.inputs;
        before += silo.logSdBefore * silo.logSdBefore;
    }
    const auto count = static_cast<double>(calibration.silos.size());
    const DryDensity predicted = DryDensity::fromSi(std::exp(logPredicted / count));
    const Residual& next = calibration.next;
    const double variance = next.site + next.silo + inputs / count;
    gain.before = halfWidth(predicted, std::sqrt(before / count), kKnown);
    gain.after = halfWidth(predicted * std::exp(next.level), std::sqrt(variance),
                           degreesOfFreedom(variance, next.varianceDoubt));
    return gain;
}

Message messageOf(const BandGain& gain) {
    const bool coresAlone = gain.balances == 0 && gain.surveys == 0;
    if (gain.after >= gain.before) {
        return {code::calibrationWidened,
                {gain.cores + gain.balances + gain.surveys, gain.before.amount(), gain.after.amount()}};
    }
    if (coresAlone) return {code::calibrationGain, {gain.cores, gain.before.amount(), gain.after.amount()}};
    return {code::calibrationGainMixed,
            {gain.cores, gain.balances, gain.surveys, gain.before.amount(), gain.after.amount()}};
}

}  // namespace treadwell::density
