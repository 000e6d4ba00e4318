// Damage at every place of a file: whatever is hit, either the file reads as it was written, or the broken
// place is named; nothing is handed over that was never written; the file stays as it was found.
#include "core/base/atomic_file.h"
#include "core/journal/codes.h"
#include "tests/core/journal/journal_fixture.h"

#include <algorithm>
#include <fstream>
#include <random>

namespace treadwell::journal {
namespace {

using entries::StoredEntry;

constexpr std::size_t kPage = 4096;

class DamageSweep : public JournalTest {
  protected:
    DamageSweep() {
        Writer writer;
        Writer other{2};
        written = writer.next(120);
        const auto more = other.next(60);
        written.insert(written.end(), more.begin(), more.end());
        EXPECT_TRUE(created().append(written));
        std::filesystem::remove(file("season.treadwell.lease"));
        whole = readFile(file()).value();
        EXPECT_FALSE(std::filesystem::exists(file("season.treadwell-wal")));
    }

    enum class Found { whole, broken, refused };

    /// Opens the file with these bytes as a writer would, reads and verifies it.
    Found lookAt(const std::string& bytes) {
        std::ofstream(file(), std::ios::binary | std::ios::trunc) << bytes;
        const Found found = read();
        EXPECT_EQ(readFile(file()).value(), bytes) << "the damaged file was changed";
        std::error_code absent;
        const auto wal = std::filesystem::file_size(file("season.treadwell-wal"), absent);
        EXPECT_TRUE(absent || wal == 0);
        return found;
    }

    std::vector<StoredEntry> written;
    std::string whole;

  private:
    Found read() {
        auto journal = Journal::open(file(), Access::write, kNow);
        if (!journal) {
            const Code code = journal.error().code();
            EXPECT_TRUE(code == code::journalDamaged || code == code::journalForeign ||
                        code == code::journalTooNew)
                << toText(code);
            return Found::refused;
        }
        std::vector<StoredEntry> handed;
        const auto broken = journal->read([&](StoredEntry&& entry) { handed.push_back(std::move(entry)); });
        const auto verified = journal->verify();
        if (broken) {
            EXPECT_EQ(verified, broken);
        }
        if (verified) {
            EXPECT_FALSE(journal->isWritable());
            EXPECT_EQ(journal->readOnlyReason()->code, code::journalOpenedDamaged);
        }
        if (!broken) {
            EXPECT_EQ(handed, written) << "damage that nobody is told of";
        }
        m_lost += written.size() - std::min(written.size(), handed.size());
        return verified ? Found::broken : Found::whole;
    }

  protected:
    std::size_t m_lost = 0;  ///< entries that were not handed over, of all files
};

TEST_F(DamageSweep, AFlippedBitInAnyPageIsNamedOrHarmless) {
    std::mt19937 random{20260915};
    int told = 0;
    int pages = 0;
    for (std::size_t page = 0; page * kPage < whole.size(); ++page) {
        for (int i = 0; i < 4; ++i, ++pages) {
            std::string bytes = whole;
            // The header of a page and its far end, where cells are, and anywhere.
            const std::size_t within = i == 0   ? random() % 8
                                       : i == 1 ? kPage - 1 - random() % 200
                                                : random() % kPage;
            bytes[page * kPage + within] ^= static_cast<char>(1 << random() % 8);
            SCOPED_TRACE(testing::Message() << "page " << page << ", byte " << within);
            if (lookAt(bytes) != Found::whole) ++told;
        }
    }
    EXPECT_GT(pages, 60);
    EXPECT_GT(told, pages / 2);
}

TEST_F(DamageSweep, AFileCutOffAnywhereGivesWhatIsLeftOfIt) {
    int opened = 0;
    for (std::size_t size = 0; size < whole.size(); size += 512) {
        SCOPED_TRACE(testing::Message() << "cut off at " << size);
        const Found found = lookAt(whole.substr(0, size));
        EXPECT_NE(found, Found::whole);
        if (found == Found::broken) ++opened;
    }
    EXPECT_GT(opened, 20);
    EXPECT_EQ(lookAt(whole), Found::whole);
}

TEST_F(DamageSweep, AllThatLiesBeyondADamagedPageIsRead) {
    std::string bytes = whole;
    const auto place = bytes.find("note 60");
    ASSERT_NE(place, std::string::npos);
    std::fill_n(bytes.begin() + static_cast<std::ptrdiff_t>(place / kPage * kPage), 64, '\xff');
    EXPECT_EQ(lookAt(bytes), Found::broken);
    EXPECT_GT(m_lost, 0u);
    EXPECT_LT(m_lost, 30u);
}

}  // namespace
}  // namespace treadwell::journal
