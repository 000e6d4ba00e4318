#pragma once

#include "core/attention/cautions.h"
#include "core/farm/shape.h"

namespace treadwell::attention {

/// Of a shape that is only planned: slopes, height and width beyond their limits, nothing that stands.
/// `machineWidth` is that of the widest machine, duals included.
[[nodiscard]] std::vector<CautionNow> shapeCautions(const farm::Shape& shape, Length machineWidth);

}  // namespace treadwell::attention
