#pragma once

#include "core/density/field_equation.h"
#include "core/quantity/relations.h"

#include <cmath>
#include <cstddef>
#include <span>
#include <vector>

namespace treadwell::density {

/// One machine's packing: its mass [kg] and its minutes [min], or minutes per tonne, or share of time, as the
/// caller reckons. Spreading is not packing.
struct MachineTime {
    double mass_kg;
    double minutes;
};

/// What the machines reach together and how many of them, heaviest first, count towards it.
struct FleetStrength {
    double value = 0.0;  ///< sum(minutes * mass) / sqrt(sum minutes) [kg * sqrt(unit of minutes)]
    std::size_t counted = 0;
};

/// The strongest leading part of a fleet sorted heaviest first. The regression's mean mass makes a light
/// machine lower the value, though one more machine does not loosen silage; along the heaviest-first line the
/// value has no maximum inside a machine's stretch, so the best sub-fleet is a prefix. Every prefix is tried:
/// it may fall and rise again (20, 8.1 and 8.1 t). Kernel: no allocation, no checks; minutes 0 or more,
/// masses above 0.
[[nodiscard]] inline FleetStrength strongestPrefix(std::span<const MachineTime> heaviestFirst) noexcept {
    FleetStrength best;
    double bestSquare = 0.0, weighted = 0.0, minutes = 0.0;
    for (std::size_t i = 0; i < heaviestFirst.size(); ++i) {
        if (heaviestFirst[i].minutes <= 0.0) continue;
        weighted += heaviestFirst[i].minutes * heaviestFirst[i].mass_kg;
        minutes += heaviestFirst[i].minutes;
        const double square = weighted * weighted / minutes;
        if (square > bestSquare) {
            bestSquare = square;
            best.counted = i + 1;
        }
    }
    best.value = std::sqrt(bestSquare);
    return best;
}

/// Packing factor [SI, see PackingFactor] of a fleet whose minutes were minutes per tonne as fed.
[[nodiscard]] inline double packingFactorOf(double strength, double dryMatter, double layer_cm) noexcept {
    return strength * std::sqrt(dryMatter) / layer_cm;
}

/// One machine's packing on a layer, per tonne as fed.
struct MachineWork {
    MachineMass mass;
    PackingIntensity packing;
};

/// The packing factor with what went into it. Two times, since they differ where a light machine adds
/// nothing.
struct Packing {
    PackingFactor factor;
    PackingIntensity countedTime;         ///< of the machines that count
    PackingIntensity allTime;             ///< of all machines
    std::vector<std::size_t> counted;     ///< indices of the machines that count, heaviest first
    std::vector<std::size_t> addNothing;  ///< indices of machines that pack and do not count
};

/// Rule B1: P = max over prefixes, heaviest first, of sum(tau * w) / sqrt(sum tau) * sqrt(DM) / L with tau in
/// minutes per tonne as fed, w in kg, L the thickness as spread in cm. 0 without packing time.
/// Valid: masses above 0, times 0 or more, layer above 0, dry matter in (0, 1]; not checked here.
[[nodiscard]] Packing packingOf(std::span<const MachineWork> machines, Length layer, DryMatter dryMatter);

}  // namespace treadwell::density
