#include "core/crop/codes.h"
#include "tests/app/words/samples/tables.h"

namespace treadwell::words {

using namespace sample;

std::vector<Sample> cropSamples() {
    // A line a code, so that the table can be read.
    // clang-format off
    return {
        {code::densityImpossible, {kDenser, kDryMatter, kDensity}},
    };
    // clang-format on
}

}  // namespace treadwell::words
