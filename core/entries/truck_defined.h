#pragma once

#include "core/base/error.h"
#include "core/farm/machines.h"

#include <string>
#include <string_view>

namespace treadwell::entries {

/// A truck as it is from now on; the same id again is a change.
struct TruckDefined {
    static constexpr std::string_view kKind = "truck_defined";
    static constexpr int kVersion = 1;

    farm::Truck truck;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("truck", self.truck);
    }
    friend bool operator==(const TruckDefined&, const TruckDefined&) = default;
};

[[nodiscard]] inline Result<void> validate(const TruckDefined& entry) {
    return farm::validate(entry.truck);
}

}  // namespace treadwell::entries
