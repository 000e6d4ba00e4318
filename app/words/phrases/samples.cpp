#include "app/words/phrases/tables.h"
#include "core/samples/codes.h"

namespace treadwell::words {

const std::vector<Phrase>& samplesPhrases() {
    // A line a phrase, so that the table can be read.
    // clang-format off
    static const std::vector<Phrase> kPhrases{
        {code::weighingGained, QT_TRANSLATE_NOOP("Phrase", "{1} after {2}: a sample gains no weight while it dries; weigh it again")},
        {code::dryMatterSlightlyWet, QT_TRANSLATE_NOOP("Phrase", "Slightly wet: {1} dry matter, the goal is {2} to {3}")},
        {code::dryMatterWet, QT_TRANSLATE_NOOP("Phrase", "Wet: {1} dry matter, the goal is {2} to {3}; expect effluent, and cut a drier field first if there is one")},
        {code::dryMatterDry, QT_TRANSLATE_NOOP("Phrase", "Dry: {1} dry matter, the goal is {2} to {3}; chop shorter, spread thinner and pack longer")},
        {code::dryMatterVeryDry, QT_TRANSLATE_NOOP("Phrase", "Far too dry: {1} dry matter, the goal is {2} to {3}; it packs badly and heats. Chop shorter, pack every layer longer, cover at once, and cut wetter fields between")},
        {code::sievesNotInOrder, QT_TRANSLATE_NOOP("Phrase", "A sieve of {1} stands below one of {2}: list the sieves from the widest down")},
        {code::sieveCountWrong, QT_TRANSLATE_NOOP("Phrase", "{1} readings for {2} sieves: give one for each sieve and one for the pan")},
        {code::sieveEmpty, QT_TRANSLATE_NOOP("Phrase", "Nothing lay on the sieve of {1}: it is left out of the fit")},
        {code::panEmpty, QT_TRANSLATE_NOOP("Phrase", "Nothing lay in the pan")},
        {code::sieveNothing, QT_TRANSLATE_NOOP("Phrase", "All sieves are empty: weigh what lies on each")},
        {code::sieveLost, QT_TRANSLATE_NOOP("Phrase", "{1} of the sample is missing after sieving, usual is up to {2}: weigh again, or sieve a new sample")},
        {code::sieveGained, QT_TRANSLATE_NOOP("Phrase", "The sample weighed {1} before and {2} after: check the weights and the empty sieves")},
        {code::sieveWet, QT_TRANSLATE_NOOP("Phrase", "The sample was wet from rain or dew: fine parts stick to coarse ones, and it looks coarser than it is")},
        {code::percentSum, QT_TRANSLATE_NOOP("Phrase", "The parts make {1} %: they must make 100")},
        {code::sieveStacksDiffer, QT_TRANSLATE_NOOP("Phrase", "These tests were made with other sieves: pool only those of one stack")},
        {code::topLengthMissing, QT_TRANSLATE_NOOP("Phrase", "Something lies on the top sieve of {1}: measure its mean length and give it")},
        {code::sievesTooFew, QT_TRANSLATE_NOOP("Phrase", "{1} sieves say something: a line needs two of them, with more passing the wider one")},
        {code::screenMissing, QT_TRANSLATE_NOOP("Phrase", "The stack has no sieve of {1}: this figure cannot be read from it")},
        {code::chopWithin, QT_TRANSLATE_NOOP("Phrase", "The chop lies within its ranges")},
        {code::chopFine, QT_TRANSLATE_NOOP("Phrase", "Fine: {1} below {2}, the most is {3}")},
        {code::chopDusty, QT_TRANSLATE_NOOP("Phrase", "{1} below the last bound, the most is {2}")},
        {code::chopCoarse, QT_TRANSLATE_NOOP("Phrase", "Coarse: {1} above {2}, the most is {3}")},
        {code::chopUneven, QT_TRANSLATE_NOOP("Phrase", "Both too fine and too coarse: the cut is uneven, and another length does not mend it")},
        {code::chopLengthen, QT_TRANSLATE_NOOP("Phrase", "Lengthen the cut from {1} to {2}")},
        {code::chopShorten, QT_TRANSLATE_NOOP("Phrase", "Shorten the cut from {1} to {2}")},
        {code::chopCheckKnives, QT_TRANSLATE_NOOP("Phrase", "Check the knives and the shear bar")},
        {code::starchImpossible, QT_TRANSLATE_NOOP("Phrase", "The coarse part holds {1} starch and the whole {2}: more than there is; check both")},
        {code::kernelsOptimal, QT_TRANSLATE_NOOP("Phrase", "The kernels are broken as they should be")},
        {code::kernelsFermented, QT_TRANSLATE_NOOP("Phrase", "Kernels from the silo are not broken enough: bear it in mind for feeding; nothing at the harvester mends it now")},
        {code::kernelsCloseRolls, QT_TRANSLATE_NOOP("Phrase", "Too many whole kernels: narrow the gap of the rolls")},
        {code::kernelsNarrowGap, QT_TRANSLATE_NOOP("Phrase", "Too many whole kernels: narrow the gap of the rolls from {1} to {2}")},
        {code::kernelsCheckRolls, QT_TRANSLATE_NOOP("Phrase", "Too many whole kernels at a gap of {1}: check the rolls for wear, their difference in speed, and the throughput")},
        {code::temperaturesSwapped, QT_TRANSLATE_NOOP("Phrase", "The low of {1} is above the high of {2}: check whether the two are swapped")},
        {code::dayTwice, QT_TRANSLATE_NOOP("Phrase", "{1} stands here twice: keep one")},
        {code::daysReversed, QT_TRANSLATE_NOOP("Phrase", "{2} lies before {1}: check both days")},
        {code::warmthNotReached, QT_TRANSLATE_NOOP("Phrase", "{1} are not reached within {2} days: check the temperatures and the day of silking")},
        {code::harvestTooLong, QT_TRANSLATE_NOOP("Phrase", "The fields are not cut within {1} days: check the capacity and the days of rain")},
        {code::orderWrong, QT_TRANSLATE_NOOP("Phrase", "The order must name each of the {1} fields once")},
        {code::hybridOutsideWarmth, QT_TRANSLATE_NOOP("Phrase", "No published warmth from silking for a hybrid of {1} days: only 96 to 115 are known")},
        {code::temperaturesMissing, QT_TRANSLATE_NOOP("Phrase", "Temperatures of {1} days are missing: those days count as the mean of the others")},
        {code::warmthUnknown, QT_TRANSLATE_NOOP("Phrase", "The warmth since silking cannot be reckoned: import the daily temperatures from silking on")},
        {code::sampleFieldNow, QT_TRANSLATE_NOOP("Phrase", "The milk line has come {1} of the way: sample whole plants now, the line alone does not tell the dry matter")},
        {code::readingsMissing, QT_TRANSLATE_NOOP("Phrase", "There are no readings: enter at least one")},
        {code::grossBelowTare, QT_TRANSLATE_NOOP("Phrase", "Gross {1} is less than tare {2}: check whether the two are swapped")},
        {code::dishImpossible, QT_TRANSLATE_NOOP("Phrase", "A dish cannot weigh {1} wet and {2} dry: check the weights")},
    };
    // clang-format on
    return kPhrases;
}

}  // namespace treadwell::words
