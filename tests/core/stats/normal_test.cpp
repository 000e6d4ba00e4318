#include "core/stats/normal.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <stdexcept>

namespace treadwell::stats {
namespace {

struct Pair {
    double probability;
    double x;
};

// Computed with mpmath 1.3.0 (Johansson 2023, arbitrary-precision arithmetic) at 60 digits from the double
// nearest to each probability: x by Newton's method on erfc(-x/sqrt 2)/2.
constexpr std::array kQuantiles{
    Pair{1e-300, -37.047096299361199237}, Pair{1e-20, -9.2623400897984075796},
    Pair{1e-10, -6.3613409024040561991},  Pair{1e-5, -4.2648907939228246102},
    Pair{0.001, -3.0902323061678135354},  Pair{0.01, -2.3263478740408410931},
    Pair{0.025, -1.9599639845400542118},  Pair{0.075, -1.4395314709384559349},
    Pair{0.1, -1.2815515655446004353},    Pair{0.2, -0.84162123357291416552},
    Pair{0.25, -0.6744897501960817432},   Pair{0.35, -0.38532046640756768376},
    Pair{0.425, -0.18911842627279251844}, Pair{0.5, 0.0},
    Pair{0.6, 0.25334710313579974132},    Pair{0.75, 0.6744897501960817432},
    Pair{0.8, 0.8416212335729143638},     Pair{0.9, 1.2815515655446005935},
    Pair{0.925, 1.4395314709384562291},   Pair{0.975, 1.9599639845400538556},
    Pair{0.99, 2.3263478740408407676},    Pair{0.999, 3.0902323061678132778},
    Pair{0.99999, 4.2648907939238407699},
};

TEST(Normal, QuantileAgreesWithArbitraryPrecision) {
    for (const Pair& row : kQuantiles) {
        EXPECT_NEAR(normalQuantile(row.probability), row.x, 2e-15 * std::max(1.0, std::abs(row.x)))
            << row.probability;
    }
    EXPECT_NEAR(normalQuantile(0.9), kHalfBand80, 1e-15);
}

// The same source: erfc at 60 digits.
constexpr std::array kProbabilities{
    Pair{2.7536241186062336951e-89, -20}, Pair{6.2209605742717841235e-16, -8},
    Pair{2.8665157187919391167e-7, -5},   Pair{0.0013498980316300945267, -3},
    Pair{0.15865525393145705141, -1},     Pair{0.30853753872598689636, -0.5},
    Pair{0.46017216272297101633, -0.1},   Pair{0.5, 0},
    Pair{0.53982783727702898367, 0.1},    Pair{0.69146246127401310364, 0.5},
    Pair{0.84134474606854294859, 1},      Pair{0.97500210485177956379, 1.96},
    Pair{0.99865010196836990547, 3},      Pair{0.99999971334842812081, 5},
    Pair{0.9999999999999993779, 8},
};

TEST(Normal, CdfAgreesWithArbitraryPrecision) {
    for (const Pair& row : kProbabilities) {
        const double tolerance = 1e-15 * std::max(1.0, row.x * row.x) * row.probability;
        EXPECT_NEAR(normalCdf(row.x), row.probability, tolerance) << row.x;
    }
}

TEST(Normal, CdfTurnsTheQuantileBack) {
    for (double p = 1e-12; p < 0.9999; p += 0.00371) EXPECT_NEAR(normalCdf(normalQuantile(p)), p, 2e-14 * p);
}

TEST(Normal, NoQuantileAtTheEndsOrOutside) {
    for (const double p : {0.0, 1.0, -0.1, 1.1, std::nan("")}) {
        EXPECT_THROW((void)normalQuantile(p), std::invalid_argument);
    }
}

}  // namespace
}  // namespace treadwell::stats
