#pragma once

#include "core/density/readings.h"
#include "core/density/weak_places.h"
#include "core/stats/gaussian_process.h"

#include <optional>
#include <vector>

namespace treadwell::face {

/// A core where it came from, beside what was predicted for that place.
struct FaceCore {
    season::Dated<entries::Core> core;
    std::optional<Length> up;                          ///< above the floor; none where no crop lay
    std::optional<DryDensity> measured = {};           ///< none of loose material
    std::optional<DryDensity> predicted = {};          ///< without any calibration
    std::optional<density::Distribution> learnt = {};  ///< of one core there, after all that was measured
    std::optional<Message> reason = {};                ///< why it is not held against the prediction

    /// measured / predicted - 1.
    [[nodiscard]] std::optional<double> residual() const;
};

/// A piece of the face, at its middle.
struct MapCell {
    Length across;                                   ///< from the left wall
    Length up;                                       ///< above the floor
    density::Distribution measured;                  ///< of the surface, not of another core
    std::optional<density::Distribution> predicted;  ///< of a core there, after all that was measured
};

/// A face between its cores.
struct FaceMap {
    Length along;
    std::size_t columns;
    std::vector<MapCell> cells;  ///< rows from the floor up, each from the left wall to the right
    std::size_t cores;
    stats::ResemblanceFit fit;    ///< of ln(density) over metres
    double leftOutLogSd;          ///< root mean square of ln(core / what the others foretell)
    std::size_t leftOutWithin80;  ///< cores within the 80 % band that the others foretell
};

struct Face {
    std::vector<FaceCore> cores;  ///< of the silo, in the order of the season
    std::optional<FaceMap> map = {};
    std::optional<Message> reason = {};  ///< why there is no map
};

/// As few as a range can be fitted to at all (assumed).
inline constexpr std::size_t kFewestCores = 5;
inline constexpr Length kHalfFace = Length::fromMetres(1);

/// A silo's cores up to and including `now`, and the map of one face: that of the newest core, or the one at
/// `along` from the back wall. Cores within a metre along are of one face; balances and loose material are
/// of none. The map is a Gaussian process on ln(density) with a constant mean, its range and noise fitted by
/// maximum likelihood (stats::fittedResemblance), in 8 by 5 pieces.
[[nodiscard]] Face faceOf(const season::Season& season, const farm::Silo& silo, Instant now,
                          std::optional<Length> along = {});

}  // namespace treadwell::face
