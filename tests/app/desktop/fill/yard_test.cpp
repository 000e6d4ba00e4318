// Loads, as the yard sees them: every test touches what a person would touch, and looks
// at what was recorded.
#include "tests/app/desktop/fill/yard_window.h"
#include "tests/app/desktop/finger.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QPointer>
#include <QSpinBox>
#include <QTimeEdit>
#include <QToolButton>
#include <cmath>

namespace treadwell {
namespace {

/// Counts what is pressed anywhere in the program.
class Touches final : public QObject {
  public:
    Touches() { qApp->installEventFilter(this); }
    [[nodiscard]] int count() const noexcept { return m_count; }

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        // A press that a widget leaves comes again to what lies under it.
        if (event->type() == QEvent::MouseButtonPress && qobject_cast<QAbstractButton*>(watched)) ++m_count;
        return false;
    }

  private:
    int m_count = 0;
};

TEST_F(Yard, AFingerLogsALoadAndMovesATractor) {
    record(testing_support::someWork(1, farm::Activity::packing));
    m_clock.time += 1min;
    open();  // all that is tapped lies on the 800 pixels of a screen that is not there
    QPointingDevice* finger = testing_support::finger();
    const auto tap = [finger](QWidget* widget, QPoint place) {
        QTest::touchEvent(widget, finger).press(0, place, widget);
        QTest::touchEvent(widget, finger).release(0, place, widget);
    };
    tap(face(), face()->rect().center());
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().loads.size() == 1; }));
    auto* chip = m_window->findChild<widgets::TractorChip*>();
    auto* pad = m_window->findChild<widgets::PadPlan*>();
    tap(chip, QPoint{20, 10});
    tap(pad, pad->zoneRect(widgets::Zone::spreading).center());
    EXPECT_TRUE(QTest::qWaitFor([&] { return today().work.back().activity == farm::Activity::spreading; }));
}

TEST_F(Yard, ALongTouchOfATractorAsksForItsMass) {
    open();
    auto* chip = m_window->findChild<widgets::TractorChip*>();
    QTest::mousePress(chip, Qt::LeftButton, {}, {20, 10});
    EXPECT_TRUE(QTest::qWaitFor([&] { return named<widgets::QuantitySpinBox>("machineMass") != nullptr; }));
    QTest::mouseRelease(chip, Qt::LeftButton, {}, {20, 10});
    EXPECT_TRUE(today().work.empty()) << "it is no touch any more";
}

TEST_F(Yard, AnUndoStaysForAMinute) {
    open();
    load();
    m_clock.time += 59s;
    m_window->fillPage().refresh();
    EXPECT_TRUE(named<QPushButton>("undo")->isEnabled());
    m_clock.time += 2s;
    m_window->fillPage().refresh();
    EXPECT_FALSE(named<QPushButton>("undo")->isEnabled());
}

TEST_F(Yard, AnOldLoadIsTakenBackInTwoTouches) {
    open();
    load();
    m_clock.time += 1h;
    load();
    press("dayLoads");
    auto* list = m_window->findChild<fill::DayLoads*>();
    ASSERT_TRUE(list->isVisible());
    EXPECT_FALSE(face()->isVisible()) << "the list stands in place of the trucks";
    QTest::mouseClick(tool("Take back", 1), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().loads.size() == 1; }));
    EXPECT_EQ(today().loads.front().at, m_clock.time) << "the older one is gone";
    EXPECT_TRUE(QTest::qWaitFor([&] { return list->findChildren<QPushButton*>().size() == 1; }));
}

// The list, and its mass held up or down until it reads right: whatever the mass, two touches.
TEST_F(Yard, TheMassOfAnOldLoadIsPutRightInTwoTouches) {
    open();
    load();
    m_clock.time += 1h;
    load();
    Touches touches;
    press("dayLoads");
    QToolButton* less = tool("Less mass", 1);
    QTest::mousePress(less, Qt::LeftButton);
    const auto* row = less->parentWidget()->findChild<QPushButton*>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return row->text().contains(QStringLiteral("12.4 → 11.9")); }))
        << row->text().toStdString();
    EXPECT_EQ(today().loads.size(), 2u);
    EXPECT_NEAR(today().loads[0].load.mass.tonnes(), 12.4, 1e-9) << "not before it stands still";
    QTest::mouseRelease(less, Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().loads[0].load.mass.tonnes() < 12; }));
    EXPECT_EQ(touches.count(), 2);
    EXPECT_NEAR(today().loads[1].load.mass.tonnes(), 12.4, 1e-9) << "the other stays";
    EXPECT_EQ(today().loads[0].at, m_clock.time - 1h);
    EXPECT_EQ(today().loads[0].load.source, entries::MassSource::weighed);
    const double tenths = today().loads[0].load.mass.tonnes() * 10;
    EXPECT_NEAR(tenths, std::round(tenths), 1e-6);
}

