#pragma once

#include "core/samples/dry_matter.h"

#include <span>

namespace treadwell::testing_support {

/// What a stream of samples, in the order of time, says at a moment to one who knows none of later.
[[nodiscard]] inline std::optional<samples::Belief> carriedTo(
    Instant at, std::span<const samples::TimedDryMatter> samples) {
    samples::CarriedDryMatter carried;
    for (const samples::TimedDryMatter& sample : samples) {
        if (sample.at <= at || !carried.at(at)) carried.take(sample);
    }
    return carried.at(at);
}

}  // namespace treadwell::testing_support
