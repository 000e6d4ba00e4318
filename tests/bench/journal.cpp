// One entry durable and folded, through the session, against a bare commit of the same row and indices: both
// WAL and FULL in one folder of a real file system (TREADWELL_BENCH_FOLDER, or that of temporary files).
// Budget: 1.5 times, the live advice included. Then opening a season of 100,000 entries, chain checked and
// folded, against reading all the columns of its rows. Budget: 1.5 times; and what it holds in memory, of the
// 150 MiB that the desktop may take with it.
#include "core/journal/journal.h"

#include "core/advice/advise.h"
#include "core/advice/from_season.h"
#include "core/session/session.h"
#include "tests/bench/many_entries.h"
#include "tests/support/hand_clock.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <benchmark/benchmark.h>
#include <malloc.h>

#include <cstdlib>
#include <filesystem>
#include <memory>
#include <stdexcept>

namespace {

using namespace treadwell;
using testing_support::someLoad;

const SystemClock kClock;
const auto kAuthor = testing_support::idOf<entries::PersonTag>(7);

class Folder {
  public:
    Folder() {
        const char* wanted = std::getenv("TREADWELL_BENCH_FOLDER");
        const std::filesystem::path parent =
            wanted != nullptr ? std::filesystem::path{wanted} : std::filesystem::temp_directory_path();
        std::string name = (parent / "treadwell-bench.XXXXXX").string();
        m_path = ::mkdtemp(name.data());
    }
    ~Folder() { std::filesystem::remove_all(m_path); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    [[nodiscard]] session::Files files() const { return {m_path / "season.treadwell", m_path / "state"}; }

    [[nodiscard]] session::Session started() const {
        return session::Session::create(files(), {"Two Creeks", "America/Sao_Paulo"}, kAuthor, kClock)
            .value();
    }

    /// The file of a season that was started and closed.
    [[nodiscard]] journal::Journal startedJournal() const {
        { const session::Session closedAgain = started(); }
        return journal::Journal::open(files().season, journal::Access::write, kClock.now()).value();
    }

  private:
    std::filesystem::path m_path;
};

/// A busy day: so many loads before, and as many while it is measured, two minutes apart.
constexpr int kLoads = 150;

/// A session in which a day has its machines, its silo and its loads.
struct BusyDay {
    BusyDay() {
        std::vector<session::Proposal> day;
        for (const entries::Body& body : bench::packedSilo(testing_support::someSilo().length))
            day.push_back({body, clock.time, {}});
        for (int i = 0; i < kLoads; ++i) day.push_back({someLoad(12), clock.time += kBetween, {}});
        benchmark::DoNotOptimize(session.importAll(day, kAuthor).value());
    }
    void logLoad() {
        clock.time += kBetween;
        benchmark::DoNotOptimize(session.propose(someLoad(12), clock.time, kAuthor).value());
    }

