#pragma once

#include "core/base/instant.h"
#include "core/quantity/relations.h"

namespace treadwell::plan {

/// What a machine's hour is made of. Money is in the farm's own currency throughout.
struct MachinePrice {
    double list = 150'000;      ///< new, money
    double purchase = 130'000;  ///< paid, money
    double life_years = 15;
    double hours_per_year = 400;
    Share interest = Share::fromPercent(8);      ///< a year
    Share salvage = Share::fromPercent(23);      ///< of the list price, at the end of its life
    Share taxes = Share::fromPercent(1);         ///< and insurance, a year, of the mean value
    double power_kW = 150;                       ///< of the engine
    Share load = Share::fromPercent(50);         ///< of the power, while packing
    CostRate upkeep = CostRate::fromPerHour(5);  ///< repairs and tyres

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("hours_per_year", self.hours_per_year);
        visit("interest", self.interest);
        visit("life_years", self.life_years);
        visit("list", self.list);
        visit("load", self.load);
        visit("power_kw", self.power_kW);
        visit("purchase", self.purchase);
        visit("salvage", self.salvage);
        visit("taxes_and_insurance", self.taxes);
        visit("upkeep_per_s", self.upkeep);
    }
    friend bool operator==(const MachinePrice&, const MachinePrice&) = default;
};

struct Prices {
    double fuel_per_litre = 1.3;
    CostRate driver = CostRate::fromPerHour(28);
    double crop_per_tonne_dm = 150;          ///< what a tonne of dry matter in the silo is worth
    Loss lossLevel = Loss::fromPercent(12);  ///< the farm's own at `lossLevelAt`
    DryDensity lossLevelAt = DryDensity::fromKilogramsPerCubicMetre(225);

    /// What a tonne as fed is worth: by its dry matter alone.
    [[nodiscard]] double cropPerTonne(DryMatter dryMatter) const noexcept {
        return crop_per_tonne_dm * dryMatter.fraction();
    }

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("crop_per_t_dm", self.crop_per_tonne_dm);
        visit("driver_per_s", self.driver);
        visit("fuel_per_litre", self.fuel_per_litre);
        visit("loss_level", self.lossLevel);
        visit("loss_level_at_kg_dm_m3", self.lossLevelAt);
    }
    friend bool operator==(const Prices&, const Prices&) = default;
};

}  // namespace treadwell::plan
