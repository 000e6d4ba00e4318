#include "core/passes/codes.h"
#include "tests/app/words/samples/tables.h"

namespace treadwell::words {

using namespace sample;

std::vector<Sample> passesSamples() {
    // A line a code, so that the table can be read.
    // clang-format off
    return {
        {code::trackWithoutFixes, {kText}},
        {code::trackAttachedAlready, {kText}},
        {code::trackGone, {kText, kOther}},
        {code::trackChanged, {kText, kOther}},
        {code::trackTractorUnknown, {kText}},
        {code::siloNotPlaced, {kText}},
    };
    // clang-format on
}

}  // namespace treadwell::words
