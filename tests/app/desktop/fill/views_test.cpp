// The views at the foot of the Fill page, driven by clicks and keys on a real season file.
#include "app/desktop/fill/clock_watch.h"
#include "app/desktop/fill/fill_page.h"
#include "app/desktop/fill/view_strip.h"
#include "app/desktop/plots/timeline.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "app/desktop/widgets/section_view.h"
#include "tests/app/desktop/season_window.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QTableView>

namespace treadwell {
namespace {

using namespace std::chrono_literals;
using testing_support::at;

class Views : public SeasonWindow {
  protected:
    /// 25 loads of 12.4 t, every `gap` minutes, a 14 t tractor packing; until now.
    void fillSilo(std::chrono::minutes gap = 5min) {
        auto session = session::Session::open(m_files, m_clock);
        ASSERT_TRUE(session);
        ASSERT_TRUE(
            session->propose(testing_support::someWork(1, farm::Activity::packing), m_clock.time, {}));
        for (int i = 0; i < 25; ++i, m_clock.time += gap)
            ASSERT_TRUE(session->propose(testing_support::someLoad(12.4), m_clock.time, {}));
        m_clock.time -= gap - 1min;
    }
    void openView(const char* name) {
        for (auto* button : strip()->findChildren<QPushButton*>()) {
            if (button->text() == QLatin1String{name}) QTest::mouseClick(button, Qt::LeftButton);
        }
        QTest::qWait(5);
    }
    fill::ViewStrip* strip() { return m_window->findChild<fill::ViewStrip*>(); }
    /// What a person types into the field that has the focus, then Enter.
    void enter(const char* text) {
        QWidget* field = QApplication::focusWidget();
        ASSERT_NE(field, nullptr);
        QTest::keyClicks(field, QLatin1String{text});
        QTest::keyClick(field, Qt::Key_Return);
    }
    QString labelText(const char* name) { return named<QLabel>(name)->text(); }
};

TEST_F(Views, EachViewComesAtATouchAndByKey) {
    fillSilo();
    open();
    openView("Section");
    EXPECT_TRUE(m_window->findChild<widgets::SectionView*>()->isVisible());
    EXPECT_FALSE(m_window->findChild<plots::Timeline*>()->isVisible());
    EXPECT_TRUE(m_window->findChild<widgets::SectionView*>()->sentence().contains(QStringLiteral("layer")));
    openView("Table");
    auto* table = m_window->findChild<QTableView*>();
    EXPECT_TRUE(table->isVisible());
    EXPECT_GE(table->model()->rowCount(), 25);
    openView("Time");
    EXPECT_TRUE(m_window->findChild<plots::Timeline*>()->isVisible());
    for (const fill::View view : {fill::View::section, fill::View::table, fill::View::heights,
                                  fill::View::chop, fill::View::timeline}) {
        QTest::keyClick(m_window.get(), Qt::Key_T, Qt::ControlModifier);
        EXPECT_EQ(strip()->chosen(), view);
    }
}

TEST_F(Views, TheSectionReadsTheLayerUnderThePointer) {
    fillSilo();
    open();
    openView("Section");
    auto* section = m_window->findChild<widgets::SectionView*>();
    QTest::mouseMove(section, section->pixelOf(Length::fromMetres(2), Length::fromMetres(0.4)).toPoint());
    EXPECT_TRUE(section->sentence().contains(QStringLiteral("15 Sep"))) << section->sentence().toStdString();
    EXPECT_TRUE(section->sentence().contains(QStringLiteral("kg DM/m³")));
}

// Digits and Enter alone, no pointer: a dozen heights in well under two minutes.
TEST_F(Views, TwelveHeightsAreTypedWithEnterAloneAndJoinTheGaugeAtOnce) {
    fillSilo();
    open();
    QTest::keyClick(m_window.get(), Qt::Key_H, Qt::ControlModifier);
    QTest::qWait(5);
    ASSERT_EQ(QApplication::focusWidget(), named<widgets::QuantitySpinBox>("height1"));
    const QString before = m_window->findChild<widgets::DensityGauge*>()->sentence();
    enter("2.5");
    enter("2,4");
    enter("1.3");
    for (int i = 3; i < 12; ++i) enter("0");
    ASSERT_EQ(QApplication::focusWidget(), named<QPushButton>("recordHeights"));
    m_window->findChild<widgets::DensityGauge*>()->select(widgets::Reading::silo);
    const QString silo = m_window->findChild<widgets::DensityGauge*>()->sentence();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().surveys.size() == 1; }));
    const auto& readings = today().surveys.front().what.readings;
    ASSERT_EQ(readings.size(), 12u);
    EXPECT_NEAR(readings[0].along.metres(), 2.5, 1e-9) << "60 m in twelve parts, read in their middles";
    EXPECT_NEAR(readings[0].height.metres(), 2.5, 1e-9);
    EXPECT_NEAR(readings[1].height.metres(), 2.4, 1e-9);
    EXPECT_NEAR(readings[11].along.metres(), 57.5, 1e-9);
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return m_window->findChild<widgets::DensityGauge*>()->sentence() != silo; }));
}

TEST_F(Views, RefusesAHeightThatCannotBeAndSaysWhy) {
    fillSilo();
    open();
    openView("Heights");
    auto* first = named<widgets::QuantitySpinBox>("height1");
    enter("9");
    EXPECT_EQ(QApplication::focusWidget(), first) << "the place is not left";
    const auto labels = strip()->findChildren<QLabel*>();
    EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
        return label->isVisible() && label->text().contains(QStringLiteral("2.50")) &&
               label->text().contains(QStringLiteral("9"));
    }));
    EXPECT_FALSE(named<QPushButton>("recordHeights")->isEnabled());
}

