#include "core/face/face.h"

#include "core/face/codes.h"
#include "core/stats/normal.h"

#include <algorithm>
#include <cmath>

namespace treadwell::face {

namespace {

constexpr std::size_t kColumns = 8;
constexpr std::size_t kRows = 5;
constexpr DryDensity kNoLimit =
    DryDensity::fromKilogramsPerCubicMetre(1500);  ///< what a core may have at most

bool isOnMap(const FaceCore& core, Length along) {
    const bool spot = core.core.what.origin != entries::CoreOrigin::faceBalance;
    const double apart = (core.core.what.along - along).metres();
    return spot && core.measured && core.up && std::abs(apart) <= kHalfFace.metres();
}

FaceCore coreOf(const density::CoreEvidence& evidence, const std::optional<density::Field>& field) {
    FaceCore core{.core = evidence.core, .up = evidence.core.what.height, .reason = evidence.reason};
    core.measured = evidence.core.what.dryDensity();
    if (evidence.evidence) core.predicted = evidence.evidence->predicted;
    if (!field) return core;
    const entries::Core& what = evidence.core.what;
    if (what.depth) {
        const Length surface = field->surface(what.along);
        if (surface >= *what.depth) core.up = surface - *what.depth;
    }
    if (!core.up) return core;
    if (const auto point = field->at({what.along, *core.up, what.across})) core.learnt = point->density;
    return core;
}

std::vector<stats::PlacedValue> valuesOf(const std::vector<FaceCore>& cores, Length along) {
    std::vector<stats::PlacedValue> values;
    for (const FaceCore& core : cores) {
        if (!isOnMap(core, along)) continue;
        values.push_back({core.core.what.across.metres(), core.up->metres(), std::log(core.measured->si())});
    }
    return values;
}

void addLeftOut(FaceMap& map, const std::vector<stats::PlacedValue>& values,
                const stats::GaussianProcess& process) {
    double squares = 0.0;
    const std::vector<stats::Scalar> foretold = process.leftOut();
    for (std::size_t i = 0; i < values.size(); ++i) {
        const double residual = values[i].value - foretold[i].mean;
        squares += residual * residual;
        if (std::abs(residual) <= stats::kHalfBand80 * std::sqrt(foretold[i].variance)) ++map.leftOutWithin80;
    }
    map.leftOutLogSd = std::sqrt(squares / static_cast<double>(values.size()));
}

FaceMap mapOf(const farm::Silo& silo, const std::optional<density::Field>& field, Length along, Length height,
              const std::vector<stats::PlacedValue>& values, const stats::ResemblanceFit& fit) {
    const stats::GaussianProcess process{values, fit.resemblance};
    FaceMap map{along, kColumns, {}, values.size(), fit, 0.0, 0};
    for (std::size_t row = 0; row < kRows; ++row) {
        for (std::size_t column = 0; column < kColumns; ++column) {
            const Length across = silo.width * ((static_cast<double>(column) + 0.5) / kColumns);
            const Length up = height * ((static_cast<double>(row) + 0.5) / kRows);
            const stats::Scalar here = process.at(across.metres(), up.metres());
            MapCell cell{across,
                         up,
                         density::Distribution{{std::exp(here.mean), std::sqrt(here.variance)}, kNoLimit},
                         {}};
            const auto point = field ? field->at({along, up, across}) : std::nullopt;
            if (point) cell.predicted = point->density;
            map.cells.push_back(std::move(cell));
        }
    }
    addLeftOut(map, values, process);
    return map;
}

}  // namespace

std::optional<double> FaceCore::residual() const {
    if (!measured || !predicted) return std::nullopt;
    return *measured / *predicted - 1.0;
}

Face faceOf(const season::Season& season, const farm::Silo& silo, Instant now, std::optional<Length> along) {
    const density::Readings readings = density::readingsAt(season, silo.id, now);
    const auto field = readings.layers ? density::fieldOf(season, *readings.layers, density::Filled::asItLies)
                                       : std::nullopt;
    Face face;
    for (const density::CoreEvidence& evidence : density::evidenceOf(season, now).cores) {
        if (evidence.core.what.silo == silo.id) face.cores.push_back(coreOf(evidence, field));
    }
    if (!along) {
        // The season's order is that of time: the last one is the newest.
        for (const FaceCore& core : face.cores) {
            if (isOnMap(core, core.core.what.along)) along = core.core.what.along;
        }
    }
    if (!along) {
        face.reason = Message{code::faceNoCores, {}};
        return face;
    }
    const std::vector<stats::PlacedValue> values = valuesOf(face.cores, *along);
    const auto fit = values.size() < kFewestCores ? std::nullopt : stats::fittedResemblance(values);
    if (!fit) {
        face.reason =
            Message{code::faceTooFewCores,
                    {static_cast<std::int64_t>(values.size()), static_cast<std::int64_t>(kFewestCores)}};
        return face;
    }
    Length height = field ? field->surface(*along) : Length{};
    for (const FaceCore& core : face.cores) {
        if (isOnMap(core, *along)) height = std::max(height, *core.up);
    }
    face.map = mapOf(silo, field, *along, height, values, *fit);
    return face;
}

}  // namespace treadwell::face
