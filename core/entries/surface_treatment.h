#pragma once

#include "core/entries/dose.h"
#include "core/entries/stretch.h"
#include "core/farm/silo.h"

#include <string_view>

namespace treadwell::entries {

/// What was spread on the packed surface before it is covered.
struct SurfaceTreatment {
    static constexpr std::string_view kKind = "surface_treatment";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    farm::SiloId silo;
    Dose dose;
    Stretch stretch;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        Dose::fields(visit, self.dose);
        visit("silo", self.silo);
        Stretch::fields(visit, self.stretch);
    }
    friend bool operator==(const SurfaceTreatment&, const SurfaceTreatment&) = default;
};

[[nodiscard]] inline Result<void> validate(const SurfaceTreatment& entry) {
    return firstFailure(validate(entry.dose), validate(entry.stretch));
}

}  // namespace treadwell::entries
