#include "core/density/surface.h"

#include "core/density/codes.h"
#include "core/farm/shape.h"
#include "core/samples/codes.h"
#include "core/stats/square.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numeric>
#include <string>
#include <utility>

namespace treadwell::density {

namespace {

constexpr double kLargestStepAlong_m = 0.5;
constexpr double kLargestStepAcross_m = 1.0;
constexpr double kNear_m = 1.0;        ///< readings this close count as one
constexpr double kNoCrop_m = 0.10;     ///< what is lower than this is spilt crop, not the silo's
constexpr double kAboveCrown_m = 0.5;  ///< a height above wall and crown that is taken for a slip
constexpr double kOnRampPart = 0.85;   ///< lower than this part of the top is taken to lie on the ramp
constexpr double kSameFront_m = 1.5;   ///< fronts this close to the foremost speak of the same ramp

struct Point {
    double along, across, height;
};

using stats::square;

Result<std::vector<Point>> checked(const farm::Silo& silo, std::span<const entries::HeightReading> readings) {
    if (readings.empty()) return fail(code::readingsMissing, "readings");
    const Length highest = silo.wallHeight + silo.crown + Length::fromMetres(kAboveCrown_m);
    std::vector<Point> points;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const entries::HeightReading& reading = readings[i];
        const std::string place = "readings[" + std::to_string(i) + ']';
        if (!(reading.along >= Length{} && reading.along <= silo.length)) {
            return fail(code::heightOutsideSilo, place + ".along", reading.along.amount(),
                        silo.length.amount());
        }
        if (!(reading.across >= Length{} && reading.across <= silo.width)) {
            return fail(code::heightOutsideSilo, place + ".across", reading.across.amount(),
                        silo.width.amount());
        }
        if (!(reading.height >= Length{} && reading.height <= highest)) {
            return fail(code::heightAboveSilo, place + ".height", reading.height.amount(),
                        (silo.wallHeight + silo.crown).amount());
        }
        points.push_back({reading.along.metres(), reading.across.metres(), reading.height.metres()});
    }
    return points;
}

/// Readings in the same square metre say the same thing: their mean.
std::vector<Point> thinned(const std::vector<Point>& points) {
    std::map<std::pair<int, int>, std::pair<Point, int>> squares;
    for (const Point& point : points) {
        auto& [sum, count] =
            squares[{static_cast<int>(point.along / kNear_m), static_cast<int>(point.across / kNear_m)}];
        sum.along += point.along;
        sum.across += point.across;
        sum.height += point.height;
        ++count;
    }
    std::vector<Point> means;
    for (const auto& [where, square] : squares) {
        const auto& [sum, count] = square;
        means.push_back({sum.along / count, sum.across / count, sum.height / count});
    }
    return means;
}

/// Where the forward ramp reaches the floor, from the back wall.
struct Foot {
    double foot_m;
    double sd_m = 0.0;
};

/// What is known of the surface before its heights are looked at one by one.
class Shape {
  public:
    Shape(const farm::Silo& silo, const std::vector<Point>& crop, const std::vector<Point>& bare)
        : m_silo{silo}, m_front(frontOf(crop, bare)), m_top{topOf(crop)} {}

    [[nodiscard]] double at(double along, double across) const {
        return std::max(0.0, std::min(m_top, envelope(along, across)));
    }
    [[nodiscard]] const Foot& front() const { return m_front; }
    [[nodiscard]] double top() const { return m_top; }

  private:
    [[nodiscard]] double run() const { return m_silo.rampSlope.runPerRise(); }

    /// Nothing lies higher: ramps, and the crown's sides where there is a crown.
    [[nodiscard]] double envelope(double along, double across) const {
        const double fromWall = std::min(across, m_silo.width.metres() - across);
        double height = m_silo.wallHeight.metres() + fromWall / farm::kCrownSide.runPerRise();
        if (m_silo.rampEnds > 0) height = std::min(height, (m_front.foot_m - along) / run());
        if (m_silo.rampEnds > 1) height = std::min(height, along / run());
        return height;
    }

    [[nodiscard]] Foot frontOf(const std::vector<Point>& crop, const std::vector<Point>& bare) const {
        const double length = m_silo.length.metres();
        if (m_silo.filling == farm::FillingWay::lifts || m_silo.rampEnds == 0) return {length};
        const auto front = [&](const Point& point) { return point.along + run() * point.height; };
        double foremost = 0.0, highest = 0.0, furthest = 0.0;
        for (const Point& point : crop) {
            foremost = std::max(foremost, front(point));
            highest = std::max(highest, point.height);
            furthest = std::max(furthest, point.along);
        }
        double sum = 0.0;
        int onRamp = 0;
        for (const Point& point : crop) {
            if (point.height > kOnRampPart * highest || front(point) < foremost - kSameFront_m) continue;
            sum += front(point);
            ++onRamp;
        }
        if (onRamp > 0) return {std::min(length, sum / onRamp)};
        double next = length;
        for (const Point& point : bare) {
            if (point.along > furthest) next = std::min(next, point.along);
        }
        const double from = std::min(foremost, next);
        return {0.5 * (from + next), (next - from) / std::sqrt(12.0)};
    }

