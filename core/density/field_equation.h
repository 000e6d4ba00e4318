#pragma once

#include "core/quantity/quantity.h"

#include <cmath>

namespace treadwell::density {

/// The packing factor: mean mass of a machine over the layer's thickness, times the root of packing time and
/// dry matter. `si` is W/L * sqrt(T * DM) with W in kg, L in cm, T in minutes per tonne as fed, DM a
/// fraction; `us` is W/L * sqrt(N * DM / C) with W in lb, L in inches, N/C in machine-hours per short ton.
struct PackingFactor {
    double si = 0.0;
    [[nodiscard]] constexpr double us() const noexcept;
};

namespace detail {

/// std::sqrt is no constant expression; Newton's method from above falls until rounding stops it.
[[nodiscard]] consteval double squareRoot(double x) {
    double root = x > 1.0 ? x : 1.0;
    for (double next = 0.5 * (root + x / root); next < root; next = 0.5 * (root + x / root)) root = next;
    return root;
}

}  // namespace detail

/// The field regression as a kernel: plain doubles, kg DM/m3 and metres, no checks. Density is
/// bracket(packing factor) * factor(depth), the mean over a silo bracket * meanFactor(mean depth).
///
/// Source: Muck & Holmes 2000, Applied Engineering in Agriculture 16(6):613-619; 175 bunkers, mostly maize
/// and lucerne, cores at chest height, 106-434 kg DM/m3, R2 = 18.2 % for the packing factor. Structure
/// published, the four US coefficients from memory: (8.5 + 0.0155 PF) * (0.818 + 0.0136 D) lb DM/ft3, D in
/// feet. The SI ones follow from them by the exact conversions.
struct FieldEquation {
    /// US packing factor of one SI unit: kg/cm to lb/in, minutes per tonne to hours per short ton under the
    /// root.
    static constexpr double kUsPerSi =
        conversion::kMetresPerInch * 100.0 / conversion::kKilogramsPerPound *
        detail::squareRoot(conversion::kKilogramsPerShortTon / conversion::kKilogramsPerTonne / 60.0);

    static constexpr double kBracketConstant = 8.5 * conversion::kDensityPerPoundPerCubicFoot;
    static constexpr double kBracketSlope = 0.0155 * kUsPerSi * conversion::kDensityPerPoundPerCubicFoot;
    static constexpr double kSurfaceFactor = 0.818;
    static constexpr double kMeanFactorSlope =
        0.0136 / conversion::kMetresPerFoot;                                     ///< per metre of mean depth
    static constexpr double kFactorSlope = 2.0 * kMeanFactorSlope;               ///< per metre of depth
    static constexpr double kUnitDepth = (1.0 - kSurfaceFactor) / kFactorSlope;  ///< where the factor is 1

    /// First bracket: the density where the depth factor is 1, 2.04 m below the surface of an opened silo.
    [[nodiscard]] static constexpr double bracket(double packingFactor) noexcept {
        return kBracketConstant + kBracketSlope * packingFactor;
    }
    /// The packing factor of a bracket; below 0 where even no packing gives more.
    [[nodiscard]] static constexpr double packingFactorFor(double bracket) noexcept {
        return (bracket - kBracketConstant) / kBracketSlope;
    }
    /// Elasticity of density in the packing factor, 0 to 1.
    [[nodiscard]] static constexpr double elasticity(double packingFactor) noexcept {
        return kBracketSlope * packingFactor / bracket(packingFactor);
    }
    /// Local factor at a depth below the final surface.
    [[nodiscard]] static constexpr double factor(double depth_m) noexcept {
        return kSurfaceFactor + kFactorSlope * depth_m;
    }
    /// Integral of factor() from the surface down to a depth [m].
    [[nodiscard]] static constexpr double factorIntegral(double depth_m) noexcept {
        return depth_m * (kSurfaceFactor + kMeanFactorSlope * depth_m);
    }
    /// The depth of a factorIntegral() of 0 or more, without the cancellation of the usual root.
    [[nodiscard]] static double depthOfIntegral(double integral_m) noexcept {
        return 2.0 * integral_m /
               (kSurfaceFactor +
                std::sqrt(kSurfaceFactor * kSurfaceFactor + 2.0 * kFactorSlope * integral_m));
    }
    /// Mean of factor() from the surface down; over a silo with the mean depth integral(Z^2)/integral(Z).
    [[nodiscard]] static constexpr double meanFactor(double meanDepth_m) noexcept {
        return kSurfaceFactor + kMeanFactorSlope * meanDepth_m;
    }
};

constexpr double PackingFactor::us() const noexcept {
    return si * FieldEquation::kUsPerSi;
}

}  // namespace treadwell::density
