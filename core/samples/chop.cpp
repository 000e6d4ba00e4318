#include "core/samples/chop.h"

#include "core/quantity/range.h"
#include "core/samples/codes.h"
#include "core/samples/particle_size.h"
#include "core/stats/normal.h"
#include "core/stats/straight_line.h"

#include <algorithm>
#include <cmath>

namespace treadwell::samples {

namespace {

constexpr double kAssumedSpread = 2.0;
constexpr Length kShortestCut = Length::fromMillimetres(6);
constexpr Length kLongestCut = Length::fromMillimetres(30);
/// Settings of 17-19 mm are usual, 16 mm in drier crop: common practice.
constexpr Length kUsualCut = Length::fromMillimetres(16);

constexpr PartRange range(double low, double high) {
    return {Share::fromPercent(low), Share::fromPercent(high)};
}

Result<void> checkRange(const PartRange& range, const std::string& field) {
    return firstFailure(holdsWithin(range.high, Share{}, Share::fromFraction(1), field + ".high"),
                        holdsWithin(range.low, Share{}, range.high, field + ".low"));
}

double quantileOf(double part) {
    return stats::normalQuantile(std::clamp(part, 1e-3, 1.0 - 1e-3));
}

/// The factor on all lengths that takes the part coarser than a bound from `now` to `wanted`.
double lengthFactor(const SieveParts& parts, double now, double wanted) {
    const auto size = logNormalSize(parts);
    const double spread = size && *size->spread > 1.1 ? *size->spread : kAssumedSpread;
    return std::exp((quantileOf(wanted) - quantileOf(now)) * std::log(spread));
}

void adviseLength(Length from, double factor, std::vector<Message>& advice) {
    double mm = std::round(from.millimetres() * factor);
    const double whole = std::round(from.millimetres());
    mm = factor > 1.0 ? std::max(mm, whole + 1.0) : std::min(mm, whole - 1.0);
    const Length to = std::clamp(Length::fromMillimetres(mm), kShortestCut, kLongestCut);
    const bool longer = factor > 1.0;
    if (longer ? to <= from : to >= from) return;
    advice.push_back({longer ? code::chopLengthen : code::chopShorten, {from.chopAmount(), to.chopAmount()}});
}

}  // namespace

ChopRanges usualRanges(crop::Crop crop, Processor processor) noexcept {
    if (crop != crop::Crop::maize)
        return {crop, processor, range(10, 20), range(45, 75), range(30, 40), range(0, 10)};
    if (processor == Processor::longChop)
        return {crop, processor, range(15, 30), range(40, 60), range(10, 25), range(0, 10)};
    return {crop, processor, range(3, 8), range(45, 65), range(20, 30), range(0, 10)};
}

Result<void> validate(const ChopRanges& ranges) {
    return firstFailure(checkRange(ranges.on19, "on19"), checkRange(ranges.on8, "on8"),
                        checkRange(ranges.on4, "on4"), checkRange(ranges.below4, "below4"));
}

JudgedChop judge(const SieveParts& parts, const ChopRanges& ranges) {
    JudgedChop judged;
    const std::array wanted{ranges.on19, ranges.on8, ranges.on4, ranges.below4};
    Share above;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        Share coarser = Share::fromFraction(1);
        if (i < kChopBounds.size()) {
            coarser = parts.coarserThanAny(kChopBounds[i]);
            judged.interpolated |= !parts.coarserThan(kChopBounds[i]);
        }
        const Share part = std::max(Share{}, coarser - above);
        constexpr Share kRounding = Share::fromFraction(1e-9);
        RangeSide side = RangeSide::within;
        if (part < wanted[i].low - kRounding) side = RangeSide::below;
        if (part > wanted[i].high + kRounding) side = RangeSide::above;
        judged.parts[i] = {part, wanted[i], side};
        above = coarser;
    }
    return judged;
}

std::vector<Message> chopAdvice(const SieveParts& parts, const ChopRanges& ranges,
                                const std::optional<ChopSetting>& setting) {
    const JudgedChop judged = judge(parts, ranges);
    const auto& [on19, on8, on4, below4] = judged.parts;
    const Share fine = on4.part + below4.part;
    const Share fineLimit = Share::fromFraction(1) - ranges.on19.low - ranges.on8.low;
    const bool isFine = fine > fineLimit, isDusty = below4.side == RangeSide::above;
    const bool isCoarse = on19.side == RangeSide::above;
    std::vector<Message> advice;
    if (isFine)
        advice.push_back({code::chopFine, {fine.amount(), kChopBounds[1].chopAmount(), fineLimit.amount()}});
    if (isDusty) advice.push_back({code::chopDusty, {below4.part.amount(), ranges.below4.high.amount()}});
    if (isCoarse) {
        advice.push_back(
            {code::chopCoarse, {on19.part.amount(), kChopBounds[0].chopAmount(), ranges.on19.high.amount()}});
    }
    if (advice.empty()) return {{code::chopWithin, {}}};
    const bool uneven = isCoarse && (isFine || isDusty);
    if (uneven) advice.push_back({code::chopUneven, {}});
    if (setting && !uneven && (isFine || isCoarse)) {
        const double now = (isFine ? Share::fromFraction(1) - fine : on19.part).fraction();
        const double wanted = (isFine ? Share::fromFraction(1) - fineLimit : ranges.on19.high).fraction();
        adviseLength(setting->length, lengthFactor(parts, now, wanted), advice);
    }
    if (uneven || isDusty || (isFine && setting && setting->length >= kUsualCut))
        advice.push_back({code::chopCheckKnives, {}});
    return advice;
}

std::optional<ChopTrend> chopTrend(std::span<const DayLength> days) {
    std::vector<stats::Point> points;
    for (const DayLength& day : days) {
        const auto since = std::chrono::local_days{day.day} - std::chrono::local_days{days.front().day};
        points.push_back({static_cast<double>(since.count()), day.geometricMean.si()});
    }
    const auto line = stats::lineThrough(points);
    if (!line) return std::nullopt;
    ChopTrend trend{Length::fromSi(line->slope), {}, {}, line->points};
    if (const auto interval = line->slopeInterval(0.8)) {
        trend.low80 = Length::fromSi(interval->low);
        trend.high80 = Length::fromSi(interval->high);
    }
    return trend;
}

}  // namespace treadwell::samples
