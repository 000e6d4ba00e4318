#include "core/density/calibration_check.h"

#include "core/density/farm_fit.h"
#include "core/stats/student.h"

#include <cmath>
#include <map>
#include <utility>

namespace treadwell::density {

namespace {

std::vector<LeftOut> leftOutOf(const GroupedEvidence& grouped) {
    const auto& [silos, place, prior] = grouped;
    std::vector<LeftOut> left;
    if (silos.size() < 2) return left;
    const double start = fitFarm(silos, prior, prior.survey.silo).silo.scale;
    std::vector<SiloSums> others{silos.begin() + 1, silos.end()};
    for (std::size_t i = 0; i < silos.size(); ++i) {
        if (i > 0) others[i - 1] = silos[i - 1];
        const FarmFit fit = fitFarm(others, prior, start);
        const WholeReading reading = wholeReading(silos[i], fit, prior);
        const double doubt = fit.silo.scale * fit.silo.scale / fit.silo.degreesOfFreedom;
        left.push_back({silos[i].season, silos[i].silo, reading.seen, reading.expected,
                        degreesOfFreedom(reading.expected.variance, doubt)});
    }
    return left;
}

stats::RemlFit remlOf(std::span<const DensityEvidence> evidence) {
    constexpr std::size_t kFewestSilos = 3;
    stats::NestedSample sample;
    sample.levels.resize(3);
    std::map<std::pair<std::string, farm::SiloId>, std::int64_t> silos;
    for (const DensityEvidence& each : evidence) {
        if (each.kind != entries::EvidenceKind::core) continue;
        const auto number = static_cast<std::int64_t>(silos.size());
        sample.values.push_back(each.logRatio());
        sample.levels[0].push_back(silos.try_emplace({each.season, each.silo}, number).first->second);
        sample.levels[1].push_back(each.face);
        sample.levels[2].push_back(each.place);
    }
    return silos.size() < kFewestSilos ? stats::RemlFit{} : stats::reml(sample);
}

}  // namespace

bool LeftOut::isInside() const {
    const double half = stats::studentQuantile(0.9, degreesOfFreedom) * std::sqrt(expected.variance);
    return std::abs(error()) <= half;
}

std::optional<double> CalibrationCheck::error() const {
    if (silos.empty()) return std::nullopt;
    double squares = 0.0;
    for (const LeftOut& each : silos) squares += each.error() * each.error();
    return std::sqrt(squares / static_cast<double>(silos.size()));
}

Result<CalibrationCheck> checkCalibration(std::span<const DensityEvidence> evidence,
                                          const CalibrationPrior& prior) {
    return groupedEvidence(evidence, prior).map([&](const GroupedEvidence& grouped) {
        return CalibrationCheck{leftOutOf(grouped), remlOf(evidence)};
    });
}

}  // namespace treadwell::density
