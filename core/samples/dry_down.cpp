#include "core/samples/dry_down.h"

#include "core/quantity/range.h"
#include "core/samples/codes.h"
#include "core/samples/item.h"
#include "core/stats/normal.h"

#include <Eigen/Dense>

#include <cmath>

namespace treadwell::samples {

namespace {

using LocalDays = std::chrono::local_days;
using Days = std::chrono::days;

constexpr DryMatter kWettest = DryMatter::fromPercent(10);
constexpr DryMatter kDriest = DryMatter::fromPercent(90);
constexpr int kHorizonDays = 120;

double daysFrom(LocalDay origin, LocalDay day) {
    return static_cast<double>((LocalDays{day} - LocalDays{origin}).count());
}

Result<void> check(std::span<const FieldSample> samples, const DryDownPrior& prior) {
    if (samples.empty()) return fail(code::readingsMissing, "samples");
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const auto held = holdsWithin(samples[i].dryMatter, kWettest, kDriest, item("samples", i));
        if (!held) return held;
    }
    const auto rate = [](double points) { return DryingRate::fromPointsPerDay(points); };
    return firstFailure(holdsWithin(prior.rate, rate(0), rate(3), "prior.rate"),
                        holdsWithin(prior.rateSd, rate(0.001), rate(3), "prior.rateSd"),
                        holdsWithin(prior.sampleSd, DryMatter::fromPercent(0.1), DryMatter::fromPercent(10),
                                    "prior.sampleSd"));
}

LocalDay meanDay(std::span<const FieldSample> samples) {
    double sum = 0.0;
    for (const FieldSample& sample : samples) sum += daysFrom(samples.front().day, sample.day);
    const auto days = std::lround(sum / static_cast<double>(samples.size()));
    return LocalDay{LocalDays{samples.front().day} + Days{days}};
}

/// The first day on which the field has reached `goal` with at least `chance`.
std::optional<LocalDay> dayAtChance(const DryDown& field, DryMatter goal, double chance) {
    const double z = stats::normalQuantile(chance);
    for (int i = -kHorizonDays; i <= kHorizonDays; ++i) {
        const LocalDay day{LocalDays{field.origin} + Days{i}};
        const Belief belief = field.on(day);
        if (belief.mean.fraction() - z * belief.sd.fraction() >= goal.fraction()) {
            if (i == -kHorizonDays) return std::nullopt;
            return day;
        }
    }
    return std::nullopt;
}

}  // namespace

Belief DryDown::on(LocalDay day) const noexcept {
    const double days = daysFrom(origin, day);
    const double perDay = rate.pointsPerDay() / 100.0, perDaySd = rateSd.pointsPerDay() / 100.0;
    const double variance = levelSd.fraction() * levelSd.fraction() + days * days * perDaySd * perDaySd +
                            2.0 * days * correlation * levelSd.fraction() * perDaySd;
    return {DryMatter::fromFraction(level.fraction() + days * perDay),
            DryMatter::fromFraction(std::sqrt(std::max(0.0, variance)))};
}

Result<DryDown> refitDryDown(std::span<const FieldSample> samples, const DryDownPrior& prior) {
    if (const auto checked = check(samples, prior); !checked) return Unexpected{checked.error()};
    DryDown fit;
    fit.origin = meanDay(samples);
    fit.samples = std::ssize(samples);
    // In points and days. The prior's precision stands on the rate alone.
    const double weight = 1.0 / std::pow(prior.sampleSd.percent(), 2);
    const double priorWeight = 1.0 / std::pow(prior.rateSd.pointsPerDay(), 2);
    Eigen::Matrix2d precision = Eigen::Matrix2d::Zero();
    precision(1, 1) = priorWeight;
    Eigen::Vector2d information{0.0, priorWeight * prior.rate.pointsPerDay()};
    for (const FieldSample& sample : samples) {
        const Eigen::Vector2d design{1.0, daysFrom(fit.origin, sample.day)};
        precision += weight * design * design.transpose();
        information += weight * sample.dryMatter.percent() * design;
    }
    const Eigen::Matrix2d covariance = precision.inverse();
    const Eigen::Vector2d mean = covariance * information;
    fit.level = DryMatter::fromPercent(mean(0));
    fit.levelSd = DryMatter::fromPercent(std::sqrt(covariance(0, 0)));
    fit.rate = DryingRate::fromPointsPerDay(mean(1));
    fit.rateSd = DryingRate::fromPointsPerDay(std::sqrt(covariance(1, 1)));
    fit.correlation = covariance(0, 1) / std::sqrt(covariance(0, 0) * covariance(1, 1));
    return fit;
}

Result<ReachDays> whenReaches(const DryDown& field, DryMatter goal) {
    if (const auto held = within(goal, kWettest, kDriest, "goal"); !held) return Unexpected{held.error()};
    return ReachDays{dayAtChance(field, goal, 0.1), dayAtChance(field, goal, 0.5),
                     dayAtChance(field, goal, 0.9)};
}

Result<double> daysToDry(DryMatter from, DryMatter to, DryingRate rate) {
    const auto held = firstFailure(
        holdsWithin(from, kWettest, kDriest, "from"), holdsWithin(to, kWettest, kDriest, "to"),
        holdsWithin(rate, DryingRate::fromPointsPerDay(0.05), DryingRate::fromPointsPerDay(3), "rate"));
    if (!held) return Unexpected{held.error()};
    return (to - from).percent() / rate.pointsPerDay();
}

Result<MilkLineSays> milkLineSays(Share line) {
    const auto held = within(line, Share{}, Share::fromFraction(1), "line");
    if (!held) return Unexpected{held.error()};
    if (line < Share::fromFraction(1.0 / 3.0 - 1e-9)) return MilkLineSays{};
    return MilkLineSays{true, DryMatter::fromPercent(100 - 72), DryMatter::fromPercent(100 - 52)};
}

PlantingWindow windowFromPlanting(LocalDay planted) noexcept {
    return {LocalDay{LocalDays{planted} + Days{110}}, LocalDay{LocalDays{planted} + Days{115}}};
}

}  // namespace treadwell::samples
