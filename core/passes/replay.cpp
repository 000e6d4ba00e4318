#include "core/passes/replay.h"

#include <algorithm>
#include <cmath>

namespace treadwell::passes {

namespace {

constexpr Length kStrip = Length::fromMetres(4);

/// The machines of the farm as rollers, and where each stands in the list.
struct Fleet {
    std::vector<PressTable> tables;
    std::vector<TrackLayer> tracks;
    std::map<farm::TractorId, std::uint32_t> places;
};

Fleet fleetOf(const season::FarmBook& farm, const Pad& pad, const ReplayOptions& options) {
    Fleet fleet;
    for (const auto& [id, tractor] : farm.tractors) {
        const auto place = static_cast<std::uint32_t>(fleet.tables.size());
        fleet.places.emplace(id, place);
        fleet.tables.emplace_back(Roller{tractor.mass, tractor.trackWidth, tractor.speed}, pad.parameters);
        fleet.tracks.emplace_back(pad.shape, options.pattern, kOverhang, options.seed + place);
    }
    return fleet;
}

/// The drives on the strip that belong to a layer's packing: the strip's part of its area.
void rollLayer(Pad& pad, Fleet& fleet, const packing::Layer& layer, std::vector<WheelPass>& passes,
               unsigned threads) {
    const double part = (pad.shape.length * pad.shape.width) / layer.area;
    passes.clear();
    for (const auto& [tractor, time] : layer.packing) {
        const auto known = fleet.places.find(tractor);
        if (known == fleet.places.end()) continue;
        const Roller& roller = fleet.tables[known->second].roller();
        const Length distance = Length::fromMetres(roller.speed.si() * time.count() * part);
        fleet.tracks[known->second].add(passes, roller, known->second, distance);
    }
    press(pad, passes, fleet.tables, threads);
}

/// Of the strip's columns, whose areas are equal: mass over volume.
DryDensity rolledDensity(const Pad& pad, std::size_t layer) {
    double mass = 0.0, volume = 0.0;
    for (std::size_t place = 0; place < pad.columns(); ++place) {
        const std::size_t cell = layer * pad.columns() + place;
        mass += pad.areal_kg_m2[cell];
        volume += pad.areal_kg_m2[cell] * pad.volume_m3_kg[cell];
    }
    return DryDensity::fromSi(mass / volume);
}

density::Distribution about(DryDensity median, DryDensity limit,
                            const std::optional<density::Estimate>& regression) {
    const double survey = density::fieldRegression().residualLogSd.value();
    const double sigma = std::hypot(regression ? regression->density.sigma() : survey, kSimulationLogSd);
    return density::Distribution{{median.si(), sigma}, limit};
}

Spread spreadOf(const density::LayerFacts& facts) {
    return {facts.layer->dryMatter(), crop::factsOf(facts.crop).loose};
}

/// As spread, held to what a pad takes.
Length thicknessOn(const packing::Layer& layer) {
    return std::clamp(layer.thickness, Length::fromCentimetres(1), Length::fromCentimetres(100));
}

}  // namespace

Result<Replay> replay(const season::Season& season, const density::SiloLayers& silo, density::Filled filled,
                      const ReplayOptions& options) {
    auto pad = makePad({kStrip, silo.silo.width}, options.parameters);
    if (!pad) return Unexpected{pad.error()};
    Replay result{{}, std::nullopt, std::move(*pad)};
    Fleet fleet = fleetOf(season.farm(), result.pad, options);
    std::vector<WheelPass> passes;
    for (const density::LayerFacts& facts : silo.layers) {
        const auto spread = spreadEvenly(result.pad, spreadOf(facts), thicknessOn(*facts.layer));
        if (!spread) return Unexpected{spread.error()};
        rollLayer(result.pad, fleet, *facts.layer, passes, options.threads);
    }
    std::vector<density::LaidLayer> laid;
    for (std::size_t k = 0; k < silo.layers.size(); ++k) {
        const density::LayerFacts& facts = silo.layers[k];
        laid.push_back({facts.layer->dry, rolledDensity(result.pad, k), facts.limit.density});
    }
    const auto stack = density::stackOf(silo.silo, laid, filled);
    if (!stack) return Unexpected{stack.error()};
    for (std::size_t k = 0; k < laid.size(); ++k) {
        const auto reading = density::readingOf(season, silo, {k, 1}, density::Reading::layer);
        result.layers.push_back({silo.layers[k].layer, silo.layers[k].layer->packingTime(),
                                 coverageOf(result.pad, k), laid[k].bracket,
                                 about(stack->layers[k].density, laid[k].limit, reading.of(filled))});
    }
    if (laid.empty()) return result;
    const auto whole = density::readingOf(season, silo, {0, laid.size()}, density::Reading::day);
    const auto limit = std::max_element(laid.begin(), laid.end(), [](const auto& a, const auto& b) {
                           return a.limit < b.limit;
                       })->limit;
    result.silo = about(stack->mean, limit, whole.of(filled));
    return result;
}

}  // namespace treadwell::passes
