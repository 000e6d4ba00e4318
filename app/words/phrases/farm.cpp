#include "app/words/phrases/tables.h"
#include "core/farm/codes.h"

namespace treadwell::words {

const std::vector<Phrase>& farmPhrases() {
    // A line a phrase, so that the table can be read.
    // clang-format off
    static const std::vector<Phrase> kPhrases{
        {code::nameEmpty, QT_TRANSLATE_NOOP("Phrase", "It has no name: give one")},
        {code::crownTooWide, QT_TRANSLATE_NOOP("Phrase", "A crown of {1} does not fit a width of {2}: six times the crown must fit")},
        {code::rampLongerThanSilo, QT_TRANSLATE_NOOP("Phrase", "The ramps take {1} of a silo {2} long: check the slope and the length")},
        {code::pileDoesNotClose, QT_TRANSLATE_NOOP("Phrase", "A pile {1} high needs {2} for its two slopes and has {3}: lower it, or make it wider")},
    };
    // clang-format on
    return kPhrases;
}

}  // namespace treadwell::words
