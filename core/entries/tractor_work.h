#pragma once

#include "core/base/error.h"
#include "core/farm/machines.h"
#include "core/farm/silo.h"
#include "core/quantity/fraction.h"

#include <optional>
#include <string>
#include <string_view>

namespace treadwell::entries {

/// What a tractor does from this moment on.
struct TractorWork {
    static constexpr std::string_view kKind = "tractor_work";
    static constexpr int kVersion = 1;

    farm::TractorId tractor;
    farm::Activity activity = farm::Activity::packing;
    std::optional<farm::SiloId> silo;               ///< where; none when away
    Share packingShare = Share::fromFraction(1.0);  ///< of its time, for one that packs and spreads in turn

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("activity", self.activity);
        visit("packing_share", self.packingShare);
        visit("silo", self.silo);
        visit("tractor", self.tractor);
    }
    friend bool operator==(const TractorWork&, const TractorWork&) = default;
};

/// Share 0-1; a tractor that is not away is at a silo.
[[nodiscard]] Result<void> validate(const TractorWork& entry);

}  // namespace treadwell::entries
