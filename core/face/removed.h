#pragma once

#include "core/face/feeding.h"

namespace treadwell::face {

/// What was fed from a silo up to a moment, as it was written down.
struct FedOut {
    std::vector<season::Dated<entries::FeedRemoved>> removals;  ///< in order
    AsFedMass mass;
    std::optional<DryMatter> dryMatter = {};  ///< mass-weighted over the removals that name it
    std::optional<Length> face = {};          ///< as it was last seen

    /// Mean of a day: all of it over the local days from the first removal to the last; none before any.
    [[nodiscard]] std::optional<AsFedMass> perDay(const FarmZone& zone) const;
};
[[nodiscard]] FedOut fedOutOf(const season::Season& season, farm::SiloId silo, Instant now);

/// What was laid where the crop has been fed, against what came out of it.
struct FedBalance {
    AsFedMass massIn;
    DryMass dryIn;
    AsFedMass massOut;
    DryMass dryOut;
    Balance balance;
};

/// Of the part between the open end and the face as it was last seen; by the predicted field, so that the
/// whole silo, its face at 0, does not depend on it. Errors: faceNotSeen, feedNotSampled, those of
/// balanceOf().
[[nodiscard]] Result<FedBalance> fedBalanceOf(const season::Delivered& in, const density::Field& field,
                                              const FedOut& fed);

/// The temperatures of a silo's face up to a moment, in order.
[[nodiscard]] std::vector<season::Dated<entries::FaceTemperature>> faceTemperaturesOf(
    const season::Season& season, farm::SiloId silo, Instant now);

}  // namespace treadwell::face
