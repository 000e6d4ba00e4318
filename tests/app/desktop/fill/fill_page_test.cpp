// Drives the window on a real season file, and looks into the file afterwards.
#include "app/desktop/fill/view_strip.h"
#include "app/desktop/season_banner.h"
#include "app/desktop/widgets/density_gauge.h"
#include "tests/app/desktop/fill/fill_window.h"

#include <QAbstractAnimation>
#include <QComboBox>
#include <QElapsedTimer>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <set>

namespace treadwell {
namespace {

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

    const auto again = session::Session::open(m_files, m_clock, session::Purpose::reading);
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
    *session = *session::Session::open(m_files, m_clock, session::Purpose::reading);  // lets go of the file
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

// Somebody else writes the file: a line says so above the page, which stays as wide and whole as it was.
TEST_F(FillWindow, ABannerTakesNothingOfThePagesWidth) {
    const auto widthOfGauge = [this] {
        QTest::qWait(10);
        return m_window->findChild<widgets::DensityGauge*>()->width();
    };
    for (const QSize size : {QSize{1280, 800}, QSize{1366, 768}}) {
        open();
        m_window->resize(size);
        const int before = widthOfGauge();
        close();
        const auto writer = session::Session::open(m_files, m_clock);
        ASSERT_TRUE(writer);
        open();
        m_window->resize(size);
        EXPECT_EQ(widthOfGauge(), before) << size.width();
        ASSERT_TRUE(m_window->findChild<SeasonBanner*>()->isVisible());
        EXPECT_EQ(named<QScrollArea>("rest")->horizontalScrollBar()->maximum(), 0);
        EXPECT_EQ(m_window->size(), size);
        close();
    }
}

// A screen of 1280 x 800 or 1366 x 768 with everything twice as large: the window stays on it, the loads are
// there, and what is entered comes under the gauge instead of beside it.
TEST_F(FillWindow, AtTwiceTheScaleTheSideComesUnderTheGauge) {
    open();
    const auto topOf = [this](QWidget* widget) { return widget->mapTo(m_window.get(), QPoint{}).y(); };
    for (const char* language : {"en", "pt_BR"}) {
        for (const QSize size : {QSize{640, 400}, QSize{683, 384}, QSize{1280, 800}}) {
            m_window->setLanguage(QString::fromLatin1(language));
            m_window->resize(size);
            QTest::qWait(20);
            EXPECT_EQ(m_window->size(), size) << language;
            EXPECT_FALSE(m_window->findChild<widgets::TruckFace*>()->visibleRegion().isEmpty());
            auto* gauge = m_window->findChild<widgets::DensityGauge*>();
            auto* entry = named<widgets::QuantitySpinBox>("dryMatterPercent");
            const bool under = topOf(entry) > topOf(gauge) + gauge->height();
            EXPECT_EQ(under, size.width() < 1000) << language << size.width();
        }
    }
    m_window->setLanguage(QStringLiteral("en"));
}

/// A fleet, four fields, two silos and loads enough for a density.
class BusyYard : public FillWindow {
  protected:
    BusyYard() {
        auto session = session::Session::open(m_files, m_clock);
        EXPECT_TRUE(session);
        std::vector<session::Proposal> entries{
            {entries::SiloDefined{testing_support::someSilo(2)}, m_clock.time, {}},
            {testing_support::someWork(1, farm::Activity::packing), m_clock.time, {}}};
        for (std::uint8_t number = 2; number <= 4; ++number) {
            entries.push_back(
                {entries::TractorDefined{testing_support::someTractor(number, 10)}, m_clock.time, {}});
            entries.push_back(
                {testing_support::someWork(number, static_cast<farm::Activity>(number % 3), 0.5),
                 m_clock.time,
                 {}});
        }
        for (const char* name : {"Long field", "Mill field", "Quornstieg", "Vellerbruch"}) {
            farm::Field field;
            field.id = testing_support::idOf<farm::FieldTag>(static_cast<std::uint8_t>(entries.size()));
            field.name = name;
            entries.push_back({entries::FieldDefined{field}, m_clock.time, {}});
        }
        for (int i = 0; i < 12; ++i) {
            m_clock.time += 6min;
            entries.push_back({testing_support::someLoad(12.4), m_clock.time, {}});
        }
        EXPECT_TRUE(session->importAll(entries, {}));
    }
    /// In every view, language and unit, on a window of this size.
    void expectNothingBeside(QSize size) {
        auto* scroll = named<QScrollArea>("rest");
        for (const char* language : {"en", "pt_BR"}) {
            m_window->setLanguage(QString::fromLatin1(language));
            for (const UnitSystem units : {UnitSystem::metric, UnitSystem::us}) {
                m_window->setUnits(units);
                for (const fill::View view : fill::kViews) {
                    SCOPED_TRACE(testing::Message() << language << ' ' << enumText(units) << ", "
                                                    << size.width() << ", view " << static_cast<int>(view));
                    m_window->findChild<fill::ViewStrip*>()->choose(view);
                    m_window->resize(size);
                    // A change of width is laid out in several rounds, which take their time under
                    // sanitizers.
                    const auto settled = [&] {
                        return m_window->size() == size && scroll->horizontalScrollBar()->maximum() == 0 &&
                               outside(*scroll->widget()).empty();
                    };
                    QTest::qWait(10);
                    EXPECT_TRUE(QTest::qWaitFor(settled, 5000)) << outside(*scroll->widget());
                }
            }
        }
        m_window->setLanguage(QStringLiteral("en"));
    }

