#include "core/samples/dry_down.h"

#include "core/base/codes.h"
#include "core/samples/codes.h"
#include "tests/support/brief.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace treadwell::samples {
namespace {

using testing_support::on;
using testing_support::percent;

TEST(DryDown, OneSampleDriesAtThePublishedRate) {
    const auto fit = refitDryDown(std::vector<FieldSample>{{on("2026-09-01"), percent(29)}});
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->rate.pointsPerDay(), 0.5, 1e-12);
    EXPECT_NEAR(fit->rateSd.pointsPerDay(), 0.1, 1e-12);
    EXPECT_NEAR(fit->on(on("2026-09-13")).mean.percent(), 35, 1e-9);
    EXPECT_NEAR(fit->on(on("2026-09-13")).sd.percent(), std::hypot(1.5, 1.2), 1e-9);
}

TEST(DryDown, ReachDaysLieAboutTheMiddleOne) {
    const auto fit = *refitDryDown(std::vector<FieldSample>{{on("2026-09-01"), percent(29)}});
    const auto days = whenReaches(fit, percent(35));
    EXPECT_EQ(days->median, on("2026-09-13"));
    EXPECT_LT(*days->early, *days->median);
    EXPECT_GT(*days->late, *days->median);
    // Further samples on the line narrow it.
    const auto more = *refitDryDown(std::vector<FieldSample>{
        {on("2026-08-22"), percent(24)}, {on("2026-08-27"), percent(26.5)}, {on("2026-09-01"), percent(29)}});
    const auto narrower = whenReaches(more, percent(35));
    EXPECT_GE(*narrower->early, *days->early);
    EXPECT_LT(*narrower->late, *days->late);
}

TEST(DryDown, AFieldThatDoesNotDryHasNoDays) {
    DryDown still;
    still.origin = on("2026-09-01");
    still.level = percent(25);
    still.levelSd = percent(1);
    const auto days = whenReaches(still, percent(35));
    EXPECT_EQ(days->early, std::nullopt);
    EXPECT_EQ(days->late, std::nullopt);
    still.level = percent(45);  // was past it before the samples
    EXPECT_EQ(whenReaches(still, percent(35))->median, std::nullopt);
}

TEST(DryDown, RefusesWhatCannotBe) {
    EXPECT_EQ(refitDryDown({}).error().code(), code::readingsMissing);
    EXPECT_EQ(refitDryDown(std::vector<FieldSample>{{on("2026-09-01"), percent(3)}}).error().field,
              "samples[0]");
    const std::vector<FieldSample> one{{on("2026-09-01"), percent(29)}};
    EXPECT_EQ(refitDryDown(one, {.sampleSd = percent(0)}).error().field, "prior.sampleSd");
    EXPECT_EQ(whenReaches(*refitDryDown(one), percent(3)).error().field, "goal");
    EXPECT_EQ(daysToDry(percent(29), percent(35), DryingRate{}).error().field, "rate");
    EXPECT_EQ(milkLineSays(Share::fromPercent(120)).error().field, "line");
    EXPECT_EQ(milkLineSays(Share::fromSi(std::nan(""))).error().code(), code::valueNotFinite);
}

RC_GTEST_PROP(DryDownProperty, DoesNotDependOnTheOrderAndNarrowsWithEachSample, ()) {
    std::vector<FieldSample> samples;
    const auto first = std::chrono::local_days{on("2026-08-20")};
    for (int i = *rc::gen::inRange(2, 8); i > 0; --i) {
        samples.push_back({LocalDay{first + std::chrono::days{*rc::gen::inRange(0, 30)}},
                           percent(*rc::gen::inRange(200, 450) / 10.0)});
    }
    const LocalDay day = on("2026-09-15");
    const Belief all = refitDryDown(samples)->on(day);
    std::reverse(samples.begin(), samples.end());
    RC_ASSERT(std::abs((refitDryDown(samples)->on(day).mean - all.mean).percent()) < 1e-6);
    samples.pop_back();
    RC_ASSERT(all.sd <= refitDryDown(samples)->on(day).sd + percent(1e-6));
}

}  // namespace
}  // namespace treadwell::samples
