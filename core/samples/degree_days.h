#pragma once

#include "core/base/error.h"
#include "core/base/instant.h"
#include "core/quantity/weather.h"

#include <optional>
#include <span>

namespace treadwell::samples {

/// The lowest and highest temperature of a day.
struct DayTemperatures {
    LocalDay day;
    Temperature low;
    Temperature high;
};

/// Below the one maize stands still, above the other it grows no faster: 50 and 86 F, which are 10 and 30 C.
inline constexpr Temperature kGrowthFrom = Temperature::fromCelsius(10);
inline constexpr Temperature kGrowthTo = Temperature::fromCelsius(30);

/// A day's growing degrees: both temperatures held to 10-30 C (50-86 F), their mean, less 10 C (50 F).
/// Errors: valueNotFinite, valueOutOfRange outside -60 to 60 C (`low`, `high`); temperaturesSwapped where the
/// low is above the high.
[[nodiscard]] Result<DegreeDays> degreesOf(const DayTemperatures& day);

struct WarmthSum {
    DegreeDays sum;
    std::int64_t missing = 0;  ///< days without temperatures: counted as the mean of the others
    std::int64_t days = 0;     ///< that are summed, the missing among them
};

/// The sum from `first` to `last`, both included. Errors: those of degreesOf with `days[i].`; readingsMissing
/// where no day of the span has temperatures; daysReversed where last is before first; dayTwice where a day
/// stands twice.
[[nodiscard]] Result<WarmthSum> degreesBetween(std::span<const DayTemperatures> days, LocalDay first,
                                               LocalDay last);

/// Warmth from silking to 32 % dry matter by days of maturity of the hybrid: 750 F days for 96-100 days, 800
/// for 101-115 (Cox, New York, published). None outside 96-115 days.
[[nodiscard]] std::optional<DegreeDays> warmthFromSilking(std::int64_t hybridDays) noexcept;

/// When a field that silked on `silking` has had `wanted`. Days beyond the temperatures known count as the
/// mean of the last `kRecentDays` of them.
struct WarmthReached {
    LocalDay day;
    DegreeDays soFar;       ///< up to the last day known
    bool reckoned = false;  ///< beyond the days known
    std::int64_t missing = 0;
};
inline constexpr std::int64_t kRecentDays = 14;

/// Errors: those of degreesBetween; warmthNotReached where it is not reached within 200 days.
[[nodiscard]] Result<WarmthReached> whenWarmthReaches(std::span<const DayTemperatures> days, LocalDay silking,
                                                      DegreeDays wanted);

}  // namespace treadwell::samples
