#pragma once

#include "core/base/error.h"
#include "core/base/uuid.h"
#include "core/quantity/geometry.h"
#include "core/quantity/mass.h"

#include <array>
#include <string>
#include <string_view>

namespace treadwell::farm {

using SiloId = Id<struct SiloTag>;

/// How a silo is filled: level layers over the whole floor, or layers on the slope of a ramp that moves
/// forward.
enum class FillingWay : std::uint8_t { lifts, wedge };

constexpr std::array<std::string_view, 2> enumTexts(FillingWay /*way*/) noexcept {
    return {"lifts", "wedge"};
}

/// A bunker silo. The length is taken along the floor from the back wall to the foot of the ramp.
struct Silo {
    SiloId id;
    std::string name;
    Length length;
    Length width;
    Length wallHeight;
    Slope rampSlope = Slope::fromRunPerRise(3);
    int rampEnds = 1;     ///< open ends that carry a ramp: 1 with a back wall, 2 without
    Length crown;         ///< rise of the middle above the wall when full
    Length plannedDepth;  ///< mean depth when full, on which the headline estimate stands
    FillingWay filling = FillingWay::wedge;

    /// Lists the fields once, for the journal, farm files and exports alike.
    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("crown_m", self.crown);
        visit("filling", self.filling);
        visit("id", self.id);
        visit("length_m", self.length);
        visit("name", self.name);
        visit("planned_depth_m", self.plannedDepth);
        visit("ramp_ends", self.rampEnds);
        visit("ramp_run_per_rise", self.rampSlope);
        visit("wall_height_m", self.wallHeight);
        visit("width_m", self.width);
    }
    friend bool operator==(const Silo&, const Silo&) = default;
};

/// Width 3-100 m, length 5-500 m, wall 0.5-8 m, ramp 1:2 to 1:10, crown up to 2 m, ramp ends 1 or 2; the ramp
/// must fit into the length and the crown into the width (1:3 to the sides).
[[nodiscard]] Result<void> validate(const Silo& silo);

}  // namespace treadwell::farm
