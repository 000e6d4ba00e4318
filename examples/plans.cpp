// Plans of the example harvest, made before it: the one that is adopted and two to stand beside it.
#include "core/plan/inputs.h"
#include "examples/drawing.h"

namespace example {

using namespace treadwell;

namespace {

Length kilometres(double km) {
    return Length::fromMetres(km * 1000);
}

plan::PlannedTractor tractor(const char* name, double tonnes, int sharePercent, double power_kW) {
    plan::PlannedTractor planned{name, MachineMass::fromTonnes(tonnes), Share::fromPercent(sharePercent), {}};
    planned.price.power_kW = power_kW;
    return planned;
}

plan::Inputs adopted() {
    plan::Inputs plan = plan::exampleInputs();
    plan.name = "Three tractors";
    plan.begins = std::chrono::year{2026} / std::chrono::September / 15;
    plan.workday = std::chrono::minutes{330};
    plan.feeding.daily = DryMass::fromKilograms(4'200);
    plan.silos.resize(1);
    plan.silos[0].shape.height = Length::fromMetres(4);
    plan.grounds = {{"Lurrenbreite", AsFedMass::fromTonnes(560), kilometres(1.4)},
                    {"Quornstieg", AsFedMass::fromTonnes(640), kilometres(2.6)},
                    {"Vellerbruch", AsFedMass::fromTonnes(580), kilometres(4.2)}};
    plan.harvester.rate = AsFedRate::fromTonnesPerHour(170);
    plan.haulage.trucks = 6;
    plan.haulage.load = AsFedMass::fromTonnes(13.4);
    plan.tractors = {tractor("Auerochse", 18, 100, 190), tractor("Bison", 14, 100, 150),
                     tractor("Widder", 10, 50, 110)};
    return plan;
}

}  // namespace

std::string adoptedPlan() {
    return plan::toJson(adopted()) + '\n';
}

std::string plainPlan() {
    plan::Inputs plan = adopted();
    plan.name = "As last year";
    plan.tractors.erase(plan.tractors.begin());
    return plan::toJson(plan) + '\n';
}

std::string swiftPlan() {
    plan::Inputs plan = adopted();
    plan.name = "Two more trucks";
    plan.haulage.trucks += 2;
    return plan::toJson(plan) + '\n';
}

}  // namespace example
