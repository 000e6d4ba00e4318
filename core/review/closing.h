#pragma once

#include "core/season/season.h"

#include <variant>
#include <vector>

namespace treadwell::review {

/// Whom or what a question is about, so that an entry can answer it.
using Subject = std::variant<std::monostate, farm::SiloId, farm::TractorId, entries::PersonId>;

/// What a day leaves open, with what to do.
struct OpenPoint {
    Message question;
    Subject subject;
};

/// What has to be looked at before a day is closed, and the entry that closes it.
struct Closing {
    std::vector<OpenPoint> missing;  ///< as of `happened`
    entries::DayClosed entry;
    Instant happened;  ///< now, or the day's last instant where that is past: it belongs to its own day
};

/// Errors: dayUnknown; dayIsClosed, a day is opened again by taking its closing back; dayNotBegun.
[[nodiscard]] Result<Closing> closingOf(const season::Season& season, LocalDay day, Instant now);

}  // namespace treadwell::review
