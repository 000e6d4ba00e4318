#pragma once

#include "core/base/error.h"

#include <string>
#include <string_view>

namespace treadwell::entries {

/// Somebody's own words.
struct Note {
    static constexpr std::string_view kKind = "note";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    std::string text;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("text", self.text);
    }
    friend bool operator==(const Note&, const Note&) = default;
};

[[nodiscard]] Result<void> validate(const Note& entry);

}  // namespace treadwell::entries
