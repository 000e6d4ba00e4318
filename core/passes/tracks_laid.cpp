#include "core/passes/tracks_laid.h"

#include <algorithm>
#include <cmath>

namespace treadwell::passes {

namespace {

/// A driver keeps a track to about this (assumed), either way.
constexpr double kSteering_m = 0.10;

double uniform(std::mt19937_64& random) {
    return static_cast<double>(random() >> 11U) * 0x1p-53;
}

}  // namespace

TrackLayer::TrackLayer(const PadShape& shape, Pattern pattern, Length nearWall, std::uint64_t seed)
    : m_shape{shape}, m_pattern{pattern}, m_nearWall{std::max(nearWall, kOverhang)}, m_random{seed} {
    m_place = uniform(m_random);
}

double TrackLayer::nextMiddle_m(const Roller& machine) {
    const double width_m = m_shape.width.si();
    const double low_m = std::min(m_nearWall.si() + 0.5 * machine.width().si(), 0.5 * width_m);
    const double room_m = width_m - 2.0 * low_m;
    if (m_pattern == Pattern::middle) return width_m * (1.0 + uniform(m_random)) / 3.0;
    if (m_pattern == Pattern::anywhere) return low_m + room_m * uniform(m_random);
    // One sweep from wall to wall by the width of a tyre, the ends included; where it ends it begins anew.
    const double steps = std::max(1.0, std::ceil(room_m / machine.tyreWidth().si()));
    m_place += 1.0 / (steps + 1.0);
    if (m_place >= 1.0) m_place -= 1.0;
    const double step = std::floor(m_place * (steps + 1.0));
    const double steered_m = kSteering_m * (2.0 * uniform(m_random) - 1.0);
    return low_m + std::clamp(room_m * step / steps + steered_m, 0.0, room_m);
}

void TrackLayer::add(std::vector<WheelPass>& passes, const Roller& machine, std::uint32_t roller,
                     Length distance) {
    const double length_m = m_shape.length.si();
    double left_m = distance.si();
    while (left_m > 0.0) {
        if (m_done_m == 0.0) m_middle_m = nextMiddle_m(machine);
        const double drive_m = std::min(left_m, length_m - m_done_m);
        const bool outward = m_drives % 2 == 0;
        const double from_m = outward ? m_done_m : length_m - m_done_m;
        const double to_m = outward ? from_m + drive_m : from_m - drive_m;
        passes.push_back({from_m, m_middle_m, to_m, m_middle_m, roller});
        left_m -= drive_m;
        m_done_m += drive_m;
        if (m_done_m < length_m) continue;
        m_done_m = 0.0;
        ++m_drives;
    }
}

}  // namespace treadwell::passes
