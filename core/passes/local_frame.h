#pragma once

#include "core/formats/fix.h"

#include <optional>

namespace treadwell::passes {

/// Where a silo lies on Earth (WGS 84): the corner of back wall and left wall, as seen from the back wall,
/// and the direction from there along the left wall.
struct SiloPlace {
    double latitude_deg;
    double longitude_deg;
    double bearing_deg;  ///< clockwise from north
    Length height;       ///< above the ellipsoid; 250 m are 4 mm in 100 m
};

/// Latitude -89 to 89, longitude -180 to 180, bearing -360 to 360, height -500 to 5000 m. Errors:
/// valueNotFinite, valueOutOfRange.
[[nodiscard]] Result<void> validate(const SiloPlace& place);

struct GroundPoint {
    double x_m;  ///< along the silo from the back wall
    double y_m;  ///< across from the left wall
};

/// Degrees to metres on a silo's own axes.
///
/// north = (phi - phi0)(M + h), east = (lambda - lambda0)(N + h) cos phi0, M and N the radii of curvature of
/// the WGS 84 ellipsoid at the corner; 3.4 mm off at 200 m, 8.6 cm at 1 km (derived).
class LocalFrame final {
  public:
    /// A place that validate() has passed.
    explicit LocalFrame(const SiloPlace& place) noexcept;

    /// None beyond a kilometre, where the plane does not hold.
    [[nodiscard]] std::optional<GroundPoint> pointOf(double latitude_deg,
                                                     double longitude_deg) const noexcept;

  private:
    SiloPlace m_place;
    double m_northPerDegree_m;
    double m_eastPerDegree_m;
    double m_sine;
    double m_cosine;
};

}  // namespace treadwell::passes
