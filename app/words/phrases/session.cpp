#include "app/words/phrases/tables.h"
#include "core/session/codes.h"

namespace treadwell::words {

const std::vector<Phrase>& sessionPhrases() {
    // A line a phrase, so that the table can be read.
    // clang-format off
    static const std::vector<Phrase> kPhrases{
        {code::seasonEmpty, QT_TRANSLATE_NOOP("Phrase", "{1} holds no entry: start the season in a new file")},
        {code::entryVoided, QT_TRANSLATE_NOOP("Phrase", "The entry {1} has been taken back: enter it anew")},
        {code::correctionChangesKind, QT_TRANSLATE_NOOP("Phrase", "An entry of the kind {1} cannot be corrected by one of the kind {2}: take it back and enter the other")},
        {code::deviceRenewed, QT_TRANSLATE_NOOP("Phrase", "{1} is an older copy: entries that this machine has written since are missing in it; look for the newer file. This machine goes on in it as a new device")},
        {code::entryUnreadable, QT_TRANSLATE_NOOP("Phrase", "The content of entry {2} of device {1} cannot be read: it is kept and not counted; compare the file with a backup")},
        {code::entryKeptAside, QT_TRANSLATE_NOOP("Phrase", "Not recorded in the season: {2}. What was entered is kept in {1} and will be recorded as soon as the season can be written")},
        {code::entryKeptInMemory, QT_TRANSLATE_NOOP("Phrase", "Not recorded in the season: {1}. What was entered is kept in this program alone: leave it open until the season can be written")},
        {code::entryWaitsForClock, QT_TRANSLATE_NOOP("Phrase", "Not recorded in the season yet: first say whether this machine's clock is right. What was entered is kept in {1} and will get the right time")},
        {code::keptEntriesRecorded, QT_TRANSLATE_NOOP("Phrase", "Entries that could not be recorded earlier are recorded now ({1}): look them through")},
        {code::keptTimesGuessed, QT_TRANSLATE_NOOP("Phrase", "Some of the entries recorded now were made before this program was started again, while the clock was in question: they stand at the latest times they can have; correct those that were earlier")},
        {code::keptEntriesUnreadable, QT_TRANSLATE_NOOP("Phrase", "Entries that could not be recorded earlier wait in {1}, and line {2} cannot be read: mend the line, or move the file away and enter them anew")},
        {code::clockBehind, QT_TRANSLATE_NOOP("Phrase", "This machine's clock shows {1}, before the last entry at {2}: is the clock right? What is entered without a time waits for the answer; what is recorded stays in its order")},
        {code::clockMoved, QT_TRANSLATE_NOOP("Phrase", "This machine's clock was moved by {1} while the season was open: is it right now? What is entered without a time waits for the answer; what is recorded stays in its order")},
        {code::secondPlaceFailed, QT_TRANSLATE_NOOP("Phrase", "The copy at the day's close could not be put into {1} ({2}): the season itself is recorded; check the place and make the copy again")},
        {code::copiesNone, QT_TRANSLATE_NOOP("Phrase", "No copy is made after a day's close")},
        {code::copiesGo, QT_TRANSLATE_NOOP("Phrase", "After each day's close a copy goes into {1}")},
        {code::copiesNewest, QT_TRANSLATE_NOOP("Phrase", "After each day's close a copy goes into {1}; the newest there was made {2}")},
        {code::copiesNotYet, QT_TRANSLATE_NOOP("Phrase", "After each day's close a copy goes into {1}; none of this season lies there yet")},
        {code::copiesAway, QT_TRANSLATE_NOOP("Phrase", "After each day's close a copy is to go into {1}, which is not there now: plug it in, or choose another place")},
        {code::copiesRefused, QT_TRANSLATE_NOOP("Phrase", "After each day's close a copy is to go into {1}, where nothing can be written: free it for writing, or choose another place")},
        {code::personNamedTwice, QT_TRANSLATE_NOOP("Phrase", "Somebody is called \"{1}\" already: add what tells the two apart")},
        {code::documentHeadDiffers, QT_TRANSLATE_NOOP("Phrase", "The document says its head is {1}, but its entries give {2}: some are missing or changed; export the season again")},
    };
    // clang-format on
    return kPhrases;
}

}  // namespace treadwell::words
