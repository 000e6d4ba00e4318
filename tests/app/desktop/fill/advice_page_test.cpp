// What advice does when it is followed, declined or tried.
#include "app/desktop/widgets/advice_line.h"
#include "app/desktop/widgets/attention_panel.h"
#include "tests/app/desktop/fill/fill_window.h"

#include <gmock/gmock.h>

#include <QLabel>
#include <QToolButton>

namespace treadwell {
namespace {

using entries::AdviceDecided;
using entries::AdviceDecision;
using testing_support::idOf;

/// Loads of 12 t every 6 min for two hours: the 14 t tractor packs, one of 20 t stands by.
class AdvicePage : public FillWindow {
  protected:
    AdvicePage() {
        auto session = session::Session::open(m_files, m_clock);
        EXPECT_TRUE(session);
        std::vector<session::Proposal> facts{
            {entries::TractorDefined{testing_support::someTractor(2, 20)}, m_clock.time, {}},
            {testing_support::someWork(1, farm::Activity::packing), m_clock.time, {}},
            {entries::LayerSeen{idOf<farm::SiloTag>(1), Length::fromCentimetres(15), {}}, m_clock.time, {}}};
        for (int i = 0; i < 20; ++i) {
            m_clock.time += 6min;
            facts.push_back({testing_support::someLoad(12), m_clock.time, {}});
        }
        EXPECT_TRUE(session->importAll(facts, {}));
    }
    [[nodiscard]] QString said() {
        return m_window->findChild<widgets::AdviceLine*>()->accessibleDescription();
    }
    std::vector<AdviceDecision> decisions() {
        std::vector<AdviceDecision> all;
        for (const auto& note : today().records.of<AdviceDecided>()) all.push_back(note.what.decision);
        return all;
    }
    widgets::TractorChip* chip(std::uint8_t number) {
        for (auto* each : m_window->findChildren<widgets::TractorChip*>()) {
            if (each->tractor().id == idOf<farm::TractorTag>(number).value) return each;
        }
        return nullptr;
    }
    QString panel() {
        QCoreApplication::processEvents();  // it follows once the rest has been painted
        QStringList texts;
        for (const auto* label : m_window->findChild<widgets::AttentionPanel*>()->findChildren<QLabel*>())
            texts << label->text();
        return texts.join(u'\n');
    }
    void tick(std::chrono::minutes by) {
        m_clock.time += by;
        m_window->fillPage().refresh();
        QCoreApplication::processEvents();
    }
};

TEST_F(AdvicePage, DoItMovesTheTractorAndIsLookedBackOn) {
    open();
    ASSERT_TRUE(said().contains(QStringLiteral("Let Tractor 2 pack"))) << said().toStdString();
    EXPECT_TRUE(said().contains(u'→')) << "effect";
    EXPECT_TRUE(said().contains(u'%')) << "chance";
    press("doIt");
    ASSERT_TRUE(QTest::qWaitFor([&] { return chip(2)->tractor().zone == widgets::Zone::packing; }));
    EXPECT_EQ(today().work.back().tractor, idOf<farm::TractorTag>(2));
    EXPECT_EQ(today().work.back().activity, farm::Activity::packing);
    EXPECT_THAT(decisions(), testing::ElementsAre(AdviceDecision::shown, AdviceDecision::accepted));
    EXPECT_TRUE(panel().contains(QStringLiteral("done: Let Tractor 2 pack"))) << panel().toStdString();
    EXPECT_TRUE(panel().contains(QStringLiteral("shows from")));
    tick(46min);
    EXPECT_FALSE(panel().contains(QStringLiteral("shows from"))) << "what came of it";
}

TEST_F(AdvicePage, DeclinedAdviceMovesNobody) {
    open();
    QTest::keyClick(m_window.get(), Qt::Key_Backspace, Qt::ControlModifier);
    ASSERT_TRUE(QTest::qWaitFor([&] { return decisions().size() == 2; }));
    EXPECT_EQ(decisions().back(), AdviceDecision::declined);
    EXPECT_EQ(chip(2)->tractor().zone, widgets::Zone::away);
    EXPECT_FALSE(named<QPushButton>("doIt")->isVisible());
}

TEST_F(AdvicePage, WhatIsTriedIsNotRecordedUntilItIsDone) {
    open();
    QTest::qWait(20);
    press("whatIf");
    EXPECT_FALSE(named<QPushButton>("doIt")->isVisible()) << "nothing is tried yet";
    const std::size_t work = today().work.size();
    QTest::keyClick(chip(2), Qt::Key_Left);
    QTest::qWait(20);
    EXPECT_EQ(today().work.size(), work);
    EXPECT_EQ(chip(2)->tractor().zone, widgets::Zone::spreading);
    EXPECT_TRUE(said().contains(QStringLiteral("Let Tractor 2 spread"))) << said().toStdString();
    QTest::keyClick(chip(2), Qt::Key_Left);
    EXPECT_TRUE(said().contains(QStringLiteral("Let Tractor 2 pack"))) << said().toStdString();
    EXPECT_TRUE(said().contains(u'→'));
    press("whatIf");
    EXPECT_EQ(chip(2)->tractor().zone, widgets::Zone::away) << "left as it was";

    press("whatIf");
    QTest::keyClick(chip(2), Qt::Key_Left);
    QTest::keyClick(chip(2), Qt::Key_Left);
    press("doIt");
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().work.size() > work; }));
    EXPECT_EQ(decisions().back(), AdviceDecision::accepted);
    EXPECT_EQ(today().records.of<AdviceDecided>().back().what.advice, "pack:Tractor 2");
}

