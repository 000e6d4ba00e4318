#pragma once

#include "core/base/error.h"
#include "core/base/instant.h"
#include "core/quantity/fraction.h"
#include "core/quantity/weather.h"
#include "core/samples/dry_matter.h"

#include <optional>
#include <span>

namespace treadwell::samples {

/// Dry matter of a standing field on a day, from whole plants.
struct FieldSample {
    LocalDay day;
    DryMatter dryMatter;
};

/// What is expected of a field before it is sampled: 0.5 points a day, 0.3-0.7 as +-2 sd (published,
/// extension), and what one sample of ten plants or so is worth (assumed).
struct DryDownPrior {
    DryingRate rate = DryingRate::fromPointsPerDay(0.5);
    DryingRate rateSd = DryingRate::fromPointsPerDay(0.1);
    DryMatter sampleSd = DryMatter::fromPercent(1.5);
};

/// A field's dry matter as a line in time, both its parts uncertain together.
struct DryDown {
    LocalDay origin;  ///< mean day of the samples, to the day
    DryMatter level;  ///< on that day
    DryMatter levelSd;
    DryingRate rate;
    DryingRate rateSd;
    double correlation = 0.0;  ///< of level and rate
    std::int64_t samples = 0;

    /// The field's dry matter on a day.
    [[nodiscard]] Belief on(LocalDay day) const noexcept;
};

/// The line through a field's samples with the published rate as prior and none on the level: normal
/// posterior in closed form. With one sample the rate is the prior's. Source: Gelman et al. 2013, Bayesian
/// Data Analysis, 14.8 (value from memory). Errors: readingsMissing; valueNotFinite; valueOutOfRange outside
/// 10-90 % (`samples[i]`) or for a prior rate outside 0-3, its sd 0.001-3 points a day, a sample sd 0.1-10
/// points.
[[nodiscard]] Result<DryDown> refitDryDown(std::span<const FieldSample> samples,
                                           const DryDownPrior& prior = {});

/// The days on which a field reaches a dry matter: as likely before as after, and the central 80 %. An end
/// more than 120 days from the samples is not given.
struct ReachDays {
    std::optional<LocalDay> early;
    std::optional<LocalDay> median;
    std::optional<LocalDay> late;
};
/// Errors: valueNotFinite, valueOutOfRange outside 10-90 % (`goal`).
[[nodiscard]] Result<ReachDays> whenReaches(const DryDown& field, DryMatter goal);

/// Days for a dry matter to rise at a rate. Errors: valueNotFinite; valueOutOfRange unless both are 10-90 %
/// and the rate is 0.05-3 points a day (`from`, `to`, `rate`).
[[nodiscard]] Result<double> daysToDry(DryMatter from, DryMatter to, DryingRate rate);

/// What a milk line says: only whether to begin sampling, for at half line the moisture of whole plants spans
/// 52-72 % (published). A third is the usual trigger (common practice). `line`: how far the starch has come
/// from the crown, 0 to 1.
struct MilkLineSays {
    bool sampleNow = false;
    DryMatter wettest;  ///< what may be expected at half line; both 0 below a third
    DryMatter driest;
};
/// Errors: valueNotFinite, valueOutOfRange (`line`).
[[nodiscard]] Result<MilkLineSays> milkLineSays(Share line);

/// Days from planting to harvest: about 110-115 (common practice).
struct PlantingWindow {
    LocalDay first;
    LocalDay last;
};
[[nodiscard]] PlantingWindow windowFromPlanting(LocalDay planted) noexcept;

}  // namespace treadwell::samples
