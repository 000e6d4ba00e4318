#pragma once

#include "core/base/error.h"
#include "core/entries/codes.h"
#include "core/quantity/geometry.h"
#include "core/quantity/range.h"

#include <optional>

namespace treadwell::entries {

/// A part of a silo, measured from its back wall; the whole of it where nothing is given.
struct Stretch {
    std::optional<Length> begin;
    std::optional<Length> end;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("begin_m", self.begin);
        visit("end_m", self.end);
    }
    friend bool operator==(const Stretch&, const Stretch&) = default;
};

/// 0-500 m, and the end beyond the begin.
[[nodiscard]] inline Result<void> validate(const Stretch& stretch) {
    constexpr Length kLongest = Length::fromMetres(500);
    const Length begin = stretch.begin.value_or(Length{});
    const Length end = stretch.end.value_or(kLongest);
    if (auto held = firstFailure(holdsWithin(begin, Length{}, kLongest, "begin"),
                                 holdsWithin(end, Length{}, kLongest, "end"));
        !held) {
        return held;
    }
    if (end <= begin) return fail(code::stretchEmpty, "end", begin.amount());
    return {};
}

}  // namespace treadwell::entries
