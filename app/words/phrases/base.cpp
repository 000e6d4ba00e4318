#include "app/words/phrases/tables.h"
#include "core/base/codes.h"

namespace treadwell::words {

const std::vector<Phrase>& basePhrases() {
    // A line a phrase, so that the table can be read.
    // clang-format off
    static const std::vector<Phrase> kPhrases{
        {code::valueMissing, QT_TRANSLATE_NOOP("Phrase", "Nothing is given here: give a value")},
        {code::valueNotFinite, QT_TRANSLATE_NOOP("Phrase", "This is not a finite number: give a plain number")},
        {code::valueOutOfRange, QT_TRANSLATE_NOOP("Phrase", "{1} is outside {2} to {3}: check the value and its unit")},
        {code::textEmpty, QT_TRANSLATE_NOOP("Phrase", "Nothing is written here: fill it in")},
        {code::textNotNumber, QT_TRANSLATE_NOOP("Phrase", "\"{1}\" is not a number with a unit: write it with a point as decimal sign, like 3.5")},
        {code::unitMissing, QT_TRANSLATE_NOOP("Phrase", "\"{1}\" has no unit: add one of {2}")},
        {code::unitUnknown, QT_TRANSLATE_NOOP("Phrase", "The unit of \"{1}\" is not one of those known here: use {2}")},
        {code::timeUnreadable, QT_TRANSLATE_NOOP("Phrase", "\"{1}\" is not a time: write it like 2026-09-15T14:25:30-03:00")},
        {code::zoneUnknown, QT_TRANSLATE_NOOP("Phrase", "No time zone is called \"{1}\": use a name like America/Sao_Paulo")},
        {code::fileUnreadable, QT_TRANSLATE_NOOP("Phrase", "{1} cannot be read ({2}): check the name and the rights to it")},
        {code::fileUnwritable, QT_TRANSLATE_NOOP("Phrase", "{1} cannot be written ({2}): check the folder, its rights and the free space")},
    };
    // clang-format on
    return kPhrases;
}

}  // namespace treadwell::words
