#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/quantity/geometry.h"

#include <array>
#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <string_view>

namespace treadwell::formats {

/// How a receiver found a position, the best first.
enum class FixQuality : std::uint8_t {
    rtkFixed,
    rtkFloat,
    differential,  ///< satellite-corrected, or a precise service
    autonomous,
    deadReckoning,  ///< carried on without satellites
    untold,         ///< the file does not say
};
constexpr std::array<std::string_view, 6> enumTexts(FixQuality /*quality*/) noexcept {
    return {"rtkFixed", "rtkFloat", "differential", "autonomous", "deadReckoning", "untold"};
}

/// One position, WGS 84, in degrees as the file gives it.
struct Fix {
    Instant at;
    double latitude_deg = 0.0;   ///< -90 to 90, north positive
    double longitude_deg = 0.0;  ///< -180 to 180, east positive
    FixQuality quality = FixQuality::untold;
    std::optional<Length> height;  ///< above mean sea level, as most receivers give it
    std::optional<double> hdop;
    bool beginsSegment = false;  ///< reception was lost before it: nothing is known of the way here
    bool checked = true;         ///< false where the line carries no checksum

    friend bool operator==(const Fix&, const Fix&) = default;
};

/// Why something in a track file gave no fix. What is not about positions is no fault.
enum class TrackFault : std::uint8_t {
    unreadable,     ///< no sentence or point of the form
    checksumWrong,  ///< the checksum contradicts
    cut,            ///< longer than any sentence
    noFix,          ///< the receiver said that it has none
    notARecord,     ///< typed in or simulated position
    noTime,         ///< no time, or one without a zone
    noDate,         ///< time of day before any date
    outOfRange,     ///< no place on Earth
};
inline constexpr std::size_t kTrackFaults = 8;
constexpr std::array<std::string_view, kTrackFaults> enumTexts(TrackFault /*fault*/) noexcept {
    return {"unreadable", "checksumWrong", "cut", "noFix", "notARecord", "noTime", "noDate", "outOfRange"};
}

/// Something that gave no fix, and in which line of the file.
struct Rejected {
    TrackFault fault;
    std::int64_t line;
};

/// What a reader hands over while it reads; either may be called any number of times.
struct FixSink {
    std::function<void(const Fix&)> fix;
    std::function<void(const Rejected&)> rejected;
};

}  // namespace treadwell::formats
