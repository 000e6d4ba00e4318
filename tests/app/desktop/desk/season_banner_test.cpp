// What befalls a season's file while its window is open, on a real file.
#include "app/desktop/season_banner.h"

#include "app/desktop/widgets/message_bar.h"
#include "app/desktop/widgets/truck_button.h"
#include "core/session/copies.h"
#include "core/session/history.h"
#include "tests/app/desktop/season_window.h"

#include <gmock/gmock.h>
#include <unistd.h>

#include <QDateEdit>
#include <QLabel>
#include <QPushButton>

namespace treadwell {
namespace {

using namespace std::chrono_literals;
using testing_support::someLoad;

class BannerWindow : public SeasonWindow {
  protected:
    SeasonBanner& banner() { return *m_window->findChild<SeasonBanner*>(); }
    std::string said() { return banner().lines().join(u'\n').toStdString(); }
    widgets::MessageBar& messages() { return *m_window->findChild<widgets::MessageBar*>(); }
    void tapTruck() { QTest::mouseClick(m_window->findChild<widgets::TruckFace*>(), Qt::LeftButton); }
    [[nodiscard]] std::size_t loads() const {
        const auto& days = m_desk->season()->days();
        return days.empty() ? 0 : days.back()->loads.size();
    }
    /// As a stick that is pulled out and put back.
    void move(const char* from, const char* to) {
        for (const char* suffix : {"", "-wal", "-shm"}) {
            const auto at = m_files.season.string() + suffix;
            if (std::filesystem::exists(at + from)) std::filesystem::rename(at + from, at + to);
        }
    }
};

TEST_F(BannerWindow, SaysNothingWhileAllIsWell) {
    open();
    EXPECT_FALSE(banner().isVisible());
    tapTruck();
    ASSERT_TRUE(QTest::qWaitFor([&] { return loads() == 1; }));
    m_desk->lookAgain();
    QTest::qWait(50);
    EXPECT_FALSE(banner().isVisible());
    EXPECT_EQ(messages().waiting(), 0);
}

TEST_F(BannerWindow, NamesWhoWritesAndShowsWhatHeWrites) {
    auto writer = session::Session::open(m_files, m_clock).value();
    open();
    ASSERT_TRUE(banner().isVisible());
    EXPECT_THAT(said(), testing::HasSubstr("process " + std::to_string(::getpid())));
    EXPECT_THAT(said(), testing::HasSubstr("open for reading only"));
    EXPECT_EQ(loads(), 0u);
    ASSERT_TRUE(writer.propose(someLoad(12), m_clock.time, {}));
    m_desk->lookAgain();
    ASSERT_TRUE(QTest::qWaitFor([&] { return loads() == 1; }));
    tapTruck();
    ASSERT_TRUE(QTest::qWaitFor([&] { return messages().waiting() == 1; })) << "a tap is not swallowed";
    EXPECT_THAT(messages().shownText().toStdString(), testing::HasSubstr("Nothing is recorded"));
    EXPECT_EQ(loads(), 1u);
}

TEST_F(BannerWindow, OffersToGoOnOnceTheOtherProgramHasEnded) {
    std::optional<session::Session> writer = session::Session::open(m_files, m_clock).value();
    open();
    auto* takeOver = named<QPushButton>("takeOver");
    EXPECT_FALSE(takeOver->isVisible()) << "the other is at work";
    ASSERT_TRUE(writer->propose(someLoad(12), m_clock.time, {}));
    writer.reset();
    m_desk->lookAgain();
    ASSERT_TRUE(QTest::qWaitFor([&] { return takeOver->isVisible(); }));
    EXPECT_THAT(said(), testing::HasSubstr("has ended"));
    EXPECT_EQ(loads(), 1u) << "what it wrote last is seen";
    m_desk->lookAgain();
    QTest::qWait(50);
    EXPECT_FALSE(m_desk->standing().writable) << "never by itself";
    EXPECT_GE(takeOver->height(), 44);
    QTest::mouseClick(takeOver, Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_desk->standing().writable; }));
    EXPECT_TRUE(QTest::qWaitFor([&] { return !banner().isVisible(); }));
    tapTruck();
    ASSERT_TRUE(QTest::qWaitFor([&] { return loads() == 2; }));
    EXPECT_EQ(messages().waiting(), 0);
    close();
    auto again = session::Session::open(m_files, m_clock);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->check(), std::nullopt) << "one chain, whole";
}

