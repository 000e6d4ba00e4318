#include "core/intake/codes.h"
#include "tests/app/words/samples/tables.h"

namespace treadwell::words {

using namespace sample;

std::vector<Sample> intakeSamples() {
    // A line a code, so that the table can be read.
    // clang-format off
    return {
        {code::columnMissing, {kText}},
        {code::columnTwice, {kText, kOther}},
        {code::columnNotThere, {kText, kOther}},
        {code::rowRagged, {kCount, kMore}},
        {code::numberUnreadable, {kText}},
        {code::wordUnknown, {kText, kOther}},
        {code::nameUnknown, {kText}},
        {code::nameShared, {kText}},
        {code::wallTimeUnreadable, {kText}},
        {code::dateOrderAmbiguous, {kText}},
        {code::clockChanged, {Argument{Instant{}}}},
        {code::massUnitMissing, {}},
        {code::massUnitUnknown, {kText}},
        {code::weighingsSwapped, {kHeavy, kHeavier}},
        {code::netDisagrees, {kHeavy, kHeavier}},
        {code::ticketRepeated, {kText}},
        {code::ticketMeetsLoad, {Argument{Instant{}}, kHeavy, kHeavier, kMinutes}},
        {code::loadWithoutTicket, {Argument{Instant{}}, kHeavy}},
        {code::ticketSumDiffers, {std::int64_t{139}, kHeavier, kHeavy, kHeavy}},
        {code::importMapsUnreadable, {kText}},
        {code::scaleShowsTare, {kHeavy}},
        {code::scaleTareNeeded, {kHeavy}},
        {code::scaleNetNegative, {kHeavy}},
        {code::scaleUnreachable, {kText, kOther}},
        {code::scaleLineEnded, {kText}},
        {code::scaleSilent, {kText, kMinutes}},
        {code::scaleUnsteady, {kText, kMinutes, kCount, kMore}},
        {code::temperatureUnitMissing, {}},
        {code::farmFileVersion, {kCount}},
        {code::typedFieldUnknown, {kOther}},
        {code::typedFieldTwice, {}},
        {code::kindUnknown, {kText, kOther}},
        {code::caughtUpCount, {kCount, kMore}},
        {code::caughtUpSpan, {kAt, kAt}},
        {code::caughtUpAhead, {kAt}},
    };
    // clang-format on
}

}  // namespace treadwell::words
