// Files of every layout that there has been: one of each is kept in tests/data/seasons.
#include "core/base/atomic_file.h"
#include "core/journal/codes.h"
#include "core/journal/open.h"
#include "core/journal/schema.h"
#include "tests/core/journal/journal_fixture.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <fstream>

namespace treadwell::journal {
namespace {

const std::filesystem::path kSamples = std::filesystem::path{TREADWELL_TEST_DATA} / "seasons";

std::filesystem::path sampleOf(std::int64_t version) {
    return kSamples / ("v" + std::to_string(version) + ".treadwell");
}

class Layouts : public JournalTest {
  protected:
    void take(std::int64_t version) { std::filesystem::copy_file(sampleOf(version), file()); }
};

TEST_F(Layouts, OfEachThereIsASample) {
    for (std::int64_t version = 1; version < kLayoutVersion; ++version) {
        EXPECT_EQ(layoutVersionOf(sampleOf(version)), version);
    }
}

TEST_F(Layouts, AnOlderOneIsBroughtUpToDateAndKeptAside) {
    for (std::int64_t version = 1; version < kLayoutVersion; ++version) {
        take(version);
        const auto before = allOf(opened(Access::read));
        EXPECT_EQ(before.size(), 45u);
        {
            Journal journal = opened();
            EXPECT_TRUE(journal.isWritable());
            EXPECT_EQ(allOf(journal), before);
            Writer writer;
            EXPECT_TRUE(journal.append(writer.next(1)));
        }
        EXPECT_EQ(layoutVersionOf(file()), kLayoutVersion);
        EXPECT_EQ(opened().verify(), std::nullopt);
        const auto aside = file().string() + ".v" + std::to_string(version);
        EXPECT_EQ(layoutVersionOf(aside), version);
        EXPECT_EQ(allOf(Journal::open(aside, Access::read, kNow).value()), before);
    }
}

TEST_F(Layouts, ReadingAnOlderOneLeavesItAsItIs) {
    take(1);
    const std::string bytes = readFile(file()).value();
    EXPECT_EQ(allOf(opened(Access::read)).size(), 45u);
    EXPECT_EQ(readFile(file()).value(), bytes);
    EXPECT_FALSE(std::filesystem::exists(file("season.treadwell.v1")));
}

TEST_F(Layouts, ADamagedOlderOneIsLeftAsItIs) {
    take(1);
    std::string bytes = readFile(file()).value();
    bytes[bytes.find("mass_kg")] = 'M';
    std::ofstream(file(), std::ios::binary | std::ios::trunc) << bytes;
    EXPECT_FALSE(opened().isWritable());
    EXPECT_EQ(readFile(file()).value(), bytes);
    EXPECT_FALSE(std::filesystem::exists(file("season.treadwell.v1")));
}

// What the second layout is for: a connection with SQLite's own settings.
TEST_F(Layouts, NoProgramReplacesAnEntryUnawares) {
    Writer writer;
    const auto written = writer.next(2);
    ASSERT_TRUE(created().append(written));
    SQLite::Database database(file().string(), SQLite::OPEN_READWRITE);
    ASSERT_EQ(database.execAndGet("PRAGMA recursive_triggers").getInt(), 0);
    for (const char* same : {"seq, x'00112233445566778899aabbccddeeff', device, 9", "9, id, device, 9",
                             "9, x'00112233445566778899aabbccddeeff', device, device_seq"}) {
        EXPECT_THROW(database.exec("INSERT OR REPLACE INTO entry SELECT " + std::string{same} +
                                   ", lamport, author, kind, kind_version, happened_us, recorded_us,"
                                   " utc_offset_min, target, payload, hash FROM entry WHERE seq = 1"),
                     SQLite::Exception)
            << same;
    }
    EXPECT_EQ(allOf(opened()), written);
}

TEST_F(Layouts, OnANetworkTheRollbackJournalIsUsed) {
    Writer writer;
    const auto written = writer.next(3);
    ASSERT_TRUE(created().append(written));
    {
        SQLite::Database database = openForWriting(file(), Medium::network);
        prepareToWrite(database, Medium::network);
        EXPECT_EQ(database.execAndGet("PRAGMA journal_mode").getString(), "delete");
        EXPECT_EQ(database.execAndGet("PRAGMA synchronous").getInt(), 3);
        EXPECT_EQ(database.execAndGet("SELECT count(*) FROM entry").getInt(), 3);
        // Others read meanwhile.
        EXPECT_EQ(openForReading(file(), Medium::network)->execAndGet("SELECT count(*) FROM entry").getInt(),
                  3);
    }
    EXPECT_EQ(allOf(opened()), written);
}

TEST_F(Layouts, OnANetworkAWalThatIsInUseIsOutOfReach) {
    Writer writer;
    Journal journal = created();
    ASSERT_TRUE(journal.append(writer.next(3)));
    const auto reader = openForReading(file(), Medium::network);
    ASSERT_FALSE(reader);
    EXPECT_EQ(reader.error().code(), code::journalOnNetwork);
}

}  // namespace
}  // namespace treadwell::journal
