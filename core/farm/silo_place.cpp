#include "core/farm/silo_place.h"

#include "core/quantity/range.h"

#include <cmath>

namespace treadwell::farm {

namespace {

Result<void> holdsDegrees(double value, double lowest, double highest, const char* field) {
    if (std::isnan(value)) return fail(code::valueMissing, field);
    return holdsWithin(value, lowest, highest, field);
}

}  // namespace

Result<void> validate(const SiloPlace& place) {
    return firstFailure(holdsDegrees(place.latitude_deg, -89.0, 89.0, "latitude"),
                        holdsDegrees(place.longitude_deg, -180.0, 180.0, "longitude"),
                        holdsDegrees(place.bearing_deg, -360.0, 360.0, "bearing"),
                        holdsWithin(place.height.value_or(Length{}), Length::fromMetres(-500),
                                    Length::fromMetres(5000), "height"));
}

}  // namespace treadwell::farm