TEST_F(AdvicePage, ALayerIsTriedToo) {
    open();
    press("whatIf");
    type(named<widgets::QuantitySpinBox>("layerThickness"), "10");
    EXPECT_TRUE(said().contains(QStringLiteral("10 cm"))) << said().toStdString();
    EXPECT_EQ(today().layers.size(), 1u);
}

// Deliveries of 4 to 9 minutes apart, from a fixed row of numbers: who is to be moved changes a few times in
// two hours, and never without the minutes between for which the voice waits.
TEST_F(AdvicePage, DoesNotFlapOnANoisyDay) {
    {
        auto session = session::Session::open(m_files, m_clock);
        ASSERT_TRUE(session);
        Instant at = m_clock.time;
        std::vector<session::Proposal> loads;
        std::uint32_t noise = 12345;
        for (int i = 0; i < 20; ++i) {
            noise = noise * 1664525u + 1013904223u;
            at += std::chrono::seconds{240 + (noise >> 16) % 300};
            loads.push_back({testing_support::someLoad(8.0 + (noise >> 8) % 9), at, {}});
        }
        ASSERT_TRUE(session->importAll(loads, {}));
    }
    open();
    std::vector<Instant> changes;
    const auto moved = [this] {
        return named<QPushButton>("doIt")->isVisible() ? said().section(u':', 0, 0).section(u',', 0, 0)
                                                       : QString{};
    };
    QString before = moved();
    for (int minute = 0; minute < 120; ++minute) {
        tick(1min);
        const QString now = moved();
        if (now != before) changes.push_back(m_clock.time);
        before = now;
    }
    EXPECT_LE(changes.size(), 6u);
    for (std::size_t i = 1; i < changes.size(); ++i) EXPECT_GE(changes[i] - changes[i - 1], 4min);
}

TEST_F(AdvicePage, WhatMattersIsPutAwayUntilItComesAgain) {
    open();
    ASSERT_TRUE(panel().contains(QStringLiteral("Packing falls behind"))) << panel().toStdString();
    EXPECT_EQ(QApplication::activeModalWidget(), nullptr) << "no dialog stands in the way";
    QToolButton* away = nullptr;
    for (auto* button : m_window->findChild<widgets::AttentionPanel*>()->findChildren<QToolButton*>()) {
        if (button->accessibleName().contains(QStringLiteral("Packing falls behind"))) away = button;
    }
    ASSERT_NE(away, nullptr);
    QTest::mouseClick(away, Qt::LeftButton);
    EXPECT_FALSE(panel().contains(QStringLiteral("Packing falls behind")));
    tick(1min);
    EXPECT_FALSE(panel().contains(QStringLiteral("Packing falls behind")));
    press("pause");
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().pauses.size() == 1; }));
    tick(1min);
    press("pause");
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().pauses[0].end.has_value(); }));
    tick(1min);
    EXPECT_TRUE(panel().contains(QStringLiteral("Packing falls behind"))) << "it comes anew";
}

TEST_F(AdvicePage, TheFirstHourSaysWhatIsMissingAndAssumed) {
    m_clock.time += 24h;
    open();
    const QString text = panel();
    for (const char* part : {"Missing", "Pace: 0 loads today", "Heights: none read", "Assumed",
                             "Dry matter: the middle of the goal", "Known", "Layer: 15"}) {
        EXPECT_TRUE(text.contains(QString::fromUtf8(part))) << part << '\n' << text.toStdString();
    }
    EXPECT_LT(text.indexOf(QStringLiteral("Missing")), text.indexOf(QStringLiteral("Assumed")));
    EXPECT_LT(text.indexOf(QStringLiteral("Assumed")), text.indexOf(QStringLiteral("Known")));
}

TEST_F(AdvicePage, WhatWouldNarrowTheBandMostComesFirst) {
    open();
    const QString text = panel();
    EXPECT_TRUE(text.contains(QStringLiteral("Makes the answer surer"))) << text.toStdString();
}

}  // namespace
}  // namespace treadwell
