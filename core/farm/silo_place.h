#pragma once

#include "core/base/error.h"
#include "core/quantity/geometry.h"

#include <limits>
#include <optional>

namespace treadwell::farm {

/// Where a silo lies on Earth (WGS 84): the corner of back wall and left wall, as seen from the back wall,
/// and the direction from there along the left wall. Nothing is known of a place that is not filled in.
struct SiloPlace {
    double latitude_deg = std::numeric_limits<double>::quiet_NaN();
    double longitude_deg = std::numeric_limits<double>::quiet_NaN();
    double bearing_deg = std::numeric_limits<double>::quiet_NaN();  ///< clockwise from north
    std::optional<Length> height;  ///< above the ellipsoid; 250 m are 4 mm in 100 m

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("bearing_deg", self.bearing_deg);
        visit("height_m", self.height);
        visit("latitude_deg", self.latitude_deg);
        visit("longitude_deg", self.longitude_deg);
    }
    friend bool operator==(const SiloPlace&, const SiloPlace&) = default;
};

/// Latitude -89 to 89, longitude -180 to 180, bearing -360 to 360, height -500 to 5000 m. Errors:
/// valueMissing, valueNotFinite, valueOutOfRange.
[[nodiscard]] Result<void> validate(const SiloPlace& place);

}  // namespace treadwell::farm
