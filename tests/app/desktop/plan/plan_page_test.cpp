// Drives the Plan page on a real season file with clicks and keys, and looks at what came into it.
#include "app/desktop/plan/plan_page.h"

#include "app/desktop/plan/chain_band.h"
#include "app/desktop/plan/decisions.h"
#include "app/desktop/plan/plan_sheets.h"
#include "app/desktop/plan/silo_drawing.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "core/plan/from_farm.h"
#include "tests/app/desktop/season_window.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QStackedWidget>
#include <QToolButton>

namespace treadwell {
namespace {

using namespace std::chrono_literals;
using plan_page::PlanPage;

class PlanWindow : public SeasonWindow {
  protected:
    PlanWindow() {
        auto session = session::Session::open(m_files, m_clock);
        EXPECT_TRUE(session);
        for (std::uint8_t i = 2; i <= 3; ++i) {
            EXPECT_TRUE(session->propose(
                entries::TractorDefined{testing_support::someTractor(i, 8.0 + 3.0 * i)}, m_clock.time, {}));
        }
        for (std::uint8_t i = 1; i <= 2; ++i) {
            const auto id = testing_support::idOf<farm::FieldTag>(i);
            EXPECT_TRUE(session->propose(entries::FieldDefined{{id, "Field " + std::to_string(i)}},
                                         m_clock.time, {}));
        }
        m_clock.time += 1h;
    }

