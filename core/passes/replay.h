#pragma once

#include "core/density/silo_layers.h"
#include "core/passes/rest.h"
#include "core/passes/tracks_laid.h"

namespace treadwell::passes {

/// How a recorded silo is run through the simulation.
struct ReplayOptions {
    Parameters parameters = {};
    Pattern pattern = Pattern::wholeWidth;
    std::uint64_t seed = 1;
    unsigned threads = 1;
};

/// A layer as it was recorded, beside what the simulation made of it.
struct ReplayedLayer {
    std::shared_ptr<const packing::Layer> layer;
    Seconds packed;                 ///< by all machines, credited so far
    Coverage coverage;              ///< while it lay on top
    DryDensity rolled;              ///< before it rebounds, mean of the strip
    density::Distribution density;  ///< where it lies
};

/// The simulation's answer for what lies in a silo, a second opinion beside the regression's.
struct Replay {
    std::vector<ReplayedLayer> layers;          ///< bottom up
    std::optional<density::Distribution> silo;  ///< all dry matter over all volume; none without layers
    Pad pad;                                    ///< the strip that was simulated, to be drawn
};

/// What is not known of a simulated density beside the survey's residual: its misfit from the regression over
/// the survey's range, as a standard deviation of ln(density). The simulation was fitted to the regression,
/// so that its band can be no narrower.
inline constexpr double kSimulationLogSd = 0.12;

/// Lays the recorded layers one upon the other on a strip across the silo, as thick as they were spread, and
/// rolls each, while it lies on top, for the tractors' minutes that are credited to it (rule B3): distance is
/// speed times time, on the part of the layer's area that the strip is. Then each is put where it lies by the
/// same stack as the regression's layers, with the rolled density in place of the bracket. A farm's
/// calibration does not move it. Where tracks were laid is not recorded and is drawn from `seed`; the same
/// seed gives the same answer on any number of threads. Tractors that the farm does not know do not roll.
/// Errors: those of makePad and of beginLayer.
[[nodiscard]] Result<Replay> replay(const season::Season& season, const density::SiloLayers& silo,
                                    density::Filled filled, const ReplayOptions& options = {});

}  // namespace treadwell::passes
