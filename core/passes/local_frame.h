#pragma once

#include "core/farm/silo_place.h"

#include <optional>

namespace treadwell::passes {

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
    explicit LocalFrame(const farm::SiloPlace& place) noexcept;

    /// None beyond a kilometre, where the plane does not hold.
    [[nodiscard]] std::optional<GroundPoint> pointOf(double latitude_deg,
                                                     double longitude_deg) const noexcept;

  private:
    farm::SiloPlace m_place;
    double m_northPerDegree_m;
    double m_eastPerDegree_m;
    double m_sine;
    double m_cosine;
};

}  // namespace treadwell::passes
