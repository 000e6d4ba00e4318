#pragma once

#include "core/base/code.h"

// The columns must not move when a line is added.
// clang-format off
#define TREADWELL_DENSITY_CODES(X) \
    X(tooFewLoads) \
    X(noLoads) \
    X(siloUnknown) \
    X(packingTimesMismatch) \
    X(heightOutsideSilo) \
    X(heightAboveSilo) \
    X(heightsWithoutCrop) \
    X(surveyWithoutLoads) \
    X(surveyWithoutRoom) \
    X(surveyImpossible) \
    X(layerAssumed) \
    X(layerHeldToRange) \
    X(dryMatterOutsideCrop) \
    X(noMachines) \
    X(noPackingTime) \
    X(machineAddsNothing) \
    X(saturated) \
    X(saturationUnknown) \
    X(targetAboveSaturation) \
    X(densityOutsideSurvey) \
    X(yardsticksDisagree) \
    X(yardstickPasses) \
    X(yardstickTarget) \
    X(weakStretch) \
    X(weakNotPacked) \
    X(weakFewMinutes) \
    X(weakLightTractors) \
    X(weakThickLayer) \
    X(weakWetCrop) \
    X(weakNearSurface) \
    X(workingOneLayer) \
    X(workingLayers) \
    X(workingLayer) \
    X(workingPackingTime) \
    X(workingPackingFactor) \
    X(workingBracket) \
    X(workingDepthFactor) \
    X(workingDepthWhenFull) \
    X(workingDepthAsItLies) \
    X(workingSaturation) \
    X(workingPoreFree) \
    X(workingLevel) \
    X(workingMedian) \
    X(workingBand) \
    X(workingTarget) \
    X(workingChance) \
    X(calibrationGain) \
    X(calibrationGainMixed) \
    X(calibrationWidened) \
    X(coreIsLoose) \
    X(coreOutsideLayers) \
    X(doubtSite) \
    X(doubtSilo) \
    X(doubtFace) \
    X(doubtPlace) \
    X(doubtDepthSlope) \
    X(doubtMachineMass) \
    X(doubtLayerAssumed) \
    X(doubtLayerSeen) \
    X(doubtLayer) \
    X(doubtPackingTime) \
    X(doubtLoadMass) \
    X(doubtSample) \
    X(doubtDryMatter) \
    X(doubtOtherEntries) \
    X(measureHeights) \
    X(measureDryMatter) \
    X(measureLayer) \
    X(measureTractors) \
    X(measureLoads) \
    X(learntFromHeights) \
    X(learntFromFarm) \
    X(learntSlope) \
    X(measuredWhole) \
    X(measuredPlaced) \
    X(sampleFirst) \
    X(sampleMovedCrop) \
    X(sampleNoneLeft) \
    X(sampleMovedTarget) \
    X(sampleMovedLoads) \
    X(sampleMovedSilo) \
    X(movedFasterLoads) \
    X(movedSlowerLoads) \
    X(movedNoLoad) \
    X(movedPackingTime) \
    X(movedMachines) \
    X(movedLayer) \
    X(movedSample) \
    X(movedDryMatter) \
    X(movedDepth) \
    X(movedHeights) \
    X(movedMeasurement) \
    X(movedLimit) \
    X(movedOther)
// clang-format on

namespace treadwell::code {

TREADWELL_DENSITY_CODES(TREADWELL_CODE)

}  // namespace treadwell::code
