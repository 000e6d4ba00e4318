#pragma once

#include "core/base/error.h"
#include "core/farm/silo.h"

#include <optional>
#include <string>
#include <string_view>

namespace treadwell::entries {

/// Deliveries stand still: lunch, a shower, a broken machine. Cut out of the pace of delivery.
struct Pause {
    static constexpr std::string_view kKind = "pause";
    static constexpr int kVersion = 1;

    std::optional<farm::SiloId> silo;  ///< none: everywhere
    bool begins = true;                ///< false: deliveries go on again
    std::string reason;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("begins", self.begins);
        visit("reason", self.reason);
        visit("silo", self.silo);
    }
    friend bool operator==(const Pause&, const Pause&) = default;
};

[[nodiscard]] inline Result<void> validate(const Pause& /*entry*/) {
    return {};
}

}  // namespace treadwell::entries
