// The power goes at any moment: what was not synced may be on the disk or not, in any choice of it. Whatever
// is left opens, holds every entry that was acknowledged, and is whole.
#include "core/base/atomic_file.h"
#include "core/journal/open.h"
#include "tests/core/journal/journal_fixture.h"
#include "tests/core/journal/recording_disk.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <fstream>
#include <random>

namespace treadwell::journal {
namespace {

using testing_support::apply;
using testing_support::DiskAction;
using testing_support::DiskContent;
using testing_support::RecordingDisk;
using Kind = DiskAction::Kind;

constexpr int kEntries = 24;

/// What a disk may hold after a cut.
enum class Kept { synced, all, some };

/// Takes actions one by one and keeps apart what has been synced and what has not.
class Disk {
  public:
    explicit Disk(DiskContent content) : m_synced(std::move(content)) {}

    void take(const DiskAction& action) {
        if (action.kind == Kind::acknowledge) {
            acknowledged = action.offset;
        } else if (action.kind == Kind::sync || action.kind == Kind::erase) {
            std::erase_if(m_pending, [&](const DiskAction& pending) {
                if (pending.file != action.file) return false;
                if (action.kind == Kind::sync) apply(m_synced, pending);
                return true;
            });
            apply(m_synced, action);
        } else {
            m_pending.push_back(action);
        }
    }

    [[nodiscard]] DiskContent afterCut(Kept kept, std::mt19937& random) const {
        DiskContent content = m_synced;
        for (const DiskAction& action : m_pending) {
            if (kept == Kept::all || (kept == Kept::some && random() % 2 == 0)) apply(content, action);
        }
        return content;
    }

    std::int64_t acknowledged = 0;

  private:
    DiskContent m_synced;
    std::vector<DiskAction> m_pending;
};

class PowerCut : public JournalTest {
  protected:
    /// Two evenings: entries, a closing that takes the WAL in, entries again.
    void record(RecordingDisk& disk) {
        Writer writer;
        for (int evening = 0; evening < 2; ++evening) {
            Journal journal = opened();
            for (int i = 0; i < kEntries / 2; ++i) {
                written.push_back(writer.next(std::string(static_cast<std::size_t>(300 * i), 'x')));
                ASSERT_TRUE(journal.append({&written.back(), 1}));
                disk.acknowledge(static_cast<std::int64_t>(written.size()));
            }
        }
    }

    void expectWhole(const DiskContent& content, std::int64_t acknowledged) {
        const auto folder = m_folder / "cut";
        std::filesystem::remove_all(folder);
        std::filesystem::create_directory(folder);
        for (const auto& [name, bytes] : content) std::ofstream(folder / name, std::ios::binary) << bytes;
        auto journal = Journal::open(folder / "season.treadwell", Access::write, kNow);
        ASSERT_TRUE(journal) << toText(journal.error().code());
        ASSERT_TRUE(journal->isWritable());
        const auto found = allOf(*journal);
        ASSERT_EQ(journal->verify(), std::nullopt);
        ASSERT_GE(std::ssize(found), acknowledged);
        ASSERT_LE(std::ssize(found), acknowledged + 1);
        ASSERT_TRUE(std::equal(found.begin(), found.end(), written.begin()));
    }

    void cutEverywhere() {
        RecordingDisk disk;
        const DiskContent before{{"season.treadwell", readFile(file()).value()}};
        record(disk);
        disk.recording = false;
        ASSERT_EQ(written.size(), static_cast<std::size_t>(kEntries));
        std::mt19937 random{20260915};
        Disk power{before};
        DiskContent last;
        for (std::size_t i = 0; i < disk.actions.size(); ++i) {
            SCOPED_TRACE(testing::Message() << "after action " << i << " of " << disk.actions.size());
            power.take(disk.actions[i]);
            for (const Kept kept : {Kept::synced, Kept::all, Kept::some}) {
                DiskContent content = power.afterCut(kept, random);
                if (content == last) continue;
                ASSERT_NO_FATAL_FAILURE(expectWhole(content, power.acknowledged));
                last = std::move(content);
                ++cuts;
            }
        }
    }

    std::vector<entries::StoredEntry> written;
    int cuts = 0;
};

TEST_F(PowerCut, LosesNothingAcknowledged) {
    created();
    cutEverywhere();
    EXPECT_GT(cuts, 200);
}

// The disk shows it where a program does not wait for it.
TEST_F(PowerCut, TakesAwayWhatWasNeverSynced) {
    created();
    RecordingDisk disk;
    const DiskContent before{{"season.treadwell", readFile(file()).value()}};
    SQLite::Database hasty(file().string(), SQLite::OPEN_READWRITE);
    hasty.exec("PRAGMA synchronous = OFF; CREATE TABLE hasty(number); INSERT INTO hasty VALUES (1)");
    EXPECT_EQ(hasty.execAndGet("SELECT count(*) FROM hasty").getInt(), 1);
    disk.recording = false;
    EXPECT_GT(disk.actions.size(), 3u);
    Disk power{before};
    for (const DiskAction& action : disk.actions) power.take(action);
    std::mt19937 random{1};
    EXPECT_EQ(power.afterCut(Kept::synced, random).at("season.treadwell"), before.at("season.treadwell"));
    EXPECT_FALSE(power.afterCut(Kept::synced, random).contains("season.treadwell-wal"));
    EXPECT_TRUE(power.afterCut(Kept::all, random).contains("season.treadwell-wal"));
}

}  // namespace
}  // namespace treadwell::journal
