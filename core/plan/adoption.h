#pragma once

#include "core/entries/plan_adopted.h"
#include "core/plan/inputs.h"

namespace treadwell::plan {

inline constexpr int kMostDays = 120;  ///< of a harvest that can be adopted

/// What is planned day by day: the fields in order of harvest, each at its median simulated delivery, every
/// day a working day; the density is that of the silos when full at the day's delivery. Errors: those of
/// flowOf(); planTooManyDays.
[[nodiscard]] Result<std::vector<entries::PlannedDay>> daysOf(const Inputs& inputs);

/// The plan as it is recorded. Errors: those of daysOf() and summaryOf().
[[nodiscard]] Result<entries::PlanAdopted> adoptionOf(const Inputs& inputs);

}  // namespace treadwell::plan
