#pragma once

#include "core/advice/candidates.h"
#include "core/base/enum_text.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace treadwell::advice {

/// A change that was compared, with its numbers and what became of it.
struct Candidate {
    std::string name;  ///< stable: what is done to whom, as `pack:Otter+layer`; `asNow`
    Change change;
    std::vector<Message> actions;  ///< what to do
    Outcome outcome;
    density::Effect effect;  ///< of the median counted on, against now
    Message why;             ///< chosen, or why not
};

enum class Verdict : std::uint8_t {
    allIsWell,    ///< the target has its wanted chance and nothing better is at hand
    change,       ///< the cheapest change that gives the target its wanted chance
    canLeave,     ///< a tractor is not needed for that
    thinner,      ///< the layer is thicker than the site's maximum, and three passes remain
    saturated,    ///< the pores are full: more packing does not help
    closest,      ///< nothing gives the wanted chance; this comes closest
    nothingHelps  ///< nor does anything bring it closer
};

constexpr std::array<std::string_view, 7> enumTexts(Verdict /*verdict*/) noexcept {
    return {"allIsWell", "change", "canLeave", "thinner", "saturated", "closest", "nothingHelps"};
}

/// One piece of advice with everything it was weighed against.
struct Advice {
    Verdict verdict = Verdict::allIsWell;
    std::size_t chosen = 0;             ///< index into candidates; 0, as now, where nothing is to be changed
    std::vector<Candidate> candidates;  ///< the first is as now
    std::size_t left = 0;               ///< candidates beyond the most that are compared
    density::Target target;
    std::vector<Message> says;  ///< with the chosen one's actions the one sentence: effect, then cost

    [[nodiscard]] const Candidate& now() const { return candidates.front(); }
    [[nodiscard]] const Candidate& best() const { return candidates[chosen]; }
};

/// A delivery slowed to less than this part of the present one is listed and not advised (assumed).
inline constexpr double kSlowestPart = 0.5;

/// Looks for the cheapest change that reaches the target with the wanted chance.
///
/// Candidates are compared by what the equation counts on: packing minutes per tonne, tractors and delivery;
/// a thinner layer counts for its passes alone (rule B8). Cheapest: by money an hour, where an hour without a
/// known cost counts as the dearest known; among equals the fewest changes, the lightest tractors, the higher
/// chance, the name. A slower delivery costs the whole harvest and stands behind all that leaves it as it is.
/// No tractor is sent away if fewer than three passes would remain. The order of the tractors changes
/// nothing. Errors: those of check().
[[nodiscard]] Result<Advice> advise(const AdviceSituation& situation);

/// The candidate of this name; none where it is not there any more.
[[nodiscard]] const Candidate* find(const Advice& advice, std::string_view name) noexcept;

}  // namespace treadwell::advice
