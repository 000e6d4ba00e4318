#include "app/desktop/widgets/truck_board.h"

#include "app/desktop/widgets/truck_button.h"
#include "tests/support/uuid_of.h"

#include <gtest/gtest.h>

#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

namespace treadwell::widgets {
namespace {

using std::chrono::minutes;
using testing_support::uuidOf;

TruckView truck(std::uint8_t number, std::optional<int> minute, int pending = 0) {
    TruckView view{.id = uuidOf(number),
                   .name = QStringLiteral("Truck %1").arg(number),
                   .usualLoad = AsFedMass::fromTonnes(18.4),
                   .lastLoad = std::nullopt,
                   .pending = pending};
    if (minute) view.lastLoad = Instant{} + minutes{*minute};
    return view;
}

struct Board : testing::Test {
    Board() {
        board.resize(360, 500);
        board.setTrucks({truck(1, std::nullopt), truck(2, 10), truck(3, 20)});
        board.show();
    }
    template <class Face>
    Face* find(std::uint8_t number) {
        for (TruckButton* each : board.findChildren<TruckButton*>()) {
            if (each->truck().id == uuidOf(number)) return each->findChild<Face*>();
        }
        return nullptr;
    }
    settings::Appearance appearance;
    TruckBoard board{appearance};
    QSignalSpy loads{&board, &TruckBoard::loadRequested};
    QSignalSpy details{&board, &TruckBoard::detailRequested};
};

TEST_F(Board, PutsTheLatestTruckFirst) {
    EXPECT_EQ(board.order(), (std::vector{uuidOf(3), uuidOf(2), uuidOf(1)}));
}

TEST_F(Board, LogsALoadAtOneTouch) {
    QTest::mouseClick(find<TruckFace>(2), Qt::LeftButton);
    ASSERT_EQ(loads.count(), 1);
    EXPECT_EQ(loads.at(0).at(0).value<Uuid>(), uuidOf(2));
    EXPECT_EQ(details.count(), 0);
}

TEST_F(Board, LogsALoadByKey) {
    QTest::keyClick(find<TruckFace>(1), Qt::Key_Space);
    ASSERT_EQ(loads.count(), 1);
    EXPECT_EQ(loads.at(0).at(0).value<Uuid>(), uuidOf(1));
}

TEST_F(Board, AsksForDetailsByTheArrowAndByALongPress) {
    QTest::mouseClick(find<QToolButton>(1), Qt::LeftButton);
    QTest::mousePress(find<TruckFace>(1), Qt::LeftButton);
    QTest::qWait(750);
    QTest::mouseRelease(find<TruckFace>(1), Qt::LeftButton);
    EXPECT_EQ(details.count(), 2);
    EXPECT_EQ(loads.count(), 0);
}

TEST_F(Board, KeepsItsOrderUnderAFreshTouch) {
    QTest::mouseClick(find<TruckFace>(1), Qt::LeftButton);
    board.setTrucks({truck(1, 30, 1), truck(2, 10), truck(3, 20)});
    EXPECT_EQ(board.order(), (std::vector{uuidOf(3), uuidOf(2), uuidOf(1)}));
    EXPECT_TRUE(QTest::qWaitFor([this] { return board.order().front() == uuidOf(1); }, 4000));
}

TEST_F(Board, SaysWhatIsStillBeingSaved) {
    const QString before = find<TruckFace>(2)->accessibleDescription();
    board.setTrucks({truck(2, 10, 2)});
    EXPECT_NE(find<TruckFace>(2)->accessibleDescription(), before);
    EXPECT_TRUE(find<TruckFace>(2)->accessibleDescription().contains(u'2'));
}

TEST_F(Board, NamesTheLoadThatUndoTakesBack) {
    auto* undo = board.findChild<QPushButton*>(QStringLiteral("undo"));
    ASSERT_NE(undo, nullptr);
    EXPECT_FALSE(undo->isEnabled());
    QSignalSpy undone{&board, &TruckBoard::undoRequested};
    board.setUndo(QStringLiteral("Hay & Hill, 18.4 t"));
    EXPECT_TRUE(undo->text().contains(QStringLiteral("Hay && Hill, 18.4 t")));
    QTest::mouseClick(undo, Qt::LeftButton);
    EXPECT_EQ(undone.count(), 1);
    board.setUndo(std::nullopt);
    EXPECT_FALSE(undo->isEnabled());
}

TEST_F(Board, MakesYardButtonsTwentyMillimetresHigh) {
    appearance.setPixelsPerMillimetre(6.0);
    EXPECT_GE(find<TruckFace>(1)->height(), 120);
}

TEST_F(Board, NamesEveryButton) {
    for (QAbstractButton* button : board.findChildren<QAbstractButton*>()) {
        EXPECT_FALSE(button->accessibleName().isEmpty() && button->text().isEmpty());
    }
    EXPECT_TRUE(find<TruckFace>(1)->accessibleName().contains(QStringLiteral("Truck 1")));
}

}  // namespace
}  // namespace treadwell::widgets
