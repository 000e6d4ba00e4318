#include "tests/core/journal/journal_fixture.h"

#include <sys/wait.h>

#include <csignal>
#include <random>
#include <thread>

namespace treadwell::journal {
namespace {

/// Appends until it is killed, and says so of each entry once it is acknowledged.
[[noreturn]] void appendForever(const std::filesystem::path& path, int acknowledged) {
    auto journal = Journal::open(path, Access::write, kNow);
    if (!journal || !journal->isWritable()) ::_exit(1);
    const auto& heads = journal->heads();
    Writer writer{1, heads.empty() ? Head{} : heads.begin()->second};
    for (;;) {
        const entries::StoredEntry entry = writer.next("a note that is long enough to fill pages quickly");
        if (!journal->append({&entry, 1})) ::_exit(2);
        const std::int64_t sequence = entry.header.deviceSequence;
        if (::write(acknowledged, &sequence, sizeof sequence) != sizeof sequence) ::_exit(3);
    }
}

/// The last sequence that the child acknowledged before it was killed; 0 where it came to none.
std::int64_t lastAcknowledged(const std::filesystem::path& path, std::chrono::microseconds life) {
    int ends[2];
    EXPECT_EQ(::pipe(ends), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(ends[0]);
        appendForever(path, ends[1]);
    }
    ::close(ends[1]);
    std::this_thread::sleep_for(life);
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_TRUE(WIFSIGNALED(status)) << "the writer ended by itself: " << WEXITSTATUS(status);
    std::int64_t last = 0;
    for (std::int64_t sequence = 0; ::read(ends[0], &sequence, sizeof sequence) == sizeof sequence;) {
        last = sequence;
    }
    ::close(ends[0]);
    return last;
}

// The writer dies at any moment; what it had acknowledged is there, and nothing but whole entries.
TEST_F(JournalTest, LosesNothingAcknowledgedWhenItsWriterIsKilled) {
    created();
    std::mt19937 random{20260915};
    std::uniform_int_distribution<int> life_us{2000, 60000};
    std::int64_t acknowledged = 0;
    std::int64_t present = 0;
    for (int round = 0; round < 20; ++round) {
        const std::int64_t last = lastAcknowledged(file(), std::chrono::microseconds{life_us(random)});
        acknowledged = std::max(acknowledged, last);
        const std::int64_t known = std::max(acknowledged, present);
        const Journal journal = opened();
        ASSERT_TRUE(journal.isWritable());
        ASSERT_TRUE(journal.quickCheck());
        std::int64_t count = 0;
        ASSERT_EQ(journal.read(
                      [&](entries::StoredEntry&& entry) { EXPECT_EQ(entry.header.deviceSequence, ++count); }),
                  std::nullopt);
        ASSERT_GE(count, acknowledged);
        // At most the one that was committed and not yet acknowledged.
        ASSERT_LE(count, known + 1);
        present = count;
    }
    EXPECT_GT(acknowledged, 100);
}

}  // namespace
}  // namespace treadwell::journal
