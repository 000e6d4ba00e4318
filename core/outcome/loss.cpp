#include "core/outcome/loss.h"

#include "core/quantity/range.h"

#include <algorithm>
#include <array>
#include <limits>

namespace treadwell::outcome {

namespace {

constexpr LossRow row(double poundsPerCubicFoot, double percent) {
    return {DryDensity::fromPoundsPerCubicFoot(poundsPerCubicFoot), Loss::fromPercent(percent)};
}

constexpr std::array kRows{row(10, 20.2), row(14, 16.8), row(15, 15.9),
                           row(16, 15.1), row(18, 13.4), row(22, 10.0)};

struct Line {
    double intercept;    ///< fraction of dry matter
    double slope_m3_kg;  ///< for each kg DM/m3
};

/// Ordinary least squares.
consteval Line lineThroughRows() {
    double x = 0.0, y = 0.0, xx = 0.0, xy = 0.0;
    for (const LossRow& each : kRows) {
        x += each.density.si();
        y += each.loss.fraction();
        xx += each.density.si() * each.density.si();
        xy += each.density.si() * each.loss.fraction();
    }
    const double n = kRows.size();
    const double slope = (n * xy - x * y) / (n * xx - x * x);
    return {(y - slope * x) / n, slope};
}

constexpr Line kLine = lineThroughRows();

template <class Part>
Result<double> costLeft(double cost, Part lost, const char* field) {
    const auto checkedCost = within(cost, 0.0, std::numeric_limits<double>::max() / 1000.0, "cost");
    if (!checkedCost) return checkedCost;
    const auto checkedLoss = within(lost, Part{}, Part::fromFraction(0.99), field);
    if (!checkedLoss) return tl::unexpected{checkedLoss.error()};
    return cost / (1.0 - lost.fraction());
}

}  // namespace

std::span<const LossRow> lossRows() noexcept {
    return kRows;
}

Result<Loss> lossAt(DryDensity density) {
    return within(density, kRows.front().density, kRows.back().density, "density").map([](DryDensity held) {
        return Loss::fromFraction(kLine.intercept + kLine.slope_m3_kg * held.si());
    });
}

Result<LossSaved> lossSaved(DryDensity before, DryDensity after) {
    const DryDensity most = DryDensity::fromKilogramsPerCubicMetre(1000);
    if (const auto held = within(before, DryDensity{}, most, "before"); !held)
        return tl::unexpected{held.error()};
    if (const auto held = within(after, DryDensity{}, most, "after"); !held)
        return tl::unexpected{held.error()};
    const DryDensity lowest = kRows.front().density, highest = kRows.back().density;
    const DryDensity from = std::clamp(before, lowest, highest), to = std::clamp(after, lowest, highest);
    return LossSaved{Loss::fromFraction(kLine.slope_m3_kg * (from - to).si()), from != before || to != after};
}

Result<double> costPerTonneLeft(double cost, Loss loss) {
    return costLeft(cost, loss, "loss");
}

Result<double> costPerTonneLeft(double cost, Shrink shrink) {
    return costLeft(cost, shrink, "shrink");
}

}  // namespace treadwell::outcome
