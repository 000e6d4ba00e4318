#include "core/density/field.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace treadwell::density {

namespace {

/// Integral of the wall factor from the left wall on, over its mean: up to `across` [m].
double wallIntegral(double across_m, double width_m) noexcept {
    const double strip = kWallStrip.metres();
    const double atWalls = std::min(across_m, strip) + std::max(0.0, across_m - (width_m - strip));
    return (across_m - atWalls * (1.0 - 1.0 / kMiddleToWall)) /
           (1.0 - (1.0 - 1.0 / kMiddleToWall) * 2.0 * strip / width_m);
}

/// A line over the distance from the back wall.
struct Line {
    double at0, slope;
};

}  // namespace

/// A layer's part of a box, for a metre of width.
struct Field::Cut {
    double area = 0.0;       ///< [m2]
    double dry = 0.0;        ///< [kg/m]
    double depthArea = 0.0;  ///< [m3/m]
};

double wallFactor(Length across, Length width) noexcept {
    const bool atWall = across < kWallStrip || across > width - kWallStrip;
    const double loose = 1.0 - 1.0 / kMiddleToWall;
    return (atWall ? 1.0 - loose : 1.0) / (1.0 - loose * 2.0 * (kWallStrip / width));
}

Field::Field(const farm::Silo& silo, const Stack& stack, std::vector<FieldLayer> layers,
             const Residual& residual)
    : m_layers(std::move(layers)),
      m_edges{0.0},
      m_width{silo.width.metres()},
      m_run{0.0},
      m_spot{residual.face + residual.spot},
      m_doubt{residual.varianceDoubt} {
    for (const StackedLayer& layer : stack.layers)
        m_edges.push_back(std::max(m_edges.back(), layer.upper.metres()));
    const double top = stack.top.metres();
    if (silo.filling == farm::FillingWay::lifts) {
        m_corners = {{0.0, top}, {silo.length.metres(), top}};
        return;
    }
    m_run = silo.rampSlope.runPerRise();
    const double foot = stack.foot.metres();
    m_corners = {{0.0, top}, {foot - m_run * top, top}, {foot, 0.0}};
    if (silo.rampEnds == 2) {
        m_corners.insert(m_corners.begin(), Corner{0.0, 0.0});
        m_corners[1].x = m_run * top;
    }
}

double Field::surface_m(double x) const noexcept {
    for (std::size_t i = 0; i + 1 < m_corners.size(); ++i) {
        const auto& [x0, z0] = m_corners[i];
        const auto& [x1, z1] = m_corners[i + 1];
        if (x >= x0 && x <= x1) return x1 > x0 ? z0 + (z1 - z0) * (x - x0) / (x1 - x0) : std::max(z0, z1);
    }
    return 0.0;
}

Length Field::surface(Length along) const noexcept {
    return Length::fromMetres(surface_m(along.metres()));
}

Box Field::whole() const noexcept {
    double top = 0.0;
    for (const Corner& corner : m_corners) top = std::max(top, corner.z);
    return {{},
            {Length::fromMetres(m_corners.back().x), Length::fromMetres(top), Length::fromMetres(m_width)}};
}

double Field::edge_m(double edge, double x) const noexcept {
    return m_run > 0.0 ? (edge - x) / m_run : edge;
}

double Field::front_m(double x, double z) const noexcept {
    return m_run > 0.0 ? x + m_run * z : z;
}

std::optional<FieldPoint> Field::at(const Position& place) const {
    const double x = place.along.metres(), z = place.up.metres(), y = place.across.metres();
    const bool inside = x >= 0.0 && z >= 0.0 && y >= 0.0 && y <= m_width && x <= m_corners.back().x;
    if (!inside || z > surface_m(x) || !(surface_m(x) > 0.0)) return std::nullopt;
    const auto upper = std::lower_bound(m_edges.begin() + 1, m_edges.end(), front_m(x, z));
    if (upper == m_edges.end()) return std::nullopt;
    const auto index = static_cast<std::size_t>(upper - m_edges.begin()) - 1;
    const FieldLayer& layer = m_layers[index];
    const double depth = surface_m(x) - z;
    const double median = layer.law.bracket() * FieldEquation::factor(depth) *
                          wallFactor(place.across, Length::fromMetres(m_width));
    const double variance =
        layer.commonVariance + layer.ownVariance + m_spot + depthSlopeVarianceAt(Length::fromMetres(depth));
    return FieldPoint{
        index, Length::fromMetres(depth),
        Distribution{{median, std::sqrt(variance)}, layer.limit, degreesOfFreedom(variance, m_doubt)}};
}

