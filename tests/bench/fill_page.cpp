// The Fill page: from an entry that lies on the disk to its repaint, in the example's size of season and in
// one of 100,000 entries. Budget: 16 ms, 95 % of the time. Quoted beside a bare repaint of the same page.
#include "app/desktop/fill/fill_page.h"

#include "app/desktop/plots/timeline.h"
#include "tests/app/desktop/slow_file.h"
#include "tests/bench/many_entries.h"

#include <benchmark/benchmark.h>

#include <QApplication>
#include <QTest>
#include <algorithm>
#include <cmath>
#include <ctime>

namespace {

using namespace treadwell;
using namespace treadwell::bench;
using namespace std::chrono_literals;

/// A season in memory; an entry is there as soon as it is asked for.
class MemoryFile final : public desk::SeasonFile {
  public:
    explicit MemoryFile(std::span<const entries::Entry> entries)
        : m_count{static_cast<std::uint32_t>(entries.size())},
          m_season{std::make_shared<const season::Season>(season::Season::fold(entries))} {}

    desk::SeasonPointer season() const override { return m_season; }
    session::Standing standing() const override {
        session::Standing standing;
        standing.writable = true;
        return standing;
    }
    void lookAgain() override {}
    void clockIsOffBy(std::chrono::microseconds) override {}
    Result<void> takeOver() override { return {}; }
    Result<Message> copies(const desk::CopyWish&) override { return fail(code::journalReadOnly, "file"); }
    desk::People people() const override { return {}; }
    Hash head() const override { return {}; }
    Result<entries::PersonId> addPerson(const std::string&) override {
        return fail(code::journalReadOnly, "file");
    }
    Result<void> record(std::span<const session::Proposal> proposals, entries::PersonId) override {
        for (const session::Proposal& each : proposals) {
            entries::Entry entry = loadNumber(++m_count, each.happened);
            const auto [kind, version] = entries::kindOf(each.body);
            entry.header.kind = kind;
            entry.header.kindVersion = version;
            entry.body = each.body;
            m_season = std::make_shared<const season::Season>(m_season->with(entry));
        }
        return {};
    }
    Result<void> takeBack(entries::EntryId, entries::PersonId) override {
        return fail(code::journalReadOnly, "file");
    }

  private:
    std::uint32_t m_count;
    desk::SeasonPointer m_season;
};

/// Three days of sixty loads.
std::vector<entries::Entry> smallSeason() {
    SeasonMaker maker;
    const Instant start = at("2026-09-13T06:00:00Z");
    maker.add(entries::SeasonStarted{"Farm", "Europe/Berlin"}, start);
    for (const entries::Body& body : packedSilo(someSilo().length)) maker.add(body, start);
    for (int i = 0; i < 180; ++i) maker.add(someLoad(12), start + 1h + 24h * (i / 60) + 5min * (i % 60));
    return maker.entries;
}

/// Of this thread, so that what else the machine does is not counted.
double processorMilliseconds() {
    timespec time{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) * 1e-6;
}

/// 100,000 entries over sixty days, their loads in forty silos.
std::vector<entries::Entry> fullSeason() {
    std::vector<entries::Entry> many = manyEntries();
    for (std::size_t i = 0; i < many.size(); ++i) {
        if (auto* defined = std::get_if<entries::SiloDefined>(&many[i].body)) {
            defined->silo.length = Length::fromMetres(500);  // to hold its 30,000 t
            defined->silo.width = Length::fromMetres(60);
        }
        if (auto* load = std::get_if<entries::Load>(&many[i].body))
            load->silo = idOf<farm::SiloTag>(static_cast<std::uint8_t>(1 + i % 40));
    }
    return many;
}

struct Page {
    explicit Page(std::vector<entries::Entry> entries)
        : clock{entries.back().header.happened + 3min},
          desk{std::make_unique<MemoryFile>(entries), clock},
          page{desk, appearance} {
        page.resize(1280, 800);
        page.show();
        for (int i = 0; i < 20; ++i) QTest::qWait(5);
    }
    /// A load, until its numbers have been painted.
    double logLoad() {
        clock.time += 4min;
        const desk::Ticket ticket = desk.propose(someLoad(12));
        bool there = false;
        const auto seen = QObject::connect(&desk, &desk::SeasonDesk::committed,
                                           [&](desk::Ticket each) { there |= each == ticket; });
        while (!there) QCoreApplication::processEvents(QEventLoop::ExcludeUserInputEvents, 1);
        QObject::disconnect(seen);
        const double begin = processorMilliseconds();
        page.refresh();
        QCoreApplication::sendPostedEvents();  // layout and paint
        const double took = processorMilliseconds() - begin;
        for (int i = 0; i < 3; ++i) QCoreApplication::processEvents();
        return took;
    }
    testing_support::HandClock clock;
    settings::Appearance appearance;
    desk::SeasonDesk desk;
    fill::FillPage page;
};

void repaintPage(benchmark::State& state) {
    Page page{smallSeason()};
    for (auto _ : state) benchmark::DoNotOptimize(page.page.grab());
}
BENCHMARK(repaintPage)->Unit(benchmark::kMillisecond);

void entryToRepaint(benchmark::State& state, const std::vector<entries::Entry>& entries) {
    Page page{entries};
    std::vector<double> times;
    for (auto _ : state) {
        times.push_back(page.logLoad());
        state.SetIterationTime(times.back() * 1e-3);
    }
    std::sort(times.begin(), times.end());
    state.counters["p50_ms"] = times[times.size() / 2];
    state.counters["p95_ms"] = times[times.size() * 95 / 100];
}
BENCHMARK_CAPTURE(entryToRepaint, threeDays, smallSeason())->UseManualTime()->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(entryToRepaint, hundredThousandEntries, fullSeason())
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond);

/// The timeline alone, new data and repaint, with so many points. Budget: 16 ms; a hundred thousand points
/// are to cost little more than the sixteen hundred that fill its pixels.
void timelineRepaint(benchmark::State& state) {
    settings::Appearance appearance;
    plots::Timeline timeline{appearance};
    timeline.resize(900, 160);
    timeline.show();
    plots::TimelineView view;
    view.from = at("2026-07-01T06:00:00Z");
    const int points = static_cast<int>(state.range(0));
    for (int i = 0; i < points; ++i) {
        const Instant moment = view.from + i * 30s;
        view.deliveries.push_back({moment, AsFedMass::fromTonnes(12)});
        view.rates.push_back({moment, AsFedRate::fromTonnesPerHour(90 + 20 * std::sin(i / 40.0)),
                              AsFedRate::fromTonnesPerHour(80)});
        const double median = 200 + 15 * std::sin(i / 90.0);
        view.densities.push_back({moment, DryDensity::fromKilogramsPerCubicMetre(median),
                                  DryDensity::fromKilogramsPerCubicMetre(median * 0.84),
                                  DryDensity::fromKilogramsPerCubicMetre(median * 1.19)});
    }
    view.target = DryDensity::fromKilogramsPerCubicMetre(225);
    view.to = view.from + points * 30s;
    for (auto _ : state) {
        timeline.setView(view);
        timeline.repaint();
        QCoreApplication::processEvents();
    }
}
BENCHMARK(timelineRepaint)->Arg(100)->Arg(1'600)->Arg(100'000)->Unit(benchmark::kMillisecond);

}  // namespace

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application{argc, argv};
    settings::applyTheme(application, settings::themeOf(settings::Look::light));
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
