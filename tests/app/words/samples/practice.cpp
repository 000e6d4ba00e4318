#include "core/practice/codes.h"
#include "tests/app/words/samples/tables.h"

namespace treadwell::words {

using namespace sample;

std::vector<Sample> practiceSamples() {
    // A line a code, so that the table can be read.
    // clang-format off
    return {
        {code::lessonVersion, {kCount}},
        {code::lessonTextMissing, {}},
        {code::lessonOrderWrong, {}},
        {code::debriefLayerThick, {kThicker, kLayer}},
        {code::debriefLeftWallLoose, {kDensity, kDenser, kShallow}},
        {code::debriefRightWallLoose, {kDensity, kDenser, kShallow}},
        {code::debriefUnrolled, {kShare}},
        {code::debriefFewPasses, {kNumber, kNumber}},
        {code::debriefTooFast, {kFast, kUsual}},
        {code::debriefRampSteep, {kSteeper, kSlope}},
        {code::debriefTraffic, {kCount}},
        {code::debriefClose, {kMinutes}},
        {code::debriefOutrun, {kNumber, kNumber}},
        {code::debriefCoarse, {kShare}},
        {code::debriefPeople, {kMinutes}},
        {code::debriefDark, {}},
        {code::scoreDensity, {kDensity, kDenser}},
        {code::scoreCoverage, {kShare, kOtherShare}},
        {code::scoreEvenness, {kShare, kOtherShare}},
        {code::scoreMinutes, {kMinutes, kNumber}},
        {code::scoreCautions, {kCount}},
        {code::certificateTitle, {kText}},
        {code::certificateNoLicence, {}},
        {code::certificateRuns, {kText, kCount, kCount, kAt}},
        {code::certificateLessons, {}},
        {code::certificateScore, {}},
        {code::columnLesson, {}},
        {code::columnBest, {}},
        {code::columnRuns, {}},
        {code::columnDriven, {}},
        {code::drivenByHand, {}},
        {code::drivenByPlan, {}},
    };
    // clang-format on
}

}  // namespace treadwell::words
