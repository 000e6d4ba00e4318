#pragma once

#include "core/base/error.h"
#include "core/base/uuid.h"
#include "core/quantity/geometry.h"
#include "core/quantity/mass.h"
#include "core/quantity/work.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace treadwell::farm {

using TractorId = Id<struct TractorTag>;
using TruckId = Id<struct TruckTag>;

/// What a tractor does on the pad.
enum class Activity : std::uint8_t { packing, spreading, away };

constexpr std::array<std::string_view, 3> enumTexts(Activity /*activity*/) noexcept {
    return {"packing", "spreading", "away"};
}

struct Tractor {
    TractorId id;
    std::string name;
    MachineMass mass;
    bool massKnown = true;                        ///< false while it is the usual mass of its class
    Length trackWidth = Length::fromMetres(1.4);  ///< ground that one pass of all its tyres rolls
    Speed speed = Speed::fromKilometresPerHour(4);
    std::optional<CostRate> hourlyCost;
    Activity usualRole = Activity::packing;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("hourly_cost_per_s", self.hourlyCost);
        visit("id", self.id);
        visit("mass_kg", self.mass);
        visit("mass_known", self.massKnown);
        visit("name", self.name);
        visit("speed_m_per_s", self.speed);
        visit("track_width_m", self.trackWidth);
        visit("usual_role", self.usualRole);
    }
    friend bool operator==(const Tractor&, const Tractor&) = default;
};

struct Truck {
    TruckId id;
    std::string name;
    AsFedMass usualLoad;
    std::optional<Volume> boxVolume;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("box_volume_m3", self.boxVolume);
        visit("id", self.id);
        visit("name", self.name);
        visit("usual_load_kg", self.usualLoad);
    }
    friend bool operator==(const Truck&, const Truck&) = default;
};

/// Mass 1-60 t, rolled width 0.3-6 m, speed 0.5-20 km/h, cost 0-2000 an hour.
[[nodiscard]] Result<void> validate(const Tractor& tractor);

/// Usual load 0.5-60 t, box 1-150 m3.
[[nodiscard]] Result<void> validate(const Truck& truck);

}  // namespace treadwell::farm
