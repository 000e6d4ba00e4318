#include "core/plan/compare.h"

#include "core/plan/codes.h"

#include <algorithm>
#include <cmath>

namespace treadwell::plan {

namespace {

bool differ(double a, double b) {
    constexpr double kWorthNaming = 0.01;
    return std::abs(a - b) > kWorthNaming * std::max(std::abs(a), std::abs(b));
}

}  // namespace

Result<Summary> summaryOf(const Inputs& inputs) {
    const auto fit = fitOf(inputs);
    if (!fit) return Unexpected{fit.error()};
    return payOf(inputs).map([&](const Pay& pay) {
        const Fleet& fleet = pay.planned.fleet;
        const density::Distribution& density = pay.planned.estimate.density;
        Summary summary;
        summary.name = inputs.name;
        summary.delivery = fleet.delivery;
        summary.days = fit->crop / (fleet.delivery * inputs.workday);
        summary.leftOver = fit->leftOver.median;
        summary.fits = fit->fits;
        summary.low80 = density.low80();
        summary.density = density.median();
        summary.high80 = density.high80();
        summary.chance = pay.planned.estimate.chance;
        summary.loss = fleet.loss;
        summary.hour = fleet.hour;
        summary.margin_per_t_dm = fleet.margin_per_t_dm;
        return summary;
    });
}

std::vector<Message> differencesOf(const Summary& first, const Summary& other) {
    std::vector<Message> all;
    if (differ(first.density.si(), other.density.si())) {
        all.push_back({code::planDiffersInDensity,
                       {other.name, other.density.amount(), first.density.amount(), other.chance.amount(),
                        first.chance.amount()}});
    }
    if (differ(first.days, other.days))
        all.push_back({code::planDiffersInDays, {other.name, other.days, first.days}});
    if (differ(first.leftOver.si(), other.leftOver.si())) {
        all.push_back(
            {code::planDiffersInRoom, {other.name, other.leftOver.amount(), first.leftOver.amount()}});
    }
    if (differ(first.hour.si(), other.hour.si()))
        all.push_back({code::planDiffersInCost, {other.name, other.hour.amount(), first.hour.amount()}});
    if (differ(first.margin_per_t_dm, other.margin_per_t_dm)) {
        all.push_back(
            {code::planDiffersInMargin, {other.name, other.margin_per_t_dm, first.margin_per_t_dm}});
    }
    if (all.empty()) all.push_back({code::planDiffersInNothing, {other.name}});
    return all;
}

}  // namespace treadwell::plan
