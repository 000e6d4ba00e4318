// What a session keeps an eye on: another program, the clock, the copies.
#include "core/base/atomic_file.h"
#include "core/journal/codes.h"
#include "core/journal/journal.h"
#include "core/quantity/work.h"
#include "core/session/codes.h"
#include "core/session/copies.h"
#include "tests/core/session/session_fixture.h"

#include <gmock/gmock.h>

#include <atomic>
#include <fstream>
#include <map>
#include <set>
#include <thread>

namespace treadwell::session {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::UnorderedElementsAre;

TEST_F(SessionTest, TheSecondProgramIsToldWhoWritesAndSeesWhatIsCommitted) {
    Session writer = created();
    ASSERT_TRUE(load(writer, 12));
    Session reader = opened();
    EXPECT_FALSE(reader.standing().writable);
    ASSERT_TRUE(reader.standing().readOnlyReason);
    EXPECT_EQ(reader.standing().readOnlyReason->code, code::journalHeld);
    EXPECT_EQ(reader.standing().readOnlyReason->arguments.at(1), Argument{std::int64_t{::getpid()}});
    EXPECT_EQ(reader.standing().readOnlyReason->arguments.at(3), Argument{m_clock.time});
    EXPECT_FALSE(std::get<std::string>(reader.standing().readOnlyReason->arguments.at(4)).empty());
    EXPECT_EQ(load(reader, 7).error().code(), code::journalReadOnly);
    EXPECT_EQ(reader.standing().unsaved, 0);
    ASSERT_TRUE(load(writer, 9, 5));
    ASSERT_TRUE(load(writer, 4, 6));
    EXPECT_DOUBLE_EQ(tonnesIn(reader), 12);
    reader.lookAgain();
    EXPECT_DOUBLE_EQ(tonnesIn(reader), 25);
    reader.lookAgain();
    EXPECT_DOUBLE_EQ(tonnesIn(reader), 25);
    EXPECT_EQ(reader.head(), writer.head());
    EXPECT_THAT(reader.standing().cautions, IsEmpty());
}

TEST_F(SessionTest, WhenTheWriterHasEndedTheReaderMayTakeOver) {
    std::optional<Session> writer = created();
    ASSERT_TRUE(load(*writer, 12));
    Session reader = opened();
    ASSERT_TRUE(load(*writer, 9, 5));
    const auto reason = [&] { return reader.standing().readOnlyReason.value().code; };
    reader.lookAgain();
    EXPECT_EQ(reason(), code::journalHeld);
    ASSERT_TRUE(load(*writer, 4, 6));
    writer.reset();
    EXPECT_EQ(reason(), code::journalHeld) << "until it looks";
    reader.lookAgain();
    EXPECT_EQ(reader.standing().readOnlyReason, (Message{code::journalLeft, {m_files.season.string()}}));
    EXPECT_DOUBLE_EQ(tonnesIn(reader), 25) << "with the last that was written";
    EXPECT_FALSE(reader.standing().writable) << "never by itself";
    EXPECT_EQ(load(reader, 7).error().code(), code::journalReadOnly);
    {
        const Session other = opened();
        reader.lookAgain();
        EXPECT_EQ(reason(), code::journalHeld) << "another was quicker";
        EXPECT_FALSE(opened().standing().writable);
    }
    reader.lookAgain();
    ASSERT_EQ(reason(), code::journalLeft);
    reader = opened();
    ASSERT_TRUE(reader.standing().writable);
    const auto before = reader.head();
    ASSERT_TRUE(load(reader, 7, 8));
    EXPECT_NE(reader.head(), before);
    EXPECT_EQ(reader.check(), std::nullopt);
    EXPECT_EQ(opened().standing().readOnlyReason->code, code::journalHeld) << "now it is this one's";
    std::set<entries::DeviceId> devices;
    for (const auto& day : reader.snapshot()->days()) {
        for (const auto& fact : day->facts) devices.insert(fact->stated().header.device);
    }
    EXPECT_EQ(devices.size(), 1u) << "one machine, one chain";
}

TEST_F(SessionTest, ATakeOverByAnotherMachineBeginsAChainOfItsOwn) {
    std::optional<Session> writer = created();
    ASSERT_TRUE(load(*writer, 12));
    const Files elsewhere{m_files.season, m_folder / "another machine"};
    Session reader = Session::open(elsewhere, m_clock).value();
    writer.reset();
    reader.lookAgain();
    reader = Session::open(elsewhere, m_clock).value();
    const auto header = load(reader, 7, 8);
    ASSERT_TRUE(header);
    EXPECT_EQ(header->deviceSequence, 1);
    EXPECT_GT(header->lamport, 2);
    EXPECT_EQ(reader.check(), std::nullopt);
    EXPECT_THAT(reader.standing().cautions, IsEmpty());
}

// Whoever asks holds the lock for a moment.
TEST_F(SessionTest, AskingWhoWritesKeepsNobodyFromWriting) {
    created();
    std::atomic<bool> ends = false;
    std::thread asker{[&] {
        while (!ends) static_cast<void>(journal::Lease::ownerOf(m_files.season));
    }};
    for (int i = 0; i < 100; ++i) EXPECT_TRUE(opened().standing().writable) << i;
    ends = true;
    asker.join();
}

TEST_F(SessionTest, ALeaseThatItsOwnerHasLeftIsTaken) {
    created();
    std::ofstream(m_files.season.string() + ".lease") << "1\nelsewhere\n0\nsomebody\n";
    EXPECT_TRUE(opened().standing().writable);
}

/// A machine whose clock can be set while time goes on.
class SetClock final : public Clock {
  public:
    [[nodiscard]] Instant now() const override { return start + passed + set; }
    [[nodiscard]] std::chrono::microseconds elapsed() const override { return passed; }

