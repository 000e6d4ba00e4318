#pragma once

#include "core/plan/fits.h"

#include <vector>

namespace treadwell::plan {

/// Feeding one silo out.
struct Feed {
    std::string silo;
    Area face;           ///< cross-section at the full height
    Area summerFace;     ///< the largest that the herd moves by the least advance of summer
    Area winterFace;     ///< and of winter
    Length summerWidth;  ///< of a face of that area at the silo's height
    Length winterWidth;
    Length advance;       ///< a day
    int slowDays = 0;     ///< of feed on which that is less than the season's least
    DryMass left;         ///< of what was placed, after the farm's own loss
    double days = 0.0;    ///< of feed
    LocalDay opens{};     ///< after the one before is empty, and not before `closedDays`
    LocalDay empty{};     ///< from this day on the next silo must be open
    LocalDay gasUntil{};  ///< silo gas is cautioned of until 21 days after the last load (published)
    double effluent_L = 0.0;
};

struct FeedPlan {
    std::vector<Feed> silos;  ///< in order of filling, those that get crop
    int daysWithout = 0;      ///< between the silos, where the next is not yet to be opened
};

/// Errors: those of validate(), and of outcome::effluent_L_per_t().
[[nodiscard]] Result<FeedPlan> feedsOf(const Inputs& inputs);

}  // namespace treadwell::plan
