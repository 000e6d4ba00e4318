#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/base/source.h"
#include "core/farm/silo.h"
#include "core/quantity/relations.h"

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <variant>
#include <vector>

namespace treadwell::attention {

/// What the program cautions about. It cautions and never permits: a limit that is kept only takes a caution
/// away.
enum class Caution : std::uint8_t {
    rampSlope,
    crossSlope,
    fillAboveWall,
    workingWidth,
    faceDistance,
    cores,
    peopleOnFoot,
    siloGas,
    shiftHours,
    powerLines,
    driverAge,
    walls,
    drySilage,
};
inline constexpr std::size_t kCautions = 13;

constexpr std::array<std::string_view, kCautions> enumTexts(Caution /*caution*/) noexcept {
    return {"rampSlope", "crossSlope",   "fillAboveWall", "workingWidth", "faceDistance",
            "cores",     "peopleOnFoot", "siloGas",       "shiftHours",   "powerLines",
            "driverAge", "walls",        "drySilage"};
}

/// A limit as it stands: a quantity, or a plain number (machine widths, heights, days, hours, years, people).
using Limit = std::variant<Amount, double>;

struct CautionFacts {
    Caution caution;
    Code text;
    std::optional<Limit>
        limit;  ///< the most cautious published value; none for walls, which are never judged
    Source source;
};

/// All cautions, in the order in which they are shown.
[[nodiscard]] std::span<const CautionFacts> cautions() noexcept;
[[nodiscard]] const CautionFacts& factsOf(Caution caution);

/// What stands under every list of cautions.
[[nodiscard]] Message standingText();

/// A limit that the site has set in place of the default, in the same unit.
struct SiteLimit {
    Caution caution;
    Limit limit;
};

enum class Stage : std::uint8_t { filling, closed, open };

constexpr std::array<std::string_view, 3> enumTexts(Stage /*stage*/) noexcept {
    return {"filling", "closed", "open"};
}

/// What is known at a silo now; what is not known is not judged.
struct CautionSituation {
    Stage stage = Stage::filling;
    std::optional<DryMatter> dryMatter = {};
    std::optional<Length> highestFill = {};
    std::optional<Length> machineWidth = {};  ///< of the widest machine, duals included
    std::optional<Instant> lastLoad = {};
    std::optional<Seconds> longestShift = {};  ///< of anybody at work now
    std::span<const SiteLimit> limits = {};
};

enum class Weight : std::uint8_t {
    standing,  ///< belongs to this stage of the work
    seen,      ///< what was entered is beyond the limit
    strong,    ///< and far beyond it
};

constexpr std::array<std::string_view, 3> enumTexts(Weight /*weight*/) noexcept {
    return {"standing", "seen", "strong"};
}

struct CautionNow {
    Caution caution;
    Weight weight;
    Message message;
    Source source;
};

/// The cautions that belong to a silo now, what is seen before what stands. `now` is not before the last
/// load.
[[nodiscard]] std::vector<CautionNow> cautionsFor(const farm::Silo& silo, const CautionSituation& situation,
                                                  Instant now);

}  // namespace treadwell::attention
