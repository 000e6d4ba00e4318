#include "core/farm/machine_classes.h"

namespace treadwell::farm {

namespace {

// Tonnes (values from memory).
constexpr std::array kTractors{7.0, 10.0, 14.0, 22.0, 17.0};
constexpr std::array kTrucks{7.0, 12.0, 17.0, 22.0};
static_assert(kTractors.size() == enumTexts(TractorClass{}).size());
static_assert(kTrucks.size() == enumTexts(TruckClass{}).size());

}  // namespace

MachineMass massOf(TractorClass tractor) noexcept {
    return MachineMass::fromTonnes(kTractors[static_cast<std::size_t>(tractor)]);
}

AsFedMass usualLoadOf(TruckClass truck) noexcept {
    return AsFedMass::fromTonnes(kTrucks[static_cast<std::size_t>(truck)]);
}

Tractor hired(TractorId id, std::string name, TractorClass seen) {
    Tractor tractor;
    tractor.id = id;
    tractor.name = std::move(name);
    tractor.mass = massOf(seen);
    tractor.massKnown = false;
    return tractor;
}

Truck hired(TruckId id, std::string name, TruckClass seen) {
    Truck truck;
    truck.id = id;
    truck.name = std::move(name);
    truck.usualLoad = usualLoadOf(seen);
    return truck;
}

}  // namespace treadwell::farm
