#include "core/practice/hand.h"

#include <algorithm>
#include <cmath>

namespace treadwell::practice {

HandDriven::HandDriven(const passes::PadShape& shape, const passes::Roller& machine)
    : m_length_m{shape.length.si()} {
    const double middle_m = 0.5 * shape.width.si();
    m_lowest_m = std::min(passes::kOverhang.si() + 0.5 * machine.width().si(), middle_m);
    m_highest_m = 2.0 * middle_m - m_lowest_m;
    m_place = m_goal = {m_length_m, middle_m};  // it comes in at the mouth
}

void HandDriven::goTo(passes::GroundPoint goal) noexcept {
    m_goal = {std::clamp(goal.x_m, 0.0, m_length_m), std::clamp(goal.y_m, m_lowest_m, m_highest_m)};
}

Length HandDriven::go(std::vector<passes::WheelPass>& passes, Length distance) {
    double left_m = distance.si();
    double driven_m = 0.0;
    while (left_m > 0.0 && !stands()) {
        const double along_m = m_goal.x_m - m_place.x_m, across_m = m_goal.y_m - m_place.y_m;
        // Steered as far as it can be until it is on the goal's track, then straight on.
        const double slope = across_m == 0.0 ? 0.0 : std::copysign(kSteepest, across_m);
        const double perAlong = std::hypot(1.0, slope);
        double part_m = std::min(std::abs(along_m), left_m / perAlong);
        if (slope != 0.0) part_m = std::min(part_m, across_m / slope);
        const bool atTrack = slope != 0.0 && part_m == across_m / slope;
        const bool atGoal = part_m == std::abs(along_m);
        const passes::GroundPoint to{atGoal ? m_goal.x_m : m_place.x_m + std::copysign(part_m, along_m),
                                     atTrack ? m_goal.y_m : m_place.y_m + part_m * slope};
        passes.push_back({m_place.x_m, m_place.y_m, to.x_m, to.y_m, 0});
        m_place = to;
        driven_m += part_m * perAlong;
        left_m -= part_m * perAlong;
        if (!atTrack && !atGoal) break;
    }
    return Length::fromMetres(driven_m);
}

}  // namespace treadwell::practice
