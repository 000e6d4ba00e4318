#include "app/words/phrases/tables.h"
#include "core/packing/codes.h"

namespace treadwell::words {

const std::vector<Phrase>& packingPhrases() {
    // A line a phrase, so that the table can be read.
    // clang-format off
    static const std::vector<Phrase> kPhrases{
        {code::yardstickNorthAmerica, QT_TRANSLATE_NOOP("Phrase", "the packing mass of North America, as fed")},
        {code::yardstickThirdOfHourlyMass, QT_TRANSLATE_NOOP("Phrase", "a third of the hourly mass, as fed")},
        {code::yardstickQuarterOfHourlyMass, QT_TRANSLATE_NOOP("Phrase", "a quarter of the hourly mass, as fed")},
        {code::yardstickFrance, QT_TRANSLATE_NOOP("Phrase", "the packing mass of France, in dry matter")},
        {code::yardstickBrittany, QT_TRANSLATE_NOOP("Phrase", "the packing mass of Brittany, in dry matter")},
    };
    // clang-format on
    return kPhrases;
}

}  // namespace treadwell::words
