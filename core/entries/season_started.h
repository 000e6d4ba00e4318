#pragma once

#include "core/base/error.h"
#include "core/base/farm_zone.h"

#include <string>
#include <string_view>

namespace treadwell::entries {

/// The first entry of a season: whose it is and where its local days lie.
struct SeasonStarted {
    static constexpr std::string_view kKind = "season_started";
    static constexpr int kVersion = 1;

    std::string farm;
    std::string zone;  ///< IANA name

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("farm", self.farm);
        visit("zone", self.zone);
    }
    friend bool operator==(const SeasonStarted&, const SeasonStarted&) = default;
};

[[nodiscard]] Result<void> validate(const SeasonStarted& entry);

}  // namespace treadwell::entries
