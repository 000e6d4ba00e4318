#include "app/words/phrases/tables.h"
#include "core/journal/codes.h"

namespace treadwell::words {

const std::vector<Phrase>& journalPhrases() {
    // A line a phrase, so that the table can be read.
    // clang-format off
    static const std::vector<Phrase> kPhrases{
        {code::journalExists, QT_TRANSLATE_NOOP("Phrase", "{1} is there already: choose another name, or move it away")},
        {code::journalForeign, QT_TRANSLATE_NOOP("Phrase", "{1} is not a season of Treadwell: choose another file")},
        {code::journalDamaged, QT_TRANSLATE_NOOP("Phrase", "{1} is damaged ({2}): keep it, and open its latest backup")},
        {code::journalNewer, QT_TRANSLATE_NOOP("Phrase", "{1} is of layout {2} and this version writes {3}: open for reading only; a newer version of Treadwell writes it")},
        {code::journalTooNew, QT_TRANSLATE_NOOP("Phrase", "{1} is of layout {2} and this version knows up to {3}: open it with a newer version of Treadwell")},
        {code::journalHeld, QT_TRANSLATE_NOOP("Phrase", "{5} (process {2} on {3}) has been writing {1} since {4}: open for reading only; close it there to write here")},
        {code::journalLeft, QT_TRANSLATE_NOOP("Phrase", "The program that was writing {1} has ended: open for reading only still; take over to write here")},
        {code::journalMediumReadOnly, QT_TRANSLATE_NOOP("Phrase", "{1} or its folder cannot be written: open for reading only; copy it to this machine to write")},
        {code::journalNeedsFolder, QT_TRANSLATE_NOOP("Phrase", "Entries of {1} still lie in the file beside it that ends in -wal, and the folder cannot be written: copy both together into a folder of this machine and open it there")},
        {code::journalReadOnly, QT_TRANSLATE_NOOP("Phrase", "Nothing is recorded: {1} is open for reading only")},
        {code::journalOnNetwork, QT_TRANSLATE_NOOP("Phrase", "Entries of {1} still lie in the file beside it that ends in -wal, on a network drive: open it once for writing, or copy both together into a folder of this machine")},
        {code::journalOpenedDamaged, QT_TRANSLATE_NOOP("Phrase", "{1} is damaged: open for reading only, with all that can be read, and left as it is; check it, and go on in a restored backup")},
        {code::journalBehind, QT_TRANSLATE_NOOP("Phrase", "{1} is not the file that was open before: entries that were recorded are missing in it; put the right file back")},
        {code::journalWriteFailed, QT_TRANSLATE_NOOP("Phrase", "The entry is not recorded: {1} cannot be written ({2}); check the disk and its free space")},
        {code::entryAltered, QT_TRANSLATE_NOOP("Phrase", "Row {1} (entry {3} of device {2}) is not as it was written, or one before it is not: something was changed outside Treadwell; compare it with a backup")},
        {code::entriesMissing, QT_TRANSLATE_NOOP("Phrase", "Entries of device {2} are missing before row {1}, its entry {3}: something was lost outside Treadwell; compare it with a backup")},
        {code::rowUnreadable, QT_TRANSLATE_NOOP("Phrase", "Row {1} cannot be read ({2}): the file is damaged from there on; compare it with a backup")},
        {code::structureBroken, QT_TRANSLATE_NOOP("Phrase", "Every entry is whole, but the file's structure is damaged ({1}): make a backup, and go on in it once it has been checked")},
        {code::entryOutOfOrder, QT_TRANSLATE_NOOP("Phrase", "Entry {2} of device {1} does not follow the last one here: the entries between them, or the right copy of the file, are needed")},
    };
    // clang-format on
    return kPhrases;
}

}  // namespace treadwell::words