  private:
    /// The names of what can be touched or written in and does not lie whole within what holds it.
    static std::string outside(const QWidget& page) {
        std::string names;
        for (const QWidget* widget : page.findChildren<QWidget*>()) {
            const bool isTouched = qobject_cast<const QAbstractButton*>(widget) != nullptr ||
                                   qobject_cast<const widgets::QuantitySpinBox*>(widget) != nullptr ||
                                   qobject_cast<const widgets::TractorChip*>(widget) != nullptr;
            if (!isTouched || !widget->isVisible()) continue;
            if (page.rect().contains(QRect{widget->mapTo(&page, QPoint{}), widget->size()})) continue;
            names += widget->metaObject()->className() + (' ' + widget->objectName().toStdString()) + '\n';
        }
        return names;
    }
};

// Downwards a small screen is scrolled, sideways never.
TEST_F(BusyYard, NothingLiesBesideASmallScreen) {
    open();
    for (const QSize size : {QSize{640, 400}, QSize{683, 384}, QSize{1280, 800}, QSize{1366, 768}})
        expectNothingBeside(size);
}

// One glance: without scrolling a truck's button, the undo and the density's number are in sight.
TEST_F(BusyYard, AtTwiceTheScaleLoadsAndDensityAreInSight) {
    open();
    m_window->resize(640, 400);
    QTest::qWait(20);
    const auto isWhole = [](const QWidget* widget) {
        return widget->visibleRegion().boundingRect() == widget->rect();
    };
    EXPECT_TRUE(isWhole(m_window->findChild<widgets::TruckFace*>()));
    EXPECT_TRUE(isWhole(named<QPushButton>("undo")));
    EXPECT_TRUE(isWhole(named<QLabel>("densityNumber")));
    // The rest of the yard is reached by the keys' focus, which brings it into sight.
    auto* hire = named<QPushButton>("hire");
    named<QPushButton>("catchUp")->setFocus();
    QTest::keyClick(named<QPushButton>("catchUp"), Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), hire);
    EXPECT_TRUE(isWhole(hire));
}

// Loads, advice, gauge and pad at once: six trucks stand there without scrolling on a tablet and a laptop.
TEST_F(BusyYard, SixTrucksStandThereAtOnce) {
    {
        auto session = session::Session::open(m_files, m_clock);
        ASSERT_TRUE(session);
        for (std::uint8_t number = 1; number <= 5; ++number) {
            farm::Truck truck;
            truck.id = testing_support::idOf<farm::TruckTag>(number);
            truck.name = "Truck " + std::to_string(number);
            truck.usualLoad = AsFedMass::fromTonnes(12);
            ASSERT_TRUE(session->propose(entries::TruckDefined{truck}, m_clock.time, {}));
        }
    }
    open();
    for (const settings::Look look : {settings::Look::light, settings::Look::outdoor}) {
        for (const QSize size : {QSize{1280, 800}, QSize{1366, 768}}) {
            m_window->setLook(look);
            m_window->resize(size);
            const auto seen = [this] {
                const auto faces = m_window->findChildren<widgets::TruckFace*>();
                return std::ranges::count_if(faces, [](const QWidget* face) {
                    return face->visibleRegion().boundingRect() == face->rect();
                });
            };
            EXPECT_TRUE(QTest::qWaitFor([&] { return seen() == 6; }))
                << seen() << " of six: " << size.width() << ' ' << enumText(look);
            for (const QWidget* widget : {static_cast<QWidget*>(named<QLabel>("densityNumber")),
                                          static_cast<QWidget*>(named<QPushButton>("whatIf")),
                                          static_cast<QWidget*>(m_window->findChild<widgets::PadPlan*>())})
                EXPECT_EQ(widget->visibleRegion().boundingRect(), widget->rect()) << size.width();
        }
    }
    m_window->setLook(settings::Look::light);
}

// Reduced motion: what a touch changes stands there at once. A load's steps are few (touched, committed, what
// follows beside its numbers); what slides, fades or grows would show many pictures.
TEST_F(BusyYard, WhatChangesStandsStillAtOnce) {
    open();
    QTest::qWait(50);
    m_clock.time += 1min;
    const auto changes = [this](QWidget* touched) {
        QImage shown = m_window->grab().toImage();
        QTest::mouseClick(touched, Qt::LeftButton);
        int count = 0;
        QElapsedTimer since;
        since.start();
        while (since.elapsed() < 500) {
            QTest::qWait(5);
            const QImage before = std::exchange(shown, m_window->grab().toImage());
            count += shown == before ? 0 : 1;
        }
        return count;
    };
    for (QWidget* touched : {static_cast<QWidget*>(m_window->findChild<widgets::TruckFace*>()),
                             static_cast<QWidget*>(named<QPushButton>("dayLoads")),
                             static_cast<QWidget*>(named<QPushButton>("whatIf"))}) {
        const int count = changes(touched);
        EXPECT_GE(count, 1) << touched->objectName().toStdString();
        EXPECT_LE(count, 4) << touched->objectName().toStdString();
    }
    EXPECT_TRUE(m_window->findChildren<QAbstractAnimation*>().isEmpty());
}

TEST_F(FillWindow, EveryButtonIsReachedByTab) {
    open();
    std::set<const QWidget*> reached;
    const QWidget* first = named<QPushButton>("tablet");
    for (const QWidget* at = first; reached.insert(at).second;) at = at->nextInFocusChain();
    for (const auto* button : m_window->centralWidget()->findChildren<QPushButton*>()) {
        if (!button->isVisible()) continue;
        EXPECT_TRUE(button->focusPolicy() & Qt::TabFocus) << button->text().toStdString();
        EXPECT_TRUE(reached.contains(button)) << button->text().toStdString();
    }
}

TEST_F(FillWindow, TheYardsButtonsAreTwentyMillimetresAndNoneIsSmallerThanAFinger) {
    open();
    const settings::Appearance measure;
    EXPECT_EQ(m_window->findChild<widgets::TruckFace*>()->height(),
              measure.pixels(settings::kYardButtonMillimetres));
    EXPECT_GE(named<QPushButton>("undo")->height(), measure.pixels(settings::kYardButtonMillimetres));
    for (const auto* button : m_window->centralWidget()->findChildren<QPushButton*>()) {
        if (!button->isVisible()) continue;
        EXPECT_GE(button->height(), 44) << button->text().toStdString();
    }
}

TEST_F(FillWindow, ListsEveryKeyItAnswersTo) {
    open();
    QString listed;
    for (const auto& [keys, what] : fill::fillKeys()) {
        EXPECT_FALSE(what.isEmpty());
        listed += keys + u' ';
    }
    for (const QShortcut* shortcut : m_window->fillPage().findChildren<QShortcut*>()) {
        const QString key = shortcut->key().toString(QKeySequence::PortableText);
        if (key.size() == 6 && key.at(5).isDigit()) continue;  // Ctrl+1 to Ctrl+9 stand in one line
        EXPECT_TRUE(listed.contains(key == u"Ctrl+Return" ? QStringLiteral("Ctrl+Enter") : key))
            << key.toStdString();
    }
}

}  // namespace
}  // namespace treadwell
