#include "core/journal/codes.h"
#include "tests/app/words/samples/tables.h"

namespace treadwell::words {

using namespace sample;

std::vector<Sample> journalSamples() {
    // A line a code, so that the table can be read.
    // clang-format off
    return {
        {code::journalExists, {kText}},
        {code::journalForeign, {kText}},
        {code::journalDamaged, {kText, kOther}},
        {code::journalNewer, {kText, kCount, kMore}},
        {code::journalTooNew, {kText, kCount, kMore}},
        {code::journalHeld, {kText, kCount, kOther, Argument{Instant{}}, kText}},
        {code::journalLeft, {kText}},
        {code::journalMediumReadOnly, {kText}},
        {code::journalNeedsFolder, {kText}},
        {code::journalReadOnly, {kText}},
        {code::journalOnNetwork, {kText}},
        {code::journalOpenedDamaged, {kText}},
        {code::journalBehind, {kText}},
        {code::journalWriteFailed, {kText, kOther}},
        {code::entryAltered, {kCount, kText, kMore}},
        {code::entriesMissing, {kCount, kText, kMore}},
        {code::rowUnreadable, {kCount, kText}},
        {code::structureBroken, {kText}},
        {code::entryOutOfOrder, {kText, kCount}},
    };
    // clang-format on
}

}  // namespace treadwell::words
