#pragma once

#include "core/density/regression.h"
#include "core/density/situation.h"
#include "core/packing/mass_rules.h"

#include <array>
#include <optional>
#include <string_view>
#include <vector>

namespace treadwell::density {

/// What a yardstick says of the packing. Reached is no permission: it only means that this yardstick asks for
/// no more.
enum class Verdict : std::uint8_t { reached, missed, unknown };
constexpr std::array<std::string_view, 3> enumTexts(Verdict /*verdict*/) noexcept {
    return {"reached", "missed", "unknown"};
}

struct MassYardstick {
    packing::MassRule rule;
    MachineMass asked;
    Verdict verdict;
};

/// What a published regression says of the same silo.
struct RegressionYardstick {
    const Regression* regression;
    DryDensity value;
    bool inRange;  ///< the dry matter lies within that of its data; outside, the value is not to be used
};

/// The trade's other measures beside the estimate. They do not agree with each other, and the user is shown
/// that.
struct Yardsticks {
    MachineMass massPacking;                   ///< each machine's mass times its share of the time
    std::vector<MassYardstick> massRules;      ///< empty where no delivery is known
    double passes = 0.0;                       ///< over the layer as spread
    bool tracksAssumed = false;                ///< a speed or a track width was not given
    Verdict passesVerdict = Verdict::unknown;  ///< at least three
    PackingIntensity timeForThreePasses;       ///< of all machines, as their time is shared now
    Verdict saturationVerdict =
        Verdict::unknown;                      ///< reached: the pores are full, more packing does not help
    Verdict targetVerdict = Verdict::unknown;  ///< the estimate's median against the target
    std::vector<RegressionYardstick> regressions;  ///< all that are known, the estimate's own among them
    std::vector<Code> reached;  ///< which yardsticks are reached, as they are named in words
    std::vector<Code> missed;

    [[nodiscard]] bool disagree() const noexcept { return !reached.empty() && !missed.empty(); }
};

/// `factor`, `median` and `saturated` are the estimate's. Takes a situation that check() has passed.
[[nodiscard]] Yardsticks yardsticksFor(const Situation& situation, PackingFactor factor, DryDensity median,
                                       bool saturated, const Target& target);

}  // namespace treadwell::density
