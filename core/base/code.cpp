#include "core/base/code.h"

#include <array>

namespace treadwell {

std::string_view toText(Code code) {
    // Not by deduction: clang expands it into an expression nested as deep as there are codes.
    static constexpr auto kNames = std::to_array<std::string_view>({
#define TREADWELL_CODE(name) #name,
        TREADWELL_CODES(TREADWELL_CODE)
#undef TREADWELL_CODE
    });
    return kNames.at(static_cast<std::size_t>(code));
}

}  // namespace treadwell
