#pragma once

#include "core/quantity/relations.h"

namespace treadwell::outcome {

/// Least advance of an open face: 1.5 m a week in winter, 2.5 m in summer (published, partly from memory).
inline constexpr Length kWinterAdvance = Length::fromMetres(1.5 / 7.0);
inline constexpr Length kSummerAdvance = Length::fromMetres(2.5 / 7.0);

/// Advance of a face in a day: dry matter taken a day / (density * face). Density and face above 0.
[[nodiscard]] constexpr Length advanceOf(DryMass daily, DryDensity density, Area face) noexcept {
    return (daily / density) / face;
}

/// The largest face that a herd moves by `advance` a day: daily / (density * advance). Density and advance
/// above 0.
[[nodiscard]] constexpr Area largestFace(DryMass daily, DryDensity density, Length advance) noexcept {
    return Area::fromSi((daily / density).si() / advance.si());
}

/// Days for which crop lies in the air that enters the face: depth of the heated zone / advance, advance
/// above 0.
[[nodiscard]] constexpr double daysExposed(Length heatedDepth, Length dailyAdvance) noexcept {
    return heatedDepth / dailyAdvance;
}

}  // namespace treadwell::outcome
