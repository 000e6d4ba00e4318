#include "app/desktop/widgets/pad_plan.h"

#include "app/desktop/widgets/tractor_chip.h"
#include "tests/support/uuid_of.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

namespace treadwell::widgets {
namespace {

using testing_support::uuidOf;

TractorView tractor(std::uint8_t number, const char* name, Zone zone, double share = 1.0) {
    return {.id = uuidOf(number),
            .name = QString::fromUtf8(name),
            .mass = MachineMass::fromTonnes(14),
            .zone = zone,
            .share = Share::fromFraction(share),
            .running = Seconds{42 * 60.0}};
}

struct Pad : testing::Test {
    Pad() {
        pad.resize(780, 320);
        pad.setTractors({tractor(1, "Oak", Zone::packing, 0.75), tractor(2, "Elm", Zone::away)});
        pad.show();
    }
    TractorChip* chip(std::uint8_t number) {
        for (TractorChip* each : pad.findChildren<TractorChip*>()) {
            if (each->tractor().id == uuidOf(number)) return each;
        }
        return nullptr;
    }
    void expectMoved(std::uint8_t number, Zone zone, double share) {
        ASSERT_EQ(moves.count(), 1);
        EXPECT_EQ(moves.at(0).at(0).value<Uuid>(), uuidOf(number));
        EXPECT_EQ(moves.at(0).at(1).value<Zone>(), zone);
        EXPECT_DOUBLE_EQ(moves.at(0).at(2).value<Share>().fraction(), share);
    }
    settings::Appearance appearance;
    PadPlan pad{appearance};
    QSignalSpy moves{&pad, &PadPlan::tractorMoved};
};

// Pounds are longer than tonnes; the time must be seen all the same.
TEST_F(Pad, ShowsTheRunningTimeInEitherUnits) {
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::us}) {
        appearance.setUnits(settings::DisplayUnits{units, QLocale::c()});
        TractorView view = tractor(1, "Oak", Zone::packing);
        view.massKnown = false;
        pad.setTractors({view});
        const QImage before = chip(1)->grab().toImage();
        view.running = Seconds{555 * 60.0};
        pad.setTractors({view});
        EXPECT_NE(before, chip(1)->grab().toImage()) << enumText(units);
    }
}

TEST_F(Pad, MovesByClickThenClick) {
    QTest::mouseClick(chip(2), Qt::LeftButton);
    QTest::mouseClick(&pad, Qt::LeftButton, {}, pad.zoneRect(Zone::spreading).center());
    expectMoved(2, Zone::spreading, 1.0);
}

// QTest's own mouse moves carry no pressed button.
void dragTo(TractorChip* chip, QPoint place) {
    QMouseEvent move{QEvent::MouseMove, place, chip->mapToGlobal(place), Qt::NoButton, Qt::LeftButton, {}};
    QApplication::sendEvent(chip, &move);
}

TEST_F(Pad, MovesByDrag) {
    TractorChip* elm = chip(2);
    const QPoint grip{20, 10};
    QTest::mousePress(elm, Qt::LeftButton, {}, grip);
    dragTo(elm, elm->mapFrom(&pad, pad.zoneRect(Zone::packing).center()));
    QTest::mouseRelease(elm, Qt::LeftButton, {}, grip);
    expectMoved(2, Zone::packing, 1.0);
}

TEST_F(Pad, LeavesAChipThatIsDroppedInItsOwnZone) {
    TractorChip* oak = chip(1);
    const QPoint before = oak->pos();
    QTest::mousePress(oak, Qt::LeftButton, {}, {20, 10});
    dragTo(oak, {60, 20});
    EXPECT_NE(oak->pos(), before);
    QTest::mouseRelease(oak, Qt::LeftButton, {}, {20, 10});
    EXPECT_EQ(moves.count(), 0);
    EXPECT_EQ(oak->pos(), before);
}

TEST_F(Pad, MovesByKeyboard) {
    QTest::keyClick(chip(2), Qt::Key_Left);
    expectMoved(2, Zone::spreading, 1.0);
}

TEST_F(Pad, DoesNotMoveBeyondTheLastZone) {
    QTest::keyClick(chip(2), Qt::Key_Right);
    EXPECT_EQ(moves.count(), 0);
}

TEST_F(Pad, StepsTheShareByKeyAndByTouch) {
    QTest::keyClick(chip(1), Qt::Key_Down);
    expectMoved(1, Zone::packing, 0.5);
    moves.clear();
    QTest::keyClick(chip(1), Qt::Key_Up);
    expectMoved(1, Zone::packing, 1.0);
    moves.clear();
    QTest::mouseClick(chip(1)->findChild<QToolButton*>(), Qt::LeftButton);
    expectMoved(1, Zone::packing, 0.5);
}

