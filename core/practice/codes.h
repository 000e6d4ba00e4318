#pragma once

#include "core/base/code.h"

// The columns must not move when a line is added.
// clang-format off
#define TREADWELL_PRACTICE_CODES(X) \
    X(lessonVersion) \
    X(lessonTextMissing) \
    X(lessonOrderWrong) \
    X(debriefLayerThick) \
    X(debriefLeftWallLoose) \
    X(debriefRightWallLoose) \
    X(debriefUnrolled) \
    X(debriefFewPasses) \
    X(debriefTooFast) \
    X(debriefRampSteep) \
    X(debriefTraffic) \
    X(debriefClose) \
    X(debriefOutrun) \
    X(debriefCoarse) \
    X(debriefPeople) \
    X(debriefDark) \
    X(scoreDensity) \
    X(scoreCoverage) \
    X(scoreEvenness) \
    X(scoreMinutes) \
    X(scoreCautions) \
    X(certificateTitle) \
    X(certificateNoLicence) \
    X(certificateRuns) \
    X(certificateLessons) \
    X(certificateScore) \
    X(columnLesson) \
    X(columnBest) \
    X(columnRuns) \
    X(columnDriven) \
    X(drivenByHand) \
    X(drivenByPlan)
// clang-format on

namespace treadwell::code {

TREADWELL_PRACTICE_CODES(TREADWELL_CODE)

}  // namespace treadwell::code