/// Every bound of a layer in a box is a straight line over each stretch of the surface, so that what lies
/// between them changes like a parabola from one of their crossings to the next.
std::vector<double> Field::kinks(std::size_t layer, double x0, double x1, double z0, double z1) const {
    std::vector<double> kinks{x0, x1};
    const auto add = [&](double x) {
        if (x > x0 && x < x1) kinks.push_back(x);
    };
    const double slope = m_run > 0.0 ? -1.0 / m_run : 0.0;
    for (std::size_t i = 0; i + 1 < m_corners.size(); ++i) {
        const auto& [from, zFrom] = m_corners[i];
        const auto& [to, zTo] = m_corners[i + 1];
        add(from);
        add(to);
        if (!(to > from) || to < x0 || from > x1) continue;
        const double rise = (zTo - zFrom) / (to - from);
        const double surface = zFrom - rise * from;
        const std::array<Line, 6> lines{{{z0, 0.0},
                                         {z1, 0.0},
                                         {surface, rise},
                                         {surface - m_layers[layer].law.cappedFrom_m(), rise},
                                         {edge_m(m_edges[layer], 0.0), slope},
                                         {edge_m(m_edges[layer + 1], 0.0), slope}}};
        for (std::size_t a = 0; a < lines.size(); ++a) {
            for (std::size_t b = 0; b < a; ++b) {
                const double x = (lines[b].at0 - lines[a].at0) / (lines[a].slope - lines[b].slope);
                if (x > from && x < to) add(x);
            }
        }
    }
    std::sort(kinks.begin(), kinks.end());
    return kinks;
}

Field::Cut Field::cut(std::size_t layer, double x0, double x1, double z0, double z1) const {
    const LayerLaw& law = m_layers[layer].law;
    const auto column = [&](double x) {
        const double surface = surface_m(x);
        const double low = std::max(z0, edge_m(m_edges[layer], x));
        const double high = std::min({z1, surface, edge_m(m_edges[layer + 1], x)});
        if (!(high > low)) return Cut{};
        const double below = surface - low, above = surface - high;
        return Cut{high - low, law.bracket() * (law.integral(below) - law.integral(above)),
                   (high - low) * 0.5 * (below + above)};
    };
    Cut whole;
    const std::vector<double> xs = kinks(layer, x0, x1, z0, z1);
    for (std::size_t i = 0; i + 1 < xs.size(); ++i) {
        const double length = xs[i + 1] - xs[i];
        if (!(length > 0.0)) continue;
        const Cut a = column(xs[i]), m = column(0.5 * (xs[i] + xs[i + 1])), b = column(xs[i + 1]);
        const auto simpson = [&](double first, double middle, double last) {
            return length * (first + 4.0 * middle + last) / 6.0;
        };
        whole.area += simpson(a.area, m.area, b.area);
        whole.dry += simpson(a.dry, m.dry, b.dry);
        whole.depthArea += simpson(a.depthArea, m.depthArea, b.depthArea);
    }
    return whole;
}

std::optional<FieldMean> Field::mean(const Box& box) const {
    const Box all = whole();
    const auto clipped = [](Length low, Length high, Length most) {
        return std::pair{std::max(0.0, low.metres()), std::min(high.metres(), most.metres())};
    };
    const auto [x0, x1] = clipped(box.low.along, box.high.along, all.high.along);
    const auto [z0, z1] = clipped(box.low.up, box.high.up, all.high.up);
    const auto [y0, y1] = clipped(box.low.across, box.high.across, all.high.across);
    if (!(x1 > x0 && z1 > z0 && y1 > y0)) return std::nullopt;
    std::vector<std::pair<std::size_t, Cut>> cuts;
    for (std::size_t k = 0; k < m_layers.size(); ++k) {
        if (m_edges[k + 1] <= front_m(x0, z0)) continue;
        if (m_edges[k] >= front_m(x1, z1)) break;
        const double first = m_run > 0.0 ? std::max(x0, m_edges[k] - m_run * z1) : x0;
        const double last = m_run > 0.0 ? std::min(x1, m_edges[k + 1] - m_run * z0) : x1;
        if (!(last > first)) continue;
        if (const Cut part = cut(k, first, last, z0, z1); part.area > 0.0) cuts.emplace_back(k, part);
    }
    if (cuts.empty()) return std::nullopt;
    return meanOf(cuts, y1 - y0, (wallIntegral(y1, m_width) - wallIntegral(y0, m_width)) / (y1 - y0));
}

FieldMean Field::meanOf(const std::vector<std::pair<std::size_t, Cut>>& cuts, double width_m,
                        double walls) const {
    Cut all;
    for (const auto& [layer, part] : cuts) {
        all.area += part.area;
        all.dry += part.dry;
        all.depthArea += part.depthArea;
    }
    double commonSd = 0.0, ownVariance = 0.0, squares = 0.0, limit = 0.0;
    for (const auto& [layer, part] : cuts) {
        const double weight = part.dry / all.dry;
        commonSd += weight * std::sqrt(m_layers[layer].commonVariance);
        ownVariance += weight * weight * m_layers[layer].ownVariance;
        squares += weight * weight;
        limit += part.area / all.area * m_layers[layer].limit.si();
    }
    const Length depth = Length::fromMetres(all.depthArea / all.area);
    const double variance = commonSd * commonSd + ownVariance + depthSlopeVarianceAt(depth);
    return {.dry = DryMass::fromKilograms(all.dry * walls * width_m),
            .volume = Volume::fromCubicMetres(all.area * width_m),
            .depth = depth,
            .effectiveLayers = 1.0 / squares,
            .density = Distribution{{all.dry * walls / all.area, std::sqrt(variance)},
                                    DryDensity::fromSi(limit),
                                    degreesOfFreedom(variance, m_doubt)}};
}

}  // namespace treadwell::density
