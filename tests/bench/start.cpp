// The desktop's start, from the program's first step until the Fill page has been painted, on a season of
// three days of sixty loads, against an empty window of the same size. Each start is a process of its own
// (this program again), of which the processor's time is counted. Budget: 4 times.
#include "app/desktop/desk/session_file.h"
#include "app/desktop/main_window.h"
#include "core/session/session.h"
#include "tests/bench/many_entries.h"
#include "tests/support/hand_clock.h"

#include <benchmark/benchmark.h>
#include <spawn.h>
#include <sys/resource.h>
#include <sys/wait.h>

#include <QApplication>
#include <QTemporaryDir>
#include <cstdlib>
#include <stdexcept>

namespace {

using namespace treadwell;
using namespace testing_support;

constexpr const char* kStart = "TREADWELL_BENCH_START";
constexpr const char* kNothing = "nothing";
constexpr int kDays = 3;
constexpr int kLoads = 60;
constexpr std::chrono::minutes kBetween{7};

const Instant kBegin = at("2026-09-12T09:00:00Z");
const Instant kEnd = kBegin + std::chrono::days{kDays - 1} + kLoads * kBetween;

session::Files filesIn(const std::string& folder) {
    return {folder + "/season.treadwell", folder + "/state"};
}

void makeSeason(const session::Files& files) {
    HandClock clock{kBegin};
    auto session = session::Session::create(files, {"Two Creeks", "America/Sao_Paulo"}, {}, clock).value();
    std::vector<session::Proposal> all;
    // Long enough to hold all that is tipped.
    for (const entries::Body& body : bench::packedSilo(Length::fromMetres(120)))
        all.push_back({body, kBegin, {}});
    for (int day = 0; day < kDays; ++day) {
        for (int load = 0; load < kLoads; ++load)
            all.push_back({someLoad(12), kBegin + std::chrono::days{day} + load * kBetween, {}});
    }
    clock.time = kEnd;
    benchmark::DoNotOptimize(session.importAll(all, {}).value());
}

/// Ends the program with it.
[[noreturn]] void paint(QWidget& window) {
    window.resize(1280, 800);
    window.show();
    benchmark::DoNotOptimize(
        window.grab());        // its numbers; the views at the page's foot follow in their turn
    std::_Exit(EXIT_SUCCESS);  // taking it down is no part of a start
}

/// What the child does: the window on the season of this folder, or an empty one.
[[noreturn]] void start(int argc, char** argv, const std::string& folder) {
    QApplication application{argc, argv};
    if (folder == kNothing) {
        QWidget window;
        paint(window);
    }
    const session::Files files = filesIn(folder);
    const HandClock clock{kEnd};
    auto file = desk::openSeasonForReading(files.season, files.stateFolder, clock);
    if (!file) std::_Exit(EXIT_FAILURE);
    desk::SeasonDesk desk{std::move(*file), clock};
    MainWindow window{desk, WindowSettings{}};
    window.showPage(Page::fill);
    paint(window);
}

/// Processor seconds of one start.
double startOnce(const std::string& folder) {
    ::setenv(kStart, folder.c_str(), 1);
    std::string self{"/proc/self/exe"};
    char* const arguments[] = {self.data(), nullptr};
    pid_t child = 0;
    if (::posix_spawn(&child, self.c_str(), nullptr, nullptr, arguments, environ) != 0)
        throw std::runtime_error("the child could not be started");
    int status = 0;
    rusage used{};
    if (::wait4(child, &status, 0, &used) != child || status != 0)
        throw std::runtime_error("the child's window was not painted");
    const auto seconds = [](const timeval& time) {
        return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) * 1e-6;
    };
    return seconds(used.ru_utime) + seconds(used.ru_stime);
}

void startDesktop(benchmark::State& state) {
    const QTemporaryDir folder;
    makeSeason(filesIn(folder.path().toStdString()));
    for (auto _ : state) state.SetIterationTime(startOnce(folder.path().toStdString()));
}
BENCHMARK(startDesktop)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(10);

void startEmptyWindow(benchmark::State& state) {
    for (auto _ : state) state.SetIterationTime(startOnce(kNothing));
}
BENCHMARK(startEmptyWindow)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(10);

}  // namespace

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    if (const char* folder = std::getenv(kStart)) start(argc, argv, folder);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
