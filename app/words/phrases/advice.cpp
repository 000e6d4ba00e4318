#include "app/words/phrases/tables.h"
#include "core/advice/codes.h"

namespace treadwell::words {

const std::vector<Phrase>& advicePhrases() {
    // A line a phrase, so that the table can be read.
    // clang-format off
    static const std::vector<Phrase> kPhrases{
        {code::tractorNameTwice, QT_TRANSLATE_NOOP("Phrase", "Two tractors are called {1}: give each a name of its own")},
        {code::adviceAsNow, QT_TRANSLATE_NOOP("Phrase", "Go on as now")},
        {code::advicePack, QT_TRANSLATE_NOOP("Phrase", "Let {1} pack all the time")},
        {code::advicePackPart, QT_TRANSLATE_NOOP("Phrase", "Let {1} pack {2} of its time")},
        {code::adviceSpread, QT_TRANSLATE_NOOP("Phrase", "Let {1} spread")},
        {code::adviceLeave, QT_TRANSLATE_NOOP("Phrase", "Let {1} go")},
        {code::adviceLayer, QT_TRANSLATE_NOOP("Phrase", "Spread layers of {1}")},
        {code::adviceDelivery, QT_TRANSLATE_NOOP("Phrase", "Slow the delivery to {1}")},
        {code::adviceHold, QT_TRANSLATE_NOOP("Phrase", "Let no more come than now, {1}")},
        {code::adviceGain, QT_TRANSLATE_NOOP("Phrase", "{1} -> {2}, chance of {3} from {4} to {5}")},
        {code::adviceThinnerGain, QT_TRANSLATE_NOOP("Phrase", "{1} -> {2} passes over each layer; by the equation up to {3}, of which nothing is counted")},
        {code::adviceCosts, QT_TRANSLATE_NOOP("Phrase", "costs {1} more")},
        {code::adviceSaves, QT_TRANSLATE_NOOP("Phrase", "saves {1}")},
        {code::adviceKeeps, QT_TRANSLATE_NOOP("Phrase", "the chance of {1} is then still {2}")},
        {code::adviceAllIsWell, QT_TRANSLATE_NOOP("Phrase", "The chance of {1} is {2}, {3} wanted: nothing to change")},
        {code::adviceSaturated, QT_TRANSLATE_NOOP("Phrase", "The pores are full at {1}: more packing does not help")},
        {code::adviceClosest, QT_TRANSLATE_NOOP("Phrase", "the closest that can be had to a chance of {1}")},
        {code::adviceNothingHelps, QT_TRANSLATE_NOOP("Phrase", "The chance of {1} is {2}, and nothing at hand brings it closer")},
        {code::adviceLittleHelps, QT_TRANSLATE_NOOP("Phrase", "The chance of {1} is {2}, and nothing at hand raises it by as much as {3}")},
        {code::adviceChosen, QT_TRANSLATE_NOOP("Phrase", "Chosen")},
        {code::adviceChangesNothing, QT_TRANSLATE_NOOP("Phrase", "Changes nothing")},
        {code::adviceTooSlow, QT_TRANSLATE_NOOP("Phrase", "{1} is less than half of the present {2}")},
        {code::adviceFallsShort, QT_TRANSLATE_NOOP("Phrase", "The chance stays at {1}, {2} wanted")},
        {code::adviceFewPasses, QT_TRANSLATE_NOOP("Phrase", "{1} passes over each layer, at least {2} asked")},
        {code::adviceDearer, QT_TRANSLATE_NOOP("Phrase", "Would do too, at more cost or with more change")},
        {code::adviceNotNeeded, QT_TRANSLATE_NOOP("Phrase", "Not needed for the target")},
        {code::advicePackSome, QT_TRANSLATE_NOOP("Phrase", "Let {1} pack part of its time")},
        {code::adviceThinner, QT_TRANSLATE_NOOP("Phrase", "Spread thinner layers")},
        {code::adviceSlower, QT_TRANSLATE_NOOP("Phrase", "Slow the deliveries")},
    };
    // clang-format on
    return kPhrases;
}

}  // namespace treadwell::words
