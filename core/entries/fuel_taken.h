#pragma once

#include "core/base/error.h"
#include "core/farm/machines.h"
#include "core/quantity/product.h"
#include "core/quantity/range.h"

#include <optional>
#include <string_view>

namespace treadwell::entries {

/// Fuel that was filled into a tractor, for the work since the filling before it.
struct FuelTaken {
    static constexpr std::string_view kKind = "fuel_taken";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    farm::TractorId tractor;
    ProductVolume volume;
    std::optional<double> cost;  ///< in the farm's currency

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("cost", self.cost);
        visit("tractor", self.tractor);
        visit("volume_m3", self.volume);
    }
    friend bool operator==(const FuelTaken&, const FuelTaken&) = default;
};

/// 0.1-2,000 L, cost 0-100,000.
[[nodiscard]] inline Result<void> validate(const FuelTaken& entry) {
    return firstFailure(holdsWithin(entry.cost.value_or(0.0), 0.0, 1e5, "cost"),
                        holdsWithin(entry.volume, ProductVolume::fromLitres(0.1),
                                    ProductVolume::fromLitres(2'000), "volume"));
}

}  // namespace treadwell::entries
