#pragma once

#include "core/plan/inputs.h"

namespace treadwell::plan {

/// The example with days enough for a test, no more.
inline Inputs quick() {
    Inputs inputs = exampleInputs();
    inputs.days = 20;
    return inputs;
}

}  // namespace treadwell::plan
