#pragma once

#include "core/samples/chop.h"
#include "core/samples/degree_days.h"
#include "core/samples/dry_down.h"
#include "core/samples/kernels.h"
#include "core/season/season.h"

#include <optional>
#include <string>
#include <vector>

namespace treadwell::season {

// What the samples of a season say, for screens, sheets and the command line
// alike. Facts after `until` are not seen.

/// How the harvester was set: each part as it was last set.
struct ChopInForce {
    Instant since;  ///< of the last change
    std::optional<Length> length;
    std::optional<Length> rollGap;
    std::optional<Length> cuttingHeight;
    samples::Processor processor = samples::Processor::rolls;
};
[[nodiscard]] std::optional<ChopInForce> chopInForce(const Season& season, Instant until);

/// The farm's own ranges as last set, or the usual ones.
[[nodiscard]] samples::ChopRanges chopRangesFor(const Season& season, crop::Crop crop,
                                                samples::Processor processor, Instant until);

/// The sieve tests of one field, or of no field in particular, on one day and
/// one stack, pooled and read against the farm's ranges and the setting in
/// force at the last of them.
struct ChopOfField {
    std::optional<farm::FieldId> field;
    samples::SieveParts parts;
    std::optional<Length> topLength;  ///< mean of those that were measured
    samples::ChopRanges ranges;
    std::optional<ChopInForce> setting;
    Instant last;

    [[nodiscard]] std::vector<Message> advice() const;
};
[[nodiscard]] std::vector<ChopOfField> chopOf(const Season& season, const Day& day, Instant until);

/// Mean length of each day on which the sieves gave one, by the log-normal line
/// of all its tests on the stack that was used most.
[[nodiscard]] std::vector<samples::DayLength> chopByDay(const Season& season, Instant until);

struct ScoreOfField {
    Instant at;
    std::optional<farm::FieldId> field;
    samples::ProcessingScore score;
};

/// The kernels of a day: counts in cups by material, and scores.
struct KernelsOfDay {
    std::vector<samples::CupMean> cups;
    std::vector<ScoreOfField> scores;
    std::vector<Message> advice;  ///< on the gap of the rolls, by the worst of what was found fresh
};
[[nodiscard]] KernelsOfDay kernelsOf(const Season& season, const Day& day, Instant until);

/// What is known of a standing field, each thing as it was last seen.
struct FieldSeen {
    std::optional<LocalDay> planted;
    std::optional<LocalDay> silked;
    std::optional<std::string> hybrid;
    std::optional<std::int64_t> hybridDays;
    std::optional<Share> milkLine;
    std::vector<samples::FieldSample> samples;  ///< of whole plants, by time
};
[[nodiscard]] FieldSeen fieldSeen(const Season& season, farm::FieldId field, Instant until);

/// One a day, by date; the last entry of a day speaks.
[[nodiscard]] std::vector<samples::DayTemperatures> temperaturesOf(const Season& season, Instant until);

/// When a field will be ready, by each way that its observations allow.
struct FieldOutlook {
    FieldSeen seen;
    std::optional<samples::DryDown> dryDown;
    std::optional<samples::ReachDays> reachesLow;  ///< the goal's ends, by its samples
    std::optional<samples::ReachDays> reachesHigh;
    std::optional<samples::WarmthReached> byWarmth;  ///< 32 % dry matter, by warmth since silking
    std::optional<samples::PlantingWindow> byPlanting;
    std::optional<samples::MilkLineSays> milkLine;
    std::vector<Message> notes;  ///< what could not be reckoned, and why
};
[[nodiscard]] FieldOutlook outlookOf(const Season& season, farm::FieldId field, Instant until);

}  // namespace treadwell::season
