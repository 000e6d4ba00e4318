#include "core/base/codes.h"
#include "tests/app/words/samples/tables.h"

namespace treadwell::words {

using namespace sample;

std::vector<Sample> baseSamples() {
    // A line a code, so that the table can be read.
    // clang-format off
    return {
        {code::valueMissing, {}},
        {code::valueNotFinite, {}},
        {code::valueOutOfRange, {kThicker, kLayer, kLayer}},
        {code::textEmpty, {}},
        {code::textNotNumber, {kText}},
        {code::unitMissing, {kText, kOther}},
        {code::unitUnknown, {kText, kOther}},
        {code::timeUnreadable, {kText}},
        {code::zoneUnknown, {kText}},
        {code::fileUnreadable, {kText, kOther}},
        {code::fileUnwritable, {kText, kOther}},
    };
    // clang-format on
}

}  // namespace treadwell::words
