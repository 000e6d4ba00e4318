#pragma once

#include <cstdint>

namespace treadwell {

/// What a number measures. As-fed and dry-matter masses, densities and rates are different dimensions.
enum class Dimension : std::uint8_t {
    asFedMass,
    dryMass,
    machineMass,
    length,
    layerThickness,
    area,
    volume,
    asFedDensity,
    dryDensity,
    asFedRate,
    dryRate,
    dryMatter,
    share,
    chance,
    porosity,
    loss,
    shrink,
    packingIntensity,
    duration,
    speed,
    slope,
    costRate,
    massPerRate,
    productMass,
    productVolume,
    dishMass,
    chopLength,
    temperature,
    degreeDays,
    dryingRate,
};

/// A quantity stripped of its type so that a message can carry it to the place where it is put into words.
struct Amount {
    Dimension dimension;
    double si;
    friend bool operator==(const Amount&, const Amount&) = default;
};

}  // namespace treadwell
