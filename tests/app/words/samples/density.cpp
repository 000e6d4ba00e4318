#include "core/density/codes.h"
#include "core/packing/codes.h"
#include "tests/app/words/samples/tables.h"

namespace treadwell::words {

using namespace sample;

namespace {

const Argument kMet = std::vector{code::yardstickFrance, code::yardstickBrittany};
const Argument kNotMet = std::vector{code::yardstickPasses};

}  // namespace

std::vector<Sample> densitySamples() {
    // A line a code, so that the table can be read.
    // clang-format off
    return {
        {code::tooFewLoads, {kCount, kMore}},
        {code::noLoads, {}},
        {code::siloUnknown, {}},
        {code::packingTimesMismatch, {kCount, kMore}},
        {code::heightOutsideSilo, {kDepth, kShallow}},
        {code::heightAboveSilo, {kDepth, kShallow}},
        {code::heightsWithoutCrop, {}},
        {code::surveyWithoutLoads, {}},
        {code::surveyWithoutRoom, {kHeavy}},
        {code::surveyImpossible, {kDenser, kDryTonnes, kRoom, kDensity, kDensest}},
        {code::layerAssumed, {kLayer}},
        {code::layerHeldToRange, {kThicker, kLayer}},
        {code::dryMatterOutsideCrop, {kDryMatter, kDrier, kDrier}},
        {code::noMachines, {}},
        {code::noPackingTime, {}},
        {code::machineAddsNothing, {kCount, kMachine}},
        {code::saturated, {kDensity}},
        {code::saturationUnknown, {kDryMatter, kDrier, kDrier}},
        {code::targetAboveSaturation, {kDenser, kDensity}},
        {code::densityOutsideSurvey, {kDensity, kDenser, kDenser}},
        {code::yardsticksDisagree, {kMet, kNotMet}},
        {code::yardstickPasses, {}},
        {code::yardstickTarget, {}},
        {code::weakStretch, {kMinutes, kRate, kCount}},
        {code::weakNotPacked, {}},
        {code::weakFewMinutes, {kTime, kLongerTime}},
        {code::weakLightTractors, {kMachine, kHeavyMachine}},
        {code::weakThickLayer, {kThicker, kLayer}},
        {code::weakWetCrop, {kDryMatter, kDrier}},
        {code::weakNearSurface, {kDepth}},
        {code::workingOneLayer, {kCount, kDryMass, Argument{Instant{}}, Argument{Instant{}}}},
        {code::workingLayers, {kCount, kDryMass, kVolume, kNumber}},
        {code::workingLayer, {kLayer}},
        {code::workingPackingTime, {kTime, kTime, kCount, kMore}},
        {code::workingPackingFactor, {kNumber, kNumber, kDryMatter}},
        {code::workingBracket, {kDensity}},
        {code::workingDepthFactor, {kDepth, kNumber}},
        {code::workingDepthWhenFull, {kDepth, kNumber}},
        {code::workingDepthAsItLies, {kDepth, kNumber}},
        {code::workingSaturation, {kDensity, kDryMatter}},
        {code::workingPoreFree, {kDensity, kDryMatter}},
        {code::workingLevel, {kNumber}},
        {code::workingMedian, {kDensity}},
        {code::workingBand, {kDensity, kDenser, kNumber}},
        {code::workingTarget, {kDensity, kDensity, kDensity, kDenser}},
        {code::workingChance, {kChance}},
        {code::calibrationGain, {kCount, kDensity, kDenser}},
        {code::calibrationGainMixed, {kCount, kMore, kMore, kDensity, kDenser}},
        {code::calibrationWidened, {kCount, kDensity, kDenser}},
        {code::coreIsLoose, {}},
        {code::coreOutsideLayers, {}},
        {code::doubtSite, {kShare}},
        {code::doubtSilo, {kShare}},
        {code::doubtFace, {kShare}},
        {code::doubtPlace, {kShare}},
        {code::doubtDepthSlope, {kShare}},
        {code::doubtMachineMass, {kShare}},
        {code::doubtLayerAssumed, {kShare}},
        {code::doubtLayerSeen, {kShare, Argument{Instant{}}}},
        {code::doubtLayer, {kShare}},
        {code::doubtPackingTime, {kShare}},
        {code::doubtLoadMass, {kShare}},
        {code::doubtSample, {kShare, Argument{Instant{}}}},
        {code::doubtDryMatter, {kShare}},
        {code::doubtOtherEntries, {kShare}},
        {code::measureHeights, {kCount, kDenser, kDensity}},
        {code::measureDryMatter, {kDenser, kDensity}},
        {code::measureLayer, {kDenser, kDensity}},
        {code::measureTractors, {kDenser, kDensity}},
        {code::measureLoads, {kCount, kDenser, kDensity}},
        {code::learntFromHeights, {Argument{Instant{}}, kDenser, kDensity}},
        {code::learntFromFarm, {kDenser, kDensity}},
        {code::learntSlope, {kShare, kSmallShare, kOtherShare, kSmallShare}},
        {code::measuredWhole, {Argument{Instant{}}, kDensity, kDensity, kDenser}},
        {code::measuredPlaced, {kDensity, kDensity, kDenser}},
        {code::sampleFirst, {kDryMatter, kPoints}},
        {code::sampleMovedCrop, {kDryMatter, kPoints, kDrier, kPoints}},
        {code::sampleNoneLeft, {}},
        {code::sampleMovedTarget, {kDensity, kDenser, kLoose, kLoose}},
        {code::sampleMovedLoads, {kCount}},
        {code::sampleMovedSilo, {kDensity, kDenser, kDensity, kDenser, kChance, kBetter}},
        {code::movedFasterLoads, {kCount, kRate, kFasterRate}},
        {code::movedSlowerLoads, {kCount, kFasterRate, kRate}},
        {code::movedNoLoad, {kFasterRate, kRate}},
        {code::movedPackingTime, {kTime, kLongerTime}},
        {code::movedMachines, {kMachine, kHeavyMachine}},
        {code::movedLayer, {kLayer, kThicker}},
        {code::movedSample, {kDryMatter, Argument{Instant{}}, kDrier, kDryMatter}},
        {code::movedDryMatter, {kDryMatter, kDrier}},
        {code::movedDepth, {kShallow, kDepth}},
        {code::movedHeights, {Argument{Instant{}}}},
        {code::movedMeasurement, {}},
        {code::movedLimit, {kDensity, kDenser}},
        {code::movedOther, {}},
    };
    // clang-format on
}

}  // namespace treadwell::words
