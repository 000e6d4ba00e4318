#include "core/advice/codes.h"
#include "tests/app/words/samples/tables.h"

namespace treadwell::words {

using namespace sample;

std::vector<Sample> adviceSamples() {
    // A line a code, so that the table can be read.
    // clang-format off
    return {
        {code::tractorNameTwice, {kText}},
        {code::adviceAsNow, {}},
        {code::advicePack, {kText}},
        {code::advicePackPart, {kText, kShare}},
        {code::adviceSpread, {kText}},
        {code::adviceLeave, {kText}},
        {code::adviceLayer, {kLayer}},
        {code::adviceDelivery, {kRate}},
        {code::adviceHold, {kRate}},
        {code::adviceGain, {kDensity, kDenser, kDensity, kChance, kBetter}},
        {code::adviceThinnerGain, {kNumber, kNumber, kDenser}},
        {code::adviceCosts, {kCost}},
        {code::adviceSaves, {kCost}},
        {code::adviceKeeps, {kDensity, kChance}},
        {code::adviceAllIsWell, {kDensity, kBetter, kChance}},
        {code::adviceSaturated, {kDensity}},
        {code::adviceClosest, {kChance}},
        {code::adviceNothingHelps, {kDensity, kChance}},
        {code::adviceLittleHelps, {kDensity, kChance, kChance}},
        {code::adviceChosen, {}},
        {code::adviceChangesNothing, {}},
        {code::adviceTooSlow, {kRate, kFaster}},
        {code::adviceFallsShort, {kChance, kBetter}},
        {code::adviceFewPasses, {kNumber, kNumber}},
        {code::adviceDearer, {}},
        {code::adviceNotNeeded, {}},
        {code::advicePackSome, {kText}},
        {code::adviceThinner, {}},
        {code::adviceSlower, {}},
    };
    // clang-format on
}

}  // namespace treadwell::words
