#pragma once

#include "core/base/error.h"

#include <string>
#include <string_view>

namespace treadwell::entries {

/// A caution that was on the screen, so that the record tells it.
struct CautionShown {
    static constexpr std::string_view kKind = "caution_shown";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    std::string caution;  ///< its stable name

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("caution", self.caution);
    }
    friend bool operator==(const CautionShown&, const CautionShown&) = default;
};

[[nodiscard]] inline Result<void> validate(const CautionShown& /*entry*/) {
    return {};
}

}  // namespace treadwell::entries
