#include "app/words/phrases/tables.h"
#include "core/practice/codes.h"

namespace treadwell::words {

const std::vector<Phrase>& practicePhrases() {
    // A line a phrase, so that the table can be read.
    // clang-format off
    static const std::vector<Phrase> kPhrases{
        {code::lessonVersion, QT_TRANSLATE_NOOP("Phrase", "This lesson is of version {1}, which is not known here: update the program, or make the lesson anew")},
        {code::lessonTextMissing, QT_TRANSLATE_NOOP("Phrase", "The lesson has no English title: add a text with the language \"en\"")},
        {code::lessonOrderWrong, QT_TRANSLATE_NOOP("Phrase", "Loads must be there, each no earlier than the one before: put them in order")},
        {code::debriefLayerThick, QT_TRANSLATE_NOOP("Phrase", "Layers of {1} are thicker than {2}: the wheels press the top and the lower part stays loose. Spread thinner")},
        {code::debriefLeftWallLoose, QT_TRANSLATE_NOOP("Phrase", "Within {3} of the left wall it is {1}, in the middle {2}: the outer tyre stayed too far away. Drive along the wall on every layer")},
        {code::debriefRightWallLoose, QT_TRANSLATE_NOOP("Phrase", "Within {3} of the right wall it is {1}, in the middle {2}: the outer tyre stayed too far away. Drive along the wall on every layer")},
        {code::debriefUnrolled, QT_TRANSLATE_NOOP("Phrase", "{1} of the surface was touched by no tyre: the tracks ran over the same places. Step over by the width of a tyre each time")},
        {code::debriefFewPasses, QT_TRANSLATE_NOOP("Phrase", "{1} passes over each layer are fewer than {2}: slow the delivery, or pack with more tractors")},
        {code::debriefTooFast, QT_TRANSLATE_NOOP("Phrase", "At {1} the wheels press too briefly: about {2} is usual")},
        {code::debriefRampSteep, QT_TRANSLATE_NOOP("Phrase", "The ramp was {1}, steeper than {2}: machines can tip or slide. Push crop forward to make it flatter")},
        {code::debriefTraffic, QT_TRANSLATE_NOOP("Phrase", "{1} tractors crossed each other's way: they wait, turn and can collide. Agree who drives on which side and who reverses")},
        {code::debriefClose, QT_TRANSLATE_NOOP("Phrase", "For {1} you drove in the way of another tractor: keep to your own side, and wait until it has passed")},
        {code::debriefOutrun, QT_TRANSLATE_NOOP("Phrase", "The first layers got {1} passes, the last ones {2}: deliveries outran the tractors. Call the next tractor as soon as the rate rises")},
        {code::debriefCoarse, QT_TRANSLATE_NOOP("Phrase", "Only {1} of the way was measured well enough to tell where tyres went: the rest tells how long tractors were where. Use a receiver with RTK")},
        {code::debriefPeople, QT_TRANSLATE_NOOP("Phrase", "Tractors rolled for {1} while somebody was on foot: stop everything until nobody is")},
        {code::debriefDark, QT_TRANSLATE_NOOP("Phrase", "The pad was dark: switch on all lights, and look for people before every reverse")},
        {code::scoreDensity, QT_TRANSLATE_NOOP("Phrase", "Density {1}, wanted {2}")},
        {code::scoreCoverage, QT_TRANSLATE_NOOP("Phrase", "Three passes over {1} of the surface, wanted {2}")},
        {code::scoreEvenness, QT_TRANSLATE_NOOP("Phrase", "Density varies by {1}, wanted at most {2}")},
        {code::scoreMinutes, QT_TRANSLATE_NOOP("Phrase", "Rolled for {1}, {2} passes over each layer")},
        {code::scoreCautions, QT_TRANSLATE_NOOP("Phrase", "Cautions not kept: {1}")},
        {code::certificateTitle, QT_TRANSLATE_NOOP("Phrase", "Practice of packing: {1}")},
        {code::certificateNoLicence, QT_TRANSLATE_NOOP("Phrase", "This shows practice on a simulated pad. It is not a licence, gives no permission to drive any machine and says nothing about health or age. Who may drive is for the law, the owner of the machine and a licensed instructor to say")},
        {code::certificateRuns, QT_TRANSLATE_NOOP("Phrase", "{1} ran {2} of {3} lessons to the end, as of {4}")},
        {code::certificateLessons, QT_TRANSLATE_NOOP("Phrase", "The best run of each lesson")},
        {code::certificateScore, QT_TRANSLATE_NOOP("Phrase", "Points of 100: density 30, coverage 25, evenness 15, minutes 10, cautions kept 20")},
        {code::columnLesson, QT_TRANSLATE_NOOP("Phrase", "Lesson")},
        {code::columnBest, QT_TRANSLATE_NOOP("Phrase", "Best, of 100")},
        {code::columnRuns, QT_TRANSLATE_NOOP("Phrase", "Runs")},
        {code::columnDriven, QT_TRANSLATE_NOOP("Phrase", "Driven")},
        {code::drivenByHand, QT_TRANSLATE_NOOP("Phrase", "by hand")},
        {code::drivenByPlan, QT_TRANSLATE_NOOP("Phrase", "by a plan")},
    };
    // clang-format on
    return kPhrases;
}

}  // namespace treadwell::words