    Instant start = testing_support::at("2026-10-25T00:30:00Z");
    std::chrono::microseconds passed{0};
    std::chrono::microseconds set{0};
};

class ClockTest : public SessionTest {
  protected:
    Session start() {
        return Session::create(m_files, {"Two Creeks", "Europe/Berlin"}, m_author, m_set).value();
    }
    Session openAgain() { return Session::open(m_files, m_set).value(); }
    Result<entries::Header> loadNow(Session& session) {
        return session.propose(testing_support::someLoad(12), m_set.now(), m_author);
    }

    SetClock m_set;
};

TEST_F(ClockTest, AsksWhenItGoesBackAndKeepsTheOrder) {
    Session session = start();
    m_set.passed += std::chrono::hours{1};
    const auto first = loadNow(session);
    EXPECT_EQ(session.standing().clockQuestion, std::nullopt);
    m_set.set = -std::chrono::minutes{30};
    EXPECT_EQ(session.standing().clockQuestion,
              (Message{code::clockBehind, {m_set.now(), m_set.now() + std::chrono::minutes{30}}}));
    const auto second = session.propose(testing_support::someLoad(7), first->happened, m_author);
    ASSERT_TRUE(second);
    EXPECT_GT(second->lamport, first->lamport);
    EXPECT_LT(second->recorded, first->recorded) << "who and when stay as they were noted";
    const auto season = session.snapshot();
    ASSERT_EQ(season->days().back()->loads.size(), 2u);
    EXPECT_DOUBLE_EQ(season->days().back()->loads[1].load.mass.tonnes(), 7);
}

TEST_F(ClockTest, AsksWhenItIsDead) {
    start();
    m_set.start = Instant{};
    const Session session = openAgain();
    ASSERT_TRUE(session.standing().clockQuestion);
    EXPECT_EQ(session.standing().clockQuestion->code, code::clockBehind);
}

TEST_F(ClockTest, OfAReaderAsksNothing) {
    start();
    m_set.start = Instant{};
    const auto reader = Session::open(m_files, m_set, Purpose::reading);
    ASSERT_TRUE(reader);
    EXPECT_EQ(reader->standing().clockQuestion, std::nullopt) << "nothing is recorded by it";
}

TEST_F(ClockTest, AsksWhenItIsSetForwardAndNotWhenTheMachineSlept) {
    const Session session = start();
    m_set.passed += std::chrono::hours{9};
    EXPECT_EQ(session.standing().clockQuestion, std::nullopt);
    m_set.set = std::chrono::seconds{90};
    EXPECT_EQ(session.standing().clockQuestion, std::nullopt) << "what a time service does";
    m_set.set = std::chrono::hours{2};
    EXPECT_EQ(session.standing().clockQuestion,
              (Message{code::clockMoved, {durationAmount(std::chrono::hours{2})}}));
}

TEST_F(ClockTest, IsNotAskedAboutAgainOnceItIsSaidToBeRightUntilItMoves) {
    Session session = start();
    ASSERT_TRUE(loadNow(session));
    m_set.set = -std::chrono::hours{2};
    ASSERT_TRUE(session.standing().clockQuestion);
    session.clockIsRight();
    EXPECT_EQ(session.standing().clockQuestion, std::nullopt);
    const auto later = loadNow(session);
    m_set.passed += std::chrono::hours{1};
    EXPECT_EQ(session.standing().clockQuestion, std::nullopt);
    m_set.set = -std::chrono::hours{4};
    EXPECT_EQ(session.standing().clockQuestion->code, code::clockBehind) << "it went back once more";
    m_set.set = std::chrono::hours{4};
    EXPECT_EQ(session.standing().clockQuestion->code, code::clockMoved);
    EXPECT_LT(later->recorded, m_set.start) << "the answer changes nothing that is recorded";
}

class TouchTest : public ClockTest {
  protected:
    /// A touch at the desktop, `before` now.
    Result<std::vector<entries::Header>> touch(Session& session, double tonnes,
                                               std::chrono::microseconds before = {}) {
        const Proposal proposal{
            testing_support::someLoad(tonnes), m_set.now() - before, {}, {}, m_set.elapsed() - before};
        return session.importAll({&proposal, 1}, m_author);
    }
    static std::map<double, Instant> timesIn(const Session& session) {
        std::map<double, Instant> times;
        for (const auto& day : session.snapshot()->days()) {
            for (const auto& tipped : day->loads) times[tipped.load.mass.tonnes()] = tipped.at;
        }
        return times;
    }
    /// The machine goes off and comes up with a clock that has lost the time.
    void startDead() {
        m_set.start = Instant{};
        m_set.passed = std::chrono::minutes{1};
    }
};

TEST_F(TouchTest, WaitsWhileTheClockIsDeadAndGetsTheTimeThatWasRight) {
    start();
    startDead();
    Session session = openAgain();
    m_set.passed += std::chrono::minutes{4};
    const auto held = touch(session, 1);
    ASSERT_FALSE(held);
    EXPECT_EQ(held.error().code(), code::entryWaitsForClock);
    m_set.passed += std::chrono::minutes{10};
    EXPECT_FALSE(touch(session, 2));
    session.lookAgain();
    EXPECT_EQ(session.standing().unsaved, 2) << "however well the disk is";
    ASSERT_TRUE(session.standing().unsavedReason);
    EXPECT_EQ(session.standing().unsavedReason->code, code::entryWaitsForClock);
    EXPECT_TRUE(timesIn(session).empty());
    // What somebody gives a time is recorded at it.
    const Instant stated = testing_support::at("2026-10-25T06:00:00Z");
    ASSERT_TRUE(session.propose(testing_support::someLoad(3), stated, m_author));
    EXPECT_EQ(session.standing().unsaved, 2);
    // The machine is given the right time, a minute later.
    m_set.passed += std::chrono::minutes{1};
    const Instant right = testing_support::at("2026-10-25T07:15:00Z");
    m_set.set = right - m_set.now();
    EXPECT_FALSE(touch(session, 4)) << "it was moved: is it right now?";
    session.clockIsRight();
    EXPECT_EQ(session.standing().unsaved, 0);
    EXPECT_EQ(session.standing().unsavedReason, std::nullopt);
    EXPECT_THAT(timesIn(session), ElementsAre(std::pair{1., right - std::chrono::minutes{11}},
                                              std::pair{2., right - std::chrono::minutes{1}},
                                              std::pair{3., stated}, std::pair{4., right}));
    EXPECT_THAT(codesOf(session.standing().cautions), ElementsAre(code::keptEntriesRecorded));
    ASSERT_TRUE(touch(session, 5));
    EXPECT_EQ(timesIn(session)[5.], right);
    EXPECT_EQ(session.check(), std::nullopt);
}

TEST_F(TouchTest, IsRecordedAsItIsWhereTheClockWasRightAllAlong) {
    Session session = start();
    ASSERT_TRUE(touch(session, 1));
    m_set.set = std::chrono::hours{2};
    const Instant shown = m_set.now();
    EXPECT_FALSE(touch(session, 2));
    session.clockIsRight();
    EXPECT_EQ(timesIn(session)[2.], shown);
}

TEST_F(TouchTest, IsRecordedWithoutAnAnswerWhereTheClockGoesBackToWhatItWas) {
    Session session = start();
    m_set.passed += std::chrono::hours{1};
    const Instant right = m_set.now();
    m_set.set = std::chrono::hours{5};
    EXPECT_FALSE(touch(session, 1));
    m_set.set = {};
    session.lookAgain();
    EXPECT_EQ(timesIn(session)[1.], right);
}

TEST_F(TouchTest, ThatWasOnItsWayWhenTheClockWasSetGetsTheRightTime) {
    Session session = start();
    m_set.passed += std::chrono::hours{1};
    const auto touched = m_set.elapsed();
    const Proposal underway{testing_support::someLoad(1), m_set.now(), {}, {}, touched};
    m_set.passed += std::chrono::seconds{2};
    m_set.set = std::chrono::hours{3};
    session.clockIsRight();
    ASSERT_TRUE(session.importAll({&underway, 1}, m_author));
    EXPECT_EQ(timesIn(session)[1.], m_set.now() - std::chrono::seconds{2});
}

TEST_F(TouchTest, HeldWhenTheProgramEndsGetsTheLatestTimeItCanHaveAndThatIsSaid) {
    start();
    startDead();
    {
        Session session = openAgain();
        EXPECT_FALSE(touch(session, 1));
        m_set.passed += std::chrono::minutes{20};
        EXPECT_FALSE(touch(session, 2));
    }
    startDead();
    Session session = openAgain();
    const Instant opened = m_set.now();
    EXPECT_EQ(session.standing().unsaved, 2);
    EXPECT_TRUE(timesIn(session).empty()) << "nobody has answered";
    m_set.passed += std::chrono::minutes{5};
    const Instant right = testing_support::at("2026-10-25T09:00:00Z");
    m_set.set = right - m_set.now();
    session.clockIsRight();
    const Instant came = right - std::chrono::minutes{5};
    EXPECT_EQ(came - opened, m_set.set) << "when this run began";
    EXPECT_THAT(timesIn(session),
                ElementsAre(std::pair{1., came - std::chrono::minutes{20}}, std::pair{2., came}));
    EXPECT_THAT(codesOf(session.standing().cautions),
                ElementsAre(code::keptEntriesRecorded, code::keptTimesGuessed));
}

TEST_F(TouchTest, OfAnEarlierRunIsNotRecordedAtItsWrongTimeWhereTheClockIsWellAgain) {
    start();
    const Instant began = m_set.start;
    startDead();
    {
        Session session = openAgain();
        EXPECT_FALSE(touch(session, 1));
    }
    m_set.start = began + std::chrono::hours{3};
    const Session session = openAgain();
    EXPECT_EQ(session.standing().clockQuestion, std::nullopt);
    EXPECT_EQ(timesIn(session).at(1.), m_set.now());
    EXPECT_THAT(codesOf(session.standing().cautions),
                ElementsAre(code::keptEntriesRecorded, code::keptTimesGuessed));
}

TEST_F(TouchTest, TheAnswerOutlivesAProgramThatEndsBeforeTheDiskIsWell) {
    start();
    startDead();
    const Instant right = testing_support::at("2026-10-25T09:00:00Z");
    const auto away = m_folder / "away";
    {
        Session session = openAgain();
        EXPECT_FALSE(touch(session, 1));
        std::filesystem::rename(m_files.season, away);
        m_set.set = right - m_set.now();
        session.clockIsRight();
        EXPECT_EQ(session.standing().unsaved, 1);
    }
    std::filesystem::rename(away, m_files.season);
    m_set.passed += std::chrono::hours{1};
    const Session session = openAgain();
    EXPECT_EQ(timesIn(session).at(1.), right);
    EXPECT_THAT(codesOf(session.standing().cautions), ElementsAre(code::keptEntriesRecorded));
}

TEST_F(TouchTest, AnUndoWaitsToo) {
    Session session = start();
    const auto load = loadNow(session);
    m_set.set = -std::chrono::hours{2};
    const auto undone = session.undo(load->id, {}, m_author);
    ASSERT_FALSE(undone);
    EXPECT_EQ(undone.error().code(), code::entryWaitsForClock);
    EXPECT_EQ(timesIn(session).size(), 1u);
    session.clockIsRight();
    EXPECT_TRUE(timesIn(session).empty());
}

// In Berlin 25 October 2026 has two half past twos; the machine's own zone does not matter.
TEST_F(ClockTest, TheEndOfSummerTimeIsNoQuestion) {
    Session session = start();
    const auto before = loadNow(session);
    m_set.passed += std::chrono::hours{1};
    const auto after = loadNow(session);
    EXPECT_EQ(before->utcOffsetMinutes, 120);
    EXPECT_EQ(after->utcOffsetMinutes, 60);
    EXPECT_EQ(session.standing().clockQuestion, std::nullopt);
    ASSERT_EQ(session.snapshot()->days().size(), 1u);
    EXPECT_EQ(toIso8601(session.snapshot()->days().front()->date), "2026-10-25");
}

std::vector<std::string> namesIn(const std::filesystem::path& folder) {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        names.push_back(entry.path().filename().string());
    }
    return names;
}

