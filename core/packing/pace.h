#pragma once

#include "core/packing/layers.h"
#include "core/season/rolling.h"

namespace treadwell::packing {

/// How fast crop comes in and how long it is packed, at one moment: rule B4 of the density engine.
struct Pace {
    AsFedRate delivery;          ///< of the last loads over their time
    double packing = 0.0;        ///< tractors packing now, each by its share of time
    PackingIntensity intensity;  ///< packing / delivery
    double logSd = 0.0;          ///< sd of ln(intensity), from the spread of the gaps
    std::int64_t loads = 0;      ///< that the delivery stands on
    AsFedMass lastLoad;          ///< of the silo
    AsFedMass sinceLast;         ///< what has been packed away of it at this pace; at most all of it
};

inline constexpr std::int64_t kPaceLoads = 8;
inline constexpr std::int64_t kFewestPaceLoads = 3;

/// The pace of a silo at the moment of `rolling`, or none with fewer than three loads today.
///
/// Delivery = mass of the last 8 loads of the day / the gaps before them; a gap counts at most three median
/// gaps, the open gap since the last load counts once it is longer than the median; declared pauses are cut
/// out. It follows a tractor that joins at once and a stop of the trucks within two gaps, where a
/// time-constant lags (rule B4).
[[nodiscard]] std::optional<Pace> paceAt(const season::Season& season, const season::Rolling& rolling);

/// The part of the pace's minutes a tonne that a layer of `book` will still get before it is out of the
/// wheels' reach: 1 - its buried share (rule B4). A load comes at once and is rolled until the next one, so
/// that what the pace has made of the last one since counts as lying above, in place of half of it.
[[nodiscard]] Share stillToCome(const Layer& layer, const LayerBook& book, const Pace& pace) noexcept;

}  // namespace treadwell::packing
