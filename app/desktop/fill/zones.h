#pragma once

#include "app/desktop/widgets/pad_plan.h"
#include "core/farm/machines.h"

namespace treadwell::fill {

/// A zone of the plan is what the tractors in it do.
[[nodiscard]] constexpr farm::Activity activityOf(widgets::Zone zone) noexcept {
    switch (zone) {
        case widgets::Zone::packing:
            return farm::Activity::packing;
        case widgets::Zone::spreading:
            return farm::Activity::spreading;
        case widgets::Zone::away:
            break;
    }
    return farm::Activity::away;
}

[[nodiscard]] constexpr widgets::Zone zoneOf(farm::Activity activity) noexcept {
    for (const widgets::Zone zone : widgets::kZones) {
        if (activityOf(zone) == activity) return zone;
    }
    return widgets::Zone::away;
}

}  // namespace treadwell::fill
