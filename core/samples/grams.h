#pragma once

#include "core/base/codes.h"
#include "core/base/error.h"

#include <cmath>
#include <string>

namespace treadwell::samples {

/// A small mass as people speak of it beside the scale: in grams.
template <class Mass>
[[nodiscard]] constexpr Amount gramsOf(Mass mass) noexcept {
    return {Dimension::dishMass, mass.si()};
}

/// quantity/range.h's holdsWithin, with the grams in its words.
template <class Mass>
[[nodiscard]] Result<void> holdsGrams(Mass mass, Mass lowest, Mass highest, std::string field) {
    if (!std::isfinite(mass.si())) return fail(code::valueNotFinite, std::move(field));
    if (mass < lowest || mass > highest)
        return fail(code::valueOutOfRange, std::move(field), gramsOf(mass), gramsOf(lowest),
                    gramsOf(highest));
    return {};
}

}  // namespace treadwell::samples
