#pragma once

#include <optional>
#include <span>

namespace treadwell::stats {

struct Point {
    double x;
    double y;
};

/// A line through points by least squares, y = meanY + slope (x - meanX), in the units of the points.
struct StraightLine {
    double meanX = 0.0;
    double meanY = 0.0;
    double slope = 0.0;
    double residualSd = 0.0;  ///< of the points about it, with n - 2 degrees of freedom; 0 with two points
    double slopeSd = 0.0;     ///< standard error of the slope; 0 with two points
    long points = 0;

    [[nodiscard]] double at(double x) const noexcept { return meanY + slope * (x - meanX); }

    struct Interval {
        double low;
        double high;
    };
    /// The central interval of the slope that holds it with `probability` in (0, 1), by Student's t; none
    /// with fewer than three points, which say nothing of their scatter.
    [[nodiscard]] std::optional<Interval> slopeInterval(double probability) const;
};

/// The least-squares line; none with fewer than two different x or with a value that is not finite. Source:
/// Draper & Smith 1998, Applied Regression Analysis, 1.2-1.4 (value from memory).
[[nodiscard]] std::optional<StraightLine> lineThrough(std::span<const Point> points);

}  // namespace treadwell::stats