    /// The mean of the readings that do not lie on a ramp or on the crown's side; the highest of all where
    /// every one does.
    [[nodiscard]] double topOf(const std::vector<Point>& crop) const {
        double sum = 0.0, highest = 0.0;
        int level = 0;
        for (const Point& point : crop) {
            highest = std::max(highest, point.height);
            if (point.height > envelope(point.along, point.across) - kHeightBetweenSd_m) continue;
            sum += point.height;
            ++level;
        }
        return level > 0 ? sum / level : highest;
    }

    const farm::Silo& m_silo;
    Foot m_front;
    double m_top;
};

/// The readings' differences from the shape, between them.
double difference(const std::vector<Point>& differences, double along, double across) {
    double weights = 0.0, sum = 0.0;
    for (const Point& point : differences) {
        const double distance2 = square(point.along - along) + square(point.across - across);
        if (distance2 < 1e-6) return point.height;
        const double weight = 1.0 / square(distance2);
        weights += weight;
        sum += weight * point.height;
    }
    return sum / weights;
}

void fillCells(Surface& surface, const Shape& shape, const std::vector<Point>& points) {
    std::vector<Point> differences = points;
    for (Point& point : differences) point.height -= shape.at(point.along, point.across);
    double sum = 0.0, squares = 0.0;
    std::int64_t covered = 0;
    for (int i = 0; i < surface.alongCells; ++i) {
        const double along = (i + 0.5) * surface.alongStep.metres();
        for (int j = 0; j < surface.acrossCells; ++j) {
            const double across = (j + 0.5) * surface.acrossStep.metres();
            const double known = shape.at(along, across);
            // In front of the foot lies nothing, whatever the readings behind it say of the top.
            const double height =
                known > 0.0 ? std::max(0.0, known + difference(differences, along, across)) : 0.0;
            surface.height_m.push_back(height);
            sum += height;
            squares += square(height);
            covered += height > 0.0;
        }
    }
    if (covered == 0) return;
    surface.volume = surface.cell() * Length::fromMetres(sum);
    surface.meanDepth = Length::fromMetres(squares / sum);
    surface.meanHeight = Length::fromMetres(sum / static_cast<double>(covered));
}

}  // namespace

std::vector<Length> Surface::profile() const {
    std::vector<Length> heights;
    for (auto row = height_m.begin(); row != height_m.end(); row += acrossCells) {
        heights.push_back(Length::fromMetres(std::accumulate(row, row + acrossCells, 0.0) / acrossCells));
    }
    return heights;
}

double volumeLogSdOf(std::int64_t readings, Length meanHeight) noexcept {
    const double each = square(kHeightReadingSd_m) + square(kHeightBetweenSd_m);
    return std::sqrt(each / static_cast<double>(readings) + square(kFloorSd_m)) / meanHeight.metres();
}

Result<Surface> surfaceOf(const farm::Silo& silo, std::span<const entries::HeightReading> readings) {
    const auto read = checked(silo, readings);
    if (!read) return tl::unexpected{read.error()};
    std::vector<Point> points = thinned(*read);
    const auto bareFrom = std::stable_partition(points.begin(), points.end(),
                                                [](const Point& point) { return point.height > kNoCrop_m; });
    const std::vector<Point> crop{points.begin(), bareFrom}, bare{bareFrom, points.end()};
    if (crop.empty()) return fail(code::heightsWithoutCrop, "readings");

    Surface surface;
    surface.alongCells = static_cast<int>(std::ceil(silo.length.metres() / kLargestStepAlong_m));
    surface.acrossCells = static_cast<int>(std::ceil(silo.width.metres() / kLargestStepAcross_m));
    surface.alongStep = silo.length / surface.alongCells;
    surface.acrossStep = silo.width / surface.acrossCells;
    surface.height_m.reserve(static_cast<std::size_t>(surface.alongCells) *
                             static_cast<std::size_t>(surface.acrossCells));
    const Shape shape{silo, crop, bare};
    fillCells(surface, shape, points);
    if (!(surface.volume > Volume{})) return fail(code::heightsWithoutCrop, "readings");

    surface.readings = std::ssize(crop);
    surface.frontSeen = shape.front().sd_m == 0.0;
    const Volume perMetre = silo.width * Length::fromMetres(1) * Length::fromMetres(shape.top());
    surface.volumeLogSd = std::hypot(volumeLogSdOf(surface.readings, surface.meanHeight),
                                     shape.front().sd_m * (perMetre / surface.volume));
    return surface;
}

}  // namespace treadwell::density
