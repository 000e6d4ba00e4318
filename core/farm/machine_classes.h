#pragma once

#include "core/base/enum_text.h"
#include "core/farm/machines.h"

#include <array>
#include <cstdint>
#include <string_view>

namespace treadwell::farm {

/// A tractor as one sees it from afar, ballast and blade included.
enum class TractorClass : std::uint8_t { medium, large, heavy, articulated, wheelLoader };

constexpr std::array<std::string_view, 5> enumTexts(TractorClass /*tractor*/) noexcept {
    return {"medium", "large", "heavy", "articulated", "wheelLoader"};
}

/// A truck or trailer by its box, heaped with chopped maize.
enum class TruckClass : std::uint8_t { smallTrailer, trailer, largeTrailer, lorry };

constexpr std::array<std::string_view, 4> enumTexts(TruckClass /*truck*/) noexcept {
    return {"smallTrailer", "trailer", "largeTrailer", "lorry"};
}

/// What one counts on until somebody knows better (value from memory).
[[nodiscard]] MachineMass massOf(TractorClass tractor) noexcept;
[[nodiscard]] AsFedMass usualLoadOf(TruckClass truck) noexcept;

/// sd of ln(mass) of a tractor known by its class alone (assumed: two of three lie within 15 %).
inline constexpr double kClassMassLogSd = 0.15;

/// A machine that has just come, known by its class alone.
[[nodiscard]] Tractor hired(TractorId id, std::string name, TractorClass seen);
[[nodiscard]] Truck hired(TruckId id, std::string name, TruckClass seen);

}  // namespace treadwell::farm
