#pragma once

#include "core/base/hash.h"
#include "core/review/document.h"
#include "core/season/season.h"

#include <optional>
#include <string>

namespace treadwell::review {

/// What the season's file knows of a sheet and its entries do not.
struct SheetOrigin {
    std::optional<std::string> closedBy = {};  ///< who closed the day, while the name is not erased
    std::optional<Hash> head = {};  ///< of the journal, so that a print can be held against the file
};

/// The sheet of one local day: its sum in a few sentences, what came in, its dry matter, the tractors' hours,
/// the density of each silo with its band, what limited it hour by hour, what a further tractor would have
/// brought, weak places and their causes, the day before and the plan beside it, advice and
/// what followed it, pauses, layers, heights, additives, cover, weather, incidents, feeding, shifts, the
/// hand-over, notes, cautions and what is still open. Facts after `now` are not seen; for a past day `now` is
/// held to the day's end. Sections stand even where nothing was recorded, and say so. Errors: dayUnknown for
/// a day on which nothing is recorded.
[[nodiscard]] Result<Document> daySheet(const season::Season& season, LocalDay day, Instant now,
                                        const SheetOrigin& origin = {});

}  // namespace treadwell::review
