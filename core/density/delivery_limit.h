#pragma once

#include "core/density/situation.h"

#include <array>
#include <cstdint>
#include <string_view>

namespace treadwell::density {

/// The fastest delivery at which a fleet reaches the target.
struct DeliveryLimit {
    enum class Outcome : std::uint8_t {
        limited,       ///< `rate` is the limit
        anyDelivery,   ///< the target needs less packing than any delivery leaves; `rate` is the fastest
                       ///< looked at
        nothingPacks,  ///< no machine packs and the target needs packing; `rate` is 0
    };
    Outcome outcome;
    AsFedRate rate;
    PackingFactor required;  ///< 0 where no packing is needed
};
constexpr std::array<std::string_view, 3> enumTexts(DeliveryLimit::Outcome /*outcome*/) noexcept {
    return {"limited", "anyDelivery", "nothingPacks"};
}

/// The delivery at which the chance of the target falls to `wanted` (0.01 to 0.99; 0.5 is the median at the
/// target). From density * exp(-z sigma) = target the packing factor P, and C = 60 DM (S / (L P))^2 [t/h], S
/// the strongest prefix of the machines with their shares [kg] and L [cm] (derived). sigma depends on P and
/// is solved for with it. The situation's own work is not used, its machines' shares are. Errors: those of
/// check(), and `chance`.
[[nodiscard]] Result<DeliveryLimit> deliveryLimit(const Situation& situation, const Options& options,
                                                  Chance wanted = Chance::fromFraction(0.5));

}  // namespace treadwell::density
