#include "core/samples/dry_matter.h"

#include "core/quantity/range.h"
#include "core/samples/codes.h"
#include "core/samples/item.h"
#include "core/stats/square.h"
#include "core/stats/straight_line.h"
#include "core/stats/student.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace treadwell::samples {

namespace {

constexpr DryMatter kAll = DryMatter::fromFraction(1);

using stats::square;

double hoursBetween(Instant a, Instant b) {
    return std::abs(std::chrono::duration<double, std::ratio<3600>>{b - a}.count());
}

}  // namespace

Result<SampledMean> meanOfSamples(std::span<const DryMatter> samples) {
    if (samples.empty()) return fail(code::readingsMissing, "samples");
    const auto n = static_cast<double>(samples.size());
    SampledMean result;
    result.samples = std::ssize(samples);
    for (std::size_t i = 0; i < samples.size(); ++i) {
        if (const auto held = holdsWithin(samples[i], DryMatter{}, kAll, item("samples", i)); !held)
            return Unexpected{held.error()};
        result.mean += samples[i] / n;
    }
    if (samples.size() < 2) {
        result.sd = kSampleSd;
        return result;
    }
    double squares = 0.0;
    for (const DryMatter sample : samples) squares += square((sample - result.mean).fraction());
    result.sd = DryMatter::fromFraction(std::sqrt(squares / (n - 1.0)));
    result.half95 = result.sd * (stats::studentQuantile(0.975, n - 1.0) / std::sqrt(n));
    return result;
}

Result<std::int64_t> samplesFor(DryMatter sd, DryMatter wanted) {
    constexpr DryMatter kMost = DryMatter::fromPercent(20);
    const auto held = firstFailure(holdsWithin(sd, DryMatter{}, kMost, "sd"),
                                   holdsWithin(wanted, DryMatter::fromPercent(0.1), kMost, "wanted"));
    if (!held) return Unexpected{held.error()};
    constexpr double kNormal95 = 1.96;  // as the source rounds it
    constexpr double kRounding = 1e-9;  // (1.96 x / x)^2 must not be a sample more for its last digit
    const double n = std::ceil(square(kNormal95 * (sd / wanted)) - kRounding);
    return std::max<std::int64_t>(1, static_cast<std::int64_t>(n));
}

std::optional<Drift> driftOf(std::span<const TimedDryMatter> samples) {
    if (samples.empty()) return std::nullopt;
    std::vector<stats::Point> points;
    for (const TimedDryMatter& sample : samples) {
        const std::chrono::duration<double, std::ratio<3600>> hours = sample.at - samples.front().at;
        points.push_back({hours.count(), sample.dryMatter.fraction()});
    }
    const auto line = stats::lineThrough(points);
    if (!line) return std::nullopt;
    Drift drift{DryMatter::fromFraction(line->slope), {}, {}, line->points};
    if (const auto interval = line->slopeInterval(0.8)) {
        drift.low80 = DryMatter::fromFraction(interval->low);
        drift.high80 = DryMatter::fromFraction(interval->high);
    }
    return drift;
}

void CarriedDryMatter::take(const TimedDryMatter& sample, DryMatter sd) noexcept {
    const double sampled = square(sd.fraction());
    if (!m_seen) {
        m_mean = sample.dryMatter.fraction();
        m_variance = sampled;
    } else {
        const double before = varianceAt(sample.at);
        const double gain = before / (before + sampled);
        m_mean += gain * (sample.dryMatter.fraction() - m_mean);
        m_variance = before * (1.0 - gain);
        m_left += std::log1p(-gain);
    }
    m_seen = sample.at;
}

double CarriedDryMatter::varianceAt(Instant moment) const noexcept {
    const double grown = m_variance + square(kHourlyWander.fraction()) * hoursBetween(*m_seen, moment);
    return std::min(grown, square(kWidestSd.fraction()));
}

std::optional<Belief> CarriedDryMatter::at(Instant moment) const noexcept {
    if (!m_seen) return std::nullopt;
    return Belief{DryMatter::fromFraction(m_mean), DryMatter::fromFraction(std::sqrt(varianceAt(moment)))};
}

Belief fromAnotherField(Belief belief) noexcept {
    belief.sd = DryMatter::fromFraction(std::hypot(belief.sd.fraction(), kFieldSd.fraction()));
    return belief;
}

GoalDistance distanceFromGoal(DryMatter dryMatter, DryMatter low, DryMatter high) noexcept {
    if (dryMatter < low) {
        const DryMatter off = low - dryMatter;
        return {off < DryMatter::fromPercent(3) ? GoalSide::slightlyWet : GoalSide::wet, off};
    }
    if (dryMatter > high) {
        const DryMatter off = dryMatter - high;
        return {off < DryMatter::fromPercent(2) ? GoalSide::dry : GoalSide::veryDry, off};
    }
    return {};
}

std::optional<Message> goalWarning(DryMatter dryMatter, DryMatter low, DryMatter high) {
    const GoalDistance distance = distanceFromGoal(dryMatter, low, high);
    Code code{};
    switch (distance.side) {
        case GoalSide::within:
            return std::nullopt;
        case GoalSide::slightlyWet:
            code = code::dryMatterSlightlyWet;
            break;
        case GoalSide::wet:
            code = code::dryMatterWet;
            break;
        case GoalSide::dry:
            code = code::dryMatterDry;
            break;
        case GoalSide::veryDry:
            code = code::dryMatterVeryDry;
            break;
    }
    return Message{code, {dryMatter.amount(), low.amount(), high.amount()}};
}

}  // namespace treadwell::samples
