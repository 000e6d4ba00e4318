#pragma once

#include "core/base/codes.h"
#include "core/base/error.h"

#include <string>
#include <string_view>

namespace treadwell::entries {

/// What the next shift has to know, said when the silo is handed over.
struct HandOver {
    static constexpr std::string_view kKind = "hand_over";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    std::string text;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("text", self.text);
    }
    friend bool operator==(const HandOver&, const HandOver&) = default;
};

/// It says something.
[[nodiscard]] inline Result<void> validate(const HandOver& entry) {
    if (entry.text.empty()) return fail(code::textEmpty, "text");
    return {};
}

}  // namespace treadwell::entries
