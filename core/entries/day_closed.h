#pragma once

#include "core/base/error.h"

#include <string>
#include <string_view>

namespace treadwell::entries {

/// Closes a local day and freezes its bounds.
struct DayClosed {
    static constexpr std::string_view kKind = "day_closed";
    static constexpr int kVersion = 1;

    LocalDay day;
    Instant begin;
    Instant end;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("begin_us", self.begin);
        visit("day", self.day);
        visit("end_us", self.end);
    }
    friend bool operator==(const DayClosed&, const DayClosed&) = default;
};

/// The day ends after it begins.
[[nodiscard]] Result<void> validate(const DayClosed& entry);

}  // namespace treadwell::entries
