#pragma once

#include "core/base/code.h"

// The columns must not move when a line is added.
// clang-format off
#define TREADWELL_ATTENTION_CODES(X) \
    X(cautionRampSlope) \
    X(cautionRampSteep) \
    X(cautionCrossSlope) \
    X(cautionCrownSteep) \
    X(cautionFillAboveWall) \
    X(cautionWorkingWidth) \
    X(cautionWidthNarrow) \
    X(cautionFaceDistance) \
    X(cautionCores) \
    X(cautionPeopleOnFoot) \
    X(cautionSiloGas) \
    X(cautionShiftHours) \
    X(cautionPowerLines) \
    X(cautionDriverAge) \
    X(cautionWalls) \
    X(cautionDrySilage) \
    X(cautionStanding) \
    X(packingBehind) \
    X(layerThick) \
    X(siloNearlyFull) \
    X(sampleOverdue) \
    X(sampleMissing) \
    X(hoursOnShift) \
    X(readyToCover) \
    X(knownDryMatter) \
    X(assumedDryMatter) \
    X(carriedDryMatter) \
    X(otherFieldsDryMatter) \
    X(knownLayer) \
    X(assumedLayer) \
    X(knownLoads) \
    X(assumedLoads) \
    X(assumedMasses) \
    X(knownMasses) \
    X(knownHeights) \
    X(missingHeights) \
    X(missingPace)
// clang-format on

namespace treadwell::code {

TREADWELL_ATTENTION_CODES(TREADWELL_CODE)

}  // namespace treadwell::code
