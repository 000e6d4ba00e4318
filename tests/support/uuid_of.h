#pragma once

#include "core/base/uuid.h"

namespace treadwell::testing_support {

[[nodiscard]] inline Uuid uuidOf(std::uint8_t number) {
    Uuid id;
    id.bytes[15] = number;
    return id;
}

}  // namespace treadwell::testing_support
