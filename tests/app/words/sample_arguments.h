#pragma once

#include "core/base/error.h"

namespace treadwell::words {

/// A code's arguments as the core gives them. Throws std::logic_error where one is missing.
[[nodiscard]] std::vector<Argument> sampleArguments(Code code);

}  // namespace treadwell::words
