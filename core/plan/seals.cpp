#include "core/plan/seals.h"

#include <algorithm>
#include <cmath>

namespace treadwell::plan {

namespace {

struct Span {
    Length along;
    Length across;
};

/// `plan` long over the floor, of which slopes rise `height` at 1:run on `ends` ends: its length on the
/// slope.
Length onSlope(Length plan, Length height, double run, double ends) {
    return plan + height * (ends * (std::sqrt(1.0 + run * run) - run));
}

Span spanOf(const farm::Shape& shape) {
    const double run = shape.rampSlope.runPerRise();
    const Length along = onSlope(shape.length, shape.height, run, shape.rampEnds);
    if (shape.kind == farm::ShapeKind::pile) return {along, onSlope(shape.width, shape.height, run, 2)};
    const Length crown = std::max(Length{}, shape.height - shape.wallHeight);
    return {along, onSlope(shape.width, crown, farm::kCrownSide.runPerRise(), 2)};
}

Area sideSheetsOf(const farm::Shape& shape, const farm::Body& body, Length lap) {
    if (shape.kind == farm::ShapeKind::pile) return {};
    return body.walls + lap * (shape.length * 2.0 + shape.width * static_cast<double>(2 - shape.rampEnds));
}

Seal sealOf(const Inputs& inputs, const farm::Shape& shape, const SiloFit& fit, LocalDay full) {
    const Sealing& sealing = inputs.sealing;
    const Span span = spanOf(shape);
    Seal seal;
    seal.silo = fit.name;
    seal.full = full;
    seal.sheets = outcome::sheetsOver(span.along, span.across, sealing.sheets);
    seal.sideSheets = sideSheetsOf(shape, fit.body, sealing.sheets.edge);
    const double surface_m2 = fit.body.surface.squareMetres();
    seal.treatment_L = surface_m2 * sealing.treatment_L_per_m2;
    seal.tyres = static_cast<std::int64_t>(
        std::ceil((surface_m2 + seal.sheets.laps.squareMetres()) * sealing.tyres_per_m2));
    seal.crewTime =
        Seconds{std::chrono::minutes{1}} * (surface_m2 * sealing.crewMinutes_per_m2 / sealing.crew);
    const Length depth = std::min(sealing.exposedDepth, fit.body.meanDepth);
    seal.exposed = fit.density.median() * (fit.body.surface * depth);
    seal.lostByADay = seal.exposed * outcome::waitingLoss(1).fraction();
    seal.costOfADay = seal.lostByADay.tonnes() * inputs.prices.crop_per_tonne_dm;
    return seal;
}

}  // namespace

std::vector<LocalDay> daysFull(const Inputs& inputs, const Fit& fit) {
    std::vector<LocalDay> days;
    AsFedMass soFar;
    for (const SiloFit& silo : fit.silos) {
        soFar += silo.placed;
        const double worked = soFar / (fit.delivery * inputs.workday);
        const auto day = std::chrono::days{std::max(0, static_cast<int>(std::ceil(worked - 1e-9)) - 1)};
        days.push_back(LocalDay{std::chrono::local_days{inputs.begins} + day});
    }
    return days;
}

Result<std::vector<Seal>> sealsOf(const Inputs& inputs) {
    return fitOf(inputs).map([&](const Fit& fit) {
        const std::vector<LocalDay> full = daysFull(inputs, fit);
        std::vector<Seal> seals;
        for (std::size_t i = 0; i < fit.silos.size(); ++i) {
            if (fit.silos[i].placed > AsFedMass{})
                seals.push_back(sealOf(inputs, inputs.silos[i].shape, fit.silos[i], full[i]));
        }
        return seals;
    });
}

}  // namespace treadwell::plan
