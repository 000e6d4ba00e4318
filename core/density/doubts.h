#pragma once

#include "core/density/estimate.h"

#include <optional>
#include <vector>

namespace treadwell::density {

/// What a reading's band is made of, by name.
enum class DoubtOf : std::uint8_t {
    site,
    silo,
    face,
    place,
    depthSlope,
    machineMass,
    layer,
    packingTime,
    loadMass,
    dryMatter,
    otherEntries,  ///< errors that the survey's entries had and these are not known to have
};
constexpr std::array<std::string_view, 11> enumTexts(DoubtOf /*doubt*/) noexcept {
    return {"site",  "silo",        "face",     "place",     "depthSlope",  "machineMass",
            "layer", "packingTime", "loadMass", "dryMatter", "otherEntries"};
}

struct Doubt {
    DoubtOf of;
    double variance;  ///< of ln(density)
    double share;     ///< of the whole
    Message what;     ///< "half of the band is the dry-matter sample of 06:40"
};

/// What one could measure.
enum class Measurement : std::uint8_t {
    heights,
    dryMatterSample,
    layerThickness,
    tractorWeights,
    loadWeights
};
constexpr std::array<std::string_view, 5> enumTexts(Measurement /*measurement*/) noexcept {
    return {"heights", "dryMatterSample", "layerThickness", "tractorWeights", "loadWeights"};
}

struct Narrowing {
    Measurement measurement;
    double varianceFall;  ///< of ln(density)
    double sigmaAfter;
    Message what;  ///< what to do and how far the band then narrows
};

struct Doubts {
    std::vector<Doubt> parts;     ///< largest first; the variances add up to the band's
    std::vector<Narrowing> next;  ///< what narrows the band most, first; nothing by less than 2 %
};

/// What is known of the entries behind an estimate, for its words.
struct EntriesBehind {
    std::optional<Instant> sample;  ///< the last dry-matter sample
    std::optional<Instant> layer;   ///< when the thickness was seen
    std::optional<Length>
        height;                ///< mean height of the crop as it lies; where not given that of the full silo
    bool heightsRead = false;  ///< since the last load: reading them again says little
};

inline constexpr std::int64_t kHeightsToRead = 12;
inline constexpr std::int64_t kLoadsToWeigh = 3;
inline constexpr double kWeighbridgeLogSd = 0.01;  ///< of a tractor's mass from a weighbridge (assumed)

/// Splits the variance of `estimate` by its sources and ranks what could be measured by how far it would
/// fall: (w'Sh)^2 / (h'Sh + R), with S the variances of the sources, w what they do to the density, h what
/// the measurement sees of them and R its own error (Gaussian conditioning on one number). Heights see site,
/// silo and entries (mass and dry matter with 1 + s/2 and 1 - s/2), with the errors of their volume, of the
/// method and of the way to opening (rule B10). Where the entries err less than the survey's did the rest is
/// named as such. In the logarithm and to first order: with a layer that is held to 10-40 cm, with machines
/// of which one begins or ceases to count, and at the saturation limit the spread is less than this.
[[nodiscard]] Doubts doubtsOf(const Situation& situation, const Options& options, const Estimate& estimate,
                              const EntriesBehind& behind = {});

}  // namespace treadwell::density
