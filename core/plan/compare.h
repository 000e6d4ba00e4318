#pragma once

#include "core/plan/fits.h"
#include "core/plan/pays.h"

#include <vector>

namespace treadwell::plan {

/// A plan in a few figures, to stand beside others.
struct Summary {
    std::string name;
    AsFedRate delivery;  ///< simulated, all fields
    double days = 0.0;   ///< of harvest
    AsFedMass leftOver;  ///< at the median density
    Chance fits;
    DryDensity low80;  ///< of the density when full
    DryDensity density;
    DryDensity high80;
    Chance chance;  ///< of the target
    Loss loss;      ///< expected
    CostRate hour;
    double margin_per_t_dm = 0.0;
};

/// Errors: those of fitOf() and payOf().
[[nodiscard]] Result<Summary> summaryOf(const Inputs& inputs);

/// What sets `other` apart from `first`, in sentences; figures within a hundredth of each other are the same.
[[nodiscard]] std::vector<Message> differencesOf(const Summary& first, const Summary& other);

}  // namespace treadwell::plan
