#pragma once

#include "core/base/error.h"
#include "core/samples/dry_matter.h"

#include <span>

namespace treadwell::samples {

/// The same crop by the meter and by the dish.
struct MeterPair {
    DryMatter meter;
    DryMatter dish;
    friend bool operator==(const MeterPair&, const MeterPair&) = default;
};

/// What a meter reads too much (below 0: too little), learned from pairs.
struct MeterBias {
    DryMatter bias;
    DryMatter sd;         ///< of that
    DryMatter readingSd;  ///< of one reading about its own bias
    std::int64_t pairs = 0;
};

/// The bias of a meter nobody has checked lies within this of 0 (sd); so does one reading about its bias.
/// Assumed.
inline constexpr DryMatter kMeterBiasSd = DryMatter::fromPercent(2);
inline constexpr DryMatter kMeterReadingSd = DryMatter::fromPercent(1.5);

/// A meter's own bias: normal prior 0 +- kMeterBiasSd; the scatter of a reading is kMeterReadingSd counted as
/// three pairs, joined with the pairs' own. Without pairs the prior. Source of the update: Gelman et al.
/// 2013, Bayesian Data Analysis, 2.5 (value from memory). Errors: valueNotFinite; valueOutOfRange outside
/// 5-95 % (`pairs[i].meter`, `pairs[i].dish`).
[[nodiscard]] Result<MeterBias> learnBias(std::span<const MeterPair> pairs);

/// What a reading says of the crop once the bias is taken off. Errors: valueNotFinite; valueOutOfRange where
/// the reading or what remains is outside 5-95 % (`reading`).
[[nodiscard]] Result<Belief> corrected(DryMatter reading, const MeterBias& bias);

}  // namespace treadwell::samples
