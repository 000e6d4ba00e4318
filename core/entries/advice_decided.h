#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/farm/silo.h"
#include "core/quantity/fraction.h"

#include <array>
#include <string>
#include <string_view>

namespace treadwell::entries {

enum class AdviceDecision : std::uint8_t { shown, accepted, declined };

constexpr std::array<std::string_view, 3> enumTexts(AdviceDecision /*decision*/) noexcept {
    return {"shown", "accepted", "declined"};
}

/// Advice as it stood, and what was made of it.
struct AdviceDecided {
    static constexpr std::string_view kKind = "advice_decided";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    farm::SiloId silo;
    std::string advice;  ///< the candidate's stable name
    AdviceDecision decision = AdviceDecision::shown;
    DryDensity before;  ///< medians
    DryDensity after;
    Chance chanceBefore;
    Chance chanceAfter;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("advice", self.advice);
        visit("after_kg_dm_m3", self.after);
        visit("before_kg_dm_m3", self.before);
        visit("chance_after", self.chanceAfter);
        visit("chance_before", self.chanceBefore);
        visit("decision", self.decision);
        visit("silo", self.silo);
    }
    friend bool operator==(const AdviceDecided&, const AdviceDecided&) = default;
};

[[nodiscard]] Result<void> validate(const AdviceDecided& entry);

}  // namespace treadwell::entries
