// Questions to the density field of 400 layers on a ramp, read against the bare lookup among 400 edges and
// against the stack that the field stands on.
#include "core/density/field.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>

namespace {

using namespace treadwell;
using namespace treadwell::density;

farm::Silo ramp() {
    farm::Silo silo;
    silo.length = Length::fromMetres(60);
    silo.width = Length::fromMetres(14);
    silo.wallHeight = Length::fromMetres(3.5);
    silo.plannedDepth = Length::fromMetres(3);
    return silo;
}

std::vector<LaidLayer> laid() {
    std::vector<LaidLayer> layers;
    for (int i = 0; i < 400; ++i) {
        layers.push_back(
            {DryMass::fromKilograms(1200), DryDensity::fromSi(200 + i % 50), DryDensity::fromSi(366)});
    }
    return layers;
}

Field field() {
    std::vector<FieldLayer> layers;
    for (const LaidLayer& layer : laid())
        layers.push_back({{layer.bracket.si(), layer.limit.si()}, layer.limit, 0.02, 0.01});
    return {ramp(), stackOf(ramp(), laid(), Filled::whenFull).value(), std::move(layers), {}};
}

/// Places spread over the silo without a pattern.
Position place(std::size_t i) {
    const auto part = [i](double step) { return std::fmod(static_cast<double>(i) * step, 1.0); };
    return {Length::fromMetres(50 * part(0.618)), Length::fromMetres(2.5 * part(0.414)),
            Length::fromMetres(14 * part(0.732))};
}

void bareLookup(benchmark::State& state) {
    std::vector<double> edges(400);
    for (std::size_t i = 0; i < edges.size(); ++i) edges[i] = 0.15 * static_cast<double>(i);
    std::size_t i = 0;
    for (auto _ : state) {
        const Position at = place(++i);
        auto found = std::lower_bound(edges.begin(), edges.end(), at.along.si() + 3 * at.up.si());
        benchmark::DoNotOptimize(found);
    }
}
BENCHMARK(bareLookup);

void onePlace(benchmark::State& state) {
    const Field asked = field();
    std::size_t i = 0;
    for (auto _ : state) {
        auto point = asked.at(place(++i));
        benchmark::DoNotOptimize(&point);
    }
}
BENCHMARK(onePlace);

void stackBelow(benchmark::State& state) {
    for (auto _ : state) {
        auto stack = stackOf(ramp(), laid(), Filled::whenFull);
        benchmark::DoNotOptimize(&stack);
    }
}
BENCHMARK(stackBelow)->Unit(benchmark::kMicrosecond);

void metreOfAFace(benchmark::State& state) {
    const Field asked = field();
    const Box box{{Length::fromMetres(20), {}, {}},
                  {Length::fromMetres(21), Length::fromMetres(4), Length::fromMetres(14)}};
    for (auto _ : state) {
        auto mean = asked.mean(box);
        benchmark::DoNotOptimize(&mean);
    }
}
BENCHMARK(metreOfAFace)->Unit(benchmark::kMicrosecond);

void wholeSilo(benchmark::State& state) {
    const Field asked = field();
    for (auto _ : state) {
        auto mean = asked.mean(asked.whole());
        benchmark::DoNotOptimize(&mean);
    }
}
BENCHMARK(wholeSilo)->Unit(benchmark::kMicrosecond);

}  // namespace
