#include "core/farm/codes.h"
#include "tests/app/words/samples/tables.h"

namespace treadwell::words {

using namespace sample;

std::vector<Sample> farmSamples() {
    // A line a code, so that the table can be read.
    // clang-format off
    return {
        {code::nameEmpty, {}},
        {code::crownTooWide, {kLayer, kDepth}},
        {code::rampLongerThanSilo, {kDepth, kDepth}},
        {code::pileDoesNotClose, {kDepth, kShallow, kDepth}},
    };
    // clang-format on
}

}  // namespace treadwell::words
