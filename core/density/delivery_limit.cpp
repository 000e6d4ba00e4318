#include "core/density/delivery_limit.h"

#include "core/quantity/range.h"
#include "core/stats/normal.h"

namespace treadwell::density {

namespace {

constexpr AsFedRate kFastest = AsFedRate::fromTonnesPerHour(5000);

/// The least packing factor whose score reaches `score`; the caller knows that 0 does not.
double packingFactorForScore(const CaseFrame& frame, double score) {
    double low = 0.0, high = 1000.0;
    while (evaluateCase(frame, high).score < score) high *= 2.0;
    for (double middle = 0.5 * (low + high); middle > low && middle < high; middle = 0.5 * (low + high)) {
        (evaluateCase(frame, middle).score < score ? low : high) = middle;
    }
    return high;
}

double strengthOfShares(const Situation& situation) {
    Situation perHour = situation;
    perHour.work = AsFedRate::fromTonnesPerHour(60.0);  // a share of 1 is then a minute a tonne
    const Packing packed =
        packingOf(machineWork(perHour), Length::fromCentimetres(1), DryMatter::fromFraction(1));
    return packed.factor.si;
}

}  // namespace

Result<DeliveryLimit> deliveryLimit(const Situation& situation, const Options& options, Chance wanted) {
    using Outcome = DeliveryLimit::Outcome;
    if (const auto checked = check(situation, options); !checked) return tl::unexpected{checked.error()};
    const auto held = within(wanted, Chance::fromFraction(0.01), Chance::fromFraction(0.99), "chance");
    if (!held) return tl::unexpected{held.error()};

    const CaseFrame frame = caseFrame(situation, options);
    const double score = stats::normalQuantile(wanted.fraction());
    if (evaluateCase(frame, 0.0).score >= score) return DeliveryLimit{Outcome::anyDelivery, kFastest, {}};

    const PackingFactor required{packingFactorForScore(frame, score)};
    const double strength = strengthOfShares(situation);
    if (strength <= 0.0) return DeliveryLimit{Outcome::nothingPacks, {}, required};
    const double ratio = strength / (layerUsed(situation).centimetres() * required.si);
    const AsFedRate rate = AsFedRate::fromTonnesPerHour(60.0 * frame.dryMatter * ratio * ratio);
    if (rate > kFastest) return DeliveryLimit{Outcome::anyDelivery, kFastest, required};
    return DeliveryLimit{Outcome::limited, rate, required};
}

}  // namespace treadwell::density
