#pragma once

#include "core/face/feeding.h"
#include "core/review/document.h"

namespace treadwell::review {

/// What is asked of feeding out. What is not given is taken from what was written down of removals: the day
/// after the last, the mean of a day, the mean dry matter, the face as it was last seen.
struct FeedQuestion {
    std::optional<LocalDay> from = {};
    std::optional<AsFedMass> perDay = {};
    std::optional<DryMatter> dryMatter = {};  ///< of what is fed
    std::optional<Loss> loss = {};            ///< none: by the density, outcome::lossAt()
    std::optional<LocalDay> week = {};        ///< whose faces are shown; none: the first
    std::optional<Length> face = {};          ///< from the back wall; the open end before any removal
};

/// Until when a silo feeds, what the coming week's faces cut, what was fed so far and lost, how warm the face
/// is, and cautions. Without a plan, `end` and `week` say what is missing. Errors: those of
/// face::feedOutOf() and outcome::lossAt(), and a silo that holds no crop: noLoads or why there is no
/// estimate.
[[nodiscard]] Result<Document> feedSheet(const season::Season& season, const farm::Silo& silo, Instant now,
                                         const FeedQuestion& question);

}  // namespace treadwell::review
