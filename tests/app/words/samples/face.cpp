#include "core/face/codes.h"
#include "tests/app/words/samples/tables.h"

namespace treadwell::words {

using namespace sample;

std::vector<Sample> faceSamples() {
    // A line a code, so that the table can be read.
    // clang-format off
    return {
        {code::faceNoCores, {}},
        {code::faceTooFewCores, {kCount, kMore}},
        {code::faceNotSeen, {}},
        {code::feedNotSampled, {}},
    };
    // clang-format on
}

}  // namespace treadwell::words
