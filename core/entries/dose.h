#pragma once

#include "core/base/codes.h"
#include "core/base/error.h"
#include "core/farm/codes.h"
#include "core/quantity/product.h"
#include "core/quantity/range.h"

#include <optional>
#include <string>

namespace treadwell::entries {

/// How much of what was put on the crop: by mass, by volume, or both where the label gives both.
struct Dose {
    std::string product;
    std::optional<ProductMass> mass;
    std::optional<ProductVolume> volume;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("mass_kg", self.mass);
        visit("product", self.product);
        visit("volume_m3", self.volume);
    }
    friend bool operator==(const Dose&, const Dose&) = default;
};

/// A product has a name and an amount: 0-10 t, 0-20,000 L.
[[nodiscard]] inline Result<void> validate(const Dose& dose) {
    if (dose.product.empty()) return fail(code::nameEmpty, "product");
    if (!dose.mass && !dose.volume) return fail(code::valueMissing, "mass");
    return firstFailure(
        holdsWithin(dose.mass.value_or(ProductMass{}), ProductMass{}, ProductMass::fromTonnes(10), "mass"),
        holdsWithin(dose.volume.value_or(ProductVolume{}), ProductVolume{}, ProductVolume::fromLitres(20000),
                    "volume"));
}

}  // namespace treadwell::entries
