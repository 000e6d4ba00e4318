#pragma once

#include "core/base/error.h"

#include <string>
#include <string_view>

namespace treadwell::entries {

/// Takes back the entry that the header names as its target; it stays in the history.
struct VoidEntry {
    static constexpr std::string_view kKind = "void";
    static constexpr int kVersion = 1;

    std::string reason;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("reason", self.reason);
    }
    friend bool operator==(const VoidEntry&, const VoidEntry&) = default;
};

[[nodiscard]] inline Result<void> validate(const VoidEntry& /*entry*/) {
    return {};
}

}  // namespace treadwell::entries
