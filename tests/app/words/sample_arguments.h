#pragma once

#include "core/base/error.h"

namespace treadwell::words {

/// A code's arguments as the core gives them. A switch without default: a new code asks for its line here.
[[nodiscard]] std::vector<Argument> sampleArguments(Code code);

}  // namespace treadwell::words
