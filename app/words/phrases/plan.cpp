#include "app/words/phrases/tables.h"
#include "core/plan/codes.h"

namespace treadwell::words {

const std::vector<Phrase>& planPhrases() {
    // A line a phrase, so that the table can be read.
    // clang-format off
    static const std::vector<Phrase> kPhrases{
        {code::planNothingListed, QT_TRANSLATE_NOOP("Phrase", "The plan lists none: give at least one")},
        {code::planNameTwice, QT_TRANSLATE_NOOP("Phrase", "The plan has two called {1}: give each a name of its own")},
        {code::planRoundTooLong, QT_TRANSLATE_NOOP("Phrase", "A round to {1} takes {2}, more than half a working day of {3}: check the distance and the speed")},
        {code::planTooManyDays, QT_TRANSLATE_NOOP("Phrase", "The harvest would take more than {1} days: check the crop, the trucks and the working day")},
        {code::planNoneAdopted, QT_TRANSLATE_NOOP("Phrase", "This season has no plan: adopt one first")},
        {code::planSiloUnknown, QT_TRANSLATE_NOOP("Phrase", "The farm has no silo called {1}: name it so in the plan, or define it")},
        {code::planSiloCautions, QT_TRANSLATE_NOOP("Phrase", "Cautions for {1}:")},
        {code::planPackingSlowest, QT_TRANSLATE_NOOP("Phrase", "{1} brings {2}, and the tractors reach the target up to {3}: add packing time, or let the density fall short")},
        {code::planDaysWithoutLoad, QT_TRANSLATE_NOOP("Phrase", "{1}: simulated days on which no load arrived, left out of packing and density: {2}")},
        {code::planFleetsCompared, QT_TRANSLATE_NOOP("Phrase", "Fleets compared: {1}; money in the farm's own currency")},
        {code::planLossHeld, QT_TRANSLATE_NOOP("Phrase", "Expected loss: the level that was set, and the slope of the published rows; densities beyond the rows count as their ends")},
        {code::planNeverPays, QT_TRANSLATE_NOOP("Phrase", "{1} does not pay up to {2}")},
        {code::planSealOrder, QT_TRANSLATE_NOOP("Phrase", "In this order: treatment, side sheets over the top, barrier film, sheet, weights, twice as many on the laps")},
        {code::planWaiting, QT_TRANSLATE_NOOP("Phrase", "Waiting four days costs up to 11 % of what lies exposed; a day is counted as a quarter of that")},
        {code::planFaceTooLarge, QT_TRANSLATE_NOOP("Phrase", "{1}: the face moves {2} a day, too little on {3} days of feed; at this height it may be {4} wide in summer, {5} in winter")},
        {code::planDaysWithoutFeed, QT_TRANSLATE_NOOP("Phrase", "Days on which no silo is yet to be opened: {1}")},
        {code::planDiffersInDensity, QT_TRANSLATE_NOOP("Phrase", "{1}: {2} instead of {3}, chance of the target {4} instead of {5}")},
        {code::planDiffersInDays, QT_TRANSLATE_NOOP("Phrase", "{1}: {2} days of harvest instead of {3}")},
        {code::planDiffersInRoom, QT_TRANSLATE_NOOP("Phrase", "{1}: {2} left over instead of {3}")},
        {code::planDiffersInCost, QT_TRANSLATE_NOOP("Phrase", "{1}: {2} instead of {3} for machines and drivers")},
        {code::planDiffersInMargin, QT_TRANSLATE_NOOP("Phrase", "{1}: a margin of {2} for a tonne of dry matter instead of {3}")},
        {code::planDiffersInNothing, QT_TRANSLATE_NOOP("Phrase", "{1}: no difference worth naming")},
    };
    // clang-format on
    return kPhrases;
}

}  // namespace treadwell::words
