#pragma once

#include "core/review/document.h"
#include "core/season/season.h"

namespace treadwell::review {

/// A season up to `now`: its days side by side, its silos, its shifts, what was estimated beside what each
/// evening's heights measured, what limited density for how long, the weakest places and why, what a further
/// tractor would have brought, and what that comes to. No line is of a person. An empty season has its
/// sections and says so in each.
[[nodiscard]] Document seasonReview(const season::Season& season, Instant now);

}  // namespace treadwell::review
