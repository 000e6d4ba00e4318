#pragma once

#include "core/intake/intake.h"

#include <optional>
#include <span>
#include <vector>

namespace treadwell::intake {

/// A truck is on the scale and at the silo within this time (common practice).
inline constexpr std::chrono::minutes kScaleToSilo{30};

/// A ticket as it is held against the loads that were tapped in.
struct TicketLoad {
    Instant at;
    entries::Load load;
};

/// For each ticket, in any order, the index of the tapped load that it weighs: of the same silo and truck
/// (one of them may not know its truck), weighed as heavy where both were weighed, no further apart than
/// kScaleToSilo and the doubt of the tapped time. As many pairs as can be, none crossing another of its
/// truck, and among those the ones closest in time.
[[nodiscard]] std::vector<std::optional<std::size_t>> matchLoads(std::span<const TicketLoad> tickets,
                                                                 std::span<const TappedLoad> tapped,
                                                                 AsFedMass scaleInterval);

}  // namespace treadwell::intake
