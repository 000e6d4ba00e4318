#pragma once

#include "core/base/error.h"
#include "core/samples/codes.h"
#include "core/samples/degree_days.h"

#include <string_view>
#include <vector>

namespace treadwell::entries {

struct DayTemperatures {
    LocalDay day;
    Temperature low;
    Temperature high;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("day", self.day);
        visit("high_k", self.high);
        visit("low_k", self.low);
    }
    friend bool operator==(const DayTemperatures&, const DayTemperatures&) = default;
};

/// The lowest and highest temperature of days, as a weather station gives them; for a day that was recorded
/// before these count.
struct Temperatures {
    static constexpr std::string_view kKind = "temperatures";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    std::vector<DayTemperatures> days;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("days", self.days);
    }
    friend bool operator==(const Temperatures&, const Temperatures&) = default;
};

/// At least one day; each -60 to 60 C, the low not above the high.
[[nodiscard]] inline Result<void> validate(const Temperatures& entry) {
    if (entry.days.empty()) return fail(code::readingsMissing, "days");
    for (std::size_t i = 0; i < entry.days.size(); ++i) {
        const DayTemperatures& day = entry.days[i];
        auto degrees = samples::degreesOf({day.day, day.low, day.high});
        if (degrees) continue;
        degrees.error().field = "days[" + std::to_string(i) + "]." + degrees.error().field;
        return Unexpected{degrees.error()};
    }
    return {};
}

}  // namespace treadwell::entries
