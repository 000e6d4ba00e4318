#pragma once

#include "core/base/code.h"

// The columns must not move when a line is added.
// clang-format off
#define TREADWELL_SAMPLES_CODES(X) \
    X(weighingGained) \
    X(dryMatterSlightlyWet) \
    X(dryMatterWet) \
    X(dryMatterDry) \
    X(dryMatterVeryDry) \
    X(sievesNotInOrder) \
    X(sieveCountWrong) \
    X(sieveEmpty) \
    X(panEmpty) \
    X(sieveNothing) \
    X(sieveLost) \
    X(sieveGained) \
    X(sieveWet) \
    X(percentSum) \
    X(sieveStacksDiffer) \
    X(topLengthMissing) \
    X(sievesTooFew) \
    X(screenMissing) \
    X(chopWithin) \
    X(chopFine) \
    X(chopDusty) \
    X(chopCoarse) \
    X(chopUneven) \
    X(chopLengthen) \
    X(chopShorten) \
    X(chopCheckKnives) \
    X(starchImpossible) \
    X(kernelsOptimal) \
    X(kernelsFermented) \
    X(kernelsCloseRolls) \
    X(kernelsNarrowGap) \
    X(kernelsCheckRolls) \
    X(temperaturesSwapped) \
    X(dayTwice) \
    X(daysReversed) \
    X(warmthNotReached) \
    X(harvestTooLong) \
    X(orderWrong) \
    X(hybridOutsideWarmth) \
    X(temperaturesMissing) \
    X(warmthUnknown) \
    X(sampleFieldNow) \
    X(readingsMissing) \
    X(grossBelowTare) \
    X(dishImpossible)
// clang-format on

namespace treadwell::code {

TREADWELL_SAMPLES_CODES(TREADWELL_CODE)

}  // namespace treadwell::code
