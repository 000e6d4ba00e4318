#pragma once

#include "core/base/hash.h"
#include "core/session/proposal.h"

#include <span>

namespace treadwell::session {

/// A season whose file stays as it is, and its head.
struct Earlier {
    const season::Season& season;
    Hash head{};
};

/// What a new season takes over from earlier ones: an entry that names them by their heads and carries what
/// they measured and what they had been handed themselves, then every definition and the rules as they last
/// stood. Where several define the same thing the last one speaks; of its own cores a file is asked before
/// those that took them over. Error: seasonEmpty.
[[nodiscard]] Result<std::vector<Proposal>> carriedFrom(std::span<const Earlier> earlier, Instant begins);

}  // namespace treadwell::session
