#pragma once

#include "core/base/codes.h"
#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/entries/entry.h"
#include "core/farm/machines.h"

#include <array>
#include <optional>
#include <string_view>

namespace treadwell::entries {

/// What somebody does at the harvest.
enum class Duty : std::uint8_t { supervising, packing, hauling, chopping, covering, other };

constexpr std::array<std::string_view, 6> enumTexts(Duty /*duty*/) noexcept {
    return {"supervising", "packing", "hauling", "chopping", "covering", "other"};
}

/// Somebody's shift begins or ends. Who begins anew while on shift changes the duty.
struct Shift {
    static constexpr std::string_view kKind = "shift";
    static constexpr int kVersion = 1;

    PersonId person;  ///< the name stands in the journal's table of people alone, where it can be erased
    bool begins = true;
    Duty duty = Duty::packing;
    bool holdsTablet = false;  ///< enters what happens
    std::optional<farm::TractorId> tractor;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("begins", self.begins);
        visit("duty", self.duty);
        visit("holds_tablet", self.holdsTablet);
        visit("person", self.person);
        visit("tractor", self.tractor);
    }
    friend bool operator==(const Shift&, const Shift&) = default;
};

/// It is somebody's.
[[nodiscard]] inline Result<void> validate(const Shift& entry) {
    if (entry.person.value.isNil()) return fail(code::valueMissing, "person");
    return {};
}

}  // namespace treadwell::entries
