#pragma once

#include "core/advice/what_if.h"

#include <cstddef>
#include <vector>

namespace treadwell::advice {

inline constexpr std::size_t kMostCandidates = 64;

struct LiveChanges {
    std::vector<Change> changes;  ///< the first is "as now"
    std::size_t left = 0;         ///< beyond kMostCandidates, not compared
};

/// What could be changed now: one more or one fewer tractor, two more, who spreads and who packs (all or half
/// of the time), a layer of the site's maximum, a slower delivery, and what goes together. Somebody always
/// goes on spreading where somebody spreads. The simplest first; the order does not depend on that of the
/// tractors.
[[nodiscard]] LiveChanges liveChanges(const AdviceSituation& situation, const Comparer& comparer);

}  // namespace treadwell::advice
