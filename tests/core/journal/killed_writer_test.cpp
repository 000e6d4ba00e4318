#include "core/base/number_text.h"
#include "tests/core/journal/journal_fixture.h"

#include <sys/wait.h>

#include <csignal>
#include <cstdlib>
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

/// Kills a writer a moment after it has acknowledged some entries; the last sequence that it acknowledged.
std::int64_t lastAcknowledged(const std::filesystem::path& path, int entries,
                              std::chrono::microseconds moment) {
    int ends[2];
    EXPECT_EQ(::pipe(ends), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(ends[0]);
        appendForever(path, ends[1]);
    }
    ::close(ends[1]);
    std::int64_t last = 0;
    const auto next = [&] { return ::read(ends[0], &last, sizeof last) == sizeof last; };
    for (int i = 0; i < entries; ++i) EXPECT_TRUE(next());
    std::this_thread::sleep_for(moment);
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_TRUE(WIFSIGNALED(status)) << "the writer ended by itself: " << WEXITSTATUS(status);
    while (next()) continue;
    ::close(ends[0]);
    return last;
}

/// Twenty, or as many as TREADWELL_KILLS says: 1000 take some minutes.
int rounds() {
    const char* wanted = std::getenv("TREADWELL_KILLS");
    return wanted == nullptr ? 20 : static_cast<int>(integerFromText(wanted).value());
}

// The writer dies at any moment; what it had acknowledged is there, and nothing but whole entries.
TEST_F(JournalTest, LosesNothingAcknowledgedWhenItsWriterIsKilled) {
    created();
    std::mt19937 random{20260915};
    std::uniform_int_distribution<int> entries{1, 30};
    std::uniform_int_distribution<int> moment_us{0, 3000};
    std::int64_t acknowledged = 0;
    for (int round = 0; round < rounds(); ++round) {
        const std::int64_t last =
            lastAcknowledged(file(), entries(random), std::chrono::microseconds{moment_us(random)});
        ASSERT_GT(last, acknowledged);
        acknowledged = last;
        Journal journal = opened();
        ASSERT_TRUE(journal.isWritable());
        ASSERT_EQ(journal.verify(), std::nullopt);
        std::int64_t count = 0;
        ASSERT_EQ(journal.read(
                      [&](entries::StoredEntry&& entry) { EXPECT_EQ(entry.header.deviceSequence, ++count); }),
                  std::nullopt);
        ASSERT_GE(count, acknowledged);
        // At most the one that was committed and not yet acknowledged.
        ASSERT_LE(count, acknowledged + 1);
    }
}

}  // namespace
}  // namespace treadwell::journal
