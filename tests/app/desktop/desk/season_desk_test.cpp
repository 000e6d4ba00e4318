#include "app/desktop/desk/season_desk.h"

#include "core/journal/codes.h"
#include "tests/app/desktop/slow_file.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

namespace treadwell::desk {
namespace {

using namespace testing_support;

struct Desk : testing::Test {
    Desk() {
        SeasonMaker maker;
        maker.add(entries::SiloDefined{someSilo()}, clock.time);
        desk = std::make_unique<SeasonDesk>(std::make_unique<SlowFile>(disk, std::move(maker)), clock);
        committed = std::make_unique<QSignalSpy>(desk.get(), &SeasonDesk::committed);
        failed = std::make_unique<QSignalSpy>(desk.get(), &SeasonDesk::failed);
    }
    [[nodiscard]] std::size_t loads() const { return desk->season()->days().back()->loads.size(); }

    HandClock clock{at("2026-09-15T14:00:00Z")};
    Disk disk;
    std::unique_ptr<SeasonDesk> desk;
    std::unique_ptr<QSignalSpy> committed;
    std::unique_ptr<QSignalSpy> failed;
};

TEST_F(Desk, GoesOnWhileTheDiskIsHeld) {
    disk.hold();
    const Ticket first = desk->propose(someLoad(12));
    const Ticket second = desk->propose(someLoad(13));
    EXPECT_NE(first, second);
    QTest::qWait(20);
    EXPECT_EQ(committed->count(), 0);
    EXPECT_EQ(loads(), 0u);
    disk.release();
    ASSERT_TRUE(QTest::qWaitFor([this] { return committed->count() == 2; }));
    EXPECT_EQ(committed->at(0).at(0).value<Ticket>(), first);
    EXPECT_EQ(committed->at(1).at(0).value<Ticket>(), second);
    EXPECT_EQ(loads(), 2u);
}

TEST_F(Desk, TakesTheTimeOfTheTouchAndNotOfTheCommit) {
    disk.hold();
    const Instant touched = clock.time;
    desk->propose(someLoad(12));
    clock.time += std::chrono::minutes{3};
    disk.release();
    ASSERT_TRUE(QTest::qWaitFor([this] { return loads() == 1; }));
    EXPECT_EQ(desk->season()->days().back()->loads.front().at, touched);
}

TEST_F(Desk, TellsWhatFailedAndKeepsTheSeason) {
    disk.fail();
    const Ticket ticket = desk->propose(someLoad(12));
    ASSERT_TRUE(QTest::qWaitFor([this] { return failed->count() == 1; }));
    EXPECT_EQ(failed->at(0).at(0).value<Ticket>(), ticket);
    EXPECT_EQ(failed->at(0).at(1).value<Error>().code(), code::journalWriteFailed);
    EXPECT_EQ(loads(), 0u);
}

TEST_F(Desk, TakesAnEntryBack) {
    desk->propose(someLoad(12));
    ASSERT_TRUE(QTest::qWaitFor([this] { return loads() == 1; }));
    desk->takeBack(desk->season()->days().back()->loads.front().entry);
    EXPECT_TRUE(QTest::qWaitFor([this] { return loads() == 0; }));
}

TEST_F(Desk, WhoTakesTheTabletMakesTheEntriesThatFollow) {
    EXPECT_FALSE(desk->holder());
    EXPECT_FALSE(desk->endShift()) << "nobody is on shift";
    desk->takeTablet("Ana");
    ASSERT_TRUE(QTest::qWaitFor([this] { return desk->holder() == "Ana"; }));
    clock.time += std::chrono::minutes{1};
    desk->propose(someLoad(12));
    ASSERT_TRUE(QTest::qWaitFor([this] { return loads() == 1; }));
    desk->takeTablet("Bruno");
    ASSERT_TRUE(QTest::qWaitFor([this] { return desk->holder() == "Bruno"; }));
    desk->takeTablet("Ana");
    ASSERT_TRUE(QTest::qWaitFor([this] { return desk->holder() == "Ana"; }));
    EXPECT_EQ(desk->people().size(), 2u) << "who has a name is not named anew";
    const auto person = [this](std::size_t place) {
        return desk->season()->days().back()->facts[place]->stated().header.author;
    };
    EXPECT_EQ(desk->people().at(person(1)), "Ana") << "the shift itself";
    EXPECT_EQ(desk->people().at(person(2)), "Ana") << "the load";
    desk->endShift();
    EXPECT_TRUE(QTest::qWaitFor([this] { return !desk->holder(); }));
}

TEST_F(Desk, ManyAreAskedForAtOnceAndTogether) {
    desk->propose({{someLoad(12), clock.time - std::chrono::minutes{20}, {}},
                   {someLoad(13), clock.time - std::chrono::minutes{10}, {}}});
    ASSERT_TRUE(QTest::qWaitFor([this] { return committed->count() == 1; }));
    EXPECT_EQ(loads(), 2u);
    EXPECT_EQ(disk.writes(), 1);
}

TEST_F(Desk, WritesAllThatWasAskedBeforeItGoes) {
    for (int i = 0; i < 20; ++i) desk->propose(someLoad(12));
    desk.reset();
    EXPECT_EQ(disk.writes(), 20);
}

}  // namespace
}  // namespace treadwell::desk
