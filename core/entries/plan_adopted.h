#pragma once

#include "core/base/codes.h"
#include "core/base/error.h"
#include "core/base/instant.h"
#include "core/entries/codes.h"
#include "core/quantity/fraction.h"
#include "core/quantity/geometry.h"
#include "core/quantity/mass.h"
#include "core/quantity/range.h"
#include "core/quantity/work.h"

#include <string>
#include <string_view>
#include <vector>

namespace treadwell::entries {

/// A plan in a few figures, to stand beside others. Money in the farm's own currency.
struct PlanFigures {
    AsFedRate delivery;  ///< all fields
    double days = 0.0;   ///< of harvest
    AsFedMass leftOver;  ///< at the median density
    Chance fits;         ///< that all of it finds room
    DryDensity low80;    ///< of the density when full
    DryDensity density;
    DryDensity high80;
    Chance chance;  ///< of the target
    Loss loss;      ///< expected
    CostRate hour;
    double margin_per_t_dm = 0.0;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("chance_of_room", self.fits);
        visit("chance_of_target", self.chance);
        visit("delivery_kg_per_s", self.delivery);
        visit("density_high80_kg_dm_m3", self.high80);
        visit("density_kg_dm_m3", self.density);
        visit("density_low80_kg_dm_m3", self.low80);
        visit("expected_loss", self.loss);
        visit("harvest_days", self.days);
        visit("hourly_cost_per_s", self.hour);
        visit("left_over_kg", self.leftOver);
        visit("margin_per_t_dm", self.margin_per_t_dm);
    }
    friend bool operator==(const PlanFigures&, const PlanFigures&) = default;
};

/// What is planned for one day.
struct PlannedDay {
    LocalDay day;
    AsFedMass mass;
    AsFedRate delivery;  ///< while crop comes in
    Seconds packing{};   ///< of all tractors together
    DryDensity low80;    ///< of the density when full
    DryDensity density;
    DryDensity high80;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("day", self.day);
        visit("delivery_kg_per_s", self.delivery);
        visit("density_high80_kg_dm_m3", self.high80);
        visit("density_kg_dm_m3", self.density);
        visit("density_low80_kg_dm_m3", self.low80);
        visit("mass_kg", self.mass);
        visit("packing_s", self.packing);
    }
    friend bool operator==(const PlannedDay&, const PlannedDay&) = default;
};

/// The plan that the season goes by from now on.
struct PlanAdopted {
    static constexpr std::string_view kKind = "plan_adopted";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    std::string name;
    std::string inputs;  ///< all that it stands on, a JSON object, so that it can be opened and changed
    Length layer;        ///< as spread
    PlanFigures figures;
    std::vector<PlannedDay> days;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("days", self.days);
        visit("figures", self.figures);
        visit("inputs", self.inputs);
        visit("layer_m", self.layer);
        visit("name", self.name);
    }
    friend bool operator==(const PlanAdopted&, const PlanAdopted&) = default;
};

/// It has a name and inputs; its days lie in order and bring something.
[[nodiscard]] inline Result<void> validate(const PlanAdopted& entry) {
    if (entry.name.empty()) return fail(code::textEmpty, "name");
    if (entry.inputs.empty()) return fail(code::textEmpty, "inputs");
    if (entry.days.empty()) return fail(code::valueMissing, "days");
    for (std::size_t i = 0; i < entry.days.size(); ++i) {
        const PlannedDay& day = entry.days[i];
        const std::string place = "days[" + std::to_string(i) + "].";
        if (i > 0 && !(std::chrono::local_days{entry.days[i - 1].day} < std::chrono::local_days{day.day}))
            return fail(code::planDaysUnordered, place + "day", toIso8601(day.day));
        if (auto held = firstFailure(holdsWithin(day.mass, AsFedMass::fromKilograms(1),
                                                 AsFedMass::fromTonnes(100'000), place + "mass"),
                                     holdsWithin(day.delivery, AsFedRate::fromTonnesPerHour(0.001),
                                                 AsFedRate::fromTonnesPerHour(5000), place + "delivery"));
            !held) {
            return held;
        }
    }
    return holdsWithin(entry.layer, Length::fromCentimetres(2), Length::fromCentimetres(100), "layer");
}

}  // namespace treadwell::entries
