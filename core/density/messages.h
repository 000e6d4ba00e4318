#pragma once

#include "core/density/grounds.h"

namespace treadwell::density {

/// What must be said beside an estimate: what was assumed or held to a range, what lies outside the data, and
/// what adds nothing.
[[nodiscard]] std::vector<Message> warningsOf(const Situation& situation, const Estimate& estimate);

/// Each factor with its value, formula and source, in the order of computation.
[[nodiscard]] std::vector<WorkingStep> workingOf(const Situation& situation, const Options& options,
                                                 const Estimate& estimate, const Grounds& grounds);

}  // namespace treadwell::density
