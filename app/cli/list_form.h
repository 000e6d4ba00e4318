#pragma once

#include <cstdint>

namespace treadwell::cli {

/// How a list is answered.
enum class ListForm : std::uint8_t { text, json, csv };

}  // namespace treadwell::cli
