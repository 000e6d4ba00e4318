#include "core/packing/pace.h"

#include <algorithm>
#include <cmath>

namespace treadwell::packing {

namespace {

double medianOf(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    if (values.size() % 2 == 1) return *middle;
    return (*middle + *std::max_element(values.begin(), middle)) / 2.0;
}

/// Coefficient of variation; 0 for a single gap.
double variation(const std::vector<double>& gaps) {
    const auto n = static_cast<double>(gaps.size());
    double sum = 0;
    for (const double gap : gaps) sum += gap;
    const double mean = sum / n;
    double squares = 0;
    for (const double gap : gaps) squares += (gap - mean) * (gap - mean);
    return n < 2 || !(mean > 0) ? 0.0 : std::sqrt(squares / (n - 1)) / mean;
}

}  // namespace

std::optional<Pace> paceAt(const season::Season& season, const season::Rolling& rolling) {
    const farm::SiloId silo = rolling.silo;
    const Instant now = rolling.at;
    const Instant midnight = season.zone().startOf(season.zone().dayOf(now));
    auto loads = season::loadsOf(season, silo, midnight, now + std::chrono::microseconds{1});
    if (std::ssize(loads) < kFewestPaceLoads) return std::nullopt;
    // One load more than counted, as each counts with the gap before it.
    if (std::ssize(loads) > kPaceLoads + 1) loads.erase(loads.begin(), loads.end() - (kPaceLoads + 1));

    Pace pace;
    AsFedMass mass;
    std::vector<double> gaps;
    for (std::size_t i = 1; i < loads.size(); ++i) {
        gaps.push_back(season::unpaused(season, silo, loads[i - 1]->at, loads[i]->at).count());
        mass += loads[i]->load.mass;
    }
    const double median = medianOf(gaps);
    if (!(median > 0)) return std::nullopt;  // loads logged in one moment say nothing of a pace
    double time = 0;
    for (double& gap : gaps) {
        gap = std::min(gap, 3 * median);
        time += gap;
    }
    const double open = season::unpaused(season, silo, loads.back()->at, now).count();
    if (open > median) time += std::min(open, 3 * median);

    for (const season::TractorNow& tractor : rolling.tractors) {
        if (tractor.silo == silo) pace.packing += tractor.packing.fraction();
    }
    pace.loads = std::ssize(gaps);
    pace.delivery = mass / Seconds{time};
    pace.intensity = Seconds{pace.packing * time} / mass;
    pace.lastLoad = loads.back()->load.mass;
    pace.sinceLast = std::min(pace.lastLoad, pace.delivery * Seconds{open});
    pace.logSd = variation(gaps) / std::sqrt(static_cast<double>(gaps.size()));
    return pace;
}

Share stillToCome(const Layer& layer, const LayerBook& book, const Pace& pace) noexcept {
    if (layer.buried >= Share::fromFraction(1)) return {};
    const double phase = (pace.sinceLast - pace.lastLoad / 2.0) / book.reach;
    return Share::fromFraction(std::clamp(1.0 - layer.buried.fraction() - phase, 0.0, 1.0));
}

}  // namespace treadwell::packing
