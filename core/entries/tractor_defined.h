#pragma once

#include "core/base/error.h"
#include "core/farm/machines.h"

#include <string>
#include <string_view>

namespace treadwell::entries {

/// A tractor as it is from now on; the same id again is a change.
struct TractorDefined {
    static constexpr std::string_view kKind = "tractor_defined";
    static constexpr int kVersion = 1;

    farm::Tractor tractor;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("tractor", self.tractor);
    }
    friend bool operator==(const TractorDefined&, const TractorDefined&) = default;
};

[[nodiscard]] inline Result<void> validate(const TractorDefined& entry) {
    return farm::validate(entry.tractor);
}

}  // namespace treadwell::entries
