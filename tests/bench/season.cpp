// The fold of 100,000 entries over 60 days. Budgets: a late entry in the middle at most 1 ms; a full refold
// at most half the time of reading all the columns, for which copying the entries stands here (bench_journal
// reads real columns).
#include "core/density/readings.h"
#include "tests/support/season_maker.h"

#include <benchmark/benchmark.h>

namespace {

using namespace treadwell;
using namespace treadwell::testing_support;
using namespace std::chrono_literals;

constexpr int kEntries = 100'000;
constexpr int kDays = 60;

entries::Entry loadNumber(std::uint32_t number, Instant happened) {
    entries::Entry entry;
    entry.header.id.value.bytes[0] = 9;
    for (std::size_t i = 0; i < 4; ++i) {
        entry.header.id.value.bytes[12 + i] = static_cast<std::uint8_t>(number >> (24 - 8 * i));
    }
    entry.header.kind = entries::Load::kKind;
    entry.header.deviceSequence = number;
    entry.header.lamport = number;
    entry.header.happened = happened;
    entry.body = someLoad(12);
    return entry;
}

const std::vector<entries::Entry>& manyEntries() {
    static const std::vector<entries::Entry> kMany = [] {
        SeasonMaker maker;
        const Instant start = at("2026-07-01T06:00:00Z");
        maker.add(entries::SeasonStarted{"Farm", "Europe/Berlin"}, start);
        maker.add(entries::SiloDefined{someSilo()}, start);
        maker.add(entries::TractorDefined{someTractor(1, 14)}, start);
        maker.add(someWork(1, farm::Activity::packing), start);
        std::vector<entries::Entry> many = std::move(maker.entries);
        for (int i = static_cast<int>(many.size()); i < kEntries; ++i) {
            const auto day = std::chrono::days{i * kDays / kEntries};
            const auto second = std::chrono::seconds{(i % (kEntries / kDays)) * 30};
            many.push_back(loadNumber(static_cast<std::uint32_t>(i), start + day + second));
        }
        return many;
    }();
    return kMany;
}

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

}  // namespace
