#pragma once

#include "core/base/error.h"
#include "core/farm/silo.h"
#include "core/quantity/geometry.h"
#include "core/quantity/range.h"
#include "core/quantity/weather.h"

#include <optional>
#include <string_view>

namespace treadwell::entries {

/// How warm an opened silo is 20 cm behind its face, and in its core.
struct FaceTemperature {
    static constexpr std::string_view kKind = "face_temperature";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    farm::SiloId silo;
    Temperature behindFace;
    Temperature core;              ///< of the crop that no air has reached
    std::optional<Length> across;  ///< from the left wall, seen from the back wall
    std::optional<Length> height;  ///< above the floor

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("across_m", self.across);
        visit("behind_face_k", self.behindFace);
        visit("core_k", self.core);
        visit("height_m", self.height);
        visit("silo", self.silo);
    }
    friend bool operator==(const FaceTemperature&, const FaceTemperature&) = default;
};

/// Each -20 to 90 degrees Celsius, across 0-100 m, height 0-12 m.
[[nodiscard]] inline Result<void> validate(const FaceTemperature& entry) {
    constexpr Temperature kColdest = Temperature::fromCelsius(-20), kHottest = Temperature::fromCelsius(90);
    return firstFailure(
        holdsWithin(entry.behindFace, kColdest, kHottest, "behindFace"),
        holdsWithin(entry.core, kColdest, kHottest, "core"),
        holdsWithin(entry.across.value_or(Length{}), Length{}, Length::fromMetres(100), "across"),
        holdsWithin(entry.height.value_or(Length{}), Length{}, Length::fromMetres(12), "height"));
}

}  // namespace treadwell::entries
