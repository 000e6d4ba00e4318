// The best of 122,880 fleets: 12 tractors on or off, 30 numbers of trucks. Budget of the search over as many
// cases, chance included: 4 ms on one core; read against fleetSearchByScore in bench_fleet_search. Beside it
// the same by every case one by one, and a simulated day: thousands a second.
#include "core/plan/fleet.h"
#include "core/plan/simulation.h"

#include <benchmark/benchmark.h>

#include <limits>

namespace {

using namespace treadwell;
using namespace treadwell::plan;

ExpectedLoss loss() {
    const Inputs inputs = exampleInputs();
    const auto situation = situationOf(inputs, AsFedRate::fromTonnesPerHour(120), meanDepthOf(inputs));
    return {density::caseFrame(situation, {}), inputs.prices};
}

FleetChoice choice() {
    FleetChoice all{.tractors = {}, .trucks = {}, .layer_cm = 15, .dryMatter = 0.35, .value_per_t_dm = 150};
    for (int i = 0; i < 12; ++i) all.tractors.push_back({21'000.0 - 1'200 * i, 1.0, 75.0 - 2 * i});
    for (int i = 1; i <= 30; ++i) all.trucks.push_back({i, 220.0 * i / (i + 6), 380.0 + 65 * i});
    return all;
}

void bestOfAll(benchmark::State& state) {
    const ExpectedLoss expected = loss();
    const FleetChoice all = choice();
    for (auto _ : state) benchmark::DoNotOptimize(bestFleet(all, expected));
    state.SetItemsProcessed(state.iterations() * 122'880);
}
BENCHMARK(bestOfAll)->Unit(benchmark::kMillisecond);

void everyCase(benchmark::State& state) {
    const ExpectedLoss expected = loss();
    const FleetChoice all = choice();
    for (auto _ : state) {
        double best = -std::numeric_limits<double>::max();
        for (std::uint32_t fleet = 1; fleet < 1U << 12U; ++fleet) {
            for (std::size_t trucks = 0; trucks < all.trucks.size(); ++trucks)
                best = std::max(best, marginOf(all, expected, fleet, trucks));
        }
        benchmark::DoNotOptimize(best);
    }
    state.SetItemsProcessed(state.iterations() * 122'880);
}
BENCHMARK(everyCase)->Unit(benchmark::kMillisecond);

void oneDay(benchmark::State& state) {
    const Inputs inputs = exampleInputs();
    const Round round = roundOf(inputs, inputs.grounds[0]);
    std::uint64_t day = 0;
    for (auto _ : state) benchmark::DoNotOptimize(simulateDay(round, std::mt19937_64{day++}));
}
BENCHMARK(oneDay)->Unit(benchmark::kMicrosecond);

}  // namespace
