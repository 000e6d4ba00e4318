// The layers of one silo that 100,000 entries fill over 60 days. Read against walking over the loads and
// their tractors' stretches, and against folding the season; live, one more entry costs its own day.
#include "core/packing/layer_history.h"
#include "tests/bench/many_entries.h"

#include <benchmark/benchmark.h>

namespace {

using namespace treadwell;
using namespace treadwell::bench;

const season::Season& manyDays() {
    static const season::Season kSeason = season::Season::fold(manyEntries());
    return kSeason;
}

void foldEntries(benchmark::State& state) {
    for (auto _ : state) {
        auto season = season::Season::fold(manyEntries());
        benchmark::DoNotOptimize(&season);
    }
}
BENCHMARK(foldEntries)->Unit(benchmark::kMillisecond);

void sumLoads(benchmark::State& state) {
    for (auto _ : state) {
        DryMass dry;
        for (const auto& day : manyDays().days()) {
            for (const season::LoadTipped& load : day->loads) dry += load.dryMass();
        }
        benchmark::DoNotOptimize(&dry);
    }
}
BENCHMARK(sumLoads)->Unit(benchmark::kMillisecond);

void layAll(benchmark::State& state, farm::FillingWay way) {
    farm::Silo silo = someSilo();
    silo.filling = way;
    std::size_t layers = 0;
    for (auto _ : state) {
        const auto book = packing::layersOf(manyDays(), silo, manyDays().days().back()->end);
        layers = book.layers.size();
    }
    state.counters["layers"] = static_cast<double>(layers);
}
BENCHMARK_CAPTURE(layAll, lifts, farm::FillingWay::lifts)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(layAll, wedge, farm::FillingWay::wedge)->Unit(benchmark::kMillisecond);

void layOneMoreEntry(benchmark::State& state) {
    const Instant now = manyDays().days().back()->loads.back().at + std::chrono::minutes{1};
    const auto later = manyDays().with(loadNumber(kEntries + 1, now));
    packing::LayerHistory history;
    const auto before = history.at(manyDays(), someSilo(), now);
    for (auto _ : state) {
        auto book = history.at(later, someSilo(), now);
        benchmark::DoNotOptimize(&book);
    }
}
BENCHMARK(layOneMoreEntry)->Unit(benchmark::kMillisecond);

}  // namespace
