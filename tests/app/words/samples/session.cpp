#include "core/session/codes.h"
#include "tests/app/words/samples/tables.h"

namespace treadwell::words {

using namespace sample;

std::vector<Sample> sessionSamples() {
    // A line a code, so that the table can be read.
    // clang-format off
    return {
        {code::seasonEmpty, {kText}},
        {code::entryVoided, {kText}},
        {code::correctionChangesKind, {kText, kOther}},
        {code::deviceRenewed, {kText}},
        {code::entryUnreadable, {kText, kCount}},
        {code::entryKeptAside, {kText, kOther}},
        {code::entryKeptInMemory, {kText}},
        {code::entryWaitsForClock, {kText}},
        {code::keptEntriesRecorded, {kCount}},
        {code::keptTimesGuessed, {}},
        {code::keptEntriesUnreadable, {kText, kCount}},
        {code::clockBehind, {Argument{Instant{}}, Argument{Instant{std::chrono::hours{1}}}}},
        {code::clockMoved, {kMinutes}},
        {code::secondPlaceFailed, {kText, kOther}},
        {code::copiesNone, {}},
        {code::copiesGo, {kText}},
        {code::copiesNewest, {kText, Argument{Instant{}}}},
        {code::copiesNotYet, {kText}},
        {code::copiesAway, {kText}},
        {code::copiesRefused, {kText}},
        {code::personNamedTwice, {kText}},
        {code::documentHeadDiffers, {kText, kOther}},
    };
    // clang-format on
}

}  // namespace treadwell::words
