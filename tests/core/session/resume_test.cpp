// A disk that fails while a season is open, and is well again.
#include "core/journal/codes.h"
#include "core/journal/journal.h"
#include "core/session/codes.h"
#include "tests/core/session/session_fixture.h"

#include <gmock/gmock.h>
#include <sys/resource.h>
#include <sys/wait.h>

#include <csignal>
#include <fstream>

namespace treadwell::session {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

bool isKept(const Result<entries::Header>& header) {
    return !header && header.error().code() == code::entryKeptAside;
}

std::vector<double> tonnesInOrder(const Session& session) {
    std::vector<double> tonnes;
    for (const auto& day : session.snapshot()->days()) {
        for (const auto& tipped : day->loads) tonnes.push_back(tipped.load.mass.tonnes());
    }
    return tonnes;
}

class ResumeTest : public SessionTest {
  protected:
    [[nodiscard]] std::filesystem::path away() const { return m_folder / "pulled.treadwell"; }

    /// As a stick that is pulled out: the file is gone from its place, with what stands beside it.
    void pullOut() {
        for (const char* suffix : {"", "-wal", "-shm"}) {
            if (std::filesystem::exists(m_files.season.string() + suffix)) {
                std::filesystem::rename(m_files.season.string() + suffix, away().string() + suffix);
            }
        }
    }
    void putBack() {
        for (const char* suffix : {"", "-wal", "-shm"}) {
            if (std::filesystem::exists(away().string() + suffix)) {
                std::filesystem::rename(away().string() + suffix, m_files.season.string() + suffix);
            }
        }
    }
};

TEST_F(ResumeTest, RecordsInOrderAndOnceWhenTheStickIsBack) {
    Session session = created();
    ASSERT_TRUE(load(session, 1, 1));
    pullOut();
    EXPECT_TRUE(isKept(load(session, 2, 2)));
    EXPECT_TRUE(isKept(load(session, 3, 3)));
    EXPECT_EQ(session.standing().unsaved, 2);
    EXPECT_THAT(tonnesInOrder(session), ElementsAre(1)) << "nothing is acknowledged that is not recorded";
    session.lookAgain();
    EXPECT_EQ(session.standing().unsaved, 2) << "it is still out";
    putBack();
    const auto header = load(session, 4, 4);
    ASSERT_TRUE(header);
    EXPECT_EQ(header->deviceSequence, 5);
    EXPECT_EQ(session.standing().unsaved, 0);
    EXPECT_THAT(tonnesInOrder(session), ElementsAre(1, 2, 3, 4));
    EXPECT_EQ(session.check(), std::nullopt);
    EXPECT_TRUE(session.standing().writable);
}

TEST_F(ResumeTest, IsTriedWithoutANewEntryToo) {
    Session session = created();
    pullOut();
    EXPECT_TRUE(isKept(load(session, 2, 2)));
    putBack();
    for (int times = 0; times < 2; ++times) session.lookAgain();
    EXPECT_EQ(session.standing().unsaved, 0);
    EXPECT_EQ(session.standing().unsavedReason, std::nullopt);
    EXPECT_THAT(session.standing().cautions,
                ElementsAre(Message{code::keptEntriesRecorded, {std::int64_t{1}}}));
    EXPECT_THAT(tonnesInOrder(session), ElementsAre(2));
}

TEST_F(ResumeTest, WhatWasKeptOutlivesTheProgram) {
    {
        Session session = created();
        pullOut();
        EXPECT_TRUE(isKept(load(session, 2, 2)));
        EXPECT_TRUE(isKept(load(session, 3, 3)));
    }
    putBack();
    Session session = opened();
    EXPECT_THAT(session.standing().cautions,
                ElementsAre(Message{code::keptEntriesRecorded, {std::int64_t{2}}}));
    EXPECT_THAT(tonnesInOrder(session), ElementsAre(2, 3));
}

TEST_F(ResumeTest, WhatAnEntryWasReadFromIsKeptWithIt) {
    const entries::Evidence row{sha256("row"), "Red;12,0"};
    const Proposal proposal{testing_support::someLoad(12), m_clock.time, {}, row};
    {
        Session session = created();
        pullOut();
        EXPECT_FALSE(session.importAll({&proposal, 1}, m_author));
    }
    putBack();
    const Session session = opened();
    EXPECT_THAT(tonnesInOrder(session), ElementsAre(12));
    EXPECT_EQ(session.evidence(row.hash).value(), row.content);
}

TEST_F(ResumeTest, DoesNotGoOnInAnotherFile) {
    Session session = created();
    ASSERT_TRUE(session.backupTo(m_folder / "older.treadwell"));
    ASSERT_TRUE(load(session, 1, 1));
    pullOut();
    std::filesystem::rename(m_folder / "older.treadwell", m_files.season);
    EXPECT_TRUE(isKept(load(session, 2, 2)));
    session.lookAgain();
    EXPECT_EQ(session.standing().unsaved, 1);
    ASSERT_TRUE(session.standing().unsavedReason);
    EXPECT_EQ(session.standing().unsavedReason->code, code::journalBehind);
    std::filesystem::remove(m_files.season);
    putBack();
    session.lookAgain();
    EXPECT_EQ(session.standing().unsaved, 0);
    EXPECT_THAT(tonnesInOrder(session), ElementsAre(1, 2));
}

TEST_F(ResumeTest, SaysWhereTheEmergencyFileCannotBeWrittenEither) {
    Session session = created();
    pullOut();
    std::filesystem::remove_all(m_files.stateFolder);
    std::ofstream(m_files.stateFolder) << "in the way";
    const auto refused = load(session, 2, 2);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code(), code::entryKeptInMemory);
    putBack();
    session.lookAgain();
    EXPECT_EQ(session.standing().unsaved, 0);
    EXPECT_THAT(tonnesInOrder(session), ElementsAre(2));
}

// In a child, for a limit to the size of files is the process's own.
TEST_F(ResumeTest, GoesOnWhenAFullDiskHasRoomAgain) {
    created();
    const pid_t child = ::fork();
    if (child == 0) {
        std::signal(SIGXFSZ, SIG_IGN);
        Session session = opened();
        const rlimit full{100000, RLIM_INFINITY};
        ::setrlimit(RLIMIT_FSIZE, &full);
        int acknowledged = 0;
        while (load(session, 1)) ++acknowledged;
        const bool kept = isKept(load(session, 2));
        const rlimit roomy{RLIM_INFINITY, RLIM_INFINITY};
        ::setrlimit(RLIMIT_FSIZE, &roomy);
        const bool recorded = load(session, 3).has_value();
        const double whole = acknowledged + 1 + 2 + 3;
        ::_exit(kept && recorded && session.standing().unsaved == 0 && tonnesIn(session) == whole ? 0 : 1);
    }
    int status = -1;
    ::waitpid(child, &status, 0);
    EXPECT_EQ(status, 0);
    Session session = opened();
    EXPECT_EQ(session.check(), std::nullopt);
    EXPECT_THAT(session.standing().cautions, IsEmpty());
    EXPECT_THAT(tonnesInOrder(session), testing::Contains(3).Times(1));
    EXPECT_THAT(tonnesInOrder(session), testing::Contains(2).Times(1));
}

}  // namespace
}  // namespace treadwell::session
