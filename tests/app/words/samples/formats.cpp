#include "core/formats/codes.h"
#include "tests/app/words/samples/tables.h"

namespace treadwell::words {

using namespace sample;

std::vector<Sample> formatsSamples() {
    // A line a code, so that the table can be read.
    // clang-format off
    return {
        {code::textIsUtf16, {}},
        {code::encodingAmbiguous, {kText, kOther}},
        {code::encodingWrong, {}},
        {code::delimiterAmbiguous, {kText, kOther}},
        {code::headerMissing, {}},
        {code::quoteOpen, {}},
        {code::decimalAmbiguous, {kText}},
        {code::decimalMixed, {kText, kOther}},
        {code::frameUnreadable, {kText}},
        {code::frameCut, {kText}},
        {code::frameTooLong, {kCount}},
        {code::frameSumWrong, {kText}},
        {code::gpxUnreadable, {kText}},
        {code::gpxDoctype, {}},
        {code::gpxRootWrong, {kText}},
    };
    // clang-format on
}

}  // namespace treadwell::words
