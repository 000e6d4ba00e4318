// Machines that are hired, pauses, what happens, and who holds the tablet.
#include "tests/app/desktop/fill/yard_window.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QLabel>
#include <QLineEdit>
#include <QTimeEdit>

namespace treadwell {
namespace {

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
