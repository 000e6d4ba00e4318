#include "core/packing/codes.h"
#include "tests/app/words/samples/tables.h"

namespace treadwell::words {

std::vector<Sample> packingSamples() {
    // A line a code, so that the table can be read.
    // clang-format off
    return {
        {code::yardstickNorthAmerica, {}},
        {code::yardstickThirdOfHourlyMass, {}},
        {code::yardstickQuarterOfHourlyMass, {}},
        {code::yardstickFrance, {}},
        {code::yardstickBrittany, {}},
    };
    // clang-format on
}

}  // namespace treadwell::words
