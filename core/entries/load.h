#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/base/hash.h"
#include "core/farm/field.h"
#include "core/farm/machines.h"
#include "core/farm/silo.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace treadwell::entries {

/// How the mass of a load came to be known.
enum class MassSource : std::uint8_t { weighed, usual, box };

constexpr std::array<std::string_view, 3> enumTexts(MassSource /*source*/) noexcept {
    return {"weighed", "usual", "box"};
}

/// A load tipped into a silo.
struct Load {
    static constexpr std::string_view kKind = "load";
    static constexpr int kVersion = 1;

    farm::SiloId silo;
    std::optional<farm::TruckId> truck;
    std::optional<farm::FieldId> field;
    AsFedMass mass;
    MassSource source = MassSource::usual;
    std::optional<std::string> ticket;  ///< number on the scale's own ticket
    std::optional<Hash> evidence;       ///< of the raw row that it was read from
    std::optional<Seconds> timeSpread;  ///< known only to lie this far about `happened`

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("evidence", self.evidence);
        visit("field", self.field);
        visit("mass_kg", self.mass);
        visit("silo", self.silo);
        visit("source", self.source);
        visit("ticket", self.ticket);
        visit("time_spread_s", self.timeSpread);
        visit("truck", self.truck);
    }
    friend bool operator==(const Load&, const Load&) = default;
};

/// Mass 0.1-80 t.
[[nodiscard]] Result<void> validate(const Load& entry);

}  // namespace treadwell::entries