TEST_F(BannerWindow, WhereAnotherWasQuickerItIsNamed) {
    std::optional<session::Session> writer = session::Session::open(m_files, m_clock).value();
    open();
    writer.reset();
    m_desk->lookAgain();
    auto* takeOver = named<QPushButton>("takeOver");
    ASSERT_TRUE(QTest::qWaitFor([&] { return takeOver->isVisible(); }));
    const auto quicker = session::Session::open(m_files, m_clock).value();
    ASSERT_TRUE(quicker.standing().writable);
    QTest::mouseClick(takeOver, Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !takeOver->isVisible(); }));
    EXPECT_THAT(said(), testing::HasSubstr("process " + std::to_string(::getpid())));
    EXPECT_FALSE(m_desk->standing().writable);
}

TEST_F(BannerWindow, SaysWhyItCannotGoOn) {
    std::optional<session::Session> writer = session::Session::open(m_files, m_clock).value();
    open();
    writer.reset();
    m_desk->lookAgain();
    auto* takeOver = named<QPushButton>("takeOver");
    ASSERT_TRUE(QTest::qWaitFor([&] { return takeOver->isVisible(); }));
    move("", ".pulled");
    QTest::mouseClick(takeOver, Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !said().starts_with("The program"); })) << said();
    EXPECT_THAT(said(), testing::HasSubstr(m_files.season.string()));
    EXPECT_TRUE(takeOver->isVisible()) << "to try again";
    move(".pulled", "");
    QTest::mouseClick(takeOver, Qt::LeftButton);
    EXPECT_TRUE(QTest::qWaitFor([&] { return m_desk->standing().writable; }));
}

TEST_F(BannerWindow, ReadsFromAMediumThatCannotBeWritten) {
    {
        auto session = session::Session::open(m_files, m_clock).value();
        ASSERT_TRUE(session.propose(someLoad(12), m_clock.time, {}));
    }
    std::filesystem::permissions(m_files.season, std::filesystem::perms{0444});
    const auto folder = m_files.season.parent_path();
    std::filesystem::permissions(folder, std::filesystem::perms{0555});
    const bool isRoot = ::geteuid() == 0;  // who may write anything
    ASSERT_EQ(isRoot ? ::setresuid(65534, 65534, 0) : 0, 0);
    open();
    ASSERT_EQ(isRoot ? ::setresuid(0, 0, 0) : 0, 0);
    std::filesystem::permissions(folder, std::filesystem::perms{0755});
    ASSERT_TRUE(m_window);
    EXPECT_THAT(said(), testing::HasSubstr("cannot be written: open for reading only"));
    EXPECT_EQ(loads(), 1u);
}

TEST_F(BannerWindow, KeepsWhatADiskRefusesAndRecordsItOnceWhenItIsBack) {
    open();
    tapTruck();
    ASSERT_TRUE(QTest::qWaitFor([&] { return loads() == 1; }));
    move("", ".pulled");
    tapTruck();
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_desk->standing().unsaved > 0; }));
    EXPECT_TRUE(banner().isVisible());
    EXPECT_EQ(banner().lines().size(), 1) << "one sentence";
    EXPECT_THAT(said(), testing::HasSubstr("waiting. "));
    EXPECT_THAT(said(), testing::HasSubstr(m_files.stateFolder.string()));
    EXPECT_EQ(loads(), 1u) << "nothing is acknowledged that is not on the disk";
    m_desk->lookAgain();
    QTest::qWait(100);
    EXPECT_GT(m_desk->standing().unsaved, 0) << "it is still out";
    move(".pulled", "");
    m_desk->lookAgain();
    ASSERT_TRUE(QTest::qWaitFor([&] { return loads() == 2; }));
    EXPECT_TRUE(QTest::qWaitFor([&] { return !banner().isVisible(); }));
    EXPECT_EQ(m_desk->standing().unsaved, 0);
    EXPECT_GE(messages().waiting(), 2) << "that it was not saved, and that it is now";
    close();
    const auto again = session::Session::open(m_files, m_clock, session::Purpose::reading);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->snapshot()->days().back()->loads.size(), 2u);
}

TEST_F(BannerWindow, AsksAboutTheClockAndKeepsWhatIsTouchedUntilItIsAnswered) {
    open();
    tapTruck();
    ASSERT_TRUE(QTest::qWaitFor([&] { return loads() == 1; }));
    const Instant first = today().loads[0].at;
    m_clock.time -= 40min;
    m_desk->lookAgain();
    ASSERT_TRUE(QTest::qWaitFor([&] { return banner().isVisible(); }));
    EXPECT_EQ(QApplication::activeModalWidget(), nullptr) << "it is asked, not stopped";
    EXPECT_THAT(said(), testing::HasSubstr("is the clock right?"));
    tapTruck();
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_desk->standing().unsaved == 1; }));
    EXPECT_THAT(said(), testing::HasSubstr("1 entry is waiting. Not recorded in the season yet: first say "
                                           "whether this machine's clock is right"));
    EXPECT_EQ(loads(), 1u);
    auto* right = named<QPushButton>("clockIsRight");
    EXPECT_GE(right->height(), 44);
    right->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return loads() == 2 && !banner().isVisible(); }));
    EXPECT_EQ(today().loads[1].at, first) << "what is recorded stays as it was";
    EXPECT_EQ(today().loads[0].at, m_clock.time);
}

