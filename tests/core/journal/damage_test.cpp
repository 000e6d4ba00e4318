// Files that are not as they should be: damaged, foreign, newer, on a medium that cannot be written.
#include "core/base/atomic_file.h"
#include "core/base/codes.h"
#include "core/journal/codes.h"
#include "tests/core/journal/journal_fixture.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sys/stat.h>
#include <sys/wait.h>

#include <cstring>
#include <fstream>

namespace treadwell::journal {
namespace {

using entries::StoredEntry;

void write(const std::filesystem::path& path, const std::string& content) {
    std::ofstream(path, std::ios::binary | std::ios::trunc) << content;
}

Code refusal(const std::filesystem::path& path) {
    const auto journal = Journal::open(path, Access::write, kNow);
    EXPECT_FALSE(journal) << path;
    EXPECT_EQ(std::get<std::string>(journal.error().message.arguments[0]), path.string());
    return journal.error().code();
}

TEST_F(JournalTest, NamesTheFirstEntryThatAFlippedByteReaches) {
    Writer writer;
    Writer other{2};
    {
        Journal journal = created();
        ASSERT_TRUE(journal.append(writer.next(10)));
        const StoredEntry marked = writer.next("seven loads before noon");
        ASSERT_TRUE(journal.append({&marked, 1}));
        ASSERT_TRUE(journal.append(other.next(5)));
        ASSERT_TRUE(journal.append(writer.next(5)));
        EXPECT_EQ(journal.verify(), std::nullopt);
    }
    std::string bytes = readFile(file()).value();
    const auto place = bytes.find("seven loads");
    ASSERT_NE(place, std::string::npos);
    bytes[place] ^= 0x01;
    write(file(), bytes);
    Journal journal = opened();
    std::size_t handed = 0;
    const auto broken = journal.read([&](StoredEntry&&) { ++handed; });
    ASSERT_TRUE(broken);
    EXPECT_EQ(*broken,
              (BrokenPlace{Fault::altered, 11, testing_support::idOf<entries::DeviceTag>(1), 11, {}}));
    EXPECT_EQ(broken->message().code, code::entryAltered);
    EXPECT_EQ(handed, 21u);
    EXPECT_FALSE(journal.isWritable());
    EXPECT_EQ(journal.readOnlyReason()->code, code::journalOpenedDamaged);
}

TEST_F(JournalTest, NamesTheEntryAfterOneThatIsGone) {
    Writer writer;
    ASSERT_TRUE(created().append(writer.next(5)));
    {
        SQLite::Database database(file().string(), SQLite::OPEN_READWRITE);
        database.exec("DROP TRIGGER entry_never_goes; DELETE FROM entry WHERE device_seq = 3");
    }
    const auto broken = opened().read([](StoredEntry&&) {});
    ASSERT_TRUE(broken);
    EXPECT_EQ(*broken, (BrokenPlace{Fault::missing, 4, testing_support::idOf<entries::DeviceTag>(1), 4, {}}));
}

TEST_F(JournalTest, RefusesWhatIsNoSeason) {
    write(file("letter.txt"), std::string(5000, 'x'));
    EXPECT_EQ(refusal(file("letter.txt")), code::journalForeign);
    write(file("empty"), "");
    EXPECT_EQ(refusal(file("empty")), code::journalForeign);
    SQLite::Database(file("other.db").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE)
        .exec("CREATE TABLE entry(id)");
    EXPECT_EQ(refusal(file("other.db")), code::journalForeign);
    EXPECT_EQ(refusal(file("absent")), code::fileUnreadable);
    EXPECT_EQ(refusal(m_folder), code::fileUnreadable);
    for (const auto& left : std::filesystem::directory_iterator(m_folder)) {
        EXPECT_EQ(left.path().string().find(".lease"), std::string::npos) << left.path();
    }
}

TEST_F(JournalTest, ReadsANewerFileWhoseColumnsAreOurs) {
    Writer writer;
    const auto written = writer.next(2);
    ASSERT_TRUE(created().append(written));
    SQLite::Database(file().string(), SQLite::OPEN_READWRITE)
        .exec("ALTER TABLE entry ADD COLUMN witness BLOB; PRAGMA user_version = 3");
    Journal journal = opened(Access::write);
    EXPECT_FALSE(journal.isWritable());
    ASSERT_TRUE(journal.readOnlyReason());
    EXPECT_EQ(*journal.readOnlyReason(),
              (Message{code::journalNewer,
                       {std::filesystem::canonical(file()).string(), std::int64_t{3}, std::int64_t{2}}}));
    EXPECT_EQ(allOf(journal), written);
}

TEST_F(JournalTest, RefusesANewerFileWithOtherColumns) {
    created();
    SQLite::Database(file().string(), SQLite::OPEN_READWRITE)
        .exec("ALTER TABLE entry RENAME COLUMN payload TO body; PRAGMA user_version = 3");
    EXPECT_EQ(refusal(file()), code::journalTooNew);
}

/// Runs `body` in a child without the rights of the superuser; whether it gave true.
template <class Body>
bool asNobody(const std::filesystem::path& folder, Body body) {
    std::filesystem::permissions(folder, std::filesystem::perms{0755});
    if (::geteuid() == 0) {
        for (const auto& entry : std::filesystem::directory_iterator(folder)) {
            EXPECT_EQ(::chown(entry.path().c_str(), 65534, 65534), 0);
        }
    }
    std::filesystem::permissions(folder, std::filesystem::perms{0555});
    const pid_t child = ::fork();
    if (child == 0) {
        if (::geteuid() == 0 && ::setuid(65534) != 0) ::_exit(2);
        ::_exit(body() ? 0 : 1);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    std::filesystem::permissions(folder, std::filesystem::perms{0755});
    return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

TEST_F(JournalTest, ReadsFromAMediumThatCannotBeWritten) {
    Writer writer;
    ASSERT_TRUE(created().append(writer.next(3)));
    std::filesystem::remove(file("season.treadwell.lease"));
    EXPECT_TRUE(asNobody(m_folder, [this] {
        auto journal = Journal::open(file(), Access::write, kNow);
        return journal && !journal->isWritable() &&
               journal->readOnlyReason()->code == code::journalMediumReadOnly && allOf(*journal).size() == 3;
    }));
    EXPECT_FALSE(std::filesystem::exists(file("season.treadwell.lease")));
}

TEST_F(JournalTest, SaysWhatAFolderWithAnUnfinishedWalNeeds) {
    Writer writer;
    Journal journal = created();
    ASSERT_TRUE(journal.append(writer.next(3)));
    EXPECT_TRUE(asNobody(m_folder, [this] {
        const auto opened = Journal::open(file(), Access::read, kNow);
        return !opened && opened.error().code() == code::journalNeedsFolder;
    }));
}

}  // namespace
}  // namespace treadwell::journal
