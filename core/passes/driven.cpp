#include "core/passes/driven.h"

#include "core/packing/passes.h"

#include <algorithm>
#include <cmath>

namespace treadwell::passes {

namespace {

constexpr std::array<double, 6> kSd_m{0.0143, 0.3, 0.75, 2.5, 5.0, 2.5};
/// A machine that stands still wanders by its fixes' error: it has moved once it is this far on.
constexpr double kLeastMove_m = 0.5;
/// So many fixes elsewhere are no error any more.
constexpr std::int64_t kBelievedJumps = 3;
constexpr std::size_t kLanes = 3;
constexpr double kZone_m = 10.0;
constexpr std::uint8_t kMostPasses = 255;

double distance_m(const GroundPoint& a, const GroundPoint& b) {
    return std::hypot(b.x_m - a.x_m, b.y_m - a.y_m);
}

}  // namespace

double positionSd_m(formats::FixQuality quality) noexcept {
    return kSd_m[static_cast<std::size_t>(quality)];
}

Result<DrivenGrid> DrivenGrid::make(const PadShape& shape, const farm::SiloPlace& place,
                                    std::vector<LayerWindow> layers) {
    if (const auto placed = validate(place); !placed) return Unexpected{placed.error()};
    auto pad = makePad(shape);
    if (!pad) return Unexpected{pad.error()};
    return DrivenGrid{*std::move(pad), LocalFrame{place}, std::move(layers)};
}

DrivenGrid::DrivenGrid(Pad pad, const LocalFrame& frame, std::vector<LayerWindow> layers)
    : m_pad{std::move(pad)},
      m_frame{frame},
      m_layers{std::move(layers)},
      m_sums(m_layers.size()),
      m_counted(m_layers.size() * m_pad.columns()),
      m_least(m_counted.size()),
      m_most(m_counted.size()),
      m_zone_s(kLanes * static_cast<std::size_t>(std::ceil(m_pad.shape.length.si() / kZone_m))) {}

void DrivenGrid::begin(const Roller& machine, std::uint32_t roller) {
    m_machine = machine;
    m_roller = roller;
    m_counts = {};
    m_anchor.reset();
    m_jumpsInARow = 0;
}

void DrivenGrid::take(const formats::Fix& fix) {
    ++m_counts.fixes;
    ++m_counts.byQuality[static_cast<std::size_t>(fix.quality)];
    if (!fix.checked) ++m_counts.unchecked;
    const auto point = m_frame.pointOf(fix.latitude_deg, fix.longitude_deg);
    if (!point) {
        ++m_counts.farAway;
        m_anchor.reset();
        return;
    }
    const Anchor here{*point, fix.at, positionSd_m(fix.quality)};
    if (m_anchor && here.at <= m_anchor->at) {
        ++m_counts.notLater;
        return;
    }
    if (!m_anchor || fix.beginsSegment || here.at - m_anchor->at > kLongestGap) {
        ++m_counts.segments;
        m_anchor = here;
        m_jumpsInARow = 0;
        return;
    }
    const double moved_m = distance_m(m_anchor->point, here.point);
    const double seconds = Seconds{here.at - m_anchor->at}.count();
    // Errors of both ends are no speed.
    const double sure_m = moved_m - 3.0 * std::hypot(here.sd_m, m_anchor->sd_m);
    if (sure_m > kFastest.si() * seconds || moved_m > kLongestStep.si() * std::max(1.0, seconds)) {
        ++m_counts.jumps;
        if (++m_jumpsInARow < kBelievedJumps) return;
        ++m_counts.segments;
        m_anchor = here;
        m_jumpsInARow = 0;
        return;
    }
    m_jumpsInARow = 0;
    move(here);
}

void DrivenGrid::move(const Anchor& to) {
    const double width_m = m_pad.shape.width.si(), length_m = m_pad.shape.length.si();
    const double x_m = to.point.x_m, y_m = to.point.y_m;
    const Anchor from = *m_anchor;
    const auto layer = layerAt(to.at);
    const bool inside = x_m >= 0.0 && x_m < length_m && y_m >= -to.sd_m && y_m < width_m + to.sd_m;
    if (!inside || !layer) {
        ++(inside ? m_counts.beforeFirstLayer : m_counts.outside);
        m_anchor = to;
        return;
    }
    const double seconds = Seconds{to.at - from.at}.count();
    const auto lane = static_cast<std::size_t>(std::clamp(y_m / width_m, 0.0, 0.999) * kLanes);
    m_zone_s[static_cast<std::size_t>(x_m / kZone_m) * kLanes + lane] += seconds;
    m_sums[*layer].time_s += seconds;
    if (distance_m(from.point, to.point) < std::max(kLeastMove_m, 2.0 * to.sd_m)) {
        m_anchor->at = to.at;  // stands still, or creeps: measured on from where it stood
        return;
    }
    drive(from, to, *layer);
    m_anchor = to;
}

void DrivenGrid::drive(const Anchor& from, const Anchor& to, std::size_t layer) {
    const double sd_m = std::max(from.sd_m, to.sd_m);
    const DrivenPass driven{
        layer, to.at, sd_m, {from.point.x_m, from.point.y_m, to.point.x_m, to.point.y_m, m_roller}};
    const double length_m = distance_m(from.point, to.point);
    m_sums[layer].distance_m += length_m;
    count(driven, 2.0 * sd_m, m_most);
    if (sd_m <= kWheelSd_m) {
        m_sums[layer].precise_m += length_m;
        count(driven, 0.0, m_counted);
        count(driven, -2.0 * sd_m, m_least);
    }
    if (m_see) m_see(driven);
}

void DrivenGrid::count(const DrivenPass& driven, double widen_m, Counts& counts) {
    const WheelPass& pass = driven.pass;
    const double cell_m = m_pad.shape.cellAcross.si();
    const double half_m = 0.5 * m_machine.width().si() + std::max(0.0, widen_m);
    const auto rowAt = [&](double y_m) {
        return static_cast<std::size_t>(
            std::clamp(std::floor(y_m / cell_m), 0.0, static_cast<double>(m_pad.across)));
    };
    const std::size_t low = rowAt(std::min(pass.y0_m, pass.y1_m) - half_m);
    const std::size_t high = std::min(rowAt(std::max(pass.y0_m, pass.y1_m) + half_m) + 1, m_pad.across);
    const auto [left, right] = tyresOf(m_machine);
    std::array<Strip, 2> strips{
        {{left.from_m - widen_m, left.to_m + widen_m}, {right.from_m - widen_m, right.to_m + widen_m}}};
    if (strips[0].to_m > strips[1].from_m) strips = {{{strips[0].from_m, strips[1].to_m}, {0.0, 0.0}}};
    for (const Strip& strip : strips) {
        for (std::size_t row = low; row < high && strip.from_m < strip.to_m; ++row) {
            const Run run = runOf(m_pad, pass, strip, row);
            std::uint8_t* first = counts.data() + m_pad.indexOf(driven.layer, row, run.first);
            for (std::size_t i = 0; i < run.count; ++i) {
                if (first[i] < kMostPasses) ++first[i];
            }
        }
    }
}

std::optional<std::size_t> DrivenGrid::layerAt(Instant at) const noexcept {
    const auto next = std::upper_bound(m_layers.begin(), m_layers.end(), at,
                                       [](Instant t, const LayerWindow& layer) { return t < layer.begin; });
    if (next == m_layers.begin()) return std::nullopt;
    return static_cast<std::size_t>(next - m_layers.begin()) - 1;
}

Coverage DrivenGrid::coverage(const Counts& counts, std::size_t layer) const {
    double cells = 0.0, sum = 0.0, squares = 0.0, unrolled = 0.0, three = 0.0;
    for (std::size_t row = 0; row < m_pad.across; ++row) {
        for (std::size_t column = 0; column < m_pad.along; ++column) {
            if (!holds(layer, column)) continue;
            const double passes = counts[m_pad.indexOf(layer, row, column)];
            cells += 1.0;
            sum += passes;
            squares += passes * passes;
            unrolled += passes == 0.0 ? 1.0 : 0.0;
            three += passes >= packing::kLeastPasses ? 1.0 : 0.0;
        }
    }
    if (cells == 0.0) return {};
    const double mean = sum / cells;
    const double sd = std::sqrt(std::max(0.0, squares / cells - mean * mean));
    return {mean, Share::fromFraction(unrolled / cells), Share::fromFraction(three / cells),
            mean > 0.0 ? sd / mean : 0.0};
}

DrivenLayer DrivenGrid::layer(std::size_t layer) const {
    const Sums& sums = m_sums[layer];
    return {m_layers[layer].number,
            Length::fromMetres(sums.distance_m),
            Seconds{sums.time_s},
            Share::fromFraction(sums.distance_m > 0.0 ? sums.precise_m / sums.distance_m : 0.0),
            coverage(m_counted, layer),
            coverage(m_least, layer),
            coverage(m_most, layer)};
}

bool DrivenGrid::holds(std::size_t layer, std::size_t along) const noexcept {
    const double x_m = (static_cast<double>(along) + 0.5) * m_pad.shape.cellAlong.si();
    return x_m >= m_layers[layer].x0_m && x_m < m_layers[layer].x1_m;
}

std::span<const std::uint8_t> DrivenGrid::passes(std::size_t layer, Counted which) const noexcept {
    const Counts& counts = which == Counted::asFixed ? m_counted : which == Counted::least ? m_least : m_most;
    return std::span{counts}.subspan(layer * m_pad.columns(), m_pad.columns());
}

}  // namespace treadwell::passes