TEST_F(BannerWindow, ADeadClockIsGivenTheRightTimeAndNoTouchIsLostOrPutWrong) {
    const Instant started = m_clock.time;
    m_clock.time = Instant{} + 30h;
    open();
    ASSERT_TRUE(banner().isVisible()) << "from the start";
    EXPECT_THAT(said(), testing::HasSubstr("1970-01-02"));
    auto* day = named<QDateEdit>("rightDay");
    auto* time = named<QTimeEdit>("rightTime");
    EXPECT_EQ(day->date(), QDate(2026, 9, 15)) << "of the last entry, by the farm's clock";
    EXPECT_EQ(time->time(), QTime(11, 0));
    tapTruck();
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_desk->standing().unsaved > 0; }));
    m_clock.time += 9min;
    tapTruck();
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_desk->standing().unsaved > 1; }));
    EXPECT_EQ(m_desk->standing().unsaved, 2) << "nothing is recorded by itself meanwhile";
    EXPECT_EQ(loads(), 0u);
    // Sheets that write times wait for the answer.
    const int told = messages().waiting();
    QTest::mouseClick(named<QAbstractButton>("incident"), Qt::LeftButton);
    EXPECT_EQ(QApplication::activeModalWidget(), nullptr);
    EXPECT_EQ(messages().waiting(), told + 1) << "why not";
    // 13:20 in Sao Paulo is 16:20 in UTC.
    time->setTime(QTime{13, 20});
    auto* isThis = named<QPushButton>("timeIsThis");
    EXPECT_GE(isThis->height(), 44);
    QTest::mouseClick(isThis, Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return loads() == 2 && !banner().isVisible(); })) << said();
    const Instant right = testing_support::at("2026-09-15T16:20:00Z");
    EXPECT_EQ(today().loads[0].at, right - 9min);
    EXPECT_EQ(today().loads[1].at, right);
    EXPECT_EQ(m_desk->now(), right);
    m_clock.time += 3min;
    tapTruck();
    ASSERT_TRUE(QTest::qWaitFor([&] { return loads() == 3; }));
    EXPECT_EQ(today().loads[2].at, right + 3min) << "the machine's clock is dead still";
    EXPECT_FALSE(banner().isVisible());
    close();
    m_clock.time = started + 8h;
    const auto again = session::Session::open(m_files, m_clock, session::Purpose::reading);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->snapshot()->days().back()->loads.size(), 3u);
}

TEST_F(BannerWindow, ADayIsNotClosedByADeadClock) {
    const Instant right = m_clock.time;
    {
        auto session = session::Session::open(m_files, m_clock).value();
        ASSERT_TRUE(session.propose(someLoad(12), m_clock.time, {}));
    }
    m_clock.time = Instant{} + 6min;
    open();
    m_window->showPage(Page::day);
    auto* close = named<QPushButton>("closeDay");
    auto* reason = named<QLabel>("closingReason");
    ASSERT_TRUE(close);
    EXPECT_FALSE(close->isVisible());
    EXPECT_THAT(reason->text().toStdString(), testing::HasSubstr("whether the clock is right"));
    m_desk->clockIsRight(right + 5h);
    EXPECT_TRUE(QTest::qWaitFor([&] { return close->isVisible(); }));
    EXPECT_FALSE(reason->isVisible());
}

TEST_F(BannerWindow, TellsOfACopyThatFailsAtTheDaysClose) {
    ASSERT_TRUE(session::chooseSecondPlace(m_files.stateFolder, m_files.stateFolder / "no such stick"));
    open();
    EXPECT_EQ(messages().waiting(), 0);
    m_desk->propose(
        entries::DayClosed{*dayFromIso8601("2026-09-15"), m_clock.time - 12h, m_clock.time + 12h});
    ASSERT_TRUE(QTest::qWaitFor([&] { return messages().waiting() == 1; }));
    EXPECT_THAT(messages().shownText().toStdString(), testing::HasSubstr("no such stick"));
    m_desk->lookAgain();
    QTest::qWait(50);
    EXPECT_EQ(messages().waiting(), 1) << "told once";
}

}  // namespace
}  // namespace treadwell
