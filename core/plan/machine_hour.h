#pragma once

#include "core/plan/prices.h"

namespace treadwell::plan {

/// An hour of a machine in the farm's own currency.
struct MachineHour {
    CostRate owning;  ///< wear, interest, taxes and insurance
    CostRate fuel;
    CostRate driver;
    CostRate upkeep;

    [[nodiscard]] CostRate total() const { return owning + fuel + driver + upkeep; }
};

/// Owning: (purchase - salvage) * recovery + salvage * interest + taxes * (purchase + salvage) / 2, over the
/// hours of a year; recovery = i / (1 - (1 + i)^-years), 1/years without interest; salvage in parts of the
/// list price (Edwards, Iowa State A3-29, published). Fuel [L/h] = (0.22 X + 0.096) kW at load X (form
/// published, coefficients from memory).
[[nodiscard]] MachineHour hourOf(const MachinePrice& machine, const Prices& prices) noexcept;

/// Litres an hour of an engine at a load of 0-1.
[[nodiscard]] constexpr double fuel_L_per_h(double power_kW, Share load) noexcept {
    return (0.22 * load.fraction() + 0.096) * power_kW;
}

}  // namespace treadwell::plan
