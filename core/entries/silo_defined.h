#pragma once

#include "core/base/error.h"
#include "core/farm/silo.h"

#include <string>
#include <string_view>

namespace treadwell::entries {

/// A silo as it is from now on; the same id again is a change.
struct SiloDefined {
    static constexpr std::string_view kKind = "silo_defined";
    static constexpr int kVersion = 1;

    farm::Silo silo;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("silo", self.silo);
    }
    friend bool operator==(const SiloDefined&, const SiloDefined&) = default;
};

[[nodiscard]] inline Result<void> validate(const SiloDefined& entry) {
    return farm::validate(entry.silo);
}

}  // namespace treadwell::entries
