#pragma once

#include <string>

namespace treadwell::samples {

/// `list[index]`, as errors name the place of a value.
[[nodiscard]] inline std::string item(const char* list, std::size_t index) {
    return std::string{list} + '[' + std::to_string(index) + ']';
}

}  // namespace treadwell::samples
