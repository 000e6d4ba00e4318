#include "core/packing/layers.h"

#include "core/packing/layer_history.h"
#include "core/packing/passes.h"

#include <algorithm>
#include <cmath>

namespace treadwell::packing {

Seconds Layer::packingTime() const noexcept {
    Seconds total{0};
    for (const auto& [tractor, time] : packing) total += time;
    return total;
}

MassSpread massSpread(std::span<const LayerLoad> loads, std::int64_t weighed) noexcept {
    const double taught = weighed > 0 ? kUnweighedSpread.own / std::sqrt(static_cast<double>(weighed))
                                      : kUnweighedSpread.common;
    double mass_kg = 0.0, weighed_kg = 0.0, usual_kg = 0.0, box_kg = 0.0, own = 0.0;
    for (const LayerLoad& load : loads) {
        const double part_kg = load.mass.kilograms();
        const bool onScale = load.load->load.source == entries::MassSource::weighed;
        const bool inBox = load.load->load.source == entries::MassSource::box;
        mass_kg += part_kg;
        (onScale ? weighed_kg : inBox ? box_kg : usual_kg) += part_kg;
        own = std::hypot(own, part_kg * (onScale ? kWeighedSpread.own : kUnweighedSpread.own));
    }
    if (!(mass_kg > 0.0)) return {};
    // Scale, boxes and usual loads err each by itself.
    const double common = std::hypot(weighed_kg * kWeighedSpread.common, box_kg * kUnweighedSpread.common,
                                     usual_kg * std::min(kUnweighedSpread.common, taught));
    return {common / mass_kg, own / mass_kg};
}

double passesOn(const Layer& layer, const season::FarmBook& farm) {
    std::vector<Roller> rollers;
    for (const auto& [id, time] : layer.packing) {
        Roller roller{time / layer.mass, kUsualSpeed, kUsualTrackWidth};
        if (const auto known = farm.tractors.find(id); known != farm.tractors.end()) {
            roller.speed = known->second.speed;
            roller.trackWidth = known->second.trackWidth;
        }
        rollers.push_back(roller);
    }
    return passesPerLayer(rollers, layer.mass / layer.spread, layer.thickness);
}

LayerBook layersOf(const season::Season& season, const farm::Silo& silo, Instant now) {
    return LayerHistory{}.at(season, silo, now);
}

}  // namespace treadwell::packing
