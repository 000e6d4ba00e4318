#include "app/words/phrases/tables.h"
#include "core/attention/codes.h"

namespace treadwell::words {

const std::vector<Phrase>& attentionPhrases() {
    // A line a phrase, so that the table can be read.
    // clang-format off
    static const std::vector<Phrase> kPhrases{
        {code::cautionRampSlope, QT_TRANSLATE_NOOP("Phrase", "Packing slope: not steeper than {1}")},
        {code::cautionRampSteep, QT_TRANSLATE_NOOP("Phrase", "The ramp of {1} is steeper than {2}: machines can tip or slide")},
        {code::cautionCrossSlope, QT_TRANSLATE_NOOP("Phrase", "Slope across the direction of travel: not steeper than {1}")},
        {code::cautionCrownSteep, QT_TRANSLATE_NOOP("Phrase", "The crown falls to the walls at {1}, steeper than {2} across the direction of travel: machines can tip over the wall")},
        {code::cautionFillAboveWall, QT_TRANSLATE_NOOP("Phrase", "Fill {1} above the wall, where the limit is {2}: walls can give way and machines go over the edge")},
        {code::cautionWorkingWidth, QT_TRANSLATE_NOOP("Phrase", "Working width at the top: at least {1} machine widths, duals included")},
        {code::cautionWidthNarrow, QT_TRANSLATE_NOOP("Phrase", "A width of {1} is less than {3} times the {2} of the widest machine")},
        {code::cautionFaceDistance, QT_TRANSLATE_NOOP("Phrase", "Stay back from the face {1} times its height, here {2}: it can fall without warning")},
        {code::cautionCores, QT_TRANSLATE_NOOP("Phrase", "No person takes cores at the face: sample what a loader has taken down")},
        {code::cautionPeopleOnFoot, QT_TRANSLATE_NOOP("Phrase", "Nobody on foot while machines pack; a spotter has no other duty and wears high-visibility clothing")},
        {code::cautionSiloGas, QT_TRANSLATE_NOOP("Phrase", "Silo gas: day {1} after the last load, it is expected for {2} days; it can kill before it is seen or smelled")},
        {code::cautionShiftHours, QT_TRANSLATE_NOOP("Phrase", "{1} h at work, where the limit is {2} h: tired drivers have more accidents")},
        {code::cautionPowerLines, QT_TRANSLATE_NOOP("Phrase", "Power lines: raised bodies keep {1} away up to 50 kV and {2} more for each 10 kV beyond; the local rule comes first")},
        {code::cautionDriverAge, QT_TRANSLATE_NOOP("Phrase", "Drivers of packing tractors: at least {1} years old; local law comes first")},
        {code::cautionWalls, QT_TRANSLATE_NOOP("Phrase", "No limit of the walls is entered: copy it from their plate or the designer's letter; nobody can judge a wall by eye")},
        {code::cautionDrySilage, QT_TRANSLATE_NOOP("Phrase", "Dry matter {1}, above {2}: silage this dry can heat and burn")},
        {code::cautionStanding, QT_TRANSLATE_NOOP("Phrase", "General published precautions: they do not replace a risk assessment, local law and codes, the machine's manual or a licensed engineer or safety professional. If anything looks wrong, stop work.")},
        {code::packingBehind, QT_TRANSLATE_NOOP("Phrase", "Packing falls behind: {1} come in, {2} can be packed to the target")},
        {code::layerThick, QT_TRANSLATE_NOOP("Phrase", "The layers are {1} thick, at most {2} wanted")},
        {code::siloNearlyFull, QT_TRANSLATE_NOOP("Phrase", "The silo is nearly full: {1} of what it is planned to hold")},
        {code::sampleOverdue, QT_TRANSLATE_NOOP("Phrase", "The dry matter is {1} old: time for a new sample")},
        {code::sampleMissing, QT_TRANSLATE_NOOP("Phrase", "Loads come and no dry matter has been measured: take a sample")},
        {code::hoursOnShift, QT_TRANSLATE_NOOP("Phrase", "Somebody has been at work for {1}")},
        {code::readyToCover, QT_TRANSLATE_NOOP("Phrase", "The back {1} of the silo stand at their height: cover them soon")},
        {code::knownDryMatter, QT_TRANSLATE_NOOP("Phrase", "Dry matter: {1}, measured at {2}")},
        {code::assumedDryMatter, QT_TRANSLATE_NOOP("Phrase", "Dry matter: the middle of the goal, {1}, until a sample is taken")},
        {code::carriedDryMatter, QT_TRANSLATE_NOOP("Phrase", "Dry matter: the mean of last season, {1}, until a sample is taken")},
        {code::otherFieldsDryMatter, QT_TRANSLATE_NOOP("Phrase", "Dry matter: {1} of another field, at {2}")},
        {code::knownLayer, QT_TRANSLATE_NOOP("Phrase", "Layer: {1}, seen at {2}")},
        {code::assumedLayer, QT_TRANSLATE_NOOP("Phrase", "Layer: {1}, as nobody has seen it")},
        {code::knownLoads, QT_TRANSLATE_NOOP("Phrase", "Loads: all {1} weighed or by their box")},
        {code::assumedLoads, QT_TRANSLATE_NOOP("Phrase", "Loads: {1} of {2} at the usual load of their truck")},
        {code::assumedMasses, QT_TRANSLATE_NOOP("Phrase", "Mass of {1}: that of its class, {2}")},
        {code::knownMasses, QT_TRANSLATE_NOOP("Phrase", "Masses of the tractors at work: as entered")},
        {code::knownHeights, QT_TRANSLATE_NOOP("Phrase", "Heights: read at {1}")},
        {code::missingHeights, QT_TRANSLATE_NOOP("Phrase", "Heights: none read in this silo")},
        {code::missingPace, QT_TRANSLATE_NOOP("Phrase", "Pace: {1} loads today, {2} are needed")},
    };
    // clang-format on
    return kPhrases;
}

}  // namespace treadwell::words
