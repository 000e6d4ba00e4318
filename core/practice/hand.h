#pragma once

#include "core/passes/local_frame.h"
#include "core/passes/press.h"

#include <vector>

namespace treadwell::practice {

/// A tractor that a trainee steers: it drives to a goal on the floor, forward or back, and steers no more
/// than a tractor can, so that it changes its track only while it drives. It stands where it cannot come
/// closer.
class HandDriven final {
  public:
    /// Sideways by no more than this of the way along (assumed).
    static constexpr double kSteepest = 0.35;

    HandDriven(const passes::PadShape& shape, const passes::Roller& machine);

    /// Held to the floor between the walls.
    void goTo(passes::GroundPoint goal) noexcept;
    void halt() noexcept { m_goal = m_place; }
    /// Drives on by `distance` (0 or more), adds what it drove and gives how far that was.
    Length go(std::vector<passes::WheelPass>& passes, Length distance);

    [[nodiscard]] bool stands() const noexcept { return m_goal.x_m == m_place.x_m; }
    [[nodiscard]] const passes::GroundPoint& place() const noexcept { return m_place; }
    [[nodiscard]] const passes::GroundPoint& goal() const noexcept { return m_goal; }

  private:
    double m_length_m;
    double m_lowest_m;  ///< the middle between the tyres may come
    double m_highest_m;
    passes::GroundPoint m_place;
    passes::GroundPoint m_goal;
};

}  // namespace treadwell::practice
