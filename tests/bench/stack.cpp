// 400 layers from the top down, for level layers, on a ramp, and on a ramp where the limit binds. Budget 50
// us.
#include "core/density/stack.h"

#include "tests/support/season_maker.h"

#include <benchmark/benchmark.h>

namespace {

using namespace treadwell;
using namespace treadwell::density;

farm::Silo silo(farm::FillingWay way) {
    farm::Silo silo = testing_support::someSilo();
    silo.filling = way;
    return silo;
}

/// Layers that fill about nine tenths of it, each packed otherwise.
std::vector<LaidLayer> layers(double limit) {
    std::vector<LaidLayer> layers;
    for (int i = 0; i < 400; ++i) {
        layers.push_back(
            {DryMass::fromKilograms(1200), DryDensity::fromSi(200 + i % 50), DryDensity::fromSi(limit)});
    }
    return layers;
}

void stack(benchmark::State& state, farm::FillingWay way, double limit, Filled filled) {
    const farm::Silo bunker = silo(way);
    const std::vector<LaidLayer> laid = layers(limit);
    for (auto _ : state) {
        auto result = stackOf(bunker, laid, filled);
        benchmark::DoNotOptimize(&result);
    }
}
BENCHMARK_CAPTURE(stack, lifts, farm::FillingWay::lifts, 366, Filled::whenFull)
    ->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(stack, ramp, farm::FillingWay::wedge, 366, Filled::whenFull)->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(stack, rampToday, farm::FillingWay::wedge, 366, Filled::asItLies)
    ->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(stack, rampLimited, farm::FillingWay::wedge, 220, Filled::asItLies)
    ->Unit(benchmark::kMicrosecond);

}  // namespace
