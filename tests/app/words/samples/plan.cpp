#include "core/plan/codes.h"
#include "tests/app/words/samples/tables.h"

namespace treadwell::words {

using namespace sample;

std::vector<Sample> planSamples() {
    // A line a code, so that the table can be read.
    // clang-format off
    return {
        {code::planNothingListed, {}},
        {code::planNameTwice, {kText}},
        {code::planRoundTooLong, {kText, kMinutes, kFewerMinutes}},
        {code::planTooManyDays, {kCount}},
        {code::planNoneAdopted, {}},
        {code::planSiloUnknown, {kText}},
        {code::planSiloCautions, {kText}},
        {code::planPackingSlowest, {kText, kFaster, kRate}},
        {code::planDaysWithoutLoad, {kText, kCount}},
        {code::planFleetsCompared, {kCount}},
        {code::planLossHeld, {}},
        {code::planNeverPays, {kText, kFaster}},
        {code::planSealOrder, {}},
        {code::planWaiting, {}},
        {code::planFaceTooLarge, {kText, kShallow, kCount, kDepth, kDepth}},
        {code::planDaysWithoutFeed, {kCount}},
        {code::planDiffersInDensity, {kText, kDenser, kDensity, kBetter, kBetter}},
        {code::planDiffersInDays, {kText, kNumber, kNumber}},
        {code::planDiffersInRoom, {kText, kHeavier, kHeavy}},
        {code::planDiffersInCost, {kText, kCost, kCost}},
        {code::planDiffersInMargin, {kText, kNumber, kNumber}},
        {code::planDiffersInNothing, {kText}},
    };
    // clang-format on
}

}  // namespace treadwell::words
