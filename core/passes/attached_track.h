#pragma once

#include "core/passes/track_file.h"
#include "core/season/season.h"

#include <filesystem>

namespace treadwell::passes {

/// Reads a track file once, for its hash and what it covers. Errors: fileUnreadable, trackWithoutFixes, those
/// of readTrack().
[[nodiscard]] Result<entries::TrackAttached> lookAtTrack(const std::filesystem::path& file,
                                                         farm::TractorId tractor);

/// How a track comes into a season: a file that is attached already and lies elsewhere now, or was another
/// tractor's, corrects the entry that attached it.
struct Attaching {
    entries::TrackAttached track;
    std::optional<entries::EntryId> target;
};
/// Error: trackAttachedAlready.
[[nodiscard]] Result<Attaching> attachingOf(const season::Season& season, entries::TrackAttached track);

/// The tracks of a season that begin no later than `now`, by their begin.
[[nodiscard]] std::vector<season::Dated<entries::TrackAttached>> attachedTracks(const season::Season& season,
                                                                                Instant now);

[[nodiscard]] std::filesystem::path pathOf(const entries::TrackAttached& track);

/// Streams the fixes of an attached track. What was taken counts only once this returns without an error:
/// that the file is the one that was attached shows at its end. Where `goOn` answers false the reading ends
/// early and nothing is held to the hash. Errors: trackGone, trackChanged, fileUnreadable, those of
/// readTrack().
[[nodiscard]] Result<TrackFile> readAttached(const entries::TrackAttached& track, const TakeFix& take,
                                             const TakeBytes& goOn = {});

}  // namespace treadwell::passes
