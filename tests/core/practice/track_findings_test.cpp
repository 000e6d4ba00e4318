#include "core/practice/track_findings.h"

#include "core/practice/codes.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace treadwell::practice {
namespace {

using namespace std::chrono_literals;
using formats::FixQuality;

const Instant kStart = instantFromIso8601("2026-09-15T12:00:00Z").value();
const farm::SiloPlace kPlace{43.52, -89.51, 0.0, Length::fromMetres(0)};
constexpr double kNorth_m = 111103.0, kEast_m = 80850.0;  // a degree at 43.52 N (derived)

/// Out and back over a silo of 40 x 12 m, in each lane `times`; a metre a second.
passes::DrivenGrid driven(const std::vector<double>& lanes_m, int times,
                          FixQuality quality = FixQuality::rtkFixed, double speed_m_s = 1.0) {
    auto grid = passes::DrivenGrid::make({Length::fromMetres(40), Length::fromMetres(12)}, kPlace,
                                         {{1, kStart, 0, 40}})
                    .value();
    grid.begin({MachineMass::fromTonnes(12)}, 0);
    formats::Fix fix;
    fix.at = kStart;
    fix.quality = quality;
    for (int time = 0; time < times; ++time) {
        for (const double y_m : lanes_m) {
            fix.beginsSegment = true;
            for (double x_m = -2.0; x_m <= 42.0; x_m += speed_m_s) {
                fix.latitude_deg = kPlace.latitude_deg + x_m / kNorth_m;
                fix.longitude_deg = kPlace.longitude_deg + y_m / kEast_m;
                grid.take(fix);
                fix.beginsSegment = false;
                fix.at += 1s;
            }
        }
    }
    return grid;
}

std::vector<double> everyLane() {
    std::vector<double> lanes;
    for (int i = 0; i < 13; ++i) lanes.push_back(1.55 + 0.74 * i);
    return lanes;
}

const Finding* find(const std::vector<Finding>& findings, Code code) {
    const auto found = std::find_if(findings.begin(), findings.end(),
                                    [&](const Finding& finding) { return finding.message.code == code; });
    return found == findings.end() ? nullptr : &*found;
}

TEST(TrackFindings, TellNothingOfAWellRolledLayer) {
    EXPECT_TRUE(trackFindings(driven(everyLane(), 3)).empty());
    EXPECT_TRUE(trackFindings(driven({}, 1)).empty());
}

TEST(TrackFindings, ShowTheStripThatNoTyreTouched) {
    const auto findings = trackFindings(driven({8.0, 9.0, 10.0}, 6));
    const Finding* unrolled = find(findings, code::debriefUnrolled);
    ASSERT_NE(unrolled, nullptr);
    EXPECT_LT(unrolled->place.value().y1_m, 6.5);
}

TEST(TrackFindings, CountTooFewPassesOnlyWhereErrorsLeaveNoDoubt) {
    EXPECT_NE(find(trackFindings(driven(everyLane(), 1)), code::debriefFewPasses), nullptr);
    EXPECT_EQ(find(trackFindings(driven(everyLane(), 3)), code::debriefFewPasses), nullptr);
}

TEST(TrackFindings, OfCoarsePositionsTellThatTheyAreCoarse) {
    const auto findings = trackFindings(driven({6.0}, 1, FixQuality::autonomous));
    ASSERT_EQ(findings.size(), 1);
    EXPECT_EQ(findings[0].message.code, code::debriefCoarse);
}

TEST(TrackFindings, SayWhenTheTractorsHurried) {
    EXPECT_NE(find(trackFindings(driven(everyLane(), 3, FixQuality::rtkFixed, 2.5)), code::debriefTooFast),
              nullptr);
}

}  // namespace
}  // namespace treadwell::practice
