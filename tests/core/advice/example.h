#pragma once

#include "core/advice/advise.h"

namespace treadwell::advice {

inline Tractor tractor(std::string name, double tonnes, farm::Activity activity = farm::Activity::packing) {
    return {.name = std::move(name), .mass = MachineMass::fromTonnes(tonnes), .activity = activity};
}

inline Tractor tractorAt(std::string name, double tonnes, double costPerHour, farm::Activity activity) {
    Tractor made = tractor(std::move(name), tonnes, activity);
    made.hourlyCost = CostRate::fromPerHour(costPerHour);
    return made;
}

/// 35 % dry matter, 15 cm, 3 m; a target of 225 kg DM/m3 that porosity does not raise.
inline AdviceSituation exampleAt(double tonnesPerHour, std::vector<Tractor> tractors) {
    return {.delivery = AsFedRate::fromTonnesPerHour(tonnesPerHour),
            .dryMatter = DryMatter::fromPercent(35),
            .layer = Length::fromCentimetres(15),
            .meanDepth = Length::fromMetres(3),
            .tractors = std::move(tractors),
            .target = {.minimum = DryDensity::fromSi(225), .porosity = Porosity::fromFraction(0.6)}};
}

}  // namespace treadwell::advice
