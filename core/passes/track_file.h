#pragma once

#include "core/formats/fix.h"

#include <istream>

namespace treadwell::passes {

/// Things in a track file that gave no fix, by fault, and where the first of each stands.
struct TrackFaults {
    std::array<std::int64_t, formats::kTrackFaults> count{};
    std::array<std::int64_t, formats::kTrackFaults> firstLine{};

    [[nodiscard]] std::int64_t total() const noexcept;
};

enum class TrackFormat : std::uint8_t { nmea, gpx };
constexpr std::array<std::string_view, 2> enumTexts(TrackFormat /*format*/) noexcept {
    return {"nmea", "gpx"};
}

struct TrackFile {
    TrackFormat format;
    TrackFaults faults;
};

using TakeFix = std::function<void(const formats::Fix&)>;
/// Sees the bytes as they are read; false ends the reading there.
using TakeBytes = std::function<bool(std::string_view)>;

/// Streams a track's fixes to `take`, in constant memory. A file that begins like XML is read as GPX, any
/// other as NMEA. Errors: those of GpxReader.
[[nodiscard]] Result<TrackFile> readTrack(std::istream& in, const TakeFix& take, const TakeBytes& see = {});

}  // namespace treadwell::passes
