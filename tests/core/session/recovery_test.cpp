// Copies that are restored, disks that are full, contents that cannot be read.
#include "core/base/atomic_file.h"
#include "core/base/codes.h"
#include "core/journal/codes.h"
#include "core/journal/journal.h"
#include "core/session/codes.h"
#include "core/session/device_memory.h"
#include "core/session/kept_aside.h"
#include "tests/core/session/session_fixture.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gmock/gmock.h>
#include <sys/resource.h>
#include <sys/wait.h>

#include <csignal>
#include <fstream>
#include <set>

namespace treadwell::session {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

entries::DeviceId deviceOf(const Result<entries::Header>& header) {
    EXPECT_TRUE(header);
    return header->device;
}

std::filesystem::path onlyFile(const std::filesystem::path& folder, const std::string& ending) {
    std::filesystem::path found;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (entry.path().string().ends_with(ending)) found = entry.path();
    }
    return found;
}

TEST_F(SessionTest, StaysOneDeviceFromDayToDay) {
    const auto first = [this] {
        Session session = created();
        return deviceOf(load(session, 12));
    }();
    Session session = opened();
    EXPECT_EQ(deviceOf(load(session, 12)), first);
}

// Else two different entries would be the third of one device, and the chains could never be joined.
TEST_F(SessionTest, TakesANewDeviceInAnOlderCopy) {
    const auto copy = m_folder / "copy.treadwell";
    entries::DeviceId before;
    {
        Session session = created();
        ASSERT_TRUE(session.backupTo(copy));
        before = deviceOf(load(session, 12));
    }
    std::filesystem::rename(copy, m_files.season);
    {
        Session session = opened();
        EXPECT_THAT(codesOf(session.standing().cautions), ElementsAre(code::deviceRenewed));
        const auto header = load(session, 9);
        EXPECT_NE(deviceOf(header), before);
        EXPECT_EQ(header->deviceSequence, 1);
        EXPECT_EQ(header->lamport, 2);
    }
    Session session = opened();
    EXPECT_THAT(session.standing().cautions, IsEmpty());
    EXPECT_DOUBLE_EQ(tonnesIn(session), 9);
}

TEST_F(SessionTest, TakesANewDeviceWhereItsMemoryIsGoneOrUnreadable) {
    const auto first = [this] {
        Session session = created();
        return deviceOf(load(session, 12));
    }();
    std::ofstream(onlyFile(m_files.stateFolder, ".device")) << "scribble";
    const auto second = [this] {
        Session session = opened();
        return deviceOf(load(session, 12));
    }();
    std::filesystem::remove_all(m_files.stateFolder);
    Session session = opened();
    const auto third = deviceOf(load(session, 12));
    EXPECT_EQ((std::set{first, second, third}).size(), 3u);
    EXPECT_THAT(session.standing().cautions, IsEmpty());
}

// Killed between the commit and its note in the memory, which is then behind the file.
TEST_F(SessionTest, StaysOneDeviceWhereItsMemoryIsBehindTheFile) {
    std::string memory;
    entries::DeviceId device;
    {
        Session session = created();
        memory = readFile(onlyFile(m_files.stateFolder, ".device")).value();
        device = deviceOf(load(session, 12));
    }
    const auto file = onlyFile(m_files.stateFolder, ".device");
    EXPECT_EQ(recall(file)->sequence, 2);
    std::ofstream(file, std::ios::trunc) << memory;
    Session session = opened();
    EXPECT_THAT(session.standing().cautions, IsEmpty());
    EXPECT_EQ(deviceOf(load(session, 12)), device);
}

/// In a child whose files cannot grow beyond a few pages, as on a full disk: proposes until one is refused,
/// and reports how many were acknowledged and the code of the refusal.
std::pair<int, Code> proposeUntilFull(const Files& files, const Clock& clock, entries::PersonId author) {
    int ends[2];
    EXPECT_EQ(::pipe(ends), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        std::signal(SIGXFSZ, SIG_IGN);
        const rlimit limit{100000, 100000};
        ::setrlimit(RLIMIT_FSIZE, &limit);
        auto session = Session::open(files, clock);
        std::pair<int, Code> report{0, code::fileUnreadable};
        while (session && report.first < 1000) {
            const auto done = session->propose(testing_support::someLoad(12), clock.now(), author);
            if (done) {
                ++report.first;
                continue;
            }
            report.second = done.error().code();
            // And once more: what the disk has refused is kept too.
            if (session->propose(testing_support::someLoad(7), clock.now(), author)) ::_exit(1);
            break;
        }
        ::_exit(::write(ends[1], &report, sizeof report) == sizeof report ? 0 : 1);
    }
    ::close(ends[1]);
    std::pair<int, Code> report{-1, code::valueMissing};
    EXPECT_EQ(::read(ends[0], &report, sizeof report), static_cast<ssize_t>(sizeof report));
    ::close(ends[0]);
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_EQ(status, 0);
    return report;
}

