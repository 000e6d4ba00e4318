#include "core/density/silo_evidence.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string>
#include <tuple>

namespace treadwell::density {

namespace {

using stats::LevelSummary;
using stats::Scalar;

std::vector<std::size_t> groupedOrder(std::span<const DensityEvidence> evidence) {
    std::vector<std::size_t> order(evidence.size());
    std::iota(order.begin(), order.end(), 0);
    const auto key = [&](std::size_t i) {
        const DensityEvidence& each = evidence[i];
        return std::tie(each.season, each.silo, each.face, each.place);
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return key(a) < key(b); });
    return order;
}

FaceSums& faceOf(SiloSums& silo, std::int64_t face) {
    if (silo.faces.empty() || silo.faces.back().face != face) {
        silo.faces.emplace_back();
        silo.faces.back().face = face;
    }
    return silo.faces.back();
}

void take(SiloSums& silo, const DensityEvidence& evidence, const Residual& residual) {
    silo.logPredicted += std::log(evidence.predicted.si());
    silo.inputs += evidence.inputs;
    const double reading = evidence.logRatio();
    if (evidence.kind == entries::EvidenceKind::survey) {
        ++silo.surveys;
        silo.surveyed += LevelSummary::of(reading, evidence.error + residual.layer / evidence.layers);
        return;
    }
    FaceSums& face = faceOf(silo, evidence.face);
    if (evidence.kind == entries::EvidenceKind::faceBalance) {
        ++silo.balances;
        ++face.balances;
        face.level += LevelSummary::of(reading, evidence.error);
        return;
    }
    ++silo.cores;
    if (face.places.empty() || face.places.back().place != evidence.place)
        face.places.push_back({evidence.place, 0, {}});
    ++face.places.back().cores;
    face.places.back().level += LevelSummary::of(reading, residual.spot + evidence.error);
}

void sumUp(SiloSums& silo, const Residual& residual) {
    const auto count = static_cast<double>(silo.cores + silo.balances + silo.surveys);
    silo.logPredicted /= count;
    silo.inputs /= count;
    for (FaceSums& face : silo.faces) {
        for (const FaceSums::Place& place : face.places) face.level += place.level.passedUp(residual.layer);
        silo.opened += face.level.passedUp(residual.face);
    }
}

/// How a part that differs from the level above by `between` and is told of by `own` follows that level:
/// mean = slope * above + offset, with a variance of its own.
struct Following {
    double slope;
    double offset;
    double variance;

    Following(const LevelSummary& own, double between)
        : slope(1.0 / (1.0 + between * own.precision)),
          offset(between * own.pull * slope),
          variance(between * slope) {}
    [[nodiscard]] Scalar at(const Scalar& above) const noexcept {
        return {slope * above.mean + offset, slope * slope * above.variance + variance};
    }
};

std::vector<SiloSums> sumsOf(std::span<const DensityEvidence> evidence, const Residual& residual) {
    std::vector<SiloSums> silos;
    for (const std::size_t i : groupedOrder(evidence)) {
        const DensityEvidence& each = evidence[i];
        if (silos.empty() || silos.back().season != each.season || silos.back().silo != each.silo) {
            silos.emplace_back();
            silos.back().season = each.season;
            silos.back().silo = each.silo;
        }
        take(silos.back(), each, residual);
    }
    for (SiloSums& silo : silos) sumUp(silo, residual);
    return silos;
}

stats::InverseChiSquare placeVariance(const std::vector<SiloSums>& silos, const Residual& residual,
                                      double degreesOfFreedom) {
    const double before = residual.layer + residual.spot;
    const stats::InverseChiSquare prior{degreesOfFreedom, before};
    if (std::isinf(degreesOfFreedom)) return prior;
    double misfit = 0.0, degrees = 0.0;
    for (const SiloSums& silo : silos) {
        for (const FaceSums& face : silo.faces) {
            LevelSummary cores;
            double count = 0.0;
            for (const FaceSums::Place& place : face.places) {
                cores += place.level.passedUp(residual.layer);
                count += static_cast<double>(place.cores);
            }
            if (count < 2.0) continue;
            misfit += cores.misfit();
            degrees += count - 1.0;
        }
    }
    return prior.after(before * misfit, degrees);
}

/// Layer and spot as the cores' misfit has them, in the prior's proportion.
Residual withPlace(Residual residual, const stats::InverseChiSquare& place) {
    const double before = residual.layer + residual.spot;
    if (!(before > 0.0)) return residual;
    residual.layer *= place.scale / before;
    residual.spot *= place.scale / before;
    return residual;
}

}  // namespace

Result<GroupedEvidence> groupedEvidence(std::span<const DensityEvidence> evidence,
                                        const CalibrationPrior& prior) {
    for (std::size_t i = 0; i < evidence.size(); ++i) {
        if (auto valid = validate(evidence[i]); !valid) {
            Error error = valid.error();
            error.field = "evidence[" + std::to_string(i) + "]." + error.field;
            return Unexpected{std::move(error)};
        }
    }
    GroupedEvidence grouped{{}, {}, prior};
    grouped.place = placeVariance(sumsOf(evidence, prior.survey), prior.survey, prior.degreesOfFreedom);
    grouped.learnt.survey = withPlace(prior.survey, grouped.place);
    grouped.silos = sumsOf(evidence, grouped.learnt.survey);
    return grouped;
}

std::vector<FacePosterior> facesOf(const SiloSums& silo, const Scalar& level, const Residual& residual) {
    std::vector<FacePosterior> faces;
    for (const FaceSums& sums : silo.faces) {
        const Following face{sums.level, residual.face};
        FacePosterior posterior{sums.face, 0, sums.balances, face.at(level), {}};
        for (const FaceSums::Place& place : sums.places) {
            posterior.cores += place.cores;
            const Following spot{place.level, residual.layer};
            // The layer's own part is spot - face; beside the silo's level it moves with
            // 1 + (spot.slope - 1) face.slope of it.
            const double own = spot.slope - 1.0;
            const double slope = 1.0 + own * face.slope;
            const Scalar layer{slope * level.mean + own * face.offset + spot.offset,
                               slope * slope * level.variance + own * own * face.variance + spot.variance};
            posterior.places.push_back({place.place, place.cores, spot.at(posterior.level), layer});
        }
        faces.push_back(std::move(posterior));
    }
    return faces;
}

}  // namespace treadwell::density