    static constexpr std::chrono::minutes kBetween{2};
    Folder folder;
    testing_support::HandClock clock{
        testing_support::at("2026-09-15T09:00:00Z")};  // six in the morning there
    session::Session session =
        session::Session::create(folder.files(), {"Two Creeks", "America/Sao_Paulo"}, kAuthor, clock).value();
};

void throughTheSession(benchmark::State& state) {
    BusyDay day;
    for (auto _ : state) day.logLoad();
}
BENCHMARK(throughTheSession)->Iterations(kLoads)->Unit(benchmark::kMicrosecond)->UseRealTime();

void andAdvised(benchmark::State& state) {
    BusyDay day;
    density::ReadingsHistory history;
    const auto silo = testing_support::someSilo().id;
    for (auto _ : state) {
        day.logLoad();
        const auto season = day.session.snapshot();
        const auto readings = history.at(*season, silo, day.clock.time);
        const auto situation = advice::situationFrom(*season, readings);
        if (!situation) {
            state.SkipWithError("there is no situation to advise on");
            return;
        }
        benchmark::DoNotOptimize(advice::advise(*situation).value());
    }
}
BENCHMARK(andAdvised)->Iterations(kLoads)->Unit(benchmark::kMicrosecond)->UseRealTime();

void throughTheJournal(benchmark::State& state) {
    const Folder folder;
    auto journal = folder.startedJournal();
    UuidSource ids;
    const entries::DeviceId device{ids.next(kClock.now())};
    entries::StoredEntry entry;
    entry.header.kind = "load";
    entry.payload = entries::encode(entries::Body{someLoad(12)});
    for (auto _ : state) {
        entry.header.id = entries::EntryId{ids.next(kClock.now())};
        entry.header.device = device;
        ++entry.header.deviceSequence;
        ++entry.header.lamport;
        entry.hash = entries::entryHash(entry.hash, entry.header, entry.payload);
        if (!journal.append({&entry, 1})) state.SkipWithError("the entry was refused");
    }
}
BENCHMARK(throughTheJournal)->Iterations(kLoads)->Unit(benchmark::kMicrosecond)->UseRealTime();

/// The same columns and indices without checks, triggers, chain or fold.
void bareCommit(benchmark::State& state) {
    const Folder folder;
    SQLite::Database database(folder.files().season.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    database.exec(
        "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;"
        "CREATE TABLE entry(seq INTEGER PRIMARY KEY, id BLOB UNIQUE, device BLOB, device_seq INTEGER,"
        " lamport INTEGER, author BLOB, kind TEXT, kind_version INTEGER, happened_us INTEGER,"
        " recorded_us INTEGER, utc_offset_min INTEGER, target BLOB, payload TEXT, hash BLOB,"
        " UNIQUE(device, device_seq)) STRICT");
    SQLite::Statement insert(database,
                             "INSERT INTO entry(id, device, device_seq, lamport, author, kind, kind_version,"
                             " happened_us, recorded_us, utc_offset_min, payload, hash)"
                             " VALUES (?, ?, ?, ?, ?, 'load', 1, ?, ?, -180, ?, ?)");
    UuidSource ids;
    const Uuid device = ids.next(kClock.now());
    const std::string payload = entries::encode(entries::Body{someLoad(12)});
    const Hash hash = sha256(payload);
    std::int64_t sequence = 0;
    for (auto _ : state) {
        const Instant now = kClock.now();
        const Uuid id = ids.next(now);
        insert.bind(1, id.bytes.data(), 16);
        insert.bind(2, device.bytes.data(), 16);
        insert.bind(3, ++sequence);
        insert.bind(4, sequence);
        insert.bind(5, device.bytes.data(), 16);
        insert.bind(6, toMicroseconds(now));
        insert.bind(7, toMicroseconds(now));
        insert.bind(8, payload);
        insert.bind(9, hash.data(), 32);
        insert.exec();
        insert.reset();
    }
}
BENCHMARK(bareCommit)->Iterations(kLoads)->Unit(benchmark::kMicrosecond)->UseRealTime();

constexpr int kEntries = 100'000;
constexpr int kDays = 60;

/// Made once for all that read it.
const Folder& longSeason() {
    static const std::unique_ptr<Folder> kMade = [] {
        auto folder = std::make_unique<Folder>();
        auto journal = folder->startedJournal();
        UuidSource ids;
        std::vector<entries::StoredEntry> entries(kEntries);
        Hash previous{};
        const Instant begin = kClock.now();
        for (int i = 0; i < kEntries; ++i) {
            entries::StoredEntry& entry = entries[static_cast<std::size_t>(i)];
            entry.header.happened = begin + std::chrono::seconds{std::int64_t{i} * kDays * 86400 / kEntries};
            entry.header.id = entries::EntryId{ids.next(entry.header.happened)};
            entry.header.device = testing_support::idOf<entries::DeviceTag>(3);
            entry.header.deviceSequence = i + 1;
            entry.header.lamport = i + 2;
            entry.header.kind = "load";
            entry.payload = entries::encode(entries::Body{someLoad(12)});
            entry.hash = previous = entries::entryHash(previous, entry.header, entry.payload);
        }
        if (!journal.append(entries)) throw std::runtime_error("the long season was refused");
        return folder;
    }();
    return *kMade;
}

void openSeason(benchmark::State& state) {
    const session::Files files = longSeason().files();
    for (auto _ : state) {
        const auto before = ::mallinfo2();
        auto opened = session::Session::open(files, kClock, session::Purpose::reading);
        benchmark::DoNotOptimize(opened.value().snapshot());
        state.PauseTiming();  // closing it is not part of opening it
        const auto after = ::mallinfo2();
        state.counters["MiB"] =
            static_cast<double>(after.uordblks + after.hblkhd - before.uordblks - before.hblkhd) / (1 << 20);
        opened = Unexpected{Error{}};
        state.ResumeTiming();
    }
}
BENCHMARK(openSeason)->Unit(benchmark::kMillisecond);

void readChain(benchmark::State& state) {
    const session::Files files = longSeason().files();
    for (auto _ : state) {
        auto journal = journal::Journal::open(files.season, journal::Access::read, kClock.now()).value();
        std::size_t size = 0;
        if (journal.read([&](entries::StoredEntry&& entry) { size += entry.payload.size(); })) {
            state.SkipWithError("the chain is broken");
        }
        benchmark::DoNotOptimize(size);
    }
}
BENCHMARK(readChain)->Unit(benchmark::kMillisecond);

void readBareRows(benchmark::State& state) {
    const session::Files files = longSeason().files();
    for (auto _ : state) {
        SQLite::Database database(files.season.string());
        SQLite::Statement rows(database, "SELECT * FROM entry ORDER BY seq");
        std::size_t size = 0;
        while (rows.executeStep()) {
            for (int column = 0; column < 14; ++column) {
                const auto& value = rows.getColumn(column);
                size +=
                    value.isInteger() ? static_cast<std::size_t>(value.getInt64()) : value.getString().size();
            }
        }
        benchmark::DoNotOptimize(size);
    }
}
BENCHMARK(readBareRows)->Unit(benchmark::kMillisecond);

}  // namespace
