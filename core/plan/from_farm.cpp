#include "core/plan/from_farm.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace treadwell::plan {

namespace {

/// The first kMostListed things, each with a name of its own.
template <class Planned, class Things, class Make>
std::vector<Planned> listed(const Things& things, const Make& make) {
    std::vector<Planned> all;
    std::set<std::string> names;
    for (const auto& [id, thing] : things) {
        if (all.size() < kMostListed && names.insert(thing.name).second) all.push_back(make(thing));
    }
    return all;
}

void takeTrucks(const season::FarmBook& farm, Haulage& haulage) {
    if (farm.trucks.empty()) return;
    AsFedMass sum;
    for (const auto& [id, truck] : farm.trucks) sum += truck.usualLoad;
    const auto count = std::ssize(farm.trucks);
    haulage.load = sum / static_cast<double>(count);
    haulage.trucks = static_cast<int>(std::min<std::ptrdiff_t>(count, kMostTrucks));
}

/// Ten tonnes are as fine as anybody knows it beforehand.
AsFedMass cropOfEach(const Inputs& inputs, std::size_t fields) {
    AsFedMass room;
    for (const PlannedSilo& silo : inputs.silos)
        room += inputs.minimumDensity * farm::bodyOf(silo.shape).volume / inputs.dryMatter;
    return AsFedMass::fromTonnes(
        std::max(10.0, std::floor(room.tonnes() / static_cast<double>(fields) / 10.0) * 10.0));
}

}  // namespace

Inputs inputsOf(const season::FarmBook& farm, LocalDay begins) {
    Inputs inputs = exampleInputs();
    inputs.begins = begins;
    inputs.layer = farm.rules.maximumLayer;
    inputs.minimumDensity = farm.rules.minimumDensity;
    inputs.wantedChance = farm.rules.wantedChance;
    inputs.dryMatter = (farm.rules.dryMatterLow + farm.rules.dryMatterHigh) * 0.5;
    if (!farm.silos.empty()) {
        inputs.silos = listed<PlannedSilo>(farm.silos, [](const farm::Silo& silo) {
            return PlannedSilo{silo.name, farm::shapeOf(silo)};
        });
    }
    if (!farm.tractors.empty()) {
        inputs.tractors = listed<PlannedTractor>(farm.tractors, [](const farm::Tractor& tractor) {
            const bool packs = tractor.usualRole == farm::Activity::packing;
            return PlannedTractor{tractor.name, tractor.mass, Share::fromPercent(packs ? 100 : 50), {}};
        });
    }
    takeTrucks(farm, inputs.haulage);
    if (!farm.fields.empty()) {
        const AsFedMass each = cropOfEach(inputs, std::min<std::size_t>(farm.fields.size(), kMostListed));
        const Length road = Length::fromMetres(2000);
        inputs.grounds = listed<PlannedField>(farm.fields, [&](const farm::Field& field) {
            return PlannedField{field.name, each, road};
        });
        inputs.crop = farm.fields.begin()->second.crop;
    }
    return inputs;
}

Inputs inputsOf(const season::Season& season, LocalDay today) {
    const auto& days = season.days();
    return inputsOf(season.farm(), days.empty() ? today : days.front()->date);
}

const entries::PlanAdopted* adoptedIn(const season::Season& season) {
    const auto& days = season.days();
    return days.empty() || !days.back()->after.plan ? nullptr : &days.back()->after.plan->what;
}

}  // namespace treadwell::plan
