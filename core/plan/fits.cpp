#include "core/plan/fits.h"

#include "core/plan/chain.h"
#include "core/plan/fleet_density.h"
#include "core/stats/bisect.h"

#include <algorithm>

namespace treadwell::plan {

namespace {

std::vector<HeightVolume> volumesOf(const farm::Shape& shape) {
    constexpr int kSteps = 20;
    std::vector<HeightVolume> all;
    for (int i = 1; i <= kSteps; ++i) {
        const Length height = shape.height * (static_cast<double>(i) / kSteps);
        all.push_back({height, farm::bodyOf(farm::filledTo(shape, height)).volume});
    }
    return all;
}

AsFedMass massOf(const SiloFit& silo, DryDensity density, DryMatter dryMatter) {
    return density * silo.body.volume / dryMatter;
}

Result<SiloFit> siloFit(const Inputs& inputs, const PlannedSilo& silo, AsFedRate delivery) {
    const farm::Body body = farm::bodyOf(silo.shape);
    const auto estimated = density::estimate(situationOf(inputs, delivery, body.meanDepth));
    if (!estimated) return Unexpected{estimated.error()};
    SiloFit fit{silo.name, body, volumesOf(silo.shape), estimated->density, {}, {}};
    fit.holds = {massOf(fit, fit.density.low80(), inputs.dryMatter),
                 massOf(fit, fit.density.median(), inputs.dryMatter),
                 massOf(fit, fit.density.high80(), inputs.dryMatter)};
    return fit;
}

void place(const Inputs& inputs, Fit& fit) {
    std::size_t silo = 0;
    for (std::size_t field = 0; field < inputs.grounds.size(); ++field) {
        AsFedMass left = inputs.grounds[field].crop;
        while (left > AsFedMass{} && silo < fit.silos.size()) {
            SiloFit& into = fit.silos[silo];
            const AsFedMass taken = std::min(left, into.holds.median - into.placed);
            if (taken > AsFedMass{}) fit.placements.push_back({field, silo, taken});
            into.placed += taken;
            left -= taken;
            if (left > AsFedMass{}) ++silo;
        }
    }
}

/// Chance that the density is high enough for all the crop.
Chance chanceOfRoom(const Fit& fit, DryMatter dryMatter) {
    constexpr double kAlmostNever = 1e-9;
    const auto capacity = [&](double probability) {
        double sum = 0.0;
        for (const SiloFit& silo : fit.silos)
            sum += massOf(silo, silo.density.quantile(probability), dryMatter).si();
        return sum;
    };
    if (capacity(1.0 - kAlmostNever) < fit.crop.si()) return Chance{};
    if (capacity(kAlmostNever) >= fit.crop.si()) return Chance::fromFraction(1.0);
    return Chance::fromFraction(1.0 -
                                stats::bisected(capacity, fit.crop.si(), kAlmostNever, 1.0 - kAlmostNever));
}

}  // namespace

Result<Fit> fitOf(const Inputs& inputs) {
    if (auto valid = validate(inputs); !valid) return Unexpected{valid.error()};
    Fit fit{.delivery = meanDelivery(inputs),
            .crop = {},
            .silos = {},
            .placements = {},
            .leftOver = {},
            .fits = {}};
    for (const PlannedField& field : inputs.grounds) fit.crop += field.crop;
    MassBand room;
    for (const PlannedSilo& silo : inputs.silos) {
        auto found = siloFit(inputs, silo, fit.delivery);
        if (!found) return Unexpected{found.error()};
        room.low80 += found->holds.low80;
        room.median += found->holds.median;
        room.high80 += found->holds.high80;
        fit.silos.push_back(*std::move(found));
    }
    place(inputs, fit);
    const auto left = [&](AsFedMass holds) { return std::max(AsFedMass{}, fit.crop - holds); };
    fit.leftOver = {left(room.high80), left(room.median), left(room.low80)};
    fit.fits = chanceOfRoom(fit, inputs.dryMatter);
    return fit;
}

}  // namespace treadwell::plan
