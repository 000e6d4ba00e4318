// The fold of 100,000 entries over 60 days. Budgets: a late entry in the middle at most 1 ms; a full refold
// at most half the time of reading all the columns, for which copying the entries stands here (bench_journal
// reads real columns).
#include "core/density/readings.h"
#include "tests/bench/many_entries.h"

#include <benchmark/benchmark.h>

namespace {

using namespace treadwell;
using namespace treadwell::bench;
using namespace treadwell::testing_support;
using namespace std::chrono_literals;

void copyEntries(benchmark::State& state) {
    for (auto _ : state) {
        std::vector<entries::Entry> copy = manyEntries();
        benchmark::DoNotOptimize(copy.data());
    }
}
BENCHMARK(copyEntries)->Unit(benchmark::kMillisecond);

void foldEntries(benchmark::State& state) {
    for (auto _ : state) {
        auto season = season::Season::fold(manyEntries());
        benchmark::DoNotOptimize(&season);
    }
}
BENCHMARK(foldEntries)->Unit(benchmark::kMillisecond);

void lateEntry(benchmark::State& state) {
    const auto season = season::Season::fold(manyEntries());
    const auto late = loadNumber(kEntries + 1, at("2026-07-02T07:00:00Z"));
    for (auto _ : state) {
        auto later = season.with(late);
        benchmark::DoNotOptimize(&later);
    }
}
BENCHMARK(lateEntry)->Unit(benchmark::kMicrosecond);

void nextEntry(benchmark::State& state) {
    const auto season = season::Season::fold(manyEntries());
    const auto next = loadNumber(kEntries + 1, season.days().back()->loads.back().at + 1min);
    for (auto _ : state) {
        auto later = season.with(next);
        benchmark::DoNotOptimize(&later);
    }
}
BENCHMARK(nextEntry)->Unit(benchmark::kMicrosecond);

void readThreeReadings(benchmark::State& state) {
    const auto season = season::Season::fold(manyEntries());
    const Instant now = season.days().back()->loads.back().at;
    for (auto _ : state) {
        auto readings = density::readingsAt(season, idOf<farm::SiloTag>(1), now);
        benchmark::DoNotOptimize(&readings);
    }
}
BENCHMARK(readThreeReadings)->Unit(benchmark::kMicrosecond);

/// The same where the loads go to forty silos in turn: 2,500 loads in the one that is read.
void readOneOfFortySilos(benchmark::State& state) {
    auto entries = manyEntries();
    for (std::size_t i = 0; i < entries.size(); ++i) {
        if (auto* load = std::get_if<entries::Load>(&entries[i].body))
            load->silo = idOf<farm::SiloTag>(static_cast<std::uint8_t>(1 + i % 40));
    }
    const auto season = season::Season::fold(entries);
    const Instant now = season.days().back()->loads.back().at;
    density::ReadingsHistory history;
    for (auto _ : state) {
        auto readings = history.at(season, idOf<farm::SiloTag>(1), now);
        benchmark::DoNotOptimize(&readings);
    }
}
BENCHMARK(readOneOfFortySilos)->Unit(benchmark::kMicrosecond);

/// The same by one who asks again and again, as the screens do.
void readThreeReadingsAgain(benchmark::State& state) {
    const auto season = season::Season::fold(manyEntries());
    const Instant now = season.days().back()->loads.back().at;
    density::ReadingsHistory history;
    for (auto _ : state) {
        auto readings = history.at(season, idOf<farm::SiloTag>(1), now);
        benchmark::DoNotOptimize(&readings);
    }
}
BENCHMARK(readThreeReadingsAgain)->Unit(benchmark::kMicrosecond);

}  // namespace
