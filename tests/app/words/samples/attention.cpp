#include "core/attention/codes.h"
#include "tests/app/words/samples/tables.h"

namespace treadwell::words {

using namespace sample;

std::vector<Sample> attentionSamples() {
    // A line a code, so that the table can be read.
    // clang-format off
    return {
        {code::cautionRampSlope, {kSlope}},
        {code::cautionRampSteep, {kSteeper, kSlope}},
        {code::cautionCrossSlope, {kSlope}},
        {code::cautionCrownSteep, {kSteeper, kSlope}},
        {code::cautionFillAboveWall, {kDepth, kShallow}},
        {code::cautionWorkingWidth, {kNumber}},
        {code::cautionWidthNarrow, {kDepth, kShallow, kNumber}},
        {code::cautionFaceDistance, {kNumber, kDepth}},
        {code::cautionCores, {}},
        {code::cautionPeopleOnFoot, {}},
        {code::cautionSiloGas, {kCount, kNumber}},
        {code::cautionShiftHours, {kNumber, kNumber}},
        {code::cautionPowerLines, {kDepth, kShallow}},
        {code::cautionDriverAge, {kNumber}},
        {code::cautionWalls, {}},
        {code::cautionDrySilage, {kDryMatter, kDrier}},
        {code::cautionStanding, {}},
        {code::packingBehind, {kFaster, kRate}},
        {code::layerThick, {kThicker, kLayer}},
        {code::siloNearlyFull, {kShare}},
        {code::sampleOverdue, {kMinutes}},
        {code::sampleMissing, {}},
        {code::hoursOnShift, {kMinutes}},
        {code::readyToCover, {kDepth}},
        {code::knownDryMatter, {kDryMatter, kAt}},
        {code::assumedDryMatter, {kDryMatter}},
        {code::carriedDryMatter, {kDryMatter}},
        {code::otherFieldsDryMatter, {kDryMatter, kAt}},
        {code::knownLayer, {kLayer, kAt}},
        {code::assumedLayer, {kLayer}},
        {code::knownLoads, {kCount}},
        {code::assumedLoads, {kCount, kMore}},
        {code::assumedMasses, {kText, kMachine}},
        {code::knownMasses, {}},
        {code::knownHeights, {kAt}},
        {code::missingHeights, {}},
        {code::missingPace, {kCount, kMore}},
    };
    // clang-format on
}

}  // namespace treadwell::words
