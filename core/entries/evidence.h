#pragma once

#include "core/base/hash.h"

#include <string>

namespace treadwell::entries {

/// What an entry was read from, as it came: a row of a file with its header, the frames of a scale. It stands
/// in a table of its own, from which it can be erased; the entry holds the hash.
struct Evidence {
    Hash hash{};
    std::string content;

    friend bool operator==(const Evidence&, const Evidence&) = default;
};

}  // namespace treadwell::entries
