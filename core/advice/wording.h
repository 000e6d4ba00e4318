#pragma once

#include "core/advice/advise.h"

#include <string_view>

namespace treadwell::advice {

/// The stable name of a change: tractors by name, the figures left out, since those move all the time.
[[nodiscard]] std::string nameOf(const AdviceSituation& situation, const Change& change);

/// What to do, one message a step; for no change: go on as now.
[[nodiscard]] std::vector<Message> actionsOf(const AdviceSituation& situation, const Change& change);

/// The steps that a stable name stands for, without their figures: for a record that has the name alone.
[[nodiscard]] std::vector<Message> actionsNamed(std::string_view name);

/// What a change would come to: effect and chance, or for a thinner layer its passes, then what it costs.
[[nodiscard]] std::vector<Message> effectOf(const Outcome& now, const Outcome& then,
                                            const density::Target& target);

/// What the advice says beside the chosen actions.
[[nodiscard]] std::vector<Message> saysOf(const AdviceSituation& situation, const Advice& advice);

}  // namespace treadwell::advice
