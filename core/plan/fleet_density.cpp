#include "core/plan/fleet_density.h"

#include "core/packing/passes.h"

#include <array>

namespace treadwell::plan {

density::Situation situationOf(const Inputs& inputs, AsFedRate delivery, Length meanDepth) {
    density::Situation situation{.work = delivery,
                                 .dryMatter = inputs.dryMatter,
                                 .layer = inputs.layer,
                                 .meanDepth = meanDepth,
                                 .crop = inputs.crop};
    situation.target.minimum = inputs.minimumDensity;
    for (const PlannedTractor& tractor : inputs.tractors)
        situation.machines.push_back({.mass = tractor.mass, .share = tractor.share});
    return situation;
}

Length meanDepthOf(const Inputs& inputs) {
    Volume total;
    double weighted = 0.0;
    for (const PlannedSilo& silo : inputs.silos) {
        const farm::Body body = farm::bodyOf(silo.shape);
        total += body.volume;
        weighted += body.volume.si() * body.meanDepth.si();
    }
    return Length::fromMetres(weighted / total.si());
}

Result<density::DeliveryLimit> packingLimit(const Inputs& inputs) {
    return density::deliveryLimit(situationOf(inputs, inputs.harvester.rate, meanDepthOf(inputs)), {},
                                  inputs.wantedChance);
}

PackingIntensity packingAt(const Inputs& inputs, AsFedRate delivery) {
    double shares = 0.0;
    for (const PlannedTractor& tractor : inputs.tractors) shares += tractor.share.fraction();
    return PackingIntensity::fromSi(shares / delivery.si());
}

double passesAt(const Inputs& inputs, AsFedRate delivery) {
    const std::array all{
        packing::Roller{packingAt(inputs, delivery), packing::kUsualSpeed, packing::kUsualTrackWidth}};
    return packing::passesPerLayer(all, crop::looseAsFed(inputs.crop, inputs.dryMatter), inputs.layer);
}

}  // namespace treadwell::plan
