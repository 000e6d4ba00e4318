#pragma once

#include "core/base/enum_text.h"
#include "core/quantity/mass.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace treadwell::formats {

/// Units in which scales weigh; `ton` is the short ton.
enum class MassUnit : std::uint8_t { kg, t, lb, ton, g };

constexpr std::array<std::string_view, 5> enumTexts(MassUnit /*unit*/) noexcept {
    return {"kg", "t", "lb", "ton", "g"};
}

/// From small letters, in English, German and Portuguese: `kg`, `tonnen`, `lbs`.
[[nodiscard]] std::optional<MassUnit> massUnitFromWord(std::string_view word);

[[nodiscard]] AsFedMass massOf(double value, MassUnit unit);

}  // namespace treadwell::formats
