#include "core/samples/degree_days.h"

#include "core/quantity/range.h"
#include "core/samples/codes.h"
#include "core/samples/item.h"

#include <algorithm>
#include <array>
#include <map>

namespace treadwell::samples {

namespace {

using Days = std::chrono::days;
using LocalDays = std::chrono::local_days;

/// The degrees of each day, checked.
Result<std::map<LocalDays, DegreeDays>> byDay(std::span<const DayTemperatures> days) {
    std::map<LocalDays, DegreeDays> degrees;
    for (std::size_t i = 0; i < days.size(); ++i) {
        auto day = degreesOf(days[i]);
        if (!day) {
            Error error = day.error();
            error.field = item("days", i) + "." + error.field;
            return Unexpected{std::move(error)};
        }
        if (!degrees.emplace(LocalDays{days[i].day}, *day).second)
            return fail(code::dayTwice, item("days", i) + ".day", toIso8601(days[i].day));
    }
    return degrees;
}

}  // namespace

Result<DegreeDays> degreesOf(const DayTemperatures& day) {
    constexpr Temperature kColdest = Temperature::fromCelsius(-60), kHottest = Temperature::fromCelsius(60);
    const auto held = firstFailure(holdsWithin(day.low, kColdest, kHottest, "low"),
                                   holdsWithin(day.high, kColdest, kHottest, "high"));
    if (!held) return Unexpected{held.error()};
    if (day.low > day.high)
        return fail(code::temperaturesSwapped, "low", day.low.amount(), day.high.amount());
    const double low = std::clamp(day.low, kGrowthFrom, kGrowthTo).celsius();
    const double high = std::clamp(day.high, kGrowthFrom, kGrowthTo).celsius();
    return DegreeDays::fromCelsius((low + high) / 2.0 - kGrowthFrom.celsius());
}

Result<WarmthSum> degreesBetween(std::span<const DayTemperatures> days, LocalDay first, LocalDay last) {
    const auto degrees = byDay(days);
    if (!degrees) return Unexpected{degrees.error()};
    if (LocalDays{last} < LocalDays{first})
        return fail(code::daysReversed, "last", toIso8601(first), toIso8601(last));
    WarmthSum result;
    result.days = (LocalDays{last} - LocalDays{first}).count() + 1;
    std::int64_t known = 0;
    for (auto at = degrees->lower_bound(LocalDays{first});
         at != degrees->end() && at->first <= LocalDays{last}; ++at) {
        result.sum += at->second;
        ++known;
    }
    if (known == 0) return fail(code::readingsMissing, "days");
    result.missing = result.days - known;
    result.sum = result.sum * (static_cast<double>(result.days) / static_cast<double>(known));
    return result;
}

std::optional<DegreeDays> warmthFromSilking(std::int64_t hybridDays) noexcept {
    if (hybridDays < 96 || hybridDays > 115) return std::nullopt;
    return DegreeDays::fromFahrenheit(hybridDays <= 100 ? 750 : 800);
}

Result<WarmthReached> whenWarmthReaches(std::span<const DayTemperatures> days, LocalDay silking,
                                        DegreeDays wanted) {
    const auto known = byDay(days);
    if (!known) return Unexpected{known.error()};
    if (known->empty() || known->rbegin()->first < LocalDays{silking})
        return fail(code::readingsMissing, "days");
    const LocalDays last = known->rbegin()->first;
    const auto whole = degreesBetween(days, silking, LocalDay{last});
    if (!whole) return Unexpected{whole.error()};
    const DegreeDays filled = whole->sum / static_cast<double>(whole->days);
    const LocalDays recentFrom = std::max(LocalDays{silking}, last - Days{kRecentDays - 1});
    const auto recent = degreesBetween(days, LocalDay{recentFrom}, LocalDay{last});
    if (!recent) return Unexpected{recent.error()};
    const DegreeDays ahead = recent->sum / static_cast<double>(recent->days);

    WarmthReached result{silking, {}, false, whole->missing};
    DegreeDays sum;
    constexpr int kMostDays = 200;
    for (int i = 0; i < kMostDays; ++i) {
        const LocalDays day = LocalDays{silking} + Days{i};
        const auto at = known->find(day);
        sum += day > last ? ahead : at == known->end() ? filled : at->second;
        if (day <= last) result.soFar = sum;
        if (sum >= wanted) {
            result.day = LocalDay{day};
            result.reckoned = day > last;
            if (!result.reckoned) result.soFar = sum;
            return result;
        }
    }
    return fail(code::warmthNotReached, "wanted", wanted.amount(), std::int64_t{kMostDays});
}

}  // namespace treadwell::samples
