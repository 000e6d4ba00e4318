#include "app/desktop/plan/scenario.h"

#include "core/plan/from_farm.h"

#include <algorithm>

namespace treadwell::plan_page {

namespace {

template <class Things>
void leaveOut(Things& things, const std::set<std::string>& idle) {
    std::erase_if(things, [&](const auto& thing) { return idle.contains(thing.name); });
}

}  // namespace

plan::Inputs Scenario::chosen() const {
    plan::Inputs inputs = all;
    leaveOut(inputs.tractors, idleTractors);
    leaveOut(inputs.grounds, idleFields);
    leaveOut(inputs.silos, idleSilos);
    return inputs;
}

Scenario variationOf(const Scenario& scenario, Variation variation, std::string name) {
    Scenario varied = scenario;
    varied.all.name = std::move(name);
    int& trucks = varied.all.haulage.trucks;
    switch (variation) {
        case Variation::copy:
            break;
        case Variation::oneTruckFewer:
            trucks = std::max(1, trucks - 1);
            break;
        case Variation::twoTrucksMore:
            trucks = std::min(plan::kMostTrucks, trucks + 2);
            break;
        case Variation::withoutTheLightest: {
            const plan::Inputs chosen = scenario.chosen();
            if (chosen.tractors.size() < 2) break;
            const auto lightest =
                std::min_element(chosen.tractors.begin(), chosen.tractors.end(),
                                 [](const auto& a, const auto& b) { return a.mass < b.mass; });
            varied.idleTractors.insert(lightest->name);
            break;
        }
    }
    return varied;
}

Scenario firstOf(const season::Season& season, LocalDay today) {
    if (const entries::PlanAdopted* adopted = plan::adoptedIn(season)) {
        if (auto inputs = plan::inputsFromJson(adopted->inputs)) return {*std::move(inputs), {}, {}, {}};
    }
    return {plan::inputsOf(season, today), {}, {}, {}};
}

std::string freeName(const std::vector<Scenario>& scenarios, const std::string& name) {
    std::string free = name;
    const auto taken = [&](const Scenario& scenario) { return scenario.all.name == free; };
    for (int number = 2; std::ranges::any_of(scenarios, taken); ++number)
        free = name + ' ' + std::to_string(number);
    return free;
}

}  // namespace treadwell::plan_page
