#include "core/session/session.h"

#include "core/base/codes.h"
#include "core/entries/codes.h"
#include "core/journal/codes.h"
#include "core/session/codes.h"
#include "core/session/history.h"
#include "tests/core/session/session_fixture.h"

#include <gmock/gmock.h>
#include <unistd.h>

namespace treadwell::session {
namespace {

using testing::ElementsAre;
using testing_support::at;
using testing_support::someLoad;

TEST_F(SessionTest, ShowsWhatIsRecordedAndShowsItAgainWhenOpened) {
    double shown = 0;
    {
        Session session = created();
        ASSERT_TRUE(load(session, 12));
        ASSERT_TRUE(load(session, 9.5, 5));
        shown = tonnesIn(session);
        EXPECT_DOUBLE_EQ(shown, 21.5);
        EXPECT_EQ(session.snapshot()->farm().farm, "Two Creeks");
    }
    Session session = opened();
    EXPECT_TRUE(session.standing().writable);
    EXPECT_TRUE(session.standing().cautions.empty());
    EXPECT_EQ(tonnesIn(session), shown);
    EXPECT_EQ(session.check(), std::nullopt);
}

TEST_F(SessionTest, KeepsWhatAnEntryWasReadFrom) {
    const entries::Evidence row{sha256("row"), "Zebra;12.3"};
    const Proposal aside{
        entries::RowSetAside{"t.csv", "tickets", 2, 1, "truck", "nameUnknown", "Zebra is unknown", row.hash},
        m_clock.time,
        {},
        row};
    {
        Session session = created();
        ASSERT_TRUE(session.importAll({&aside, 1}, m_author));
        EXPECT_EQ(session.evidence(row.hash).value(), row.content);
    }
    const Session session = opened();
    EXPECT_EQ(session.evidence(row.hash).value(), row.content);
    EXPECT_EQ(session.evidence(sha256("other")).value(), std::nullopt);
    EXPECT_EQ(session.snapshot()->days().back()->records.of<entries::RowSetAside>().at(0).what.reason,
              "Zebra is unknown");
}

TEST_F(SessionTest, FillsTheHeader) {
    Session session = created();
    m_clock.time = at("2026-09-15T18:30:00Z");
    const auto first = load(session, 12, -90);
    const auto second = load(session, 13);
    ASSERT_TRUE(first && second);
    EXPECT_EQ(first->kind, "load");
    EXPECT_EQ(first->author, m_author);
    EXPECT_EQ(first->happened, at("2026-09-15T17:00:00Z"));
    EXPECT_EQ(first->recorded, m_clock.time);
    EXPECT_EQ(first->utcOffsetMinutes, -180);
    EXPECT_EQ(first->deviceSequence, 2);
    EXPECT_EQ(second->deviceSequence, 3);
    EXPECT_GT(second->lamport, first->lamport);
    EXPECT_EQ(second->device, first->device);
    // RFC 9562, 5.7: a version 7 UUID begins with the milliseconds since 1970.
    EXPECT_EQ(first->id.value.bytes[6] >> 4, 7);
    std::int64_t milliseconds = 0;
    for (std::size_t i = 0; i < 6; ++i) milliseconds = milliseconds << 8 | first->id.value.bytes[i];
    EXPECT_EQ(milliseconds, toMicroseconds(m_clock.time) / 1000);
}

TEST_F(SessionTest, LeavesASnapshotAsItWas) {
    Session session = created();
    ASSERT_TRUE(load(session, 12));
    const auto before = session.snapshot();
    ASSERT_TRUE(load(session, 12));
    EXPECT_EQ(before->days().back()->loads.size(), 1u);
    EXPECT_EQ(session.snapshot()->days().back()->loads.size(), 2u);
}

TEST_F(SessionTest, RecordsNothingThatIsWrong) {
    Session session = created();
    const Hash head = session.head();
    EXPECT_EQ(load(session, 0.01).error().code(), code::valueOutOfRange);
    EXPECT_EQ(session.propose(entries::VoidEntry{}, m_clock.time, m_author).error().code(),
              code::targetMissing);
    const auto nobody = testing_support::idOf<entries::EntryTag>(9);
    EXPECT_EQ(session.undo(nobody, "", m_author).error().code(), code::targetMissing);
    EXPECT_EQ(session.propose(someLoad(9), m_clock.time, m_author, nobody).error().code(),
              code::targetMissing);
    EXPECT_EQ(session.head(), head);
}

TEST_F(SessionTest, ImportsAllOrNothing) {
    Session session = created();
    std::vector<Proposal> proposals(40, {someLoad(10), m_clock.time, {}});
    proposals[17].body = someLoad(500);
    const auto refused = session.importAll(proposals, m_author);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code(), code::valueOutOfRange);
    EXPECT_EQ(refused.error().place.line, 18);
    EXPECT_EQ(tonnesIn(session), 0);
    proposals[17].body = someLoad(10);
    const auto headers = session.importAll(proposals, m_author);
    ASSERT_TRUE(headers);
    EXPECT_EQ(headers->size(), 40u);
    EXPECT_DOUBLE_EQ(tonnesIn(session), 400);
}

TEST_F(SessionTest, TakesBackAndRestores) {
    Session session = created();
    const auto stated = load(session, 12);
    const auto taken = session.undo(stated->id, "tapped twice", m_author);
    ASSERT_TRUE(taken);
    EXPECT_EQ(tonnesIn(session), 0);
    EXPECT_EQ(session.undo(stated->id, "", m_author).error().code(), code::entryVoided);
    EXPECT_EQ(session.propose(someLoad(11), m_clock.time, m_author, stated->id).error().code(),
              code::entryVoided);
    // Taking the void back states the fact anew.
    ASSERT_TRUE(session.undo(taken->id, "", m_author));
    EXPECT_DOUBLE_EQ(tonnesIn(session), 12);
}

TEST_F(SessionTest, CorrectsAndTakesACorrectionBack) {
    Session session = created();
    const auto stated = load(session, 12, -60);
    const auto first = session.propose(someLoad(11), stated->happened, m_author, stated->id);
    // A correction may name a correction: it speaks of the same load.
    const auto second = session.propose(someLoad(10), stated->happened, m_author, first->id);
    ASSERT_TRUE(first && second);
    EXPECT_EQ(second->target, stated->id);
    EXPECT_DOUBLE_EQ(tonnesIn(session), 10);
    const auto undone = session.undo(second->id, "", m_author);
    ASSERT_TRUE(undone);
    EXPECT_DOUBLE_EQ(tonnesIn(session), 11);
    std::vector<entries::EntryId> ids;
    for (const auto& entry : historyOf(*session.snapshot(), second->id)) ids.push_back(entry->header.id);
    EXPECT_THAT(ids, ElementsAre(stated->id, first->id, second->id, undone->id));
    EXPECT_TRUE(historyOf(*session.snapshot(), testing_support::idOf<entries::EntryTag>(9)).empty());
    EXPECT_EQ(session.propose(entries::Note{"rain"}, m_clock.time, m_author, stated->id).error().code(),
              code::correctionChangesKind);
}

TEST_F(SessionTest, TellsTheSecondWhoWritesAndTakesNothing) {
    Session first = created();
    Session second = opened();
    EXPECT_FALSE(second.standing().writable);
    ASSERT_TRUE(second.standing().readOnlyReason);
    EXPECT_EQ(second.standing().readOnlyReason->code, code::journalHeld);
    EXPECT_EQ(second.standing().readOnlyReason->arguments[1], Argument{std::int64_t{::getpid()}});
    EXPECT_EQ(load(second, 12).error().code(), code::journalReadOnly);
    const auto reader = Session::open(m_files, m_clock, Purpose::reading);
    ASSERT_TRUE(reader);
    EXPECT_FALSE(reader->standing().readOnlyReason);
    EXPECT_EQ(reader->snapshot()->farm().farm, "Two Creeks");
}

TEST_F(SessionTest, RefusesAZoneThatIsUnknownAndAFileThatIsThere) {
    EXPECT_EQ(Session::create(m_files, {"Two Creeks", "Mars/Base"}, m_author, m_clock).error().code(),
              code::zoneUnknown);
    EXPECT_FALSE(std::filesystem::exists(m_files.season));
    created();
    EXPECT_EQ(Session::create(m_files, {"Two Creeks", "Etc/UTC"}, m_author, m_clock).error().code(),
              code::journalExists);
}

TEST_F(SessionTest, BacksUpIntoAFileThatOpens) {
    Session session = created();
    ASSERT_TRUE(load(session, 12));
    const auto copy = m_folder / "copy.treadwell";
    ASSERT_TRUE(session.backupTo(copy));
    EXPECT_EQ(session.backupTo(copy).error().code(), code::journalExists);
    const auto opened = Session::open({copy, m_files.stateFolder}, m_clock, Purpose::reading);
    ASSERT_TRUE(opened);
    EXPECT_EQ(opened->head(), session.head());
    EXPECT_DOUBLE_EQ(tonnesIn(*opened), 12);
}

}  // namespace
}  // namespace treadwell::session
