#include "core/base/code.h"

#include <array>

namespace treadwell {

std::string_view toText(Code code) {
    static constexpr std::array kNames = {
#define TREADWELL_CODE(name) std::string_view{#name},
        TREADWELL_CODES(TREADWELL_CODE)
#undef TREADWELL_CODE
    };
    return kNames.at(static_cast<std::size_t>(code));
}

}  // namespace treadwell