// A day has hundreds of rows, and somebody may be on one of them.
TEST_F(Yard, ANewLoadLeavesTheRowsOfTheOthersAlone) {
    open();
    load();
    m_clock.time += 4min;
    press("dayLoads");
    const QPointer<QToolButton> more = tool("More mass", 0);
    more->setFocus();
    m_desk->propose(testing_support::someLoad(11));
    ASSERT_TRUE(QTest::qWaitFor([&] {
        m_window->fillPage().refresh();
        return tool("More mass", 1) != nullptr;
    }));
    EXPECT_EQ(tool("More mass", 1), more);
    EXPECT_TRUE(more->hasFocus());
}

TEST_F(Yard, TheTabulatorGoesDownTheListOfLoads) {
    open();
    load();
    m_clock.time += 4min;
    press("dayLoads");
    m_clock.time += 4min;
    m_desk->propose(testing_support::someLoad(11));
    ASSERT_TRUE(QTest::qWaitFor([&] {
        m_window->fillPage().refresh();
        return tool("More mass", 1) != nullptr && tool("More mass", 0)->isVisible();
    }));
    tool("More mass", 0)->setFocus();
    QTest::keyClick(m_window->focusWidget(), Qt::Key_Tab);
    EXPECT_TRUE(tool("Take back", 0)->hasFocus());
    QTest::keyClick(m_window->focusWidget(), Qt::Key_Tab);
    EXPECT_EQ(m_window->focusWidget()->parentWidget(), tool("More mass", 1)->parentWidget());
}

TEST_F(Yard, AMassPutRightKeepsTheFocusOnItsButton) {
    open();
    load();
    press("dayLoads");
    tool("More mass", 0)->setFocus();
    QTest::keyClick(tool("More mass", 0), Qt::Key_Space);
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().loads[0].load.mass.tonnes() > 12.45; }));
    ASSERT_TRUE(QTest::qWaitFor([&] {
        auto* more = tool("More mass", 0);
        return !more->parentWidget()->findChild<QPushButton*>()->text().contains(u'→');
    }));
    QTest::qWait(50);
    EXPECT_TRUE(tool("More mass", 0)->hasFocus());
}

TEST_F(Yard, AnOldLoadIsPutRightInItsPlace) {
    open();
    load();
    m_clock.time += 1h;
    press("dayLoads");
    QTest::mouseClick(m_window->findChild<fill::DayLoads*>()->findChild<QPushButton*>(), Qt::LeftButton);
    type(named<widgets::QuantitySpinBox>("loadMass"), "11.5");
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().loads.front().load.mass.tonnes() < 12; }));
    ASSERT_EQ(today().loads.size(), 1u);
    EXPECT_NEAR(today().loads[0].load.mass.tonnes(), 11.5, 1e-9);
    EXPECT_EQ(today().loads[0].load.source, entries::MassSource::weighed) << "who enters a mass has read it";
    EXPECT_EQ(today().loads[0].at, m_clock.time - 1h);
}

TEST_F(Yard, ALongTouchSetsMassTimeAndTheUsualLoad) {
    open();
    QTest::mousePress(face(), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return named<QTimeEdit>("loadTime") != nullptr; }));
    QTest::mouseRelease(face(), Qt::LeftButton);
    write(named<widgets::QuantitySpinBox>("loadMass"), "13,2");
    named<QTimeEdit>("loadTime")->stepDown();
    named<QAbstractButton>("loadUsual")->click();
    press("record");
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().loads.size() == 1; }));
    EXPECT_EQ(today().loads[0].at, m_clock.time - 5min);
    EXPECT_NEAR(today().loads[0].load.mass.tonnes(), 13.2, 1e-9);
    EXPECT_NEAR(m_desk->season()->farm().trucks.begin()->second.usualLoad.tonnes(), 13.2, 1e-9);
}