    void openPlan() {
        open();
        m_window->showPage(Page::plan);
        QCoreApplication::processEvents();
        settled();
    }
    PlanPage& page() { return *m_window->findChild<PlanPage*>(); }
    /// Until what is shown belongs to what is decided.
    void settled() {
        ASSERT_TRUE(QTest::qWaitFor([&] { return page().isUpToDate(); }, 20'000));
        QCoreApplication::processEvents();
    }
    void click(const char* name) { QTest::mouseClick(named<QAbstractButton>(name), Qt::LeftButton); }
    void press(Qt::Key key, Qt::KeyboardModifiers with = {}) { QTest::keyClick(&page(), key, with); }
    static QString plain(QString text) { return text.replace(QChar::Nbsp, u' '); }
    QString headline(int question) {
        return plain(named<QPushButton>(("planHeadline" + std::to_string(question)).c_str())->text());
    }
    QString lines(int question) {
        return plain(
            named<samples_page::LinesPanel>(("planLines" + std::to_string(question)).c_str())->text());
    }
    plan_page::ScenarioCards& cards() { return *m_window->findChild<plan_page::ScenarioCards*>(); }
    QWidget* sheet() { return m_window->findChild<plan_page::PlanSheet*>(); }
    const entries::PlanAdopted* adopted() { return plan::adoptedIn(*m_desk->season()); }
};

TEST_F(PlanWindow, AnswersItsFiveQuestionsFromTheFarm) {
    openPlan();
    EXPECT_TRUE(headline(0).contains(u"Does it fit?")) << headline(0).toStdString();
    EXPECT_TRUE(headline(1).contains(u"slowest:"));
    EXPECT_TRUE(headline(2).contains(u"a t DM left"));
    EXPECT_TRUE(headline(3).contains(u"m²"));
    EXPECT_TRUE(headline(4).contains(u"days"));
    EXPECT_TRUE(lines(0).contains(u"Bunker 1")) << lines(0).toStdString();
    EXPECT_TRUE(lines(0).contains(u"kg DM/m³ (")) << "no density without its band";
    EXPECT_TRUE(lines(0).contains(u"up to")) << "volume by height";
    EXPECT_TRUE(lines(1).contains(u"if one truck breaks") || lines(1).contains(u"harvester busy"));
    EXPECT_TRUE(lines(2).contains(u"Tractor 3"));
    EXPECT_TRUE(lines(3).contains(u"barrier film"));
    EXPECT_TRUE(lines(4).contains(u"silo gas until"));
}

TEST_F(PlanWindow, ATouchOnATractorLeavesItOut) {
    openPlan();
    const QString before = lines(2);
    click("tractorChip2");
    EXPECT_FALSE(page().isUpToDate()) << "the page does not wait";
    EXPECT_TRUE(named<QLabel>("planState")->text().contains(u"Reckoning"));
    settled();
    EXPECT_NE(lines(2), before);
    EXPECT_FALSE(lines(2).contains(u"Tractor 3")) << lines(2).toStdString();
    EXPECT_TRUE(named<QPushButton>("tractorChip2")->accessibleName().contains(u"left out"));
    press(Qt::Key_Z, Qt::ControlModifier);
    settled();
    EXPECT_EQ(lines(2), before);
}

TEST_F(PlanWindow, OneTractorHasToStay) {
    openPlan();
    click("tractorChip1");
    click("tractorChip2");
    EXPECT_FALSE(named<QPushButton>("tractorChip0")->isEnabled());
    settled();
    EXPECT_TRUE(lines(2).contains(u"Tractor 1"));
}

TEST_F(PlanWindow, QuickChangesEndWithTheLast) {
    openPlan();
    QSignalSpy shown{&page(), &PlanPage::shown};
    auto* trucks = named<QSpinBox>("planTrucks");
    trucks->setFocus();
    for (int i = 0; i < 8; ++i) QTest::keyClick(trucks, Qt::Key_Up);
    const QString wanted = QStringLiteral("%1 truck").arg(trucks->value());
    settled();
    EXPECT_TRUE(lines(2).contains(wanted)) << lines(2).toStdString();
    EXPECT_LT(shown.size(), 8) << "questions that were overtaken are dropped";
}

TEST_F(PlanWindow, TheKeysGoThroughTheQuestions) {
    openPlan();
    auto* sections = m_window->findChild<QStackedWidget*>(QString{}, Qt::FindChildrenRecursively);
    ASSERT_NE(sections, nullptr);
    for (int i = 0; i < 6; ++i) {
        press(static_cast<Qt::Key>(Qt::Key_F2 + i));
        EXPECT_TRUE(named<QPushButton>(("planHeadline" + std::to_string(i)).c_str())->isChecked()) << i;
    }
    EXPECT_TRUE(cards().isVisible());
}

TEST_F(PlanWindow, NumbersAreChangedBehindATouch) {
    openPlan();
    click("fieldDetails1");
    auto* crop = sheet()->findChild<widgets::QuantitySpinBox*>(QStringLiteral("planNumber0"));
    ASSERT_NE(crop, nullptr);
    crop->setFocus();
    crop->selectAll();
    QTest::keyClicks(crop, QStringLiteral("100"));
    QTest::keyClick(crop, Qt::Key_Tab);
    QTest::mouseClick(sheet()->findChild<QPushButton*>(QStringLiteral("record")), Qt::LeftButton);
    settled();
    EXPECT_TRUE(lines(0).contains(u"100.0 t from Field 2")) << lines(0).toStdString();
}

TEST_F(PlanWindow, ARefusedNumberSaysWhy) {
    openPlan();
    click("siloDetails0");
    auto* slope = sheet()->findChild<widgets::QuantitySpinBox*>(QStringLiteral("planNumber4"));
    slope->setFocus();
    slope->selectAll();
    QTest::keyClicks(slope, QStringLiteral("19"));
    QTest::keyClick(slope, Qt::Key_Tab);
    QTest::mouseClick(sheet()->findChild<QPushButton*>(QStringLiteral("record")), Qt::LeftButton);
    ASSERT_NE(sheet(), nullptr) << "the ramp does not fit into the silo";
    EXPECT_FALSE(sheet()->findChild<QLabel*>(QStringLiteral("refusal"))->text().isEmpty());
    QTest::keyClick(sheet(), Qt::Key_Escape);
}

TEST_F(PlanWindow, ThreePlansStandSideBySide) {
    openPlan();
    click("planHeadline5");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !cards().textOf(2).isEmpty(); }, 20'000));
    EXPECT_TRUE(plain(cards().textOf(0)).contains(u"Density"));
    EXPECT_TRUE(plain(cards().textOf(1)).contains(u"Against"));
    EXPECT_TRUE(plain(cards().textOf(2)).contains(u"instead of") ||
                cards().textOf(2).contains(u"no difference"));
    EXPECT_EQ(named<QComboBox>("plans")->count(), 3);
    click("lookAt2");
    settled();
    EXPECT_EQ(named<QComboBox>("plans")->currentIndex(), 2);
}

TEST_F(PlanWindow, AnAdoptedPlanIsAFactOfTheSeason) {
    openPlan();
    EXPECT_EQ(adopted(), nullptr);
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(QTest::qWaitFor([&] { return adopted() != nullptr; }, 20'000));
    EXPECT_EQ(adopted()->name, "As last year");
    EXPECT_FALSE(adopted()->days.empty());
    EXPECT_EQ(today().records.of<entries::PlanAdopted>().size(), 1U);
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return cards().textOf(0).contains(u"This is the season's plan"); }, 20'000));
    // The next one who opens the page begins with it.
    close();
    openPlan();
    EXPECT_EQ(named<QComboBox>("plans")->itemText(0), u"As last year");
}

TEST_F(PlanWindow, AStepOfSealingIsRecordedWithItsTime) {
    openPlan();
    press(Qt::Key_F5);
    ASSERT_TRUE(named<QPushButton>("sealDone0")->isEnabled());
    click("sealDone0");
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().records.of<entries::Cover>().size() == 1; }));
    EXPECT_EQ(today().records.of<entries::Cover>()[0].what.step, entries::CoverStep::wallSheets);
    EXPECT_EQ(today().records.of<entries::Cover>()[0].at, m_clock.time);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !named<QPushButton>("sealDone0")->isEnabled(); }));
}

