#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/farm/silo.h"
#include "core/quantity/relations.h"

#include <array>
#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

namespace treadwell::density {

/// What a layer's density depends on beside its depth.
struct LaidLayer {
    DryMass dry;
    DryDensity bracket;  ///< the density where the depth factor is 1, calibration included
    DryDensity limit;    ///< no packing gets beyond
};

/// Under what a layer lies: the silo filled to its planned depth, as it will be opened (the headline), or
/// what lies on it today.
enum class Filled : std::uint8_t { whenFull, asItLies };
constexpr std::array<std::string_view, 2> enumTexts(Filled /*filled*/) noexcept {
    return {"whenFull", "asItLies"};
}

/// Where a layer lies and how dense. In lifts the edges are heights above the floor. On a ramp they are
/// fronts: x + run * z, x from the back wall and z above the floor, is the same all along an edge.
struct StackedLayer {
    Length lower;
    Length upper;
    Length thickness;  ///< packed, square to the layer
    Length depth;      ///< mean over its volume, below the surface
    Volume volume;
    DryDensity density;    ///< mean over its volume
    bool limited = false;  ///< in part at the limit
};

/// Layers upon each other, with what the search for their edges came to.
struct Stack {
    std::vector<StackedLayer> layers;  ///< bottom up
    Length top;                        ///< lifts: height; ramp: height of the level top
    Length foot;                       ///< ramp: from the back wall to the foot of the forward ramp
    Length meanDepth;                  ///< integral(Z^2) / integral(Z) of the whole section, rule B6
    DryDensity mean;                   ///< of what was placed: all dry matter / all volume; 0 without any
    bool converged = true;
    int steps = 0;          ///< the most that one edge took; 0 where there is a closed form
    double misfit = 0.0;    ///< the largest error of a layer's content, as a part of it
    bool overfull = false;  ///< more was placed than the planned silo holds; it stands higher or longer
};

/// Edges, depths and densities of the layers of a silo, bottom up; rules B6 and B7.
///
/// Lifts: from the floor at the planned depth up, or from today's surface down, each edge in closed form.
/// Ramp: the fronts X_k with the content under X_k equal to the sum of dry mass / bracket, by safeguarded
/// Newton steps; today's foot is where all that was placed just fits. What is more than the silo holds raises
/// lifts and moves a ramp's foot out. Local density is min(bracket * factor(depth), limit); where no limit
/// binds, the mean of an evenly packed full silo is the mean equation's. Errors: valueNotFinite and
/// valueOutOfRange for `layers[i].dry` (0 to 1e9 kg), `.bracket` (1 to 1e4 kg DM/m3) and `.limit` (same).
/// Sources: depth factor after Muck & Holmes 2000 (see FieldEquation); the rest derived.
[[nodiscard]] Result<Stack> stackOf(const farm::Silo& silo, std::span<const LaidLayer> layers, Filled filled);

}  // namespace treadwell::density
