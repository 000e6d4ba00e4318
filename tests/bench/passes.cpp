// Wheel passes over a pad, by threads, against a bare triad (a = b + s * c) over the same cells. Items are
// updates of a column's layer, or cells of the triad. Budget 150 million a second and core.
#include "core/passes/press.h"
#include "core/passes/tracks_laid.h"

#include <benchmark/benchmark.h>

namespace {

using namespace treadwell;
using namespace treadwell::passes;

/// 40 x 12 m with twelve layers, the upper ones within reach.
Pad packedPad() {
    Pad pad = makePad({Length::fromMetres(40), Length::fromMetres(12)}).value();
    const Spread spread{DryMatter::fromPercent(35), DryDensity::fromKilogramsPerCubicMetre(112)};
    const PressTable table{{MachineMass::fromTonnes(12)}, pad.parameters};
    TrackLayer tracks{pad.shape, Pattern::wholeWidth, kOverhang, 1};
    std::vector<WheelPass> passes;
    for (int layer = 0; layer < 12; ++layer) {
        (void)spreadEvenly(pad, spread, Length::fromCentimetres(15));
        passes.clear();
        tracks.add(passes, table.roller(), 0, Length::fromMetres(40 * 30));
        press(pad, passes, {&table, 1}, 1);
    }
    return pad;
}

/// Under the tyres and beside them.
std::vector<Strip> pressedBy(const Pad& pad, const Roller& roller) {
    std::vector<Strip> strips;
    for (const Strip& tyre : tyresOf(roller)) {
        strips.push_back(tyre);
        strips.push_back({tyre.from_m - pad.parameters.besideTyre_m, tyre.from_m});
        strips.push_back({tyre.to_m, tyre.to_m + pad.parameters.besideTyre_m});
    }
    return strips;
}

/// Cells that one pass over the pad's columns looks at, a column at a time.
std::int64_t updatesOf(const Pad& pad, const std::vector<WheelPass>& passes, const PressTable& table) {
    std::int64_t updates = 0;
    for (const WheelPass& pass : passes) {
        for (std::size_t row = 0; row < pad.across; ++row) {
            for (const Strip& strip : pressedBy(pad, table.roller())) {
                const Run run = runOf(pad, pass, strip, row);
                for (std::size_t i = 0; i < run.count; ++i) {
                    double depth_m = 0;
                    for (std::size_t layer = pad.layers.size(); layer-- > 0 && depth_m < table.reach_m();) {
                        const std::size_t cell = pad.indexOf(layer, row, run.first + i);
                        depth_m += pad.areal_kg_m2[cell] * pad.volume_m3_kg[cell];
                        ++updates;
                    }
                }
            }
        }
    }
    return updates;
}

void wheelPasses(benchmark::State& state) {
    Pad pad = packedPad();
    const PressTable table{{MachineMass::fromTonnes(14)}, pad.parameters};
    TrackLayer tracks{pad.shape, Pattern::wholeWidth, kOverhang, 2};
    std::vector<WheelPass> passes;
    tracks.add(passes, table.roller(), 0, Length::fromMetres(40 * 60));
    const std::int64_t updates = updatesOf(pad, passes, table);
    for (auto _ : state) {
        press(pad, passes, {&table, 1}, static_cast<unsigned>(state.range(0)));
        benchmark::DoNotOptimize(pad.volume_m3_kg.data());
    }
    state.SetItemsProcessed(state.iterations() * updates);
}
BENCHMARK(wheelPasses)->Arg(1)->Arg(2)->Unit(benchmark::kMillisecond)->UseRealTime();

void bareTriad(benchmark::State& state) {
    const Pad pad = packedPad();
    std::vector<double> result(pad.volume_m3_kg.size());
    for (auto _ : state) {
        for (std::size_t i = 0; i < result.size(); ++i) {
            result[i] = pad.volume_m3_kg[i] + 0.5 * pad.areal_kg_m2[i];
        }
        benchmark::DoNotOptimize(result.data());
    }
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(result.size()));
}
BENCHMARK(bareTriad)->UseRealTime();

}  // namespace
