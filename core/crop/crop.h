#pragma once

#include "core/base/enum_text.h"
#include "core/base/source.h"
#include "core/quantity/relations.h"

#include <array>
#include <cstdint>
#include <span>
#include <string_view>

namespace treadwell::crop {

enum class Crop : std::uint8_t { maize, grass, lucerne };

/// What the density engine needs to know of a crop.
struct Facts {
    Crop crop;
    std::string_view name;  ///< stable name, as in `--json` and entries
    double organicMatter;   ///< part of the dry matter, the rest is ash
    Source organicMatterSource;
    DryMatter wettest;  ///< the dry matter of the density survey's silos, from
    DryMatter driest;   ///< to
    Source dryMatterSource;
    DryDensity loose;  ///< chopped, as it lies in a trailer or is spread
    Source looseSource;
};

[[nodiscard]] std::span<const Facts> crops() noexcept;
[[nodiscard]] const Facts& factsOf(Crop crop);
[[nodiscard]] std::array<std::string_view, 3> enumTexts(Crop crop) noexcept;

/// Standard deviations of ln(loose density): in common to all loads of a crop, and of one load beside the
/// others. Together 10 %, which is 11.2 of 112 kg DM/m3 (423 loads of maize, Dutch study of 1979-86,
/// published); the split is assumed.
inline constexpr double kLooseCommonLogSd = 0.086;
inline constexpr double kLooseLoadLogSd = 0.051;

/// Loose density as fed at a dry matter above 0. The dry-matter density does not depend on it (same Dutch
/// study).
[[nodiscard]] AsFedDensity looseAsFed(Crop crop, DryMatter dryMatter);

}  // namespace treadwell::crop
