#include "core/plan/machine_hour.h"

#include <cmath>

namespace treadwell::plan {

MachineHour hourOf(const MachinePrice& machine, const Prices& prices) noexcept {
    const double interest = machine.interest.fraction();
    const double recovery = interest > 0.0
                                ? -interest / std::expm1(-machine.life_years * std::log1p(interest))
                                : 1.0 / machine.life_years;
    const double salvage = machine.list * machine.salvage.fraction();
    const double year = (machine.purchase - salvage) * recovery + salvage * interest +
                        machine.taxes.fraction() * (machine.purchase + salvage) / 2.0;
    return {
        .owning = CostRate::fromPerHour(year / machine.hours_per_year),
        .fuel = CostRate::fromPerHour(fuel_L_per_h(machine.power_kW, machine.load) * prices.fuel_per_litre),
        .driver = prices.driver,
        .upkeep = machine.upkeep};
}

}  // namespace treadwell::plan
