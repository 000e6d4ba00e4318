#pragma once

#include "core/entries/dose.h"
#include "core/farm/silo.h"

#include <string_view>

namespace treadwell::entries {

/// What was mixed into the crop since the last such entry, at the chopper or on the silo.
struct Additive {
    static constexpr std::string_view kKind = "additive";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    farm::SiloId silo;
    Dose dose;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        Dose::fields(visit, self.dose);
        visit("silo", self.silo);
    }
    friend bool operator==(const Additive&, const Additive&) = default;
};

[[nodiscard]] inline Result<void> validate(const Additive& entry) {
    return validate(entry.dose);
}

}  // namespace treadwell::entries
