// Loads, machines and people, as the yard sees them: every test touches what a person would touch, and looks
// at what was recorded.
#include "app/desktop/fill/day_loads.h"
#include "tests/app/desktop/fill/fill_window.h"
#include "tests/app/desktop/finger.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QLabel>
#include <QLineEdit>
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

class Yard : public FillWindow {
  protected:
    /// That of a row in the list of loads, the newest first.
    QToolButton* tool(const char* name, int row) {
        QList<QToolButton*> found;
        for (auto* button : m_window->findChild<fill::DayLoads*>()->findChildren<QToolButton*>()) {
            if (button->accessibleName().startsWith(QLatin1String{name})) found << button;
        }
        return found.value(row);
    }
    widgets::TruckFace* face() { return m_window->findChild<widgets::TruckFace*>(); }
    /// Logs a load and waits until it lies on the disk.
    void load() {
        const std::size_t before = today().loads.size();
        QTest::mouseClick(face(), Qt::LeftButton);
        ASSERT_TRUE(QTest::qWaitFor([&] { return today().loads.size() == before + 1; }));
    }
    QPushButton* choice(const char* row, const char* startsWith) {
        for (auto* button : named<QWidget>(row)->findChildren<QPushButton*>()) {
            if (button->text().startsWith(QLatin1String{startsWith})) return button;
        }
        return nullptr;
    }
    void record(const entries::Body& body) {
        auto session = session::Session::open(m_files, m_clock);
        ASSERT_TRUE(session);
        ASSERT_TRUE(session->propose(body, m_clock.time, {}));
        *session =
            *session::Session::open(m_files, m_clock, session::Purpose::reading);  // lets go of the file
    }
    QString holder() { return named<QPushButton>("tablet")->text().section(u'\n', 0, 0); }
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

TEST_F(Yard, AHiredTractorIsThereInThreeTouches) {
    open();
    press("hire");
    QPushButton* heavy = nullptr;
    for (auto* button : m_window->findChildren<QPushButton*>()) {
        if (button->text().startsWith(u"Heavy tractor")) heavy = button;
    }
    ASSERT_NE(heavy, nullptr);
    EXPECT_TRUE(heavy->text().contains(QStringLiteral("15"))) << "its error is seen";
    QTest::mouseClick(heavy, Qt::LeftButton);
    press("record");
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_desk->season()->farm().tractors.size() == 2; }));
    const farm::Tractor* hired = nullptr;
    for (const auto& [id, tractor] : m_desk->season()->farm().tractors) {
        if (!tractor.massKnown) hired = &tractor;
    }
    ASSERT_NE(hired, nullptr);
    EXPECT_EQ(hired->mass, MachineMass::fromTonnes(14));
    EXPECT_EQ(today().work.back().tractor, hired->id);
    EXPECT_EQ(today().work.back().activity, farm::Activity::packing);

    // Until somebody knows better.
    widgets::TractorChip* chip = nullptr;
    for (auto* each : m_window->findChildren<widgets::TractorChip*>()) {
        if (each->tractor().id == hired->id.value) chip = each;
    }
    ASSERT_NE(chip, nullptr);
    EXPECT_TRUE(chip->accessibleDescription().contains(QStringLiteral("about")));
    m_clock.time += 1min;
    QTest::keyClick(chip, Qt::Key_M);
    type(named<widgets::QuantitySpinBox>("machineMass"), "15.6");
    const farm::TractorId id = hired->id;
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_desk->season()->farm().tractors.at(id).massKnown; }));
    EXPECT_NEAR(m_desk->season()->farm().tractors.at(id).mass.tonnes(), 15.6, 1e-9);
}

TEST_F(Yard, AHiredTruckIsThereInThreeTouches) {
    open();
    QTest::keyClick(m_window.get(), Qt::Key_N, Qt::ControlModifier);
    for (auto* button : m_window->findChildren<QPushButton*>()) {
        if (button->text().startsWith(u"Large trailer")) QTest::mouseClick(button, Qt::LeftButton);
    }
    press("record");
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_window->findChildren<widgets::TruckFace*>().size() == 2; }));
    EXPECT_EQ(m_desk->season()->farm().trucks.size(), 2u);
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

TEST_F(Yard, APauseBeginsAndEndsAtATouch) {
    open();
    press("pause");
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().pauses.size() == 1; }));
    EXPECT_FALSE(today().pauses[0].end);
    EXPECT_TRUE(named<QPushButton>("pause")->isChecked());
    m_clock.time += 20min;
    QTest::keyClick(m_window.get(), Qt::Key_P, Qt::ControlModifier);
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().pauses[0].end.has_value(); }));
    EXPECT_TRUE(QTest::qWaitFor([&] { return !named<QPushButton>("pause")->isChecked(); }));
}

