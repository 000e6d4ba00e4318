// Calibration with 5,000 cores of 25 silos, against the least that must be done with them: one logarithm of
// each and a sum by silo.
#include "core/density/calibration_check.h"
#include "tests/support/season_maker.h"

#include <benchmark/benchmark.h>

#include <cmath>
#include <map>
#include <random>

namespace {

using namespace treadwell;

const std::vector<density::DensityEvidence>& manyCores() {
    static const std::vector<density::DensityEvidence> kMany = [] {
        constexpr int kCores = 5000, kSilos = 25, kFaces = 8, kPlaces = 10;
        std::mt19937_64 engine{20260915};
        const auto even = [&] { return static_cast<double>(engine() >> 11) * 0x1p-53 - 0.5; };
        std::vector<density::DensityEvidence> many;
        for (int i = 0; i < kCores; ++i) {
            density::DensityEvidence core;
            core.silo = testing_support::idOf<farm::SiloTag>(static_cast<std::uint8_t>(i % kSilos));
            core.face = i / kSilos % kFaces;
            core.place = i / kSilos / kFaces % kPlaces;
            core.predicted = DryDensity::fromKilogramsPerCubicMetre(225);
            core.measured = core.predicted * std::exp(0.6 * even() + 0.01 * (i % kSilos));
            core.inputs = 0.006;
            core.error = 0.0007;
            many.push_back(std::move(core));
        }
        return many;
    }();
    return kMany;
}

void sumLogarithms(benchmark::State& state) {
    for (auto _ : state) {
        std::map<farm::SiloId, double> sums;
        for (const density::DensityEvidence& core : manyCores()) sums[core.silo] += core.logRatio();
        benchmark::DoNotOptimize(&sums);
    }
}
BENCHMARK(sumLogarithms)->Unit(benchmark::kMicrosecond);

void calibrate(benchmark::State& state) {
    for (auto _ : state) {
        auto calibration = density::calibrate(manyCores());
        benchmark::DoNotOptimize(&calibration);
    }
}
BENCHMARK(calibrate)->Unit(benchmark::kMicrosecond);

void calibrateAndCheck(benchmark::State& state) {
    for (auto _ : state) {
        auto check = density::checkCalibration(manyCores());
        benchmark::DoNotOptimize(&check);
    }
}
BENCHMARK(calibrateAndCheck)->Unit(benchmark::kMicrosecond);

}  // namespace