TEST_F(SessionTest, KeepsAsideWhatAFullDiskRefusesAndRecordsItLater) {
    created();
    const auto [acknowledged, refusal] = proposeUntilFull(m_files, m_clock, m_author);
    EXPECT_GT(acknowledged, 3);
    EXPECT_LT(acknowledged, 1000);
    EXPECT_EQ(refusal, code::entryKeptAside);
    {
        const Session session = opened();
        EXPECT_THAT(session.standing().cautions,
                    ElementsAre(Message{code::keptEntriesRecorded, {std::int64_t{2}}}));
        EXPECT_DOUBLE_EQ(tonnesIn(session), 12.0 * acknowledged + 12 + 7);
    }
    const Session session = opened();
    EXPECT_THAT(session.standing().cautions, IsEmpty());
    EXPECT_DOUBLE_EQ(tonnesIn(session), 12.0 * acknowledged + 12 + 7);
}

TEST_F(SessionTest, NamesTheLineOfAKeptEntryThatCannotBeRead) {
    created();
    auto kept = onlyFile(m_files.stateFolder, ".device").replace_extension(".kept.jsonl");
    std::ofstream(kept) << "{\"kind\":\"lo";
    const Session session = opened();
    EXPECT_THAT(session.standing().cautions,
                ElementsAre(Message{code::keptEntriesUnreadable, {kept.string(), std::int64_t{1}}}));
    EXPECT_TRUE(std::filesystem::exists(kept));
}

TEST_F(SessionTest, RecordsAKeptEntryOnceAlone) {
    entries::Header header;
    {
        Session session = created();
        header = load(session, 12).value();
    }
    entries::StoredEntry entry;
    entry.header = header;
    entry.payload = entries::encode(testing_support::someLoad(12));
    const auto kept = onlyFile(m_files.stateFolder, ".device").replace_extension(".kept.jsonl");
    const entries::Evidence row{sha256("row"), std::string{"a;\0\xff", 4}};
    ASSERT_TRUE(keepAside(kept, {{entry}, {row}}));
    ASSERT_EQ(keptIn(kept)->entries.size(), 1u);
    EXPECT_EQ(keptIn(kept)->entries.front().payload, entry.payload);
    EXPECT_THAT(keptIn(kept)->evidence, ElementsAre(row));
    const Session session = opened();
    EXPECT_THAT(session.standing().cautions, IsEmpty());
    EXPECT_DOUBLE_EQ(tonnesIn(session), 12);
    EXPECT_FALSE(std::filesystem::exists(kept));
}

TEST_F(SessionTest, KeepsAndTellsOfAnEntryWhoseContentCannotBeRead) {
    created();
    entries::StoredEntry entry;
    entry.header.id = testing_support::idOf<entries::EntryTag>(5);
    entry.header.device = testing_support::idOf<entries::DeviceTag>(5);
    entry.header.deviceSequence = 1;
    entry.header.lamport = 40;
    entry.header.kind = "load";
    entry.header.happened = entry.header.recorded = m_clock.time;
    entry.payload = R"({"mass_kg":"twelve"})";
    entry.hash = entries::entryHash({}, entry.header, entry.payload);
    ASSERT_TRUE(
        journal::Journal::open(m_files.season, journal::Access::write, m_clock.time)->append({&entry, 1}));
    Session session = opened();
    EXPECT_THAT(
        session.standing().cautions,
        ElementsAre(Message{code::entryUnreadable, {entry.header.device.value.text(), std::int64_t{1}}}));
    EXPECT_EQ(session.snapshot()->unknownKinds(), 1);
    // What this device writes now comes after all that it has seen.
    EXPECT_EQ(load(session, 12)->lamport, 41);
}

TEST_F(SessionTest, FindsOnceItIsOpenThatPagesDoNotHangTogether) {
    {
        Session session = created();
        for (int i = 0; i < 50; ++i) ASSERT_TRUE(load(session, 12, i));
    }
    const int page = SQLite::Database(m_files.season.string())
                         .execAndGet(
                             "SELECT rootpage FROM sqlite_master"
                             " WHERE name = 'sqlite_autoindex_entry_1'");
    std::string bytes = readFile(m_files.season).value();
    bytes[(static_cast<std::size_t>(page) - 1) * 4096] = 'x';  // of the index of ids, which opening passes by
    std::ofstream(m_files.season, std::ios::binary) << bytes;
    Session session = opened();
    EXPECT_DOUBLE_EQ(tonnesIn(session), 600) << "every entry is whole";
    EXPECT_THAT(session.standing().cautions, IsEmpty());
    for (int again = 0; again < 3; ++again) {
        session.lookAgain();
        EXPECT_THAT(codesOf(session.standing().cautions), ElementsAre(code::structureBroken));
    }
    EXPECT_FALSE(session.standing().writable);
    EXPECT_EQ(session.standing().readOnlyReason->code, code::journalOpenedDamaged);
    EXPECT_EQ(readFile(m_files.season).value(), bytes) << "left as it was found";
}

TEST_F(SessionTest, RefusesAFileInWhichNoSeasonWasStarted) {
    ASSERT_TRUE(journal::Journal::create(m_files.season, m_clock.time));
    EXPECT_EQ(Session::open(m_files, m_clock).error().code(), code::seasonEmpty);
    EXPECT_EQ(Session::open(m_files, m_clock, Purpose::reading).error().code(), code::seasonEmpty);
}

}  // namespace
}  // namespace treadwell::session