TEST_F(Yard, WhatHappenedIsRecordedInThreeTouchesWithoutTyping) {
    open();
    press("incident");
    for (auto* button : m_window->findChildren<QPushButton*>()) {
        if (button->text() == u"spill") QTest::mouseClick(button, Qt::LeftButton);
    }
    press("record");
    const auto incidents = [this]() -> const auto& {
        return today().records.of<entries::Incident>();
    };
    ASSERT_TRUE(QTest::qWaitFor([&] { return incidents().size() == 1; }));
    EXPECT_EQ(incidents()[0].what.sort, entries::IncidentSort::spill);
    EXPECT_EQ(incidents()[0].what.silo, testing_support::idOf<farm::SiloTag>(1));
    EXPECT_TRUE(incidents()[0].what.text.empty());
    EXPECT_EQ(incidents()[0].at, m_clock.time);

    // An earlier one, with the machine and in words.
    QApplication::setActiveWindow(m_window.get());  // no window manager gives it back
    QTest::keyClick(m_window.get(), Qt::Key_B, Qt::ControlModifier);
    ASSERT_NE(named<QTimeEdit>("incidentTime"), nullptr);
    for (auto* button : m_window->findChildren<QPushButton*>()) {
        if (button->text() == u"slid") QTest::mouseClick(button, Qt::LeftButton);
    }
    named<QTimeEdit>("incidentTime")->stepDown();
    named<QComboBox>("incidentTractor")->setCurrentIndex(1);
    QTest::keyClicks(named<QLineEdit>("incidentText"), QStringLiteral("on the wet ramp"));
    press("record");
    ASSERT_TRUE(QTest::qWaitFor([&] { return incidents().size() == 2; }));
    EXPECT_EQ(incidents()[0].at, m_clock.time - 5min);
    EXPECT_EQ(incidents()[0].what.text, "on the wet ramp");
    EXPECT_EQ(incidents()[0].what.tractor, testing_support::idOf<farm::TractorTag>(1));
}

TEST_F(Yard, SomethingElseIsToldInWords) {
    open();
    press("incident");
    for (auto* button : m_window->findChildren<QPushButton*>()) {
        if (button->text() == u"other") QTest::mouseClick(button, Qt::LeftButton);
    }
    press("record");
    EXPECT_FALSE(named<QLabel>("refusal")->text().isEmpty());
    EXPECT_TRUE(today().records.of<entries::Incident>().empty());
}

TEST_F(Yard, TheHoursOnShiftStandBesideTheName) {
    open();
    press("tablet");
    QTest::keyClicks(named<QLineEdit>("newName"), QStringLiteral("Ana"));
    press("record");
    ASSERT_TRUE(QTest::qWaitFor([&] { return holder().startsWith(u"Ana"); }));
    m_clock.time += 3h + 5min;
    m_window->fillPage().refresh();
    EXPECT_TRUE(named<QPushButton>("tablet")->text().contains(u"3 h 05"));
    EXPECT_TRUE(named<QPushButton>("tablet")->accessibleDescription().contains(u"3 h 05"));
}

TEST_F(Yard, WhoHoldsTheTabletIsNamedOnceAndIsTheAuthor) {
    open();
    press("tablet");
    QTest::keyClicks(named<QLineEdit>("newName"), QStringLiteral("Ana"));
    press("record");
    ASSERT_TRUE(QTest::qWaitFor([&] { return holder() == u"Ana"; }));
    m_clock.time += 1min;
    load();
    const auto author = m_desk->season()->fact(today().loads[0].entry)->stated().header.author;
    EXPECT_EQ(m_desk->people().at(author), "Ana");
    close();
    open();
    EXPECT_EQ(holder(), QStringLiteral("Ana")) << "it stands in the season, not on this machine";
    m_clock.time += 8h;
    press("tablet");
    press("endShift");
    ASSERT_TRUE(QTest::qWaitFor([&] { return holder() != u"Ana"; }));
    // The next time a touch on the name is enough.
    press("tablet");
    for (auto* button : m_window->findChildren<QPushButton*>()) {
        if (button->text() == u"Ana") QTest::mouseClick(button, Qt::LeftButton);
    }
    EXPECT_TRUE(QTest::qWaitFor([&] { return holder() == u"Ana"; }));
}

TEST_F(Yard, TheWordsForTheRadioAreShownAndCopied) {
    record(testing_support::someWork(1, farm::Activity::packing));
    open();
    press("radio");
    const QString english = QGuiApplication::clipboard()->text();
    EXPECT_TRUE(english.startsWith(QStringLiteral("Tractor 1 packing"))) << english.toStdString();
    EXPECT_TRUE(m_window->findChild<widgets::MessageBar*>()->shownText().contains(english));
    press("language");
    QCoreApplication::processEvents();
    press("radio");
    EXPECT_TRUE(QGuiApplication::clipboard()->text().startsWith(QStringLiteral("Tractor 1 na compactação")))
        << QGuiApplication::clipboard()->text().toStdString();
    press("language");
    QCoreApplication::processEvents();
    EXPECT_EQ(named<QPushButton>("radio")->text(), QStringLiteral("Radio"));
}

}  // namespace
}  // namespace treadwell
