#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/base/instant.h"
#include "core/quantity/relations.h"
#include "core/stats/normal.h"

#include <array>
#include <optional>
#include <span>
#include <string_view>

namespace treadwell::samples {

// A spread of dry matter, in points, is a DryMatter too: 0.01 is one point.

/// How far one sample lies from its field's mean (sd). One sample misstated a field's tonnage of dry matter
/// by -21.5 to +20.4 % (three dairies in California, published); the sd is derived.
inline constexpr DryMatter kSampleSd = DryMatter::fromPercent(3.7);
/// How far one sample lies from the mean of the load that it was taken from (sd); assumed.
inline constexpr DryMatter kLoadSampleSd = DryMatter::fromPercent(1.5);
/// How far a field without a sample of its own lies from the others' (sd); assumed.
inline constexpr DryMatter kFieldSd = DryMatter::fromPercent(4);
/// How far a field's dry matter wanders in an hour of harvest (sd, growing with the root of time); assumed,
/// 4.9 points in a day.
inline constexpr DryMatter kHourlyWander = DryMatter::fromPercent(1);

/// The mean of samples that count alike, and how far it may lie from the truth.
struct SampledMean {
    DryMatter mean;
    DryMatter sd;                     ///< of one sample; kSampleSd where there is one only
    std::optional<DryMatter> half95;  ///< half the 95 % interval of the mean, by Student's t; none for one
    std::int64_t samples = 0;
};

/// Errors: readingsMissing; valueNotFinite or valueOutOfRange outside 0-100 % (`samples[i]`).
[[nodiscard]] Result<SampledMean> meanOfSamples(std::span<const DryMatter> samples);

/// Samples for a mean within +-`wanted` at 95 %: n = (1.96 sd / wanted)^2, rounded up, at least 1. Errors:
/// valueNotFinite; valueOutOfRange unless sd is 0-20 points and wanted 0.1-20 points.
[[nodiscard]] Result<std::int64_t> samplesFor(DryMatter sd, DryMatter wanted);

/// However old the samples are, what is cut for silage is known to lie within this (sd); assumed.
inline constexpr DryMatter kWidestSd = DryMatter::fromPercent(10);

struct TimedDryMatter {
    Instant at;
    DryMatter dryMatter;
};

/// How dry matter moves over the day.
struct Drift {
    DryMatter pointsPerHour;
    std::optional<DryMatter> low80;  ///< of that, by Student's t; none with two samples
    std::optional<DryMatter> high80;
    std::int64_t samples = 0;

    /// Whether the interval leaves 0 out.
    [[nodiscard]] bool isSeen() const noexcept {
        return low80 && high80 && (*low80 > DryMatter{} || *high80 < DryMatter{});
    }
};

/// The least-squares trend; none with fewer than two moments or a value that is not finite.
[[nodiscard]] std::optional<Drift> driftOf(std::span<const TimedDryMatter> samples);

/// Dry matter as it is believed at a moment.
struct Belief {
    DryMatter mean;
    DryMatter sd;

    /// Half the central 80 % band.
    [[nodiscard]] DryMatter half80() const noexcept { return sd * stats::kHalfBand80; }
    friend bool operator==(const Belief&, const Belief&) = default;
};

/// Dry matter carried to loads that have no sample: the mean of the samples of their field, recent ones
/// counting more, whose uncertainty grows with their age. A random walk of `kHourlyWander` seen through
/// samples of `kSampleSd`, filtered sample by sample; samples taken together average like their number. Its
/// sd is at most `kWidestSd`. Source: Durbin & Koopman 2001, Time Series Analysis by State Space Methods,
/// chapter 2, the local level model (value from memory); its two sizes as above.
class CarriedDryMatter final {
  public:
    /// In the order of time. `sd`: how far this sample may lie from the field's mean, above 0.
    void take(const TimedDryMatter& sample, DryMatter sd = kSampleSd) noexcept;
    /// None without a sample. Before the first one that one speaks, its uncertainty growing backwards.
    [[nodiscard]] std::optional<Belief> at(Instant moment) const noexcept;
    /// ln of what is left of an error made at the first sample. An error of the belief at one moment stays
    /// in that of a later one by exp(the later ln - the earlier).
    [[nodiscard]] double leftOfErrors() const noexcept { return m_left; }

    friend bool operator==(const CarriedDryMatter&, const CarriedDryMatter&) = default;

  private:
    [[nodiscard]] double varianceAt(Instant moment) const noexcept;

    std::optional<Instant> m_seen;
    double m_mean = 0.0;
    double m_variance = 0.0;
    double m_left = 0.0;
};

/// The same from a sample of another field: farther off by what fields differ.
[[nodiscard]] Belief fromAnotherField(Belief belief) noexcept;

/// Where dry matter stands against the goal; the words on the dry side are the stronger ones, for too dry is
/// worse than slightly wet (published: extension practice).
enum class GoalSide : std::uint8_t { wet, slightlyWet, within, dry, veryDry };
constexpr std::array<std::string_view, 5> enumTexts(GoalSide /*side*/) noexcept {
    return {"wet", "slightlyWet", "within", "dry", "veryDry"};
}

struct GoalDistance {
    GoalSide side = GoalSide::within;
    DryMatter off;  ///< beyond the nearer end of the goal; 0 within
};

/// Wet from 3 points below the goal on, very dry from 2 above it (assumed).
[[nodiscard]] GoalDistance distanceFromGoal(DryMatter dryMatter, DryMatter low, DryMatter high) noexcept;

/// The warning, or nothing within the goal.
[[nodiscard]] std::optional<Message> goalWarning(DryMatter dryMatter, DryMatter low, DryMatter high);

}  // namespace treadwell::samples
