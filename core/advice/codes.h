#pragma once

#include "core/base/code.h"

// The columns must not move when a line is added.
// clang-format off
#define TREADWELL_ADVICE_CODES(X) \
    X(tractorNameTwice) \
    X(adviceAsNow) \
    X(advicePack) \
    X(advicePackPart) \
    X(adviceSpread) \
    X(adviceLeave) \
    X(adviceLayer) \
    X(adviceDelivery) \
    X(adviceHold) \
    X(adviceGain) \
    X(adviceThinnerGain) \
    X(adviceCosts) \
    X(adviceSaves) \
    X(adviceKeeps) \
    X(adviceAllIsWell) \
    X(adviceSaturated) \
    X(adviceClosest) \
    X(adviceNothingHelps) \
    X(adviceLittleHelps) \
    X(adviceChosen) \
    X(adviceChangesNothing) \
    X(adviceTooSlow) \
    X(adviceFallsShort) \
    X(adviceFewPasses) \
    X(adviceDearer) \
    X(adviceNotNeeded) \
    X(advicePackSome) \
    X(adviceThinner) \
    X(adviceSlower)
// clang-format on

namespace treadwell::code {

TREADWELL_ADVICE_CODES(TREADWELL_CODE)

}  // namespace treadwell::code
