#pragma once

#include "core/base/farm_zone.h"

#include <cstdint>
#include <optional>

namespace treadwell::fill {

/// What the clock did between two looks at it.
enum class ClockStep : std::uint8_t { ordinary, newDay, slept, setBack };

/// Longer than this between two looks the machine was asleep: a page that is awake looks every few seconds.
inline constexpr std::chrono::minutes kLongestLook{10};

[[nodiscard]] inline ClockStep clockStep(std::optional<Instant> last, Instant now, const FarmZone& zone) {
    if (!last) return ClockStep::ordinary;
    if (now < *last) return ClockStep::setBack;
    if (zone.dayOf(now) != zone.dayOf(*last)) return ClockStep::newDay;
    return now - *last > kLongestLook ? ClockStep::slept : ClockStep::ordinary;
}

}  // namespace treadwell::fill
