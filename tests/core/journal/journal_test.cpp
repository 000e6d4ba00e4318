#include "core/journal/journal.h"

#include "core/journal/codes.h"
#include "core/journal/open.h"
#include "core/journal/schema.h"
#include "tests/core/journal/journal_fixture.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gmock/gmock.h>
#include <sys/stat.h>

#include <fstream>

namespace treadwell::journal {
namespace {

using entries::StoredEntry;

TEST_F(JournalTest, KeepsEvidenceWithItsEntriesAndLetsItBeErased) {
    Writer writer;
    const entries::Evidence row{sha256("row"), std::string{"sep=;\na;b\n\0\xff;2\n", 15}};
    {
        Journal journal = created();
        const StoredEntry entry = writer.next();
        ASSERT_TRUE(journal.append({&entry, 1}, {&row, 1}));
        const entries::Evidence other{row.hash, "something else"};
        const StoredEntry next = writer.next();
        ASSERT_TRUE(journal.append({&next, 1}, {&other, 1}));
        const StoredEntry late = writer.next();
        (void)writer.next();
        const StoredEntry skipped = writer.next();
        const entries::Evidence lost{sha256("lost"), "lost"};
        EXPECT_FALSE(journal.append({&skipped, 1}, {&lost, 1}));
        EXPECT_EQ(journal.evidence(lost.hash).value(), std::nullopt);
        ASSERT_TRUE(journal.append({&late, 1}));
        EXPECT_EQ(journal.evidence(row.hash).value(), row.content);
    }
    {
        SQLite::Database database(file().string(), SQLite::OPEN_READWRITE);
        database.exec("DELETE FROM evidence");
    }
    Journal journal = opened();
    EXPECT_EQ(journal.evidence(row.hash).value(), std::nullopt);
    EXPECT_EQ(journal.read([](StoredEntry&&) {}), std::nullopt);
}

TEST_F(JournalTest, GivesBackEveryEntryAsItWasInTheOrderOfArrival) {
    Writer writer;
    Writer other{2};
    std::vector<StoredEntry> written{writer.next(), other.next("with \"quotes\" and \u00e7"), writer.next()};
    written[1].header.target = written[0].header.id;
    written[1].hash = entryHash({}, written[1].header, written[1].payload);
    {
        Journal journal = created();
        ASSERT_TRUE(journal.append(std::span{written}.first(2)));
        ASSERT_TRUE(journal.append(std::span{written}.subspan(2)));
        EXPECT_EQ(allOf(journal), written);
    }
    Journal journal = opened();
    EXPECT_TRUE(journal.isWritable());
    EXPECT_EQ(allOf(journal), written);
    EXPECT_EQ(journal.verify(), std::nullopt);
    const auto heads = journal.heads();
    ASSERT_EQ(heads.size(), 2u);
    EXPECT_EQ(heads.at(written[2].header.device), (Head{2, written[2].hash}));
    EXPECT_EQ(heads.at(written[1].header.device), (Head{1, written[1].hash}));
    EXPECT_EQ(journal.hashAt(written[0].header.device, 1), written[0].hash);
    EXPECT_EQ(journal.hashAt(written[0].header.device, 3), std::nullopt);
}

TEST_F(JournalTest, AppendsAllOrNothing) {
    Writer writer;
    Journal journal = created();
    std::vector<StoredEntry> entries = writer.next(3);
    entries[2].header.id = entries[0].header.id;
    entries[2].hash = entryHash(entries[1].hash, entries[2].header, entries[2].payload);
    const auto appended = journal.append(entries);
    ASSERT_FALSE(appended);
    EXPECT_EQ(appended.error().code(), code::journalWriteFailed);
    EXPECT_TRUE(allOf(journal).empty());
    EXPECT_TRUE(journal.heads().empty());
    // The next attempt stands on its own.
    EXPECT_TRUE(journal.append(std::span{entries}.first(2)));
    EXPECT_EQ(allOf(journal).size(), 2u);
}

TEST_F(JournalTest, RefusesAnEntryThatDoesNotFollow) {
    Journal journal = created();
    Writer writer;
    const std::vector<StoredEntry> entries = writer.next(3);
    ASSERT_TRUE(journal.append(std::span{entries}.first(1)));
    const auto skipping = journal.append(std::span{entries}.subspan(2));
    ASSERT_FALSE(skipping);
    EXPECT_EQ(skipping.error().code(), code::entryOutOfOrder);
    EXPECT_EQ(skipping.error().message.arguments[1], Argument{std::int64_t{3}});
    StoredEntry altered = entries[1];
    altered.payload = R"({"text":"another"})";
    EXPECT_EQ(journal.append({&altered, 1}).error().code(), code::entryOutOfOrder);
    EXPECT_TRUE(journal.append(std::span{entries}.subspan(1)));
}

// What the append-only triggers stop, through a connection like the journal's own.
class AppendOnly : public JournalTest, public testing::WithParamInterface<const char*> {};

TEST_P(AppendOnly, RefusesToChangeOrDelete) {
    Writer writer;
    const std::vector<StoredEntry> written = writer.next(2);
    ASSERT_TRUE(created().append(written));
    {
        SQLite::Database database = openForWriting(file(), Medium::local);
        EXPECT_THROW(database.exec(GetParam()), SQLite::Exception);
    }
    EXPECT_EQ(allOf(opened()), written);
}

INSTANTIATE_TEST_SUITE_P(
    Every, AppendOnly,
    testing::Values("UPDATE entry SET payload = '{}' WHERE seq = 1", "DELETE FROM entry WHERE seq = 2",
                    "DELETE FROM entry",
                    "INSERT OR REPLACE INTO entry SELECT seq, id, device, device_seq, lamport, author, kind,"
                    " kind_version, happened_us + 1, recorded_us, utc_offset_min, target, payload, hash"
                    " FROM entry WHERE seq = 1",
                    "INSERT INTO entry SELECT * FROM entry WHERE seq = 1"
                    " ON CONFLICT DO UPDATE SET payload = '{}'"));

TEST_F(JournalTest, IsDurableByItsSettings) {
    created();
    SQLite::Database database = openForWriting(file(), Medium::local);
    prepareToWrite(database, Medium::local);
    EXPECT_EQ(database.execAndGet("PRAGMA journal_mode").getString(), "wal");
    EXPECT_EQ(database.execAndGet("PRAGMA synchronous").getInt(), 2);
    EXPECT_EQ(database.execAndGet("PRAGMA foreign_keys").getInt(), 1);
    EXPECT_EQ(database.execAndGet("PRAGMA recursive_triggers").getInt(), 1);
}

TEST_F(JournalTest, IsReadableByItsOwnerAlone) {
    const Journal journal = created();
    for (const char* name : {"season.treadwell", "season.treadwell-wal", "season.treadwell.lease"}) {
        struct stat status {};
        ASSERT_EQ(::stat(file(name).c_str(), &status), 0) << name;
        EXPECT_EQ(status.st_mode & 0777, 0600u) << name;
    }
}

TEST_F(JournalTest, NeverReplacesAnotherFile) {
    std::ofstream(file()) << "a letter";
    EXPECT_EQ(Journal::create(file(), kNow).error().code(), code::journalExists);
    // The WAL of a file that was deleted would be replayed into a new one of its name.
    std::ofstream(file("other.treadwell-wal")) << "left over";
    EXPECT_EQ(Journal::create(file("other.treadwell"), kNow).error().code(), code::journalExists);
    EXPECT_FALSE(std::filesystem::exists(file("other.treadwell")));
}

TEST_F(JournalTest, MakesAFileInSpiteOfAnInterruptedAttempt) {
    std::ofstream(file("season.treadwell.new")) << "half of a file";
    EXPECT_TRUE(created().isWritable());
    EXPECT_FALSE(std::filesystem::exists(file("season.treadwell.new")));
}

TEST_F(JournalTest, TellsTheSecondWriterWhoHasIt) {
    Journal first = created();
    Writer writer;
    const StoredEntry entry = writer.next();
    ASSERT_TRUE(first.append({&entry, 1}));
    Journal second = opened(Access::write);
    EXPECT_FALSE(second.isWritable());
    ASSERT_TRUE(second.readOnlyReason());
    EXPECT_EQ(second.readOnlyReason()->code, code::journalHeld);
    EXPECT_EQ(second.readOnlyReason()->arguments[1], Argument{std::int64_t{::getpid()}});
    EXPECT_FALSE(std::get<std::string>(second.readOnlyReason()->arguments[2]).empty());
    EXPECT_EQ(second.readOnlyReason()->arguments[3], Argument{kNow});
    EXPECT_EQ(allOf(second).size(), 1u);
    const StoredEntry next = writer.next();
    EXPECT_EQ(second.append({&next, 1}).error().code(), code::journalReadOnly);
    // A reader sees what the writer goes on to commit.
    ASSERT_TRUE(first.append({&next, 1}));
    EXPECT_EQ(allOf(second).size(), 2u);
}

TEST_F(JournalTest, GivesTheLeaseBackWhenItCloses) {
    created();
    EXPECT_TRUE(opened().isWritable());
    EXPECT_TRUE(opened().isWritable());
}

TEST_F(JournalTest, AReaderLeavesTheWalAlone) {
    Writer writer;
    Journal journal = created();
    ASSERT_TRUE(journal.append(writer.next(3)));
    const auto size = std::filesystem::file_size(file("season.treadwell-wal"));
    ASSERT_GT(size, 0u);
    {
        Journal reader = opened(Access::read);
        EXPECT_FALSE(reader.isWritable());
        EXPECT_FALSE(reader.readOnlyReason());
        EXPECT_EQ(allOf(reader).size(), 3u);
    }
    EXPECT_EQ(std::filesystem::file_size(file("season.treadwell-wal")), size);
}

TEST_F(JournalTest, BacksUpAllThatIsCommitted) {
    Writer writer;
    Journal journal = created();
    ASSERT_TRUE(journal.append(writer.next(20)));
    ASSERT_TRUE(journal.backupTo(file("copy.treadwell")));
    EXPECT_EQ(journal.backupTo(file("copy.treadwell")).error().code(), code::journalExists);
    EXPECT_FALSE(std::filesystem::exists(file("copy.treadwell-wal")));
    ASSERT_TRUE(journal.append(writer.next(1)));
    auto copy = Journal::open(file("copy.treadwell"), Access::write, kNow);
    ASSERT_TRUE(copy);
    EXPECT_TRUE(copy->isWritable());
    const auto all = allOf(journal);
    EXPECT_EQ(allOf(*copy), std::vector(all.begin(), all.begin() + 20));
}

TEST(HeadHash, ChangesWithAnyEntryAndNotWithTheOrder) {
    Writer first;
    Writer second{2};
    const auto a = first.next(2);
    const auto b = second.next(1);
    const auto head = [](const StoredEntry& entry) { return Head{entry.header.deviceSequence, entry.hash}; };
    const auto device = [](const StoredEntry& entry) { return entry.header.device; };
    const Hash whole = headHash({{device(a[1]), head(a[1])}, {device(b[0]), head(b[0])}});
    EXPECT_EQ(headHash({{device(b[0]), head(b[0])}, {device(a[1]), head(a[1])}}), whole);
    EXPECT_NE(headHash({{device(a[0]), head(a[0])}, {device(b[0]), head(b[0])}}), whole);
    EXPECT_NE(headHash({{device(a[1]), head(a[1])}}), whole);
}

}  // namespace
}  // namespace treadwell::journal
