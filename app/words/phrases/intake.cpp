#include "app/words/phrases/tables.h"
#include "core/intake/codes.h"

namespace treadwell::words {

const std::vector<Phrase>& intakePhrases() {
    // A line a phrase, so that the table can be read.
    // clang-format off
    static const std::vector<Phrase> kPhrases{
        {code::columnMissing, QT_TRANSLATE_NOOP("Phrase", "No column tells this; the columns are {1}: name one after it")},
        {code::columnTwice, QT_TRANSLATE_NOOP("Phrase", "\"{1}\" and \"{2}\" both tell this: rename the one that does not")},
        {code::columnNotThere, QT_TRANSLATE_NOOP("Phrase", "No column is called \"{1}\"; the columns are {2}: write one of these")},
        {code::rowRagged, QT_TRANSLATE_NOOP("Phrase", "The row has {1} cells and the header {2}: check its delimiters and quotation marks")},
        {code::numberUnreadable, QT_TRANSLATE_NOOP("Phrase", "\"{1}\" is not a number in this file: write digits and the file's decimal sign alone")},
        {code::wordUnknown, QT_TRANSLATE_NOOP("Phrase", "\"{1}\" is not a word known here: use one of {2}")},
        {code::nameUnknown, QT_TRANSLATE_NOOP("Phrase", "Nothing on this farm is called \"{1}\": define it, or correct the name")},
        {code::nameShared, QT_TRANSLATE_NOOP("Phrase", "Several things on this farm are called \"{1}\": give them names that differ")},
        {code::wallTimeUnreadable, QT_TRANSLATE_NOOP("Phrase", "\"{1}\" is not a date and time: write it like 15.09.2026 14:25 or 2026-09-15 14:25:30")},
        {code::dateOrderAmbiguous, QT_TRANSLATE_NOOP("Phrase", "\"{1}\" can be read day first or month first: say which (dateOrder: dayFirst or monthFirst)")},
        {code::clockChanged, QT_TRANSLATE_NOOP("Phrase", "The clocks changed then: the first time that fits, {1}, is taken")},
        {code::massUnitMissing, QT_TRANSLATE_NOOP("Phrase", "The weights have no unit: put it into the header, like net_kg, or say it (massUnit: kg, t, lb or ton)")},
        {code::massUnitUnknown, QT_TRANSLATE_NOOP("Phrase", "\"{1}\" is not a unit for a truck's weight: use kg, t, lb or ton")},
        {code::weighingsSwapped, QT_TRANSLATE_NOOP("Phrase", "Gross {1} and tare {2} stood in each other's column; the net weight bears it out")},
        {code::netDisagrees, QT_TRANSLATE_NOOP("Phrase", "The net weight is {1}, but gross less tare is {2}: check the ticket")},
        {code::ticketRepeated, QT_TRANSLATE_NOOP("Phrase", "Ticket {1} is there already on that day, with other figures: correct the load that is recorded, or leave this row out")},
        {code::ticketMeetsLoad, QT_TRANSLATE_NOOP("Phrase", "This is the load tapped in at {1} with {2}: it becomes {3}; the times lie {4} apart")},
        {code::loadWithoutTicket, QT_TRANSLATE_NOOP("Phrase", "The load of {2} tapped in at {1} has no ticket in this file: look for its ticket, or take the load back")},
        {code::ticketSumDiffers, QT_TRANSLATE_NOOP("Phrase", "The sum in line {1} says {2}, and the tickets above it come to {3}, {4} apart: look for rows that are missing, voided or set aside")},
        {code::importMapsUnreadable, QT_TRANSLATE_NOOP("Phrase", "What is remembered of earlier files in {1} cannot be read: mend the file or move it away; it was not overwritten")},
        {code::scaleShowsTare, QT_TRANSLATE_NOOP("Phrase", "The scale shows a tare of {1}, not a load: switch it to gross or net")},
        {code::scaleTareNeeded, QT_TRANSLATE_NOOP("Phrase", "Nothing tells the net weight behind {1}: give the truck's empty weight, or 0 where the scale shows the net weight")},
        {code::scaleNetNegative, QT_TRANSLATE_NOOP("Phrase", "The net weight would be {1}: full and empty truck may have been weighed the wrong way round")},
        {code::scaleUnreachable, QT_TRANSLATE_NOOP("Phrase", "The scale at {1} cannot be reached ({2}): check the cable, the name and the rights to it")},
        {code::scaleLineEnded, QT_TRANSLATE_NOOP("Phrase", "The line to the scale at {1} was cut: check the cable and start anew")},
        {code::scaleSilent, QT_TRANSLATE_NOOP("Phrase", "Nothing came from the scale at {1} within {2}: check that it sends, or ask it")},
        {code::scaleUnsteady, QT_TRANSLATE_NOOP("Phrase", "No steady weight came from {1} within {2}; frames: {3}, unreadable: {4}")},
        {code::temperatureUnitMissing, QT_TRANSLATE_NOOP("Phrase", "The header gives no unit for this temperature: write C or F behind its name, like low_c")},
        {code::farmFileVersion, QT_TRANSLATE_NOOP("Phrase", "The farm file is of version {1}; this program reads version 1")},
        {code::typedFieldUnknown, QT_TRANSLATE_NOOP("Phrase", "This entry has no such field: its fields are {1}")},
        {code::typedFieldTwice, QT_TRANSLATE_NOOP("Phrase", "This field is given twice: give it once")},
        {code::kindUnknown, QT_TRANSLATE_NOOP("Phrase", "\"{1}\" is no kind of entry: use one of {2}")},
        {code::caughtUpCount, QT_TRANSLATE_NOOP("Phrase", "{1} loads cannot be caught up at once: give 1 to {2}")},
        {code::caughtUpSpan, QT_TRANSLATE_NOOP("Phrase", "Loads cannot be spread from {1} to {2}: the first time comes before the last, at most a day")},
        {code::caughtUpAhead, QT_TRANSLATE_NOOP("Phrase", "{1} has not come yet: give times that are past")},
    };
    // clang-format on
    return kPhrases;
}

}  // namespace treadwell::words
