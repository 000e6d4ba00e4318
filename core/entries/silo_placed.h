#pragma once

#include "core/farm/silo.h"
#include "core/farm/silo_place.h"

#include <string_view>

namespace treadwell::entries {

/// Where a silo lies on Earth, so that the tracks of its tractors can be laid on it.
struct SiloPlaced {
    static constexpr std::string_view kKind = "silo_placed";
    static constexpr int kVersion = 1;

    farm::SiloId silo;
    farm::SiloPlace place;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("place", self.place);
        visit("silo", self.silo);
    }
    friend bool operator==(const SiloPlaced&, const SiloPlaced&) = default;
};

[[nodiscard]] inline Result<void> validate(const SiloPlaced& entry) {
    return farm::validate(entry.place);
}

}  // namespace treadwell::entries
