#pragma once

#include "core/advice/advise.h"

#include <optional>
#include <string>

namespace treadwell::advice {

/// When the line of advice speaks and when it changes its mind.
struct VoiceRules {
    double leastChanceGain = 0.05;           ///< in the chance of the target; less is no news (assumed)
    Seconds hold = std::chrono::minutes{4};  ///< the same advice for so long before it is said (assumed)
    Seconds mindChange = std::chrono::minutes{10};  ///< said for so long before it gives way (assumed)
};

/// What is being said, and what might be said next. A value: nothing hides in it.
struct Voice {
    std::string said;  ///< the candidate's stable name; empty: silent
    Instant saidSince;
    std::string waiting;  ///< what has been advised of late and is not yet said; empty: silence waits
    std::optional<Instant> waitingSince;
    friend bool operator==(const Voice&, const Voice&) = default;
};

/// Hears the advice of `now` and gives the next state. Speaks after the same advice, with a real gain, has
/// held for `hold`; what is said stays at least `mindChange`, and goes at once only if it is done or cannot
/// be done any more; where only the delivery need not be slowed any more, the rest of it stays said. Calls
/// come at least with every entry and once a minute, `now` never falling.
[[nodiscard]] Voice hear(const Voice& voice, const Advice& advice, Instant now, const VoiceRules& rules = {});

/// Why the line is silent on this advice; nothing where it holds a change that is still being weighed.
[[nodiscard]] std::optional<Message> whySilent(const Advice& advice, const VoiceRules& rules = {});

}  // namespace treadwell::advice
