#pragma once

#include "core/entries/plan_adopted.h"
#include "core/plan/fits.h"
#include "core/plan/pays.h"

#include <vector>

namespace treadwell::plan {

/// A plan in a few figures, to stand beside others.
struct Summary : entries::PlanFigures {
    std::string name;
};

/// Errors: those of fitOf() and payOf().
[[nodiscard]] Result<Summary> summaryOf(const Inputs& inputs);

/// What sets `other` apart from `first`, in sentences; figures within a hundredth of each other are the same.
[[nodiscard]] std::vector<Message> differencesOf(const Summary& first, const Summary& other);

}  // namespace treadwell::plan
