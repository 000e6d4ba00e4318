#pragma once

#include "core/face/feeding.h"
#include "core/review/document.h"

namespace treadwell::review {

/// What is asked of feeding out, as far as it is known.
struct FeedQuestion {
    LocalDay from;
    AsFedMass perDay;
    DryMatter dryMatter;                         ///< of what is fed
    std::optional<Loss> loss = {};               ///< none: by the density, outcome::lossAt()
    std::optional<LocalDay> week = {};           ///< whose faces are shown; none: the first
    std::optional<Temperature> behindFace = {};  ///< 20 cm behind the face, with `core`
    std::optional<Temperature> core = {};
};

/// Until when a silo feeds, what the coming week's faces cut, and cautions. Errors: those of
/// face::feedOutOf() and outcome::lossAt(), and a silo that holds no crop: noLoads or why there is no
/// estimate.
[[nodiscard]] Result<Document> feedSheet(const season::Season& season, const farm::Silo& silo, Instant now,
                                         const FeedQuestion& question);

}  // namespace treadwell::review