TEST_F(Pad, ATouchTurnsTheLeastShareToAllOfTheTime) {
    pad.setTractors({tractor(1, "Oak", Zone::packing, 0.25)});
    QTest::mouseClick(chip(1)->findChild<QToolButton*>(), Qt::LeftButton);
    expectMoved(1, Zone::packing, 1.0);
}

TEST_F(Pad, StepsFromAShareBetweenTheSteps) {
    pad.setTractors({tractor(1, "Oak", Zone::packing, 0.6)});
    QTest::keyClick(chip(1), Qt::Key_Up);
    expectMoved(1, Zone::packing, 0.75);
}

TEST_F(Pad, EscapeLetsGoOfAPickedTractor) {
    QTest::mouseClick(chip(2), Qt::LeftButton);
    QTest::keyClick(chip(2), Qt::Key_Escape);
    QTest::mouseClick(&pad, Qt::LeftButton, {}, pad.zoneRect(Zone::packing).bottomLeft() + QPoint{60, -30});
    EXPECT_EQ(moves.count(), 0);
}

TEST_F(Pad, SaysWhoIsWhere) {
    const QString sentence = pad.sentence();
    EXPECT_LT(sentence.indexOf(QStringLiteral("Oak")), sentence.indexOf(zoneName(Zone::spreading)));
    EXPECT_GT(sentence.indexOf(QStringLiteral("Elm")), sentence.indexOf(zoneName(Zone::away)));
    EXPECT_EQ(pad.accessibleDescription(), sentence);
    EXPECT_EQ(QAccessible::queryAccessibleInterface(chip(1))->text(QAccessible::Name), QStringLiteral("Oak"));
    EXPECT_TRUE(chip(1)->accessibleDescription().contains(zoneName(Zone::packing)));
}

TEST_F(Pad, KeepsEveryChipInsideItsZone) {
    std::vector<TractorView> many;
    for (std::uint8_t i = 1; i <= 9; ++i) many.push_back(tractor(i, "Ash", kZones[i % 3]));
    pad.setTractors(many);
    pad.resize(pad.minimumSizeHint());
    for (std::uint8_t i = 1; i <= 9; ++i) {
        EXPECT_TRUE(pad.zoneRect(kZones[i % 3]).contains(chip(i)->geometry())) << int{i};
    }
}

/// Too narrow for the zones side by side.
struct UprightPad : Pad {
    UprightPad() {
        std::vector<TractorView> many;
        for (std::uint8_t i = 1; i <= 9; ++i) many.push_back(tractor(i, "Ash", kZones[i % 3]));
        pad.setTractors(many);
        pad.resize(pad.minimumSizeHint().width(), 100);
        pad.resize(pad.width(), pad.minimumSizeHint().height());
    }
};

TEST_F(UprightPad, KeepsTheZonesOneBelowTheOtherAndEveryChipInItsOwn) {
    EXPECT_LT(pad.width(), PadPlan::lyingWidth(appearance) / 2);
    int below = 0;
    for (const Zone zone : kZones) {
        const QRect area = pad.zoneRect(zone);
        EXPECT_EQ(area.top(), below);
        EXPECT_EQ(area.width(), pad.width());
        below = area.bottom() + 1;
    }
    EXPECT_EQ(below, pad.height());
    for (std::uint8_t i = 1; i <= 9; ++i)
        EXPECT_TRUE(pad.zoneRect(kZones[i % 3]).contains(chip(i)->geometry())) << int{i};
}

TEST_F(UprightPad, MovesByClickDragAndKeyToo) {
    QTest::mouseClick(chip(2), Qt::LeftButton, {}, {20, 10});
    QTest::mouseClick(&pad, Qt::LeftButton, {}, pad.zoneRect(Zone::spreading).topLeft() + QPoint{4, 4});
    expectMoved(2, Zone::spreading, 1.0);
    moves.clear();
    TractorChip* away = chip(5);
    QTest::mousePress(away, Qt::LeftButton, {}, {20, 10});
    dragTo(away, away->mapFrom(&pad, pad.zoneRect(Zone::packing).center()));
    QTest::mouseRelease(away, Qt::LeftButton, {}, {20, 10});
    expectMoved(5, Zone::packing, 1.0);
    moves.clear();
    QTest::keyClick(chip(8), Qt::Key_Left);
    expectMoved(8, Zone::spreading, 1.0);
}

TEST_F(Pad, ForgetsATractorThatIsGone) {
    QTest::mouseClick(chip(2), Qt::LeftButton);
    pad.setTractors({tractor(1, "Oak", Zone::packing)});
    QTest::mouseClick(&pad, Qt::LeftButton, {}, pad.zoneRect(Zone::spreading).center());
    EXPECT_EQ(moves.count(), 0);
    EXPECT_FALSE(pad.sentence().contains(QStringLiteral("Elm")));
}

}  // namespace
}  // namespace treadwell::widgets
