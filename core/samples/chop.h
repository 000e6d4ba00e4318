#pragma once

#include "core/base/source.h"
#include "core/crop/crop.h"
#include "core/samples/sieve.h"

namespace treadwell::samples {

/// What the harvester does to the kernels.
enum class Processor : std::uint8_t {
    none,
    rolls,    ///< the usual rolls
    longChop  ///< rolls made for a long cut
};
constexpr std::array<std::string_view, 3> enumTexts(Processor /*processor*/) noexcept {
    return {"none", "rolls", "longChop"};
}

struct PartRange {
    Share low;
    Share high;
    friend bool operator==(const PartRange&, const PartRange&) = default;
};

/// The bounds between the four parts that a range speaks of.
inline constexpr std::array<Length, 3> kChopBounds{Length::fromMillimetres(19), Length::fromMillimetres(8),
                                                   Length::fromMillimetres(4)};

/// What a sample of a crop should hold: on 19 mm, on 8 mm, on 4 mm, below.
struct ChopRanges {
    crop::Crop crop = crop::Crop::maize;
    Processor processor = Processor::rolls;
    PartRange on19;
    PartRange on8;
    PartRange on4;
    PartRange below4;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("below_4_mm_high", self.below4.high);
        visit("below_4_mm_low", self.below4.low);
        visit("crop", self.crop);
        visit("on_19_mm_high", self.on19.high);
        visit("on_19_mm_low", self.on19.low);
        visit("on_4_mm_high", self.on4.high);
        visit("on_4_mm_low", self.on4.low);
        visit("on_8_mm_high", self.on8.high);
        visit("on_8_mm_low", self.on8.low);
        visit("processor", self.processor);
    }
    friend bool operator==(const ChopRanges&, const ChopRanges&) = default;
};

/// The usual ranges: maize 3-8, 45-65, 20-30 and below 10 %; grass and lucerne 10-20, 45-75, 30-40 and below
/// 10 % (Heinrichs 2013, values from memory); maize cut long 15-30, 40-60, 10-25 and below 10 % (assumed).
[[nodiscard]] ChopRanges usualRanges(crop::Crop crop, Processor processor) noexcept;

/// Each range within 0-100 % and low below high. Errors: valueNotFinite, valueOutOfRange (`on19.low`...).
[[nodiscard]] Result<void> validate(const ChopRanges& ranges);

enum class RangeSide : std::uint8_t { below, within, above };
constexpr std::array<std::string_view, 3> enumTexts(RangeSide /*side*/) noexcept {
    return {"below", "within", "above"};
}

struct JudgedPart {
    Share part;
    PartRange range;
    RangeSide side = RangeSide::within;
};

/// A sample against the ranges: on 19, 8 and 4 mm and below.
struct JudgedChop {
    std::array<JudgedPart, 4> parts;
    bool interpolated = false;  ///< a bound has no sieve of its own in this stack
};
[[nodiscard]] JudgedChop judge(const SieveParts& parts, const ChopRanges& ranges);

/// How the harvester is set.
struct ChopSetting {
    Length length;
};

/// What the sample says of the setting, in sentences: fine, coarse, uneven, within; then what to do. The new
/// length would bring the part that is too large to the end of its range, by the log-normal line (of spread 2
/// where the sample gives none, assumed): lengths scale together. Whole millimetres, 6-30 mm. A sample that
/// is fine although the cut is 16 mm or more (the short end of common practice), or both fine and coarse,
/// asks for the knives.
[[nodiscard]] std::vector<Message> chopAdvice(const SieveParts& parts, const ChopRanges& ranges,
                                              const std::optional<ChopSetting>& setting);

struct DayLength {
    LocalDay day;
    Length geometricMean;
};

/// How the chop moves from day to day.
struct ChopTrend {
    Length perDay;
    std::optional<Length> low80;  ///< by Student's t; none with two days
    std::optional<Length> high80;
    std::int64_t days = 0;
};

/// The least-squares trend; none with fewer than two days.
[[nodiscard]] std::optional<ChopTrend> chopTrend(std::span<const DayLength> days);

}  // namespace treadwell::samples
