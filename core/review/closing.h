#pragma once

#include "core/season/season.h"

#include <vector>

namespace treadwell::review {

/// What has to be looked at before a day is closed, and the entry that closes it.
struct Closing {
    std::vector<Message> missing;  ///< what the day leaves open as of `happened`, each with what to do
    entries::DayClosed entry;
    Instant happened;  ///< now, or the day's last instant where that is past: it belongs to its own day
};

/// Errors: dayUnknown; dayIsClosed, a day is opened again by taking its closing back; dayNotBegun.
[[nodiscard]] Result<Closing> closingOf(const season::Season& season, LocalDay day, Instant now);

}  // namespace treadwell::review
