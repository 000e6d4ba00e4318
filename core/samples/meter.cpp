#include "core/samples/meter.h"

#include "core/quantity/range.h"
#include "core/samples/item.h"
#include "core/stats/square.h"

#include <cmath>

namespace treadwell::samples {

namespace {

constexpr DryMatter kMeterWettest = DryMatter::fromPercent(5);
constexpr DryMatter kMeterDriest = DryMatter::fromPercent(95);
constexpr double kPriorPairs = 3.0;

using stats::square;

}  // namespace

Result<MeterBias> learnBias(std::span<const MeterPair> pairs) {
    double sum = 0.0;
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        const std::string place = item("pairs", i) + '.';
        const auto held =
            firstFailure(holdsWithin(pairs[i].meter, kMeterWettest, kMeterDriest, place + "meter"),
                         holdsWithin(pairs[i].dish, kMeterWettest, kMeterDriest, place + "dish"));
        if (!held) return Unexpected{held.error()};
        sum += (pairs[i].meter - pairs[i].dish).fraction();
    }
    const auto n = static_cast<double>(pairs.size());
    const double mean = pairs.empty() ? 0.0 : sum / n;
    double squares = kPriorPairs * square(kMeterReadingSd.fraction());
    for (const MeterPair& pair : pairs) squares += square((pair.meter - pair.dish).fraction() - mean);
    const double freedom = kPriorPairs + std::max(0.0, n - 1.0);
    const double scatter = squares / freedom;
    const double known = n / scatter, prior = 1.0 / square(kMeterBiasSd.fraction());
    return MeterBias{DryMatter::fromFraction(known * mean / (known + prior)),
                     DryMatter::fromFraction(std::sqrt(1.0 / (known + prior))),
                     DryMatter::fromFraction(std::sqrt(scatter)), std::ssize(pairs)};
}

Result<Belief> corrected(DryMatter reading, const MeterBias& bias) {
    const auto held = firstFailure(holdsWithin(reading, kMeterWettest, kMeterDriest, "reading"),
                                   holdsWithin(reading - bias.bias, kMeterWettest, kMeterDriest, "reading"));
    if (!held) return Unexpected{held.error()};
    return Belief{reading - bias.bias,
                  DryMatter::fromFraction(std::hypot(bias.sd.fraction(), bias.readingSd.fraction()))};
}

}  // namespace treadwell::samples
