#pragma once

#include "core/entries/evidence.h"
#include "core/entries/load.h"
#include "core/formats/scale_frames.h"

#include <optional>
#include <string>

namespace treadwell::intake {

/// As many frames as must say the same, one after the other, and the longest time between two of them.
inline constexpr int kSteadyFrames = 3;
inline constexpr std::chrono::seconds kLongestGap{2};

/// A weight that stood still.
struct Weighing {
    formats::ScaleReading reading;
    Instant at;                  ///< of the last frame
    entries::Evidence evidence;  ///< the frames as they came, each after its time
};

/// Waits for a weight that stands still: equal frames in a row, stable or of a scale that does not say so.
/// Those of the latter must also last kLongestGap. Anything else in between, an unreadable frame too, starts
/// anew.
class SteadyWeight {
  public:
    [[nodiscard]] std::optional<Weighing> take(const formats::ScaleFrame& frame, Instant now);

  private:
    std::optional<formats::ScaleReading> m_reading;
    Instant m_first;
    Instant m_last;
    int m_count = 0;
    std::string m_frames;
};

/// The load that a weighing makes; `known` tells silo, truck and field. `tare` is the empty truck, nothing
/// where the scale shows the net weight without saying so. Errors: scaleShowsTare, scaleTareNeeded,
/// scaleNetNegative, those of entries::validate.
[[nodiscard]] Result<entries::Load> loadOf(const Weighing& weighing, entries::Load known,
                                           std::optional<AsFedMass> tare);

}  // namespace treadwell::intake
