// Fleet search: 12 machines on or off, 5 layers and 6 deliveries, 122,880 cases, the cheapest kept whose
// chance is high enough. Budget 4 ms on one core.
#include "core/density/estimate.h"

#include <benchmark/benchmark.h>

#include <array>
#include <bit>
#include <limits>

namespace {

using namespace treadwell;
using namespace treadwell::density;

constexpr std::array<double, 12> kMasses_kg{21000, 20000, 18000, 16000, 15000, 14000,
                                            12500, 11000, 10000, 9000,  8000,  7000};
constexpr std::array<double, 5> kLayers_cm{10, 12.5, 15, 20, 30};
constexpr std::array<double, 6> kDeliveries_t_h{60, 90, 120, 150, 180, 240};

Situation situation() {
    return {.work = AsFedRate::fromTonnesPerHour(120),
            .dryMatter = DryMatter::fromPercent(35),
            .layer = Length::fromCentimetres(15),
            .meanDepth = Length::fromMetres(3)};
}

struct Best {
    double cost = std::numeric_limits<double>::max();
    double chance = 0.0;
};

/// A chance of 0.6 as a standard score: scores rank as chances do, so only what is kept needs its chance.
constexpr double kEnough = 0.2533471031357997;

template <bool kEveryChance>
void keepBest(const CaseFrame& frame, double strength, double cost, Best& best) {
    for (const double delivery : kDeliveries_t_h) {
        const double perTonne = strength * std::sqrt(60.0 / delivery);
        for (const double layer : kLayers_cm) {
            const CaseValue value = evaluateCase(frame, packingFactorOf(perTonne, frame.dryMatter, layer));
            const double caseCost = cost / delivery;
            if constexpr (kEveryChance) {
                const double chance = value.chance();
                if (chance >= 0.6 && caseCost < best.cost) best = {caseCost, chance};
            } else if (value.score >= kEnough && caseCost < best.cost) {
                best = {caseCost, value.chance()};
            }
        }
    }
}

template <bool kEveryChance>
void fleetSearch(benchmark::State& state) {
    const CaseFrame frame = caseFrame(situation(), {});
    for (auto _ : state) {
        Best best;
        for (unsigned fleet = 0; fleet < (1U << kMasses_kg.size()); ++fleet) {
            std::array<MachineTime, kMasses_kg.size()> machines;
            std::size_t count = 0;
            for (unsigned left = fleet; left != 0; left &= left - 1) {
                machines[count++] = {kMasses_kg[static_cast<std::size_t>(std::countr_zero(left))], 1.0};
            }
            const double strength = strongestPrefix({machines.data(), count}).value;
            keepBest<kEveryChance>(frame, strength, static_cast<double>(count), best);
        }
        benchmark::DoNotOptimize(best);
    }
    state.SetItemsProcessed(state.iterations() * 122'880);
}
BENCHMARK(fleetSearch<true>)->Name("fleetSearchEveryChance")->Unit(benchmark::kMillisecond);
BENCHMARK(fleetSearch<false>)->Name("fleetSearchByScore")->Unit(benchmark::kMillisecond);

void oneEstimate(benchmark::State& state) {
    Situation example = situation();
    example.machines = {{.mass = MachineMass::fromTonnes(14)},
                        {.mass = MachineMass::fromTonnes(10), .share = Share::fromPercent(50)}};
    for (auto _ : state) benchmark::DoNotOptimize(estimate(example));
}
BENCHMARK(oneEstimate)->Unit(benchmark::kMicrosecond);

}  // namespace