TEST_F(Views, SaysTheRunningMean) {
    open();
    openView("Heights");
    enter("2");
    enter("1");
    const auto labels = strip()->findChildren<QLabel*>();
    EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
        return label->text().startsWith(QStringLiteral("Mean 1.50"));
    }));
}

TEST_F(Views, ALaserReadsDownFromWhereItHangs) {
    fillSilo();
    open();
    openView("Heights");
    named<QComboBox>("heightsInstrument")->setCurrentIndex(1);
    auto* first = named<widgets::QuantitySpinBox>("height1");
    first->setFocus();
    first->selectAll();
    enter("3.5");
    enter("3.6");
    enter("4.7");
    enter("6");
    QTest::mouseClick(named<QPushButton>("recordHeights"), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().surveys.size() == 1; }));
    const auto& readings = today().surveys.front().what.readings;
    ASSERT_EQ(readings.size(), 4u) << "what was not read is not recorded";
    EXPECT_NEAR(readings[0].height.metres(), 2.5, 1e-9) << "the laser hangs at 6 m";
    EXPECT_NEAR(readings[3].height.metres(), 0.0, 1e-9);
}

TEST_F(Views, RecordsWhatLayOnTheSieves) {
    fillSilo();
    open();
    const auto isMarked = [this] {
        const auto buttons = strip()->findChildren<QPushButton*>();
        return std::any_of(buttons.begin(), buttons.end(), [](const QPushButton* button) {
            return button->text() == u"Chop" && !button->icon().isNull();
        });
    };
    EXPECT_TRUE(isMarked()) << "loads came and none was sieved";
    openView("Chop");
    named<widgets::QuantitySpinBox>("sieve1")->setFocus();
    named<widgets::QuantitySpinBox>("sieve1")->selectAll();
    for (const char* grams : {"20", "220", "110", "30"}) enter(grams);
    ASSERT_EQ(QApplication::focusWidget(), named<QPushButton>("recordChop"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !today().records.of<entries::SieveTest>().empty(); }));
    const entries::SieveTest& test = today().records.of<entries::SieveTest>().front().what;
    ASSERT_EQ(test.masses.size(), 4u);
    EXPECT_NEAR(test.masses[1].kilograms(), 0.220, 1e-9);
    EXPECT_TRUE(QTest::qWaitFor([&] {
        const auto labels = strip()->findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
            return label->text().startsWith(QStringLiteral("Mean length"));
        });
    }));
    EXPECT_FALSE(isMarked());
}

TEST_F(Views, SaysWhatMovedTheDensity) {
    fillSilo(6min);
    open();
    const Instant opened = m_clock.time;
    for (int i = 0; i < 8; ++i) {
        m_clock.time = opened + (i + 1) * 2min;
        m_desk->propose(testing_support::someLoad(12.4));
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().loads.size() == 33; }));
    m_window->fillPage().refresh();
    EXPECT_TRUE(QTest::qWaitFor([&] {
        return labelText("moved").contains(QStringLiteral("loads came faster"));
    })) << labelText("moved").toStdString();
    EXPECT_TRUE(labelText("moved").contains(QStringLiteral("−")));
}

TEST_F(Views, GoesOnAfterMidnightAndAfterSleep) {
    fillSilo();
    open();
    auto* timeline = m_window->findChild<plots::Timeline*>();
    QTest::qWait(5);
    m_clock.time += 3h;  // asleep
    m_window->fillPage().refresh();
    QTest::qWait(5);
    EXPECT_EQ(timeline->shownTo(), m_clock.time);
    for (int i = 0; i < 3; ++i) QTest::keyClick(timeline, Qt::Key_Plus);
    EXPECT_LT(timeline->shownTo(), m_clock.time);
    m_clock.time = at("2026-09-16T03:00:30Z");  // half a minute past the farm's midnight
    m_window->fillPage().refresh();
    QTest::qWait(5);
    EXPECT_GE(timeline->shownTo(), m_clock.time) << "the zoom was of yesterday";
    EXPECT_LE(timeline->shownTo(), m_clock.time + 10min) << "the shortest span that is drawn";
    auto* gauge = m_window->findChild<widgets::DensityGauge*>();
    gauge->select(widgets::Reading::today);
    EXPECT_TRUE(gauge->sentence().contains(QStringLiteral("no density"))) << gauge->sentence().toStdString();
    gauge->select(widgets::Reading::silo);
    EXPECT_TRUE(gauge->sentence().contains(QStringLiteral("80 % band")));
    m_clock.time -= 2h;  // set back
    m_window->fillPage().refresh();
    QTest::qWait(5);
    EXPECT_LE(timeline->shownTo(), m_clock.time);
}

TEST(ClockStep, KnowsSleepFromANewDay) {
    using fill::ClockStep;
    const FarmZone zone = FarmZone::named("America/Sao_Paulo").value();
    const Instant noon = at("2026-09-15T15:00:00Z");
    EXPECT_EQ(fill::clockStep(std::nullopt, noon, zone), ClockStep::ordinary);
    EXPECT_EQ(fill::clockStep(noon, noon + 5s, zone), ClockStep::ordinary);
    EXPECT_EQ(fill::clockStep(noon, noon + 11min, zone), ClockStep::slept);
    EXPECT_EQ(fill::clockStep(noon, noon - 1s, zone), ClockStep::setBack);
    const Instant midnight = at("2026-09-16T03:00:00Z");
    EXPECT_EQ(fill::clockStep(midnight - 1s, midnight, zone), ClockStep::newDay);
}

}  // namespace
}  // namespace treadwell
