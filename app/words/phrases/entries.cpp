#include "app/words/phrases/tables.h"
#include "core/entries/codes.h"

namespace treadwell::words {

const std::vector<Phrase>& entriesPhrases() {
    // A line a phrase, so that the table can be read.
    // clang-format off
    static const std::vector<Phrase> kPhrases{
        {code::payloadUnreadable, QT_TRANSLATE_NOOP("Phrase", "The entry's content cannot be read ({1})")},
        {code::payloadFieldMissing, QT_TRANSLATE_NOOP("Phrase", "This field is missing: add it")},
        {code::payloadFieldWrong, QT_TRANSLATE_NOOP("Phrase", "This field holds a value of the wrong sort: correct it")},
        {code::targetMissing, QT_TRANSLATE_NOOP("Phrase", "The entry that is meant, {1}, is not in this season")},
        {code::spanEmpty, QT_TRANSLATE_NOOP("Phrase", "The end must lie after the begin, {1}")},
        {code::dishDisagrees, QT_TRANSLATE_NOOP("Phrase", "{1} is entered, but the dish gives {2}: check the weights")},
        {code::coreHeightUnclear, QT_TRANSLATE_NOOP("Phrase", "Give a core its depth below the surface or its height above the floor, one of the two")},
        {code::coreDensityUnclear, QT_TRANSLATE_NOOP("Phrase", "Give a core one way to its density: dry matter and mass with diameter and length, or with the volume, or the density itself")},
        {code::stretchEmpty, QT_TRANSLATE_NOOP("Phrase", "The stretch must end beyond its begin, {1}: measure both from the back wall")},
        {code::documentUnreadable, QT_TRANSLATE_NOOP("Phrase", "This is no JSON document that can be read ({1}): export the season again")},
        {code::documentForeign, QT_TRANSLATE_NOOP("Phrase", "This JSON document is not of a season of Treadwell: choose another file")},
        {code::documentNewer, QT_TRANSLATE_NOOP("Phrase", "The document has version {1}, and this program reads up to {2}: use a newer program")},
        {code::planDaysUnordered, QT_TRANSLATE_NOOP("Phrase", "The days of a plan follow each other: {1} stands too late")},
        {code::fieldUnknown, QT_TRANSLATE_NOOP("Phrase", "No field of this name is known here: correct the name or take it out")},
    };
    // clang-format on
    return kPhrases;
}

}  // namespace treadwell::words
