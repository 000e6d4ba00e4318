#include "core/density/stack.h"

#include "core/base/number_text.h"
#include "core/density/layer_law.h"
#include "core/density/wedge_stack.h"
#include "core/quantity/range.h"

#include <algorithm>
#include <string>

namespace treadwell::density {

namespace {

Result<void> check(std::span<const LaidLayer> layers) {
    const auto lowest = DryDensity::fromKilogramsPerCubicMetre(1);
    const auto highest = DryDensity::fromKilogramsPerCubicMetre(1e4);
    for (std::size_t i = 0; i < layers.size(); ++i) {
        const LaidLayer& layer = layers[i];
        if (layer.dry >= DryMass{} && layer.dry <= DryMass::fromKilograms(1e9) && layer.bracket >= lowest &&
            layer.bracket <= highest && layer.limit >= lowest && layer.limit <= highest) {
            continue;
        }
        const std::string place = "layers[" + shortestText(static_cast<double>(i)) + ']';
        return firstFailure(holdsWithin(layer.dry, DryMass{}, DryMass::fromKilograms(1e9), place + ".dry"),
                            holdsWithin(layer.bracket, lowest, highest, place + ".bracket"),
                            holdsWithin(layer.limit, lowest, highest, place + ".limit"));
    }
    return {};
}

LayerLaw lawOf(const LaidLayer& layer) {
    return {layer.bracket.si(), layer.limit.si()};
}

/// Depths below the surface of the lower edges; the surface itself stands at the end.
using Depths = std::vector<double>;

/// From the surface at depth 0 down.
Depths fromTheTop(std::span<const LaidLayer> layers, double floor_m2) {
    Depths depths(layers.size() + 1, 0.0);
    for (std::size_t k = layers.size(); k-- > 0;) {
        const LayerLaw law = lawOf(layers[k]);
        const double content = layers[k].dry.si() / floor_m2 / law.bracket();
        depths[k] = std::max(depths[k + 1], law.depthOf(law.integral(depths[k + 1]) + content));
    }
    return depths;
}

/// From the floor up; empty if they do not fit.
Depths fromTheFloor(std::span<const LaidLayer> layers, double floor_m2, double deepest_m) {
    Depths depths(layers.size() + 1, deepest_m);
    for (std::size_t k = 0; k < layers.size(); ++k) {
        const LayerLaw law = lawOf(layers[k]);
        const double left = law.integral(depths[k]) - layers[k].dry.si() / floor_m2 / law.bracket();
        if (left < 0.0) return {};
        depths[k + 1] = std::min(depths[k], law.depthOf(left));
    }
    return depths;
}

Stack lifts(const farm::Silo& silo, std::span<const LaidLayer> layers, Filled filled) {
    const Area floor = silo.width * silo.length;
    Depths depths;
    if (filled == Filled::whenFull) {
        depths = fromTheFloor(layers, floor.si(), silo.plannedDepth.metres());
    }
    Stack stack;
    if (depths.empty()) {
        depths = fromTheTop(layers, floor.si());
        stack.overfull = depths.front() > silo.plannedDepth.metres();
    }
    const double deepest = depths.front();
    const double top = filled == Filled::whenFull ? std::max(deepest, silo.plannedDepth.metres()) : deepest;
    stack.top = stack.meanDepth = Length::fromMetres(top);
    stack.layers.reserve(layers.size());
    for (std::size_t k = 0; k < layers.size(); ++k) {
        const double below = depths[k], above = depths[k + 1];
        const LayerLaw law = lawOf(layers[k]);
        StackedLayer layer{.lower = Length::fromMetres(deepest - below),
                           .upper = Length::fromMetres(deepest - above),
                           .thickness = Length::fromMetres(below - above),
                           .depth = Length::fromMetres(0.5 * (below + above)),
                           .volume = floor * Length::fromMetres(below - above),
                           .density = DryDensity::fromSi(law.density(below)),
                           .limited = below > law.cappedFrom_m()};
        if (layer.volume > Volume{}) layer.density = layers[k].dry / layer.volume;
        stack.layers.push_back(layer);
    }
    return stack;
}

}  // namespace

Result<Stack> stackOf(const farm::Silo& silo, std::span<const LaidLayer> layers, Filled filled) {
    if (const auto checked = check(layers); !checked) return tl::unexpected{checked.error()};
    Stack stack =
        silo.filling == farm::FillingWay::lifts ? lifts(silo, layers, filled) : wedge(silo, layers, filled);
    DryMass dry;
    Volume volume;
    for (std::size_t k = 0; k < layers.size(); ++k) {
        dry += layers[k].dry;
        volume += stack.layers[k].volume;
    }
    if (volume > Volume{}) stack.mean = dry / volume;
    return stack;
}

}  // namespace treadwell::density
