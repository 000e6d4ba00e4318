#pragma once

#include "core/base/error.h"
#include "core/quantity/fraction.h"

namespace treadwell::outcome {

/// Effluent of a tonne as fed [L/t]: 767 - 5.34 D + 0.00936 D^2, D the dry matter in g/kg, valid 100-285;
/// 0 above, never extrapolated below. Source: Bastiman 1976 (from memory). Errors: valueNotFinite;
/// valueOutOfRange naming `dryMatter` below 10 % or above 100 %.
[[nodiscard]] Result<double> effluent_L_per_t(DryMatter dryMatter);

}  // namespace treadwell::outcome
