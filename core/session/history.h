#pragma once

#include "core/season/season.h"

#include <vector>

namespace treadwell::session {

/// A fact and all that changed it, in the order in which it was written; empty where there is none.
[[nodiscard]] std::vector<season::EntryPointer> historyOf(const season::Season& season, entries::EntryId id);

}  // namespace treadwell::session
