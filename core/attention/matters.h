#pragma once

#include "core/density/readings.h"

#include <array>
#include <cstdint>
#include <string_view>
#include <vector>

namespace treadwell::attention {

/// What may want somebody's attention while a silo is filled, the most pressing first.
enum class Matter : std::uint8_t {
    packingBehind,
    layerThick,
    dryMatterOff,
    chopOff,
    siloNearlyFull,
    sampleOverdue,
    hoursOnShift,
    readyToCover,
};

constexpr std::array<std::string_view, 8> enumTexts(Matter /*matter*/) noexcept {
    return {"packingBehind",  "layerThick",    "dryMatterOff", "chopOff",
            "siloNearlyFull", "sampleOverdue", "hoursOnShift", "readyToCover"};
}

struct MatterNow {
    Matter matter;
    Message message;
    friend bool operator==(const MatterNow&, const MatterNow&) = default;
};

/// The trucks have stopped when none has come for as long as so many loads take at the pace (assumed).
inline constexpr double kStoppedLoads = 3.0;
/// A silo that holds this much of what is planned is nearly full (assumed).
inline constexpr double kNearlyFull = 0.9;
/// At work for so long it is worth a word, before the caution speaks (assumed).
inline constexpr std::chrono::hours kLongShift{7};
/// As much of a wedge as a strip of cover is worth bringing out for (assumed).
inline constexpr Length kWorthCovering = Length::fromMetres(10);

/// What matters at the silo of these readings, in the order of Matter; one matter may take several sentences.
/// What is not known is not judged, and a silo without a load today is not hurried.
[[nodiscard]] std::vector<MatterNow> mattersAt(const season::Season& season,
                                               const density::Readings& readings);

/// What an answer stands on.
enum class Standing : std::uint8_t { missing, assumed, known };

constexpr std::array<std::string_view, 3> enumTexts(Standing /*standing*/) noexcept {
    return {"missing", "assumed", "known"};
}

struct GroundNow {
    Standing standing;
    Message message;
    friend bool operator==(const GroundNow&, const GroundNow&) = default;
};

/// What is missing, then what is assumed, then what is known behind the readings.
[[nodiscard]] std::vector<GroundNow> groundsAt(const season::Season& season,
                                               const density::Readings& readings);

}  // namespace treadwell::attention
