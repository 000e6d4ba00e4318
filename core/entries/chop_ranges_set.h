#pragma once

#include "core/base/error.h"
#include "core/samples/chop.h"

#include <string_view>

namespace treadwell::entries {

/// What samples of a crop behind a processor should hold on this farm, from now on.
struct ChopRangesSet {
    static constexpr std::string_view kKind = "chop_ranges_set";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    samples::ChopRanges ranges;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        samples::ChopRanges::fields(visit, self.ranges);
    }
    friend bool operator==(const ChopRangesSet&, const ChopRangesSet&) = default;
};

[[nodiscard]] inline Result<void> validate(const ChopRangesSet& entry) {
    return samples::validate(entry.ranges);
}

}  // namespace treadwell::entries
