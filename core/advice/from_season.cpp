#include "core/advice/from_season.h"

#include <cmath>

namespace treadwell::advice {

std::optional<AdviceSituation> situationFrom(const season::Season& season,
                                             const density::Readings& readings) {
    if (!readings.pace || !readings.layer.estimate) return std::nullopt;
    const season::FarmBook& book = season.farm();
    const density::Situation& layer = readings.layer.situation;
    AdviceSituation situation;
    situation.delivery = readings.pace->delivery;
    situation.dryMatter = layer.dryMatter;
    situation.layer = layer.layer;
    situation.meanDepth = layer.meanDepth;
    situation.crop = layer.crop;
    situation.target = layer.target;
    situation.options = readings.layer.options;
    // What-ifs stand on the pace alone.
    situation.options.entries.packingTime = std::hypot(density::kPackingTimeLogSd, readings.pace->logSd);
    situation.wantedChance = book.rules.wantedChance;
    situation.maximumLayer = book.rules.maximumLayer;
    for (const season::TractorNow& now : readings.rolling.tractors) {
        // A tractor that works at another silo is not ours to move.
        if (now.activity != farm::Activity::away && now.silo != readings.rolling.silo) continue;
        const farm::Tractor& tractor = book.tractors.at(now.tractor);
        Tractor candidate{tractor.name,       tractor.mass,       now.activity, Share::fromFraction(1),
                          tractor.hourlyCost, tractor.trackWidth, tractor.speed};
        if (now.activity == farm::Activity::packing) candidate.share = now.packing;
        situation.tractors.push_back(std::move(candidate));
    }
    return situation;
}

}  // namespace treadwell::advice
