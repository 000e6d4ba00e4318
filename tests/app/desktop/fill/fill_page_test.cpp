// Drives the window on a real season file, and looks into the file afterwards.
#include "app/desktop/fill/fill_page.h"

#include "app/desktop/widgets/quantity_spin_box.h"
#include "app/desktop/widgets/tractor_chip.h"
#include "app/desktop/widgets/truck_button.h"
#include "tests/app/desktop/season_window.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>

namespace treadwell {
namespace {

using namespace std::chrono_literals;
using testing_support::at;

class FillWindow : public SeasonWindow {
  protected:
    void type(widgets::QuantitySpinBox* box, const char* text) {
        box->setFocus();
        box->selectAll();
        QTest::keyClicks(box, QLatin1String{text});
        QTest::keyClick(box, Qt::Key_Return);
    }
};

TEST_F(FillWindow, RecordsWhatIsTouchedTypedAndTakenBack) {
    open();
    auto* face = m_window->findChild<widgets::TruckFace*>();
    QTest::mouseClick(face, Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().loads.size() == 1; }));
    m_clock.time += 5min;
    QTest::mouseClick(face, Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().loads.size() == 2; }));
    QTest::mouseClick(named<QPushButton>("undo"), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().loads.size() == 1; }));

    auto* chip = m_window->findChild<widgets::TractorChip*>();
    for (const auto zone : {widgets::Zone::spreading, widgets::Zone::packing}) {
        chip->setFocus();
        QTest::keyClick(chip, Qt::Key_Left);
        ASSERT_TRUE(
            QTest::qWaitFor([&] { return chip->tractor().zone == zone && !chip->tractor().pending; }));
        m_clock.time += 1min;
    }
    auto* percent = named<widgets::QuantitySpinBox>("dryMatterPercent");
    type(percent, "34.5");
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().samples.size() == 1; }));
    m_clock.time += 1min;
    type(percent, "36,5");
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().samples.size() == 2; }));
    type(named<widgets::QuantitySpinBox>("layerThickness"), "14");
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().layers.size() == 1; }));
    close();

    const auto again = session::Session::openForReading(m_files, m_clock);
    ASSERT_TRUE(again);
    const season::Day& day = *again->snapshot()->days().back();
    ASSERT_EQ(day.loads.size(), 1u);
    EXPECT_EQ(day.loads[0].load.mass, AsFedMass::fromTonnes(12.4));
    EXPECT_EQ(std::count_if(day.facts.begin(), day.facts.end(), [](const auto& f) { return f->isVoid(); }),
              1);
    ASSERT_EQ(day.samples.size(), 2u);
    EXPECT_NEAR(day.samples[0].reading.dryMatter.percent(), 34.5, 1e-9);
    EXPECT_NEAR(day.samples[1].reading.dryMatter.percent(), 36.5, 1e-9);
    ASSERT_EQ(day.layers.size(), 1u);
    EXPECT_NEAR(day.layers[0].what.thickness.centimetres(), 14.0, 1e-9);
    ASSERT_FALSE(day.work.empty());
    EXPECT_EQ(day.work.back().activity, farm::Activity::packing);
}

TEST_F(FillWindow, TextThatIsNoNumberIsNotRecorded) {
    open();
    type(named<widgets::QuantitySpinBox>("dryMatterPercent"), "3.4,5");
    QTest::qWait(50);
    EXPECT_TRUE(today().samples.empty());
}

TEST_F(FillWindow, TakesADishByItsWeights) {
    open();
    named<QComboBox>("dryMatterWay")->setCurrentIndex(1);
    auto* wet = named<widgets::QuantitySpinBox>("dishWet");
    wet->setFocus();
    wet->selectAll();
    QTest::keyClicks(wet, QStringLiteral("200"));
    type(named<widgets::QuantitySpinBox>("dishDry"), "70");
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().samples.size() == 1; }));
    EXPECT_NEAR(today().samples[0].reading.dryMatter.percent(), 35.0, 1e-9);
}

TEST_F(FillWindow, ChangesLanguageAndUnitsWhileOpen) {
    open();
    auto* undo = named<QPushButton>("undo");
    const QString english = undo->text();
    m_window->setLanguage(QStringLiteral("pt_BR"));
    QCoreApplication::processEvents();
    EXPECT_NE(undo->text(), english);
    m_window->setUnits(UnitSystem::us);
    EXPECT_TRUE(named<widgets::QuantitySpinBox>("layerThickness")->text().endsWith(u"in"));
    m_window->setLanguage(QStringLiteral("en"));
    QCoreApplication::processEvents();
    EXPECT_EQ(undo->text(), english);
}

TEST_F(FillWindow, FitsTheSmallScreensWithAnOrdinaryFleet) {
    auto session = session::Session::open(m_files, m_clock);
    ASSERT_TRUE(session);
    for (std::uint8_t number = 2; number <= 4; ++number) {
        const auto tractor = testing_support::someTractor(number, 10);
        ASSERT_TRUE(session->propose(entries::TractorDefined{tractor}, m_clock.time, {}));
        ASSERT_TRUE(session->propose(testing_support::someWork(number, farm::Activity::packing, 0.5),
                                     m_clock.time, {}));
    }
    *session = *session::Session::openForReading(m_files, m_clock);  // lets go of the file
    open();
    auto* scroll = named<QScrollArea>("rest");
    for (const settings::Look look : {settings::Look::light, settings::Look::outdoor}) {
        for (const char* language : {"en", "pt_BR"}) {
            for (const QSize size : {QSize{1280, 800}, QSize{1366, 768}}) {
                m_window->setLook(look);
                m_window->setLanguage(QString::fromLatin1(language));
                m_window->resize(size);
                QTest::qWait(10);
                EXPECT_EQ(m_window->size(), size) << language;
                EXPECT_EQ(scroll->verticalScrollBar()->maximum(), 0) << language << size.height();
                EXPECT_EQ(scroll->horizontalScrollBar()->maximum(), 0) << language << size.width();
            }
        }
    }
}

TEST_F(FillWindow, NamesEveryControl) {
    open();
    for (const QWidget* widget : m_window->centralWidget()->findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible()) continue;
        if (widget->objectName().startsWith(u"qt_")) continue;         // inside of a control that is named
        if (qobject_cast<const QLabel*>(widget) != nullptr) continue;  // its text is its name
        const auto* button = qobject_cast<const QAbstractButton*>(widget);
        EXPECT_FALSE(widget->accessibleName().isEmpty() && (button == nullptr || button->text().isEmpty()))
            << widget->metaObject()->className() << ' ' << widget->objectName().toStdString();
    }
}

}  // namespace
}  // namespace treadwell
