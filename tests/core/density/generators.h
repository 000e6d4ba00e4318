#pragma once

#include "core/density/situation.h"

#include <rapidcheck.h>

namespace treadwell::density {

/// A number between the two, both included.
inline rc::Gen<double> generated(double lowest, double highest) {
    constexpr int kSteps = 1'000'000;
    return rc::gen::map(rc::gen::inRange(0, kSteps + 1),
                        [=](int step) { return lowest + (highest - lowest) * step / kSteps; });
}

inline Machine generatedMachine() {
    return {.mass = MachineMass::fromTonnes(*generated(1, 40)),
            .share = Share::fromFraction(*generated(0, 1))};
}

/// Any situation that check() lets pass and a farm could meet.
inline Situation generatedSituation() {
    Situation situation{.work = AsFedRate::fromTonnesPerHour(*generated(5, 500)),
                        .dryMatter = DryMatter::fromFraction(*generated(0.10, 0.90)),
                        .layer = Length::fromCentimetres(*generated(2, 60)),
                        .meanDepth = Length::fromMetres(*generated(0, 12))};
    const auto count = *rc::gen::inRange<std::size_t>(0, 7);
    for (std::size_t i = 0; i < count; ++i) situation.machines.push_back(generatedMachine());
    situation.crop = *rc::gen::element(crop::Crop::maize, crop::Crop::grass, crop::Crop::lucerne);
    return situation;
}

}  // namespace treadwell::density
