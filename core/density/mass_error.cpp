#include "core/density/mass_error.h"

#include "core/crop/crop.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace treadwell::density {

namespace {

using entries::MassSource;

double square(double x) {
    return x * x;
}

using Weighings = std::map<farm::TruckId, int>;

Weighings weighingsOf(std::span<const season::LoadTipped* const> loads) {
    Weighings weighings;
    for (const season::LoadTipped* load : loads) {
        if (load->load.source == MassSource::weighed && load->load.truck) ++weighings[*load->load.truck];
    }
    return weighings;
}

/// sd of ln(mass) that a truck's usual load has in common where the truck was weighed too.
std::optional<double> knownBy(const Weighings& weighings, const entries::Load& load) {
    if (load.source != MassSource::usual || !load.truck) return std::nullopt;
    const auto found = weighings.find(*load.truck);
    if (found == weighings.end()) return std::nullopt;
    return std::min(crop::kLooseCommonLogSd, crop::kLooseLoadLogSd / std::sqrt(found->second));
}

}  // namespace

MassError massErrorOf(std::span<const season::LoadTipped* const> loads) {
    const Weighings weighings = weighingsOf(loads);
    const double interval = kScaleInterval.kilograms();
    double mass = 0.0, scale = 0.0, common = 0.0, each = 0.0, eachWeighed = 0.0;
    std::map<farm::TruckId, double> usual;
    for (const season::LoadTipped* load : loads) {
        const double load_kg = load->load.mass.kilograms();
        mass += load_kg;
        if (load->load.source == MassSource::weighed) {
            scale += kScaleCommonIntervals * interval;
            eachWeighed += square(kScaleLoadIntervals * interval);
            continue;
        }
        each += square(crop::kLooseLoadLogSd * load_kg);
        if (const auto sd = knownBy(weighings, load->load)) {
            usual[*load->load.truck] += *sd * load_kg;
        } else {
            common += crop::kLooseCommonLogSd * load_kg;
        }
    }
    double notWeighed = square(common) + each;
    for (const auto& [truck, sd] : usual) notWeighed += square(sd);
    return {(square(scale) + eachWeighed) / square(mass), notWeighed / square(mass)};
}

double samplesBehind(std::span<const season::LoadTipped* const> loads) {
    std::set<entries::EntryId> samples;
    for (const season::LoadTipped* load : loads) {
        if (load->sample) samples.insert(*load->sample);
    }
    return static_cast<double>(std::max<std::size_t>(1, samples.size()));
}

}  // namespace treadwell::density
