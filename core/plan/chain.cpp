#include "core/plan/chain.h"

#include <algorithm>
#include <cmath>

namespace treadwell::plan {

Chain chainFrom(const Inputs& inputs, const PlannedField& field, AsFedRate packing) noexcept {
    const Haulage& haulage = inputs.haulage;
    const AsFedRate harvest = inputs.harvester.rate * inputs.harvester.chopping.fraction();
    Chain chain;
    chain.fill = Seconds{haulage.load.si() / harvest.si()};
    const Seconds road{field.distance.si() / haulage.speed.si()};
    chain.round = chain.fill + 2.0 * road + haulage.tip + haulage.elsewhere;
    chain.rates = {harvest, haulage.load / chain.round * haulage.trucks,
                   haulage.load / haulage.tip * haulage.tippingPlaces, inputs.spreading.rate, packing};
    chain.slowest =
        static_cast<Link>(std::min_element(chain.rates.begin(), chain.rates.end()) - chain.rates.begin());
    chain.delivery = *std::min_element(chain.rates.begin(), chain.rates.end() - 1);
    // A round of exactly three fills needs three trucks, whatever the last digit says.
    chain.trucksToKeepUp = static_cast<int>(std::ceil(chain.round / chain.fill - 1e-9));
    chain.match = haulage.trucks * (chain.fill / chain.round);
    return chain;
}

AsFedRate meanDelivery(const Inputs& inputs) noexcept {
    AsFedMass crop;
    Seconds time{};
    for (const PlannedField& field : inputs.grounds) {
        crop += field.crop;
        time += Seconds{field.crop.si() / chainFrom(inputs, field, inputs.harvester.rate).delivery.si()};
    }
    return crop / time;
}

double queueBusyShare(int trucks, double fillOverAway) noexcept {
    double term = 1.0;
    double sum = 1.0;
    for (int n = 1; n <= trucks; ++n) {
        term *= (trucks - n + 1) * fillOverAway;
        sum += term;
    }
    return 1.0 - 1.0 / sum;
}

}  // namespace treadwell::plan