TEST_F(SessionTest, KeepsTheNewestCopiesAndNothingElseOfItsOwnIsRemoved) {
    const auto folder = m_folder / "copies";
    std::filesystem::create_directory(folder);
    std::ofstream(folder / "season-notes.treadwell") << "somebody's own";
    created();
    const auto journal = journal::Journal::open(m_files.season, journal::Access::read, m_clock.time);
    const auto backUp = [&](int keep) { return backUpInto(*journal, folder, m_clock.time, keep); };
    EXPECT_FALSE(backUp(0));
    for (int day = 0; day < 4; ++day) {
        ASSERT_TRUE(backUp(2));
        EXPECT_FALSE(backUp(2)) << "never over another file";
        m_clock.time += std::chrono::hours{24};
    }
    EXPECT_THAT(namesIn(folder),
                UnorderedElementsAre("season-notes.treadwell", "season-2026-09-17T140000Z.treadwell",
                                     "season-2026-09-18T140000Z.treadwell"));
    // A dead clock calls the newest the oldest.
    m_clock.time = Instant{};
    const auto made = backUp(2);
    ASSERT_TRUE(made);
    EXPECT_TRUE(std::filesystem::exists(*made));
}

TEST_F(SessionTest, RestoresAWholeCopyUnderANewName) {
    const auto copy = m_folder / "copy.treadwell";
    Hash head;
    {
        Session session = created();
        ASSERT_TRUE(load(session, 12));
        head = session.head();
        ASSERT_TRUE(session.backupTo(copy));
        ASSERT_TRUE(load(session, 9));
    }
    EXPECT_EQ(restore(copy, m_files.season, m_clock.time).error().code(), code::journalExists);
    std::filesystem::rename(m_files.season, m_folder / "broken.treadwell");
    ASSERT_TRUE(restore(copy, m_files.season, m_clock.time));
    Session session = opened();
    EXPECT_EQ(session.head(), head);
    EXPECT_THAT(codesOf(session.standing().cautions), ElementsAre(code::deviceRenewed));
}

