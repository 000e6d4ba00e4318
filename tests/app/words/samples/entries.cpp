#include "core/entries/codes.h"
#include "tests/app/words/samples/tables.h"

namespace treadwell::words {

using namespace sample;

std::vector<Sample> entriesSamples() {
    // A line a code, so that the table can be read.
    // clang-format off
    return {
        {code::payloadUnreadable, {kText}},
        {code::payloadFieldMissing, {}},
        {code::payloadFieldWrong, {}},
        {code::targetMissing, {kText}},
        {code::spanEmpty, {Argument{Instant{}}}},
        {code::dishDisagrees, {kDryMatter, kDrier}},
        {code::coreHeightUnclear, {}},
        {code::coreDensityUnclear, {}},
        {code::stretchEmpty, {kDepth}},
        {code::documentUnreadable, {kText}},
        {code::documentForeign, {}},
        {code::documentNewer, {kMore, kCount}},
        {code::fieldUnknown, {}},
        {code::planDaysUnordered, {kText}},
    };
    // clang-format on
}

}  // namespace treadwell::words
