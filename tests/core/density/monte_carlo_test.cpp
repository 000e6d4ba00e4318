#include "core/density/estimate.h"
#include "core/stats/normal.h"
#include "tests/core/density/example.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>

namespace treadwell::density {
namespace {

constexpr std::size_t kEqualSlices = 8000;

/// Standard normal numbers, one from each of kEqualSlices slices of equal chance, in random order: what they
/// give scatters far less than free draws do.
std::vector<double> sliced(std::mt19937_64& draw) {
    std::vector<double> numbers(kEqualSlices);
    for (std::size_t i = 0; i < kEqualSlices; ++i) {
        numbers[i] = stats::normalQuantile((static_cast<double>(i) + 0.5) / kEqualSlices);
    }
    std::shuffle(numbers.begin(), numbers.end(), draw);
    return numbers;
}

Situation base() {
    Situation situation = exampleSituation();
    situation.layer = Length::fromCentimetres(20);
    PackedMass packed{AsFedMass::fromTonnes(100), {Seconds{100 * 60 * 0.6}, Seconds{100 * 60 * 0.4}}};
    situation.work = packed;
    situation.machines = {{.mass = MachineMass::fromTonnes(14)}, {.mass = MachineMass::fromTonnes(11)}};
    return situation;
}

struct Sds {
    double machineMass = 0.0, layer = 0.0, packingTime = 0.0, dryMatter = 0.0;
};

/// sd of ln(density) of the engine itself, its entries drawn about `situation`.
double simulated(const Situation& situation, const Sds& sds) {
    std::mt19937_64 draw{25112026};
    const auto mass = sliced(draw), layer = sliced(draw), time = sliced(draw), dry = sliced(draw);
    double sum = 0.0, squares = 0.0;
    for (std::size_t i = 0; i < kEqualSlices; ++i) {
        Situation drawn = situation;
        for (Machine& machine : drawn.machines)
            machine.mass = machine.mass * std::exp(sds.machineMass * mass[i]);
        drawn.layer = *situation.layer * std::exp(sds.layer * layer[i]);
        auto& packed = std::get<PackedMass>(drawn.work);
        for (Seconds& packing : packed.packing) packing *= std::exp(sds.packingTime * time[i]);
        drawn.dryMatter = situation.dryMatter * std::exp(sds.dryMatter * dry[i]);
        const double value = std::log(estimate(drawn).value().density.median().si());
        sum += value;
        squares += value * value;
    }
    return std::sqrt(squares / kEqualSlices - (sum / kEqualSlices) * (sum / kEqualSlices));
}

double propagated(const Situation& situation, const Sds& sds) {
    Options options;
    options.entries = {.machineMass = sds.machineMass,
                       .layer = sds.layer,
                       .packingTime = sds.packingTime,
                       .dryMatter = sds.dryMatter};
    const InputParts parts = estimate(situation, options).value().inputs;
    return std::sqrt(parts.machineMass + parts.layer + parts.packingTime + parts.dryMatter);
}

TEST(MonteCarlo, PropagationHoldsForEachEntryAloneAndForAllTogether) {
    const double dry = dryMatterLogSd(DryMatter::fromPercent(35), samples::kSampleSd);
    const std::vector<Sds> cases{{.machineMass = kMachineMassLogSd},
                                 {.layer = kLayerSeenLogSd},
                                 {.packingTime = kPackingTimeLogSd},
                                 {.dryMatter = dry},
                                 {kMachineMassLogSd, kLayerSeenLogSd, kPackingTimeLogSd, dry},
                                 {kMachineMassLogSd, kLayerByLoadsLogSd, 0.2, 0.5 * dry}};
    for (std::size_t i = 0; i < cases.size(); ++i) {
        const double exact = simulated(base(), cases[i]);
        EXPECT_NEAR(propagated(base(), cases[i]), exact, 0.02 * exact) << "case " << i;
    }
}

// Where the thickness meets its clamp, and where the limit of saturation binds, the truth spreads less than
// the first order says: the band errs on the wide side.
TEST(MonteCarlo, BeyondTheClampsTheBandIsTooWideNotTooNarrow) {
    Situation thin = base();
    thin.layer = Length::fromCentimetres(12);
    const Sds unseen{.layer = kLayerAssumedLogSd};
    EXPECT_LT(simulated(thin, unseen), 0.9 * propagated(thin, unseen));
    Situation wet = base();
    wet.dryMatter = DryMatter::fromPercent(21);
    const Sds time{.packingTime = 0.2};
    EXPECT_LT(simulated(wet, time), 0.9 * propagated(wet, time));
}

}  // namespace
}  // namespace treadwell::density
