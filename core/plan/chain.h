#pragma once

#include "core/base/enum_text.h"
#include "core/plan/inputs.h"

#include <array>

namespace treadwell::plan {

/// What every tonne goes through, in order.
enum class Link : std::uint8_t { harvester, trucks, tipping, spreading, packing };
inline constexpr std::size_t kLinks = 5;

constexpr std::array<std::string_view, kLinks> enumTexts(Link /*link*/) noexcept {
    return {"harvester", "trucks", "tipping", "spreading", "packing"};
}

/// The chain with fixed times, from one field.
struct Chain {
    Seconds fill{};   ///< of a truck at the harvester, its turns and stops included
    Seconds round{};  ///< of a truck that never waits: fill, road both ways, tip, elsewhere
    std::array<AsFedRate, kLinks> rates{};  ///< that each link could carry alone; packing: to the target
    Link slowest = Link::harvester;         ///< of all five
    AsFedRate delivery;                     ///< the least of the four that hold crop up; packing never does
    int trucksToKeepUp = 1;                 ///< round / fill, rounded up
    double match = 0.0;                     ///< trucks * fill / round; below 1 the harvester waits

    [[nodiscard]] AsFedRate rate(Link link) const { return rates[static_cast<std::size_t>(link)]; }
};

/// loads/h of the trucks = N / round, of the harvester 1 / fill. Round = fill + 7.5 min + road both ways:
/// Harrigan 2003, Applied Engineering in Agriculture 19:389 (published). `packing` is packingLimit().
[[nodiscard]] Chain chainFrom(const Inputs& inputs, const PlannedField& field, AsFedRate packing) noexcept;

/// Tonnes over time, field after field, each at its chain's delivery.
[[nodiscard]] AsFedRate meanDelivery(const Inputs& inputs) noexcept;

/// The part of the time in which the harvester fills, where `trucks` (1-60) go round, each `fillOverAway` of
/// the time away to be filled (0-1000), with exponential filling and any times away: 1 - P0 of the
/// finite-source queue, 1/P0 = sum over n of N!/(N-n)! * r^n (textbook result, machine repair).
[[nodiscard]] double queueBusyShare(int trucks, double fillOverAway) noexcept;

}  // namespace treadwell::plan
