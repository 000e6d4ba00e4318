#pragma once

#include "core/review/document.h"
#include "core/season/season.h"

namespace treadwell::review {

/// The sheet of one local day: what came in, its dry matter, the tractors' hours, the density of each silo
/// with its band, advice, pauses, layers, heights, additives, cover, weather, incidents,
/// shifts, notes, cautions and what is still open. Facts after `now`
/// are not seen; for a past day `now` is held to the day's end. Sections stand even where nothing was
/// recorded, and say so. Errors: dayUnknown for a day on which nothing is recorded.
[[nodiscard]] Result<Document> daySheet(const season::Season& season, LocalDay day, Instant now);

}  // namespace treadwell::review
