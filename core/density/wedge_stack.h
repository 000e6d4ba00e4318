#pragma once

#include "core/density/stack.h"

namespace treadwell::density {

/// The layers of a silo that is filled on a ramp; all of stackOf() but its checks and its mean.
[[nodiscard]] Stack wedge(const farm::Silo& silo, std::span<const LaidLayer> layers, Filled filled);

}  // namespace treadwell::density
