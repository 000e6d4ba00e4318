#include "core/passes/silo_tracks.h"

#include "core/passes/codes.h"

namespace treadwell::passes {

namespace {

/// When each layer was begun, and where along the silo it lies: lifts everywhere, those of a ramp between
/// their fronts.
std::vector<LayerWindow> windowsOf(const density::SiloLayers& silo) {
    std::vector<LayerWindow> windows;
    const bool lifts = silo.silo.filling == farm::FillingWay::lifts;
    for (std::size_t k = 0; k < silo.layers.size(); ++k) {
        const packing::Layer& layer = *silo.layers[k].layer;
        const density::StackedLayer& stacked = silo.asItLies.layers[k];
        const double ramp_m = silo.silo.rampSlope.runPerRise() * silo.asItLies.top.si();
        windows.push_back({layer.number, layer.begin, lifts ? 0.0 : stacked.lower.si() - ramp_m,
                           lifts ? silo.silo.length.si() : stacked.upper.si()});
    }
    return windows;
}

}  // namespace

Result<DrivenGrid> gridOf(const density::SiloLayers& silo, const std::optional<farm::SiloPlace>& place) {
    if (!place) return fail(code::siloNotPlaced, "silo", silo.silo.name);
    return DrivenGrid::make({silo.silo.length, silo.silo.width}, *place, windowsOf(silo));
}

Result<ReadTrack> layTrack(DrivenGrid& grid, const season::FarmBook& farm,
                           const entries::TrackAttached& track, std::uint32_t roller, Instant until,
                           const TakeBytes& goOn) {
    const auto known = farm.tractors.find(track.tractor);
    if (known == farm.tractors.end()) return fail(code::trackTractorUnknown, "tractor", track.file);
    const farm::Tractor& machine = known->second;
    grid.begin({machine.mass, machine.trackWidth, machine.speed}, roller);
    std::int64_t later = 0;
    const auto read = readAttached(
        track,
        [&](const formats::Fix& fix) { fix.at <= until ? grid.take(fix) : static_cast<void>(++later); },
        goOn);
    if (!read) return Unexpected{read.error()};
    return ReadTrack{track, machine.name, *read, grid.counts(), later};
}

}  // namespace treadwell::passes
