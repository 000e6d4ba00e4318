#pragma once

#include "core/density/doubts.h"
#include "core/density/learning.h"
#include "core/density/silo_layers.h"
#include "core/packing/layer_history.h"

namespace treadwell::density {

/// The three readings of a silo at one moment, each when full and as it lies.
struct Readings {
    season::Rolling rolling;
    std::optional<packing::Pace> pace;
    std::optional<SiloLayers> layers;  ///< none of a silo that is not known, or that cannot be stacked
    std::shared_ptr<const SurveyedSilo> surveyed;  ///< the heights read in it, if any
    std::vector<Message> learnt;                   ///< what moved the readings and narrowed their bands
    SiloReading layer;                             ///< the layer under way
    SiloReading today;                             ///< what was tipped today, of all its layers
    SiloReading silo;                              ///< all that lies in it
};

/// What the band of one of the readings is made of, and what would narrow it; nothing without an estimate.
[[nodiscard]] Doubts doubtsOf(const Readings& readings, const SiloReading& reading);

/// Needs no silo that is known: of one that the farm has not defined every reading has a reason. The layer
/// has one too while there is no pace, since what is still to come of its packing is not known then.
[[nodiscard]] Readings readingsAt(const season::Season& season, farm::SiloId silo, Instant now);

/// readingsAt for one who asks again and again: keeps the layers of days that are past. Not for several
/// threads at once.
class ReadingsHistory {
  public:
    [[nodiscard]] Readings at(const season::Season& season, farm::SiloId silo, Instant now);

  private:
    packing::LayerHistory m_layers;
    LearningHistory m_learning;
};

}  // namespace treadwell::density
