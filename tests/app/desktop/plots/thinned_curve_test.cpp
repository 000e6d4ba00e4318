#include "app/desktop/plots/thinned_curve.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace treadwell::plots {
namespace {

// Against every point: a column of pixels spans the same values, and begins and ends with the same one.
TEST(ThinnedCurve, SpansInEachColumnWhatAllPointsSpan) {
    constexpr int kPoints = 100'000;
    constexpr int kColumns = 900;
    const auto value = [](int i) { return std::sin(i * 0.01) + 0.3 * std::sin(i * 1.7); };
    ThinnedCurve curve{0.0, static_cast<double>(kPoints) / kColumns};
    for (int i = 0; i < kPoints; ++i) curve.add(i, value(i));
    curve.finish();
    EXPECT_LE(curve.times().size(), 4 * kColumns);
    EXPECT_TRUE(std::is_sorted(curve.times().begin(), curve.times().end()));
    for (int column = 0; column < kColumns; ++column) {
        const double width = static_cast<double>(kPoints) / kColumns;
        const auto within = [&](double at) { return std::floor(at / width) == column; };
        double low = 9, high = -9, thinLow = 9, thinHigh = -9;
        for (int i = static_cast<int>(column * width); i < kPoints && i <= (column + 1) * width; ++i) {
            if (!within(i)) continue;
            low = std::min(low, value(i));
            high = std::max(high, value(i));
        }
        for (qsizetype i = 0; i < curve.times().size(); ++i) {
            if (!within(curve.times()[i])) continue;
            thinLow = std::min(thinLow, curve.values()[i]);
            thinHigh = std::max(thinHigh, curve.values()[i]);
        }
        ASSERT_EQ(low, thinLow) << column;
        ASSERT_EQ(high, thinHigh) << column;
    }
}

TEST(ThinnedCurve, LeavesFewPointsAsTheyAre) {
    ThinnedCurve curve{0.0, 0.5};
    for (int i = 0; i < 20; ++i) curve.add(i, i % 3);
    curve.finish();
    ASSERT_EQ(curve.times().size(), 20);
    for (int i = 0; i < 20; ++i) EXPECT_EQ(curve.values()[i], i % 3);
}

TEST(ThinnedCurve, KeepsGaps) {
    ThinnedCurve curve{0.0, 100.0};
    curve.add(1, 5);
    curve.add(2, std::nan(""));
    curve.add(3, HUGE_VAL);
    curve.add(4, 7);
    curve.finish();
    ASSERT_EQ(curve.times().size(), 3);
    EXPECT_EQ(curve.values()[0], 5);
    EXPECT_TRUE(std::isnan(curve.values()[1]));
    EXPECT_EQ(curve.values()[2], 7);
}

TEST(ThinnedCurve, OfNothingIsNothing) {
    ThinnedCurve curve{0.0, 1.0};
    curve.finish();
    EXPECT_TRUE(curve.times().isEmpty());
}

}  // namespace
}  // namespace treadwell::plots
