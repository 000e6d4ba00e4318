#pragma once

#include "core/base/code.h"

// The columns must not move when a line is added.
// clang-format off
#define TREADWELL_PLAN_CODES(X) \
    X(planNothingListed) \
    X(planNameTwice) \
    X(planRoundTooLong) \
    X(planTooManyDays) \
    X(planNoneAdopted) \
    X(planSiloUnknown) \
    X(planSiloCautions) \
    X(planPackingSlowest) \
    X(planDaysWithoutLoad) \
    X(planFleetsCompared) \
    X(planLossHeld) \
    X(planNeverPays) \
    X(planSealOrder) \
    X(planWaiting) \
    X(planFaceTooLarge) \
    X(planDaysWithoutFeed) \
    X(planDiffersInDensity) \
    X(planDiffersInDays) \
    X(planDiffersInRoom) \
    X(planDiffersInCost) \
    X(planDiffersInMargin) \
    X(planDiffersInNothing)
// clang-format on

namespace treadwell::code {

TREADWELL_PLAN_CODES(TREADWELL_CODE)

}  // namespace treadwell::code
