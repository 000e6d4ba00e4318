#include "core/samples/codes.h"
#include "tests/app/words/samples/tables.h"

namespace treadwell::words {

using namespace sample;

std::vector<Sample> samplesSamples() {
    // A line a code, so that the table can be read.
    // clang-format off
    return {
        {code::weighingGained, {kGrams, kFewerGrams}},
        {code::dryMatterSlightlyWet, {kDryMatter, kDryMatter, kDrier}},
        {code::dryMatterWet, {kDryMatter, kDryMatter, kDrier}},
        {code::dryMatterDry, {kDrier, kDryMatter, kDryMatter}},
        {code::dryMatterVeryDry, {kDrier, kDryMatter, kDryMatter}},
        {code::sievesNotInOrder, {kChop, kLongChop}},
        {code::sieveCountWrong, {kCount, kMore}},
        {code::sieveEmpty, {kChop}},
        {code::panEmpty, {}},
        {code::sieveNothing, {}},
        {code::sieveLost, {kShare, kShare}},
        {code::sieveGained, {kFewerGrams, kGrams}},
        {code::sieveWet, {}},
        {code::percentSum, {kNumber}},
        {code::sieveStacksDiffer, {}},
        {code::topLengthMissing, {kChop}},
        {code::sievesTooFew, {kCount}},
        {code::screenMissing, {kChop}},
        {code::chopWithin, {}},
        {code::chopFine, {kShare, kChop, kShare}},
        {code::chopDusty, {kShare, kShare}},
        {code::chopCoarse, {kShare, kLongChop, kShare}},
        {code::chopUneven, {}},
        {code::chopLengthen, {kChop, kLongChop}},
        {code::chopShorten, {kLongChop, kChop}},
        {code::chopCheckKnives, {}},
        {code::starchImpossible, {kShare, kShare}},
        {code::kernelsOptimal, {}},
        {code::kernelsFermented, {}},
        {code::kernelsCloseRolls, {}},
        {code::kernelsNarrowGap, {kLongChop, kChop}},
        {code::kernelsCheckRolls, {kChop}},
        {code::temperaturesSwapped, {kWarm, kCold}},
        {code::dayTwice, {kText}},
        {code::daysReversed, {kText, kOther}},
        {code::warmthNotReached, {kWarmth, kCount}},
        {code::harvestTooLong, {kCount}},
        {code::orderWrong, {kCount}},
        {code::hybridOutsideWarmth, {kCount}},
        {code::temperaturesMissing, {kCount}},
        {code::warmthUnknown, {}},
        {code::sampleFieldNow, {kShare}},
        {code::readingsMissing, {}},
        {code::grossBelowTare, {kHeavy, kHeavier}},
        {code::dishImpossible, {kText, kOther}},
    };
    // clang-format on
}

}  // namespace treadwell::words