TEST_F(SessionTest, DoesNotRestoreADamagedCopy) {
    {
        Session session = created();
        ASSERT_TRUE(load(session, 12));
    }
    std::string bytes = readFile(m_files.season).value();
    bytes[bytes.find("mass_kg")] = 'M';
    std::ofstream(m_folder / "copy.treadwell", std::ios::binary) << bytes;
    const auto restored = restore(m_folder / "copy.treadwell", m_folder / "new.treadwell", m_clock.time);
    ASSERT_FALSE(restored);
    EXPECT_EQ(restored.error().code(), code::entryAltered);
    EXPECT_FALSE(std::filesystem::exists(m_folder / "new.treadwell"));
}

TEST_F(SessionTest, CopiesToTheSecondPlaceAtTheDaysClose) {
    const auto place = m_folder / "stick";
    Session session = created();
    EXPECT_EQ(secondPlace(m_files.stateFolder), std::nullopt);
    ASSERT_TRUE(chooseSecondPlace(m_files.stateFolder, place));
    EXPECT_EQ(secondPlace(m_files.stateFolder), place);
    const auto day = *dayFromIso8601("2026-09-15");
    const entries::DayClosed closed{day, testing_support::at("2026-09-15T03:00:00Z"),
                                    testing_support::at("2026-09-16T03:00:00Z")};
    const auto stand = [&] { return copiesStand(m_files.stateFolder, m_files.season); };
    EXPECT_EQ(stand(), (Message{code::copiesAway, {place.string()}}));
    ASSERT_TRUE(session.propose(closed, m_clock.time, m_author)) << "the close is recorded all the same";
    EXPECT_THAT(codesOf(session.standing().cautions), ElementsAre(code::secondPlaceFailed));
    EXPECT_EQ(session.copyToSecondPlace().error().code(), code::secondPlaceFailed);
    std::filesystem::create_directory(place);
    ASSERT_TRUE(load(session, 12));
    EXPECT_THAT(namesIn(place), IsEmpty());
    EXPECT_EQ(stand(), (Message{code::copiesNotYet, {place.string()}}));
    ASSERT_TRUE(session.propose(closed, m_clock.time, m_author));
    ASSERT_THAT(namesIn(place), ElementsAre("season-2026-09-15T140000Z.treadwell"));
    auto copy = journal::Journal::open(place / namesIn(place).front(), journal::Access::read, m_clock.time);
    EXPECT_EQ(journal::headHash(copy->heads()), session.head());
    EXPECT_EQ(session.standing().cautions.size(), 1u);
    EXPECT_EQ(stand(), (Message{code::copiesNewest, {place.string(), m_clock.time}}));
    EXPECT_EQ(copiesStand(m_files.stateFolder, {}), (Message{code::copiesGo, {place.string()}}));
    m_clock.time += std::chrono::microseconds{1'500'000};
    EXPECT_TRUE(session.copyToSecondPlace()) << "and by hand";
    EXPECT_EQ(stand(), (Message{code::copiesNewest, {place.string(), m_clock.time}}));
    ASSERT_TRUE(chooseSecondPlace(m_files.stateFolder, {}));
    EXPECT_EQ(secondPlace(m_files.stateFolder), std::nullopt);
    EXPECT_EQ(stand(), (Message{code::copiesNone, {}}));
    EXPECT_TRUE(session.copyToSecondPlace()) << "nothing was chosen";
}

}  // namespace
}  // namespace treadwell::session
