#pragma once

#include "core/density/readings.h"

#include <optional>
#include <vector>

namespace treadwell::density {

/// What moves a reading.
enum class MovedBy : std::uint8_t {
    packingTime,
    machines,
    layer,
    dryMatter,
    depth,
    measurement,
    limit,
    other
};
constexpr std::array<std::string_view, 8> enumTexts(MovedBy /*by*/) noexcept {
    return {"packingTime", "machines", "layer", "dryMatter", "depth", "measurement", "limit", "other"};
}

struct Move {
    MovedBy by;
    DryDensity change;  ///< of the median; below 0 where it fell
    Message what;
};

/// How a reading's median came from one moment's to another's.
struct Movement {
    DryDensity before;
    DryDensity after;
    std::vector<Move> moves;  ///< largest first; together they are the change

    [[nodiscard]] DryDensity change() const noexcept { return after - before; }
};

/// What moved `which` of the readings of a silo; none where either has no estimate.
///
/// ln(density) changes by half the elasticity for packing time and dry matter, by all of it for the machines'
/// mean mass and the thickness, and by the depth factor and the calibrated level as they are; what these
/// leave is the saturation limit's where one of the medians is held by it, else the curvature's. Each part is
/// put into kg DM/m3 by the logarithmic mean of the two medians, so that the parts add up exactly. Source:
/// the logarithmic mean Divisia decomposition, Ang 2004, Energy Policy 32:1131-1139.
[[nodiscard]] std::optional<Movement> movementOf(const Readings& before, const Readings& after,
                                                 SiloReading Readings::*which);

}  // namespace treadwell::density
