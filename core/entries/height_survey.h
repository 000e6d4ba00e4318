#pragma once

#include "core/base/error.h"
#include "core/farm/silo.h"

#include <string>
#include <string_view>
#include <vector>

namespace treadwell::entries {

/// The height of the crop above the floor at one place.
struct HeightReading {
    Length along;   ///< from the back wall
    Length across;  ///< from the left wall, seen from the back wall
    Length height;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("across_m", self.across);
        visit("along_m", self.along);
        visit("height_m", self.height);
    }
    friend bool operator==(const HeightReading&, const HeightReading&) = default;
};

/// Heights read over a silo at one time.
struct HeightSurvey {
    static constexpr std::string_view kKind = "height_survey";
    static constexpr int kVersion = 1;

    farm::SiloId silo;
    std::vector<HeightReading> readings;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("readings", self.readings);
        visit("silo", self.silo);
    }
    friend bool operator==(const HeightSurvey&, const HeightSurvey&) = default;
};

/// At least one reading; along 0-500 m, across 0-100 m, height 0-12 m.
[[nodiscard]] Result<void> validate(const HeightSurvey& entry);

}  // namespace treadwell::entries
