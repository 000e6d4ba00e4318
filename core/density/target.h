#pragma once

#include "core/crop/crop.h"
#include "core/density/limit.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace treadwell::density {

/// What the user asks for: 225 kg DM/m3 (14 lb/ft3) is the usual minimum and porosity 0.40 the usual goal
/// (published advice).
struct TargetRule {
    DryDensity minimum = DryDensity::fromKilogramsPerCubicMetre(225);
    Porosity porosity = Porosity::fromFraction(0.40);
};

/// Which of the three sets the target.
enum class Governs : std::uint8_t { minimum, porosity, saturation };
constexpr std::array<std::string_view, 3> enumTexts(Governs /*governs*/) noexcept {
    return {"minimum", "porosity", "saturation"};
}

struct Target {
    DryDensity density;
    Governs governs;
    DryDensity minimum;
    DryDensity atPorosity;  ///< the density of the asked porosity at this dry matter
    Limit limit;
};

/// min(max(minimum, density of the porosity), limit). With the usual rule and maize, saturation governs
/// below 25.8 % dry matter and porosity above 32.8 %. Dry matter in (0, 1), not checked.
[[nodiscard]] Target targetFor(const TargetRule& rule, DryMatter dryMatter, crop::Crop crop);

}  // namespace treadwell::density