TEST_F(Yard, TheArrowSetsTheFieldAndTheSilo) {
    record(entries::SiloDefined{testing_support::someSilo(2)});
    farm::Field field;
    field.id = testing_support::idOf<farm::FieldTag>(1);
    field.name = "Long field";
    record(entries::FieldDefined{field});
    open();
    QTest::mouseClick(m_window->findChild<widgets::TruckButton*>()->findChild<QToolButton*>(),
                      Qt::LeftButton);
    for (const char* box : {"loadField", "loadSilo"}) {
        named<QComboBox>(box)->setFocus();
        QTest::keyClick(named<QComboBox>(box), Qt::Key_Down);
    }
    press("record");
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().loads.size() == 1; }));
    EXPECT_EQ(today().loads[0].load.field, field.id);
    EXPECT_EQ(today().loads[0].load.silo, testing_support::idOf<farm::SiloTag>(2));
}

// A meter's reading of a load is one of its field, and shows what it is believed to say.
TEST_F(Yard, TheFieldShowsTheDryMatterOfASampleThatNamesItsLoad) {
    farm::Field field;
    field.id = testing_support::idOf<farm::FieldTag>(1);
    field.name = "Long field";
    record(entries::FieldDefined{field});
    entries::Load load = testing_support::someLoad(12);
    load.field = field.id;
    record(load);
    entries::DryMatterSample sample;
    sample.dryMatter = DryMatter::fromPercent(33);
    sample.load = recordedLoad();
    record(sample);
    open();
    EXPECT_TRUE(choice("field", "Long field")->text().contains(QStringLiteral("33.0")))
        << choice("field", "Long field")->text().toStdString();
}

TEST_F(Yard, ATimeThatHasNotComeIsRefusedInTheSheet) {
    open();
    QTest::mouseClick(m_window->findChild<widgets::TruckButton*>()->findChild<QToolButton*>(),
                      Qt::LeftButton);
    named<QTimeEdit>("loadTime")->stepUp();
    press("record");
    EXPECT_FALSE(named<QLabel>("refusal")->text().isEmpty());
    EXPECT_TRUE(today().loads.empty());
}

TEST_F(Yard, TwoSilosAndTheFieldsSwitchInOneTouch) {
    record(entries::SiloDefined{testing_support::someSilo(2)});
    for (const char* name : {"Long field", "Mill field"}) {
        farm::Field field;
        field.id = testing_support::idOf<farm::FieldTag>(name[0] == 'L' ? 1 : 2);
        field.name = name;
        record(entries::FieldDefined{field});
    }
    entries::DryMatterSample sample;
    sample.dryMatter = DryMatter::fromPercent(31);
    sample.field = testing_support::idOf<farm::FieldTag>(2);
    record(sample);
    open();
    QTest::mouseClick(choice("silo", "Bunker 2"), Qt::LeftButton);
    QTest::mouseClick(choice("field", "Mill field"), Qt::LeftButton);
    load();
    EXPECT_EQ(today().loads[0].load.silo, testing_support::idOf<farm::SiloTag>(2));
    EXPECT_EQ(today().loads[0].load.field, testing_support::idOf<farm::FieldTag>(2));
    EXPECT_NEAR(today().loads[0].dryMatter.percent(), 31, 1e-9) << "its dry matter follows";
    EXPECT_TRUE(choice("field", "Mill field")->text().contains(u'\n')) << "and is seen";
    QTest::keyClick(m_window.get(), Qt::Key_S, Qt::ControlModifier);
    QTest::mouseClick(choice("field", "Long field"), Qt::LeftButton);
    load();
    EXPECT_EQ(today().loads[1].load.silo, testing_support::idOf<farm::SiloTag>(1));
    EXPECT_EQ(today().loads[1].load.field, testing_support::idOf<farm::FieldTag>(1));
}

TEST_F(Yard, LoadsAreCaughtUpWithAndMarked) {
    open();
    load();
    m_clock.time += 45min;
    press("catchUp");
    named<QSpinBox>("catchUpCount")->setValue(6);
    press("record");
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().loads.size() == 7; }));
    for (std::size_t i = 1; i < 7; ++i) {
        const season::LoadTipped& tipped = today().loads[i];
        EXPECT_TRUE(tipped.load.timeSpread) << "marked as spread";
        EXPECT_GT(tipped.at, today().loads[i - 1].at);
        EXPECT_LT(tipped.at, m_clock.time);
        EXPECT_NEAR(tipped.load.mass.tonnes(), 12.4, 1e-9);
    }
    press("dayLoads");
    const auto rows = m_window->findChild<fill::DayLoads*>()->findChildren<QPushButton*>();
    ASSERT_EQ(rows.size(), 7);
    EXPECT_TRUE(rows.front()->text().startsWith(u"about")) << rows.front()->text().toStdString();
}

}  // namespace
}  // namespace treadwell
