#pragma once

#include "core/intake/intake.h"

#include <vector>

namespace treadwell::intake {

/// Loads that came while nobody was there to log them, as they are remembered: "six loads between 10:20 and
/// 11:05".
struct CatchUp {
    entries::Load each;
    std::int64_t count = 0;
    Instant from;
    Instant to;
};

inline constexpr std::int64_t kMostCaughtUp = 60;

/// One load in the middle of each of `count` equal parts of the time, marked with how far from there it may
/// have come: no further than the time's ends. Tickets that come later put their own time and mass in its
/// place (see readTickets). Errors: caughtUpCount, it is 1 to kMostCaughtUp; caughtUpAhead, `to` is not after
/// `now`; caughtUpSpan, `from` is before `to`, which is at most a day later; those of entries::validate.
[[nodiscard]] Result<std::vector<Proposal>> catchUp(const CatchUp& loads, Instant now);

}  // namespace treadwell::intake
