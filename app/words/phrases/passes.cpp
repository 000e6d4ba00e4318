#include "app/words/phrases/tables.h"
#include "core/passes/codes.h"

namespace treadwell::words {

const std::vector<Phrase>& passesPhrases() {
    // A line a phrase, so that the table can be read.
    // clang-format off
    static const std::vector<Phrase> kPhrases{
        {code::trackWithoutFixes, QT_TRANSLATE_NOOP("Phrase", "{1} holds no position with a time: choose the track of a tractor, NMEA or GPX")},
        {code::trackAttachedAlready, QT_TRANSLATE_NOOP("Phrase", "{1} is attached already: nothing is to be done")},
        {code::trackGone, QT_TRANSLATE_NOOP("Phrase", "{1} no longer lies in {2}: put it back there, or attach it again from where it lies now")},
        {code::trackChanged, QT_TRANSLATE_NOOP("Phrase", "{1} in {2} is no longer the file that was attached, its content has changed: put the attached one back there, or attach this one as a track of its own")},
        {code::trackTractorUnknown, QT_TRANSLATE_NOOP("Phrase", "{1} is the track of a tractor that this farm does not know: correct the entry that attached it")},
        {code::siloNotPlaced, QT_TRANSLATE_NOOP("Phrase", "Where {1} lies on Earth is not recorded, so that no track can be laid on it: record the corner of back wall and left wall and the direction of the left wall")},
    };
    // clang-format on
    return kPhrases;
}

}  // namespace treadwell::words
