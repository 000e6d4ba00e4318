#include "core/passes/local_frame.h"

#include <GeographicLib/LocalCartesian.hpp>
#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::passes {
namespace {

// GeographicLib (C. F. F. Karney), a reference library: positions on a rigorous plane at the corner.
TEST(LocalFrame, AgreesWithAReferenceLibrary) {
    for (const double latitude : {-33.1, 0.0, 43.5, 60.2}) {
        const farm::SiloPlace place{latitude, -89.51, 0.0, Length::fromMetres(250)};
        const LocalFrame frame{place};
        const GeographicLib::LocalCartesian reference{latitude, -89.51, 250};
        struct Bound {
            double distance_m, error_m;
        };
        // Derived for 43.5 degrees; twice as much where meridians draw closer together.
        for (const Bound bound : {Bound{50, 0.0002}, Bound{200, 0.0034}, Bound{990, 0.086}}) {
            for (int direction = 0; direction < 8; ++direction) {
                const double angle = direction * 0.785;
                double lat = 0, lon = 0, height = 0;
                reference.Reverse(bound.distance_m * std::sin(angle), bound.distance_m * std::cos(angle), 0,
                                  lat, lon, height);
                const auto point = frame.pointOf(lat, lon);
                ASSERT_TRUE(point);
                const double error_m = std::hypot(point->x_m - bound.distance_m * std::cos(angle),
                                                  point->y_m - bound.distance_m * std::sin(angle));
                EXPECT_LT(error_m, 2.0 * bound.error_m) << latitude << ' ' << bound.distance_m;
            }
        }
    }
}

TEST(LocalFrame, TurnsToTheSilosAxes) {
    const LocalFrame frame{{43.52, -89.51, 90.0, {}}};  // the silo runs east, its width south
    const auto east = frame.pointOf(43.52, -89.51 + 10 / 80850.0);
    EXPECT_NEAR(east->x_m, 10, 0.001);
    EXPECT_NEAR(east->y_m, 0, 1e-9);
    const auto south = frame.pointOf(43.52 - 10 / 111103.0, -89.51);
    EXPECT_NEAR(south->x_m, 0, 1e-9);
    EXPECT_NEAR(south->y_m, 10, 0.001);
    EXPECT_FALSE(frame.pointOf(43.53, -89.51));
    EXPECT_TRUE(LocalFrame({10, 179.9999, 0, {}}).pointOf(10, -179.9999));
}

}  // namespace
}  // namespace treadwell::passes
