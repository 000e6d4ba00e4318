#include "core/density/packing_factor.h"

#include <algorithm>
#include <numeric>

namespace treadwell::density {

Packing packingOf(std::span<const MachineWork> machines, Length layer, DryMatter dryMatter) {
    std::vector<std::size_t> order(machines.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return machines[a].mass > machines[b].mass; });
    std::vector<MachineTime> fleet;
    fleet.reserve(machines.size());
    for (const std::size_t i : order) {
        fleet.push_back({machines[i].mass.kilograms(), machines[i].packing.minutesPerTonne()});
    }
    const FleetStrength best = strongestPrefix(fleet);

    Packing result;
    result.factor.si = packingFactorOf(best.value, dryMatter.fraction(), layer.centimetres());
    for (std::size_t place = 0; place < order.size(); ++place) {
        const PackingIntensity time = machines[order[place]].packing;
        if (time <= PackingIntensity{}) continue;
        result.allTime += time;
        if (place < best.counted) {
            result.countedTime += time;
            result.counted.push_back(order[place]);
        } else {
            result.addNothing.push_back(order[place]);
        }
    }
    return result;
}

}  // namespace treadwell::density
