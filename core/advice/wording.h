#pragma once

#include "core/advice/advise.h"

namespace treadwell::advice {

/// The stable name of a change: tractors by name, the figures left out, since those move all the time.
[[nodiscard]] std::string nameOf(const AdviceSituation& situation, const Change& change);

/// What to do, one message a step; for no change: go on as now.
[[nodiscard]] std::vector<Message> actionsOf(const AdviceSituation& situation, const Change& change);

/// What the advice says beside the chosen actions.
[[nodiscard]] std::vector<Message> saysOf(const AdviceSituation& situation, const Advice& advice);

}  // namespace treadwell::advice
