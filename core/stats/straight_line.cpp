#include "core/stats/straight_line.h"

#include "core/stats/student.h"

#include <algorithm>
#include <cmath>

namespace treadwell::stats {

std::optional<StraightLine::Interval> StraightLine::slopeInterval(double probability) const {
    if (points < 3) return std::nullopt;
    const double half = slopeSd * studentQuantile(0.5 + 0.5 * probability, static_cast<double>(points - 2));
    return Interval{slope - half, slope + half};
}

std::optional<StraightLine> lineThrough(std::span<const Point> points) {
    if (points.size() < 2) return std::nullopt;
    StraightLine line;
    line.points = std::ssize(points);
    const auto n = static_cast<double>(points.size());
    for (const Point& point : points) {
        line.meanX += point.x / n;
        line.meanY += point.y / n;
    }
    double xx = 0.0, xy = 0.0;
    for (const Point& point : points) {
        xx += (point.x - line.meanX) * (point.x - line.meanX);
        xy += (point.x - line.meanX) * (point.y - line.meanY);
    }
    const bool sameX = std::ranges::all_of(points, [&](const Point& p) { return p.x == points.front().x; });
    if (sameX || !std::isfinite(xx) || !std::isfinite(xy) || !(xx > 0.0)) return std::nullopt;
    line.slope = xy / xx;
    double squares = 0.0;
    for (const Point& point : points) squares += std::pow(point.y - line.at(point.x), 2);
    if (!std::isfinite(line.slope) || !std::isfinite(squares)) return std::nullopt;
    if (points.size() > 2) line.residualSd = std::sqrt(squares / (n - 2.0));
    line.slopeSd = line.residualSd / std::sqrt(xx);
    return line;
}

}  // namespace treadwell::stats
