#pragma once

#include <cstdint>
#include <string_view>

namespace treadwell {

// Everything the core has to say, as codes; the app puts them into words. Grouped by room: add a line here
// and the compiler asks for its phrase in app/words.
// The columns must not move when a line is added.
// clang-format off
#define TREADWELL_CODES(X) \
    /* base, quantity: reading values */ \
    X(valueMissing) \
    X(valueNotFinite) \
    X(valueOutOfRange) \
    X(textEmpty) \
    X(textNotNumber) \
    X(unitMissing) \
    X(unitUnknown) \
    X(timeUnreadable) \
    X(zoneUnknown) \
    X(fileUnreadable) \
    X(fileUnwritable) \
    /* farm */ \
    X(nameEmpty) \
    X(crownTooWide) \
    X(rampLongerThanSilo) \
    /* entries */ \
    X(payloadUnreadable) \
    X(payloadFieldMissing) \
    X(payloadFieldWrong) \
    X(targetMissing) \
    X(readingsMissing) \
    X(spanEmpty) \
    X(dishDisagrees) \
    X(coreHeightUnclear) \
    X(coreDensityUnclear) \
    /* journal */ \
    X(journalExists) \
    X(journalForeign) \
    X(journalDamaged) \
    X(journalNewer) \
    X(journalTooNew) \
    X(journalHeld) \
    X(journalMediumReadOnly) \
    X(journalNeedsFolder) \
    X(journalReadOnly) \
    X(journalWriteFailed) \
    X(chainBroken) \
    X(entryOutOfOrder) \
    /* session */ \
    X(seasonEmpty) \
    X(entryVoided) \
    X(correctionChangesKind) \
    X(deviceRenewed) \
    X(entryUnreadable) \
    X(entryKeptAside) \
    X(keptEntriesRecorded) \
    X(keptEntriesUnreadable) \
    /* formats */ \
    X(textIsUtf16) \
    X(encodingAmbiguous) \
    X(encodingWrong) \
    X(delimiterAmbiguous) \
    X(headerMissing) \
    X(quoteOpen) \
    X(decimalAmbiguous) \
    X(decimalMixed) \
    X(frameUnreadable) \
    X(frameCut) \
    X(frameTooLong) \
    X(frameSumWrong) \
    /* crop */ \
    X(densityImpossible) \
    /* samples */ \
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
    /* density: entries, warnings, the working */ \
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
    X(yardstickNorthAmerica) \
    X(yardstickThirdOfHourlyMass) \
    X(yardstickQuarterOfHourlyMass) \
    X(yardstickFrance) \
    X(yardstickBrittany) \
    X(yardstickPasses) \
    X(yardstickTarget) \
    X(workingLayer) \
    X(workingPackingTime) \
    X(workingPackingFactor) \
    X(workingBracket) \
    X(workingDepthFactor) \
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
    /* advice */ \
    X(tractorNameTwice) \
    X(adviceAsNow) \
    X(advicePack) \
    X(advicePackPart) \
    X(adviceSpread) \
    X(adviceLeave) \
    X(adviceLayer) \
    X(adviceDelivery) \
    X(adviceGain) \
    X(adviceThinnerGain) \
    X(adviceCosts) \
    X(adviceSaves) \
    X(adviceKeeps) \
    X(adviceAllIsWell) \
    X(adviceSaturated) \
    X(adviceClosest) \
    X(adviceNothingHelps) \
    X(adviceChosen) \
    X(adviceChangesNothing) \
    X(adviceTooSlow) \
    X(adviceFallsShort) \
    X(adviceFewPasses) \
    X(adviceDearer) \
    X(adviceNotNeeded) \
    /* attention */ \
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
    /* intake */ \
    X(columnMissing) \
    X(columnTwice) \
    X(columnNotThere) \
    X(rowRagged) \
    X(numberUnreadable) \
    X(wordUnknown) \
    X(nameUnknown) \
    X(nameShared) \
    X(wallTimeUnreadable) \
    X(dateOrderAmbiguous) \
    X(clockChanged) \
    X(massUnitMissing) \
    X(massUnitUnknown) \
    X(grossBelowTare) \
    X(weighingsSwapped) \
    X(netDisagrees) \
    X(ticketRepeated) \
    X(ticketMeetsLoad) \
    X(loadWithoutTicket) \
    X(importMapsUnreadable) \
    X(scaleShowsTare) \
    X(scaleTareNeeded) \
    X(scaleNetNegative) \
    X(scaleUnreachable) \
    X(scaleLineEnded) \
    X(scaleSilent) \
    X(scaleUnsteady) \
    X(dishImpossible) \
    X(fieldUnknown) \
    X(farmFileVersion) \
    /* review */ \
    X(dayUnknown) \
    X(reviewDaySheet) \
    X(reviewState) \
    X(reviewClosed) \
    X(reviewNotClosed) \
    X(reviewNothing) \
    X(reviewNotNamed) \
    X(reviewTotal) \
    X(reviewGoesOn) \
    X(reviewDeliveries) \
    X(reviewDryMatter) \
    X(reviewMeanDryMatter) \
    X(reviewTractors) \
    X(reviewDensity) \
    X(reviewOfSilo) \
    X(reviewNoEstimate) \
    X(readingToday) \
    X(readingSilo) \
    X(reviewAdvice) \
    X(adviceWasShown) \
    X(adviceWasAccepted) \
    X(adviceWasDeclined) \
    X(reviewPauses) \
    X(reviewLayers) \
    X(layerMeasured) \
    X(layerByLoads) \
    X(reviewHeights) \
    X(reviewNotes) \
    X(reviewCautions) \
    X(reviewQuestions) \
    X(reviewNoQuestions) \
    X(methodOven) \
    X(methodMicrowave) \
    X(methodMeter) \
    X(methodEstimate) \
    X(columnSilo) \
    X(columnTruck) \
    X(columnField) \
    X(columnHour) \
    X(columnLoads) \
    X(columnMass) \
    X(columnDryMass) \
    X(columnDryMatter) \
    X(columnDelivery) \
    X(columnTime) \
    X(columnMethod) \
    X(columnTractor) \
    X(columnMachineMass) \
    X(columnPackingHours) \
    X(columnSpreadingHours) \
    X(columnCost) \
    X(columnReading) \
    X(columnMedian) \
    X(columnLow) \
    X(columnHigh) \
    X(columnTarget) \
    X(columnChance) \
    X(columnPorosity) \
    X(columnPorosityLow) \
    X(columnPorosityHigh) \
    X(columnPackingTime) \
    X(columnAdvice) \
    X(columnDecision) \
    X(columnBefore) \
    X(columnAfter) \
    X(columnChanceBefore) \
    X(columnChanceAfter) \
    X(columnBegin) \
    X(columnEnd) \
    X(columnReason) \
    X(columnThickness) \
    X(columnReadings) \
    X(columnLowest) \
    X(columnMean) \
    X(columnHighest) \
    X(columnNote) \
    X(columnCaution) \
    X(questionNotWeighed) \
    X(questionNoField) \
    X(questionDryMatterAssumed) \
    X(questionSampleOverdue) \
    X(questionLayerNotSeen) \
    X(questionStillAtWork) \
    X(questionMassAssumed) \
    X(questionNoCost) \
    X(questionUnknownKinds) \
    X(questionRowsSetAside) \
    X(questionWaiting)
// clang-format on

enum class Code : std::uint16_t {
#define TREADWELL_CODE(name) name,
    TREADWELL_CODES(TREADWELL_CODE)
#undef TREADWELL_CODE
};

/// The code's own name, as `--json` prints it.
[[nodiscard]] std::string_view toText(Code code);

}  // namespace treadwell