TEST_F(PlanWindow, SpeaksPortugueseAndUsUnits) {
    openPlan();
    m_window->setUnits(UnitSystem::us);
    QCoreApplication::processEvents();
    EXPECT_TRUE(lines(0).contains(u"lb DM/ft³")) << lines(0).toStdString();
    m_window->setLanguage(QStringLiteral("pt_BR"));
    QCoreApplication::processEvents();
    EXPECT_TRUE(headline(0).contains(u"Cabe?")) << headline(0).toStdString();
    EXPECT_FALSE(lines(1).contains(u"harvester")) << lines(1).toStdString();
}

TEST_F(PlanWindow, NothingIsCutInAnyLanguageOrLook) {
    openPlan();
    m_window->resize(1280, 800);
    for (const char* language : {"en", "pt_BR"}) {
        m_window->setLanguage(QLatin1String{language});
        for (const settings::Look look :
             {settings::Look::light, settings::Look::dark, settings::Look::outdoor}) {
            m_window->setLook(look);
            QCoreApplication::processEvents();
            EXPECT_LE(m_window->width(), 1280);
            for (const QPushButton* button : page().findChildren<QPushButton*>()) {
                if (!button->isVisible()) continue;
                EXPECT_GE(button->width(), button->sizeHint().width()) << button->text().toStdString();
            }
            const auto* decisions = m_window->findChild<plan_page::Decisions*>();
            EXPECT_TRUE(QTest::qWaitFor([&] {
                return decisions->viewport()->width() >= decisions->widget()->minimumSizeHint().width();
            })) << language;
        }
    }
}

TEST_F(PlanWindow, EveryControlHasANameForScreenReaders) {
    openPlan();
    for (const QAbstractButton* button : page().findChildren<QAbstractButton*>()) {
        if (!button->isVisible()) continue;
        EXPECT_FALSE(button->accessibleName().isEmpty() && button->text().isEmpty())
            << button->objectName().toStdString();
    }
    EXPECT_FALSE(m_window->findChild<plan_page::SiloDrawing*>()->accessibleDescription().isEmpty());
    EXPECT_FALSE(m_window->findChild<plan_page::ChainBand*>()->accessibleDescription().isEmpty());
}

TEST(SiloDrawing, IsToScaleAndNamesWhatLiesBeyondTheCautions) {
    const settings::Appearance look;
    plan_page::SiloDrawing drawing{look};
    drawing.resize(900, 230);
    plan_page::SiloPicture picture;
    picture.name = QStringLiteral("Long bunker");
    picture.shape = {.width = Length::fromMetres(14),
                     .length = Length::fromMetres(60),
                     .height = Length::fromMetres(4),
                     .wallHeight = Length::fromMetres(3.5)};
    picture.aboveWall = true;
    picture.cautions = {QStringLiteral("filled 0.5 m above the wall")};
    drawing.setPicture(picture);
    EXPECT_TRUE(drawing.sentence().contains(look.units().text(Length::fromMetres(60))));
    EXPECT_TRUE(drawing.accessibleDescription().contains(u"Caution: filled 0.5 m above the wall"));
    const double before = drawing.scaleAlong();
    EXPECT_LE(60 * before, 900);
    picture.shape.length = Length::fromMetres(120);
    drawing.setPicture(picture);
    EXPECT_LT(drawing.scaleAlong(), before) << "a longer silo is drawn smaller";
    drawing.grab();
}

TEST(ChainBand, IsNarrowestAtTheSlowestLink) {
    const settings::Appearance look;
    plan_page::ChainBand band{look};
    band.resize(900, band.sizeHint().height());
    const plan::Inputs inputs = plan::exampleInputs();
    const plan::Chain chain = plan::chainFrom(inputs, inputs.grounds[1], AsFedRate::fromTonnesPerHour(90));
    band.setPicture({QStringLiteral("Far heath"), chain});
    EXPECT_TRUE(band.sentence().contains(u"The slowest is packing"));
    for (std::size_t i = 0; i < plan::kLinks; ++i)
        EXPECT_LE(band.halfHeight(chain.slowest), band.halfHeight(plan::Link(i)));
    band.grab();
}

TEST(Scenarios, LeaveOutWhatIsNotChosen) {
    plan_page::Scenario scenario{plan::exampleInputs(), {"Bison"}, {"Far heath"}, {}};
    const plan::Inputs chosen = scenario.chosen();
    EXPECT_EQ(chosen.tractors.size(), 2U);
    EXPECT_EQ(chosen.grounds.size(), 1U);
    EXPECT_EQ(chosen.silos.size(), 2U);
    using plan_page::Variation;
    EXPECT_EQ(variationOf(scenario, Variation::oneTruckFewer, "x").all.haulage.trucks, 5);
    EXPECT_EQ(variationOf(scenario, Variation::twoTrucksMore, "x").all.haulage.trucks, 8);
    EXPECT_TRUE(variationOf(scenario, Variation::withoutTheLightest, "x").idleTractors.contains("Widder"));
    EXPECT_EQ(plan_page::freeName({scenario}, "As last year"), "As last year 2");
}

}  // namespace
}  // namespace treadwell
