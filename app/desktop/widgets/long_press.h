#pragma once

#include <chrono>

namespace treadwell::widgets {

/// From here on a touch is a long one.
inline constexpr std::chrono::milliseconds kLongPress{600};

}  // namespace treadwell::widgets
