#pragma once

#include "core/passes/driven.h"
#include "core/practice/debrief.h"

namespace treadwell::practice {

/// What went wrong where by the tracks of real tractors, told as a lesson's debrief tells it, the weightiest
/// first. Only what holds wherever the positions' errors put the tyres is told as wrong: too few passes are
/// too few with all that is possible. Layers on which less than half of the way was measured well enough for
/// wheels are left out, which is told first. Empty where nothing was driven.
[[nodiscard]] std::vector<Finding> trackFindings(const passes::DrivenGrid& grid);

}  // namespace treadwell::practice
