#pragma once

#include "core/base/error.h"
#include "core/quantity/range.h"
#include "core/samples/chop.h"

#include <optional>
#include <string_view>

namespace treadwell::entries {

/// How the harvester cuts from now on.
struct ChopSet {
    static constexpr std::string_view kKind = "chop_set";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    std::optional<Length> length;         ///< of cut
    std::optional<Length> rollGap;        ///< of the processor
    std::optional<Length> cuttingHeight;  ///< of the stubble
    samples::Processor processor = samples::Processor::rolls;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("cutting_height_m", self.cuttingHeight);
        visit("length_m", self.length);
        visit("processor", self.processor);
        visit("roll_gap_m", self.rollGap);
    }
    friend bool operator==(const ChopSet&, const ChopSet&) = default;
};

/// Length of cut 3-50 mm, gap of the rolls 0.5-10 mm, stubble 5-100 cm (15-20 cm is common practice).
[[nodiscard]] inline Result<void> validate(const ChopSet& entry) {
    const auto mm = [](double value) { return Length::fromMillimetres(value); };
    return firstFailure(holdsWithin(entry.length.value_or(mm(3)), mm(3), mm(50), "length"),
                        holdsWithin(entry.rollGap.value_or(mm(1)), mm(0.5), mm(10), "rollGap"),
                        holdsWithin(entry.cuttingHeight.value_or(mm(50)), mm(50), mm(1000), "cuttingHeight"));
}

}  // namespace treadwell::entries
