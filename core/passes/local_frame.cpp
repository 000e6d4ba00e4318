#include "core/passes/local_frame.h"

#include <cmath>
#include <numbers>

namespace treadwell::passes {

namespace {

constexpr double kEquator_m = 6378137.0;
constexpr double kFlattening = 1.0 / 298.257223563;
constexpr double kReach_m = 1000.0;
constexpr double kRadians = std::numbers::pi / 180.0;

}  // namespace

LocalFrame::LocalFrame(const farm::SiloPlace& place) noexcept
    : m_place{place},
      m_sine{std::sin(place.bearing_deg * kRadians)},
      m_cosine{std::cos(place.bearing_deg * kRadians)} {
    const double squared = kFlattening * (2.0 - kFlattening);
    const double sine = std::sin(place.latitude_deg * kRadians);
    const double w = 1.0 - squared * sine * sine;
    const double meridian_m = kEquator_m * (1.0 - squared) / (w * std::sqrt(w));
    const double normal_m = kEquator_m / std::sqrt(w);
    const double height_m = place.height.value_or(Length{}).si();
    m_northPerDegree_m = (meridian_m + height_m) * kRadians;
    m_eastPerDegree_m = (normal_m + height_m) * std::cos(place.latitude_deg * kRadians) * kRadians;
}

std::optional<GroundPoint> LocalFrame::pointOf(double latitude_deg, double longitude_deg) const noexcept {
    const double north_m = (latitude_deg - m_place.latitude_deg) * m_northPerDegree_m;
    const double east_m = std::remainder(longitude_deg - m_place.longitude_deg, 360.0) * m_eastPerDegree_m;
    if (!(std::hypot(north_m, east_m) <= kReach_m)) return std::nullopt;
    return GroundPoint{north_m * m_cosine + east_m * m_sine, east_m * m_cosine - north_m * m_sine};
}

}  // namespace treadwell::passes
