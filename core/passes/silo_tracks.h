#pragma once

#include "core/density/silo_layers.h"
#include "core/passes/attached_track.h"
#include "core/passes/driven.h"

namespace treadwell::passes {

/// Where the tracks of a silo's tractors are laid: its floor and its layers. Errors: siloNotPlaced, those of
/// DrivenGrid::make().
[[nodiscard]] Result<DrivenGrid> gridOf(const density::SiloLayers& silo,
                                        const std::optional<farm::SiloPlace>& place);

/// A track that was read, and what became of its fixes.
struct ReadTrack {
    entries::TrackAttached track;
    std::string tractor;  ///< its name
    TrackFile read;
    TrackCounts counts;
    std::int64_t later = 0;  ///< fixes after the moment that is looked at, which were left out
};

/// Lays what an attached track tells up to `until` on the grid: later layers are not in it. After an error,
/// or where `goOn` ended it, the grid is of no use. Errors: trackTractorUnknown, those of readAttached().
[[nodiscard]] Result<ReadTrack> layTrack(DrivenGrid& grid, const season::FarmBook& farm,
                                         const entries::TrackAttached& track, std::uint32_t roller,
                                         Instant until, const TakeBytes& goOn = {});

}  // namespace treadwell::passes
