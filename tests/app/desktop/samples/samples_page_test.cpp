// Drives the Samples page on a real season file with clicks and keys, and looks at what came into it.
#include "app/desktop/samples/samples_page.h"

#include "app/desktop/samples/lines_panel.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "tests/app/desktop/season_window.h"
#include "tests/support/wire.h"

#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QTabWidget>

namespace treadwell {
namespace {

using namespace std::chrono_literals;

class SamplesWindow : public SeasonWindow {
  protected:
    SamplesWindow() {
        auto session = session::Session::open(m_files, m_clock);
        EXPECT_TRUE(session);
        farm::Field field;
        field.id = testing_support::idOf<farm::FieldTag>(3);
        field.name = "Lurrenbreite";
        entries::Load load = testing_support::someLoad(12);
        load.field = field.id;
        for (const entries::Body& body : {entries::Body{entries::FieldDefined{field}}, entries::Body{load}})
            EXPECT_TRUE(session->propose(body, m_clock.time, {}));
        m_clock.time += 1h;
    }

    void openSamples() {
        open();
        m_window->showPage(Page::samples);
        QCoreApplication::processEvents();
    }
    widgets::QuantitySpinBox* box(const char* name) { return named<widgets::QuantitySpinBox>(name); }
    void type(const char* name, const char* text) {
        box(name)->setFocus();
        box(name)->selectAll();
        QTest::keyClicks(box(name), QLatin1String{text});
        QTest::keyClick(box(name), Qt::Key_Return);
    }
    /// As the hands go: into whatever has the focus.
    static void typeOn(const char* text) {
        QTest::keyClicks(QApplication::focusWidget(), QLatin1String{text});
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    }
    void showTab(int tab) {
        named<QTabWidget>("sampleTabs")->setCurrentIndex(tab);
        QCoreApplication::processEvents();
    }
    QString running(const char* form) {
        return plain(named<QLabel>((std::string{form} + "Running").c_str())->text());
    }
    QString panel(const char* name) { return plain(named<samples_page::LinesPanel>(name)->text()); }
    /// With plain spaces: a number and its unit are held together by one that does not break.
    static QString plain(QString text) { return text.replace(QChar::Nbsp, u' '); }
    template <class Kind>
    const std::vector<season::Dated<Kind>>& records() {
        return today().records.template of<Kind>();
    }
};

TEST_F(SamplesWindow, TakesADishByKeysAndTellsWhatItChanged) {
    openSamples();
    type("sampleDish", "50");
    typeOn("150");
    EXPECT_TRUE(running("dryMatterForm").contains(u"100.0 g fresh"))
        << running("dryMatterForm").toStdString();
    typeOn("80");
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().samples.size() == 1; }));
    const entries::DryMatterSample& sample = today().samples[0].reading;
    EXPECT_NEAR(sample.dryMatter.percent(), 30, 1e-9);
    EXPECT_EQ(sample.field, testing_support::idOf<farm::FieldTag>(3)) << "that of the last load";
    EXPECT_EQ(sample.method, entries::DryMatterMethod::oven);
    EXPECT_TRUE(QTest::qWaitFor([&] { return panel("changed").contains(u"30.0 %"); }));
    EXPECT_TRUE(panel("changed").contains(u"goal"));
    EXPECT_TRUE(panel("dryMatterLines").contains(u"Wet:")) << "the warning stands beside the mean";
    EXPECT_EQ(box("sampleDish")->si(), 0.05) << "the next sample lies in the same dish";
}

// The load of an hour ago, whose sample comes out of the microwave only now.
TEST_F(SamplesWindow, ASampleOfALoadIsCarriedToItWithItsOwnError) {
    openSamples();
    auto* load = named<QComboBox>("sampleLoad");
    ASSERT_EQ(load->count(), 2) << "the field, or the load";
    EXPECT_TRUE(plain(load->itemText(1)).contains(u"12.0 t")) << load->itemText(1).toStdString();
    load->setCurrentIndex(1);
    type("sampleDish", "50");
    typeOn("150");
    typeOn("91");
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().samples.size() == 1; }));
    EXPECT_EQ(today().samples[0].reading.load, today().loads[0].entry);
    EXPECT_EQ(today().samples[0].at, today().loads[0].at) << "of the time when it came";
    EXPECT_EQ(today().loads[0].basis, season::DryMatterBasis::loadSample);
    EXPECT_NEAR(today().loads[0].dryMatter.percent(), 41, 1e-9);
    EXPECT_NEAR(today().loads[0].dryMatterSd.percent(), 1.5, 1e-9);
    EXPECT_EQ(load->currentIndex(), 0) << "the next is of the field again";
}

/// A bench scale that stands still.
std::string steady(const char* grams) {
    std::string frames = "\r\n";
    for (int i = 0; i < 4; ++i) frames += std::string{"ST,NT,+  "} + grams + ",g \r\n";
    return frames;
}

class ScaleWindow : public SamplesWindow {
  protected:
    /// As a person would: the device is chosen, and the way in which it writes.
    void listen() {
        openSamples();
        QTest::mouseClick(named<QPushButton>("scaleChoose"), Qt::LeftButton);
        named<QComboBox>("scalePlace")->setCurrentText(QString::fromStdString(terminal.place()));
        named<QComboBox>("scaleProfile")->setCurrentIndex(0);
        QTest::mouseClick(named<QPushButton>("record"), Qt::LeftButton);
        ASSERT_TRUE(QTest::qWaitFor([&] { return named<QPushButton>("scaleTake")->isVisible(); }))
            << named<QLabel>("scaleSays")->text().toStdString();
        ASSERT_TRUE(QTest::qWaitFor([&] { return m_window->findChild<QDialog*>() == nullptr; }));
        QApplication::setActiveWindow(m_window.get());  // no window manager gives it back
    }
    void weigh(const char* grams) {
        terminal.play(steady(grams));
        ASSERT_TRUE(QTest::qWaitFor([&] {
            return plain(named<QLabel>("scaleSays")->text())
                .startsWith(QLatin1String{grams} + QStringLiteral(" g, stands"));
        })) << named<QLabel>("scaleSays")->text().toStdString();
    }
    void take() { QTest::mouseClick(named<QPushButton>("scaleTake"), Qt::LeftButton); }

    testing_support::PseudoTerminal terminal;
};

TEST_F(ScaleWindow, WeightsGoIntoTheDishOneAfterTheOther) {
    listen();
    box("sampleDish")->setFocus();
    for (const char* grams : {"50.2", "150.2", "85.2"}) {
        weigh(grams);
        take();
    }
    EXPECT_NEAR(box("sampleWet")->si(), 0.1502, 1e-12);
    EXPECT_TRUE(today().samples.empty()) << "a weight alone records nothing";
    QTest::mouseClick(named<QPushButton>("dryMatterFormRecord"), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().samples.size() == 1; }));
    EXPECT_NEAR(today().samples[0].reading.dryMatter.percent(), 35, 1e-9);
}

TEST_F(ScaleWindow, TheMicrowavesStepsAreWeighedToo) {
    listen();
    named<QComboBox>("sampleWay")->setCurrentIndex(1);
    box("sampleDish")->setFocus();
    for (const char* grams : {"50.0", "150.0", "95.0"}) {
        weigh(grams);
        take();
    }
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_TRUE(running("dryMatterForm").contains(u"60 s")) << running("dryMatterForm").toStdString();
    weigh("86.0");
    take();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_TRUE(running("dryMatterForm").contains(u"30 s")) << running("dryMatterForm").toStdString();
}

TEST_F(ScaleWindow, AStackOfSievesIsWeighedWithOneKey) {
    listen();
    showTab(1);
    for (const char* grams : {"381.0", "20.0", "220.0", "110.0", "30.0"}) {
        weigh(grams);
        QTest::keyClick(m_window.get(), Qt::Key_F8);
    }
    QTest::mouseClick(named<QPushButton>("sieveFormRecord"), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return records<entries::SieveTest>().size() == 1; }));
    const auto& masses = records<entries::SieveTest>()[0].what.masses;
    ASSERT_EQ(masses.size(), 4u);
    EXPECT_NEAR(masses[1].kilograms(), 0.22, 1e-12);
    EXPECT_NEAR(masses[3].kilograms(), 0.03, 1e-12);
}

TEST_F(ScaleWindow, AWeightThatMovesIsNotTakenAndACutWireIsTold) {
    listen();
    terminal.play("\r\nUS,NT,+   77.0,g \r\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return named<QLabel>("scaleSays")->text().contains(u"moves"); }));
    EXPECT_FALSE(named<QPushButton>("scaleTake")->isEnabled());
    QTest::keyClick(m_window.get(), Qt::Key_F8);
    EXPECT_EQ(box("sampleDish")->si(), 0.0);
    terminal.cut();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !named<QPushButton>("scaleTake")->isVisible(); }));
    EXPECT_FALSE(named<QLabel>("scaleSays")->text().isEmpty());
}

TEST_F(SamplesWindow, RefusesADishThatGainedWeightAndSaysWhy) {
    openSamples();
    type("sampleDish", "50");
    typeOn("150");
    typeOn("170");
    EXPECT_TRUE(running("dryMatterForm").startsWith(u"Not recorded:"));
    QTest::qWait(30);
    EXPECT_TRUE(today().samples.empty());
}

TEST_F(SamplesWindow, GuidesThroughTheMicrowaveUntilTheLossIsUnderAGram) {
    openSamples();
    named<QComboBox>("sampleWay")->setCurrentIndex(1);
    type("sampleDish", "50");
    typeOn("150");
    EXPECT_TRUE(running("dryMatterForm").contains(u"180 s")) << running("dryMatterForm").toStdString();
    typeOn("95");
    EXPECT_TRUE(running("dryMatterForm").contains(u"60 s"));
    QTest::mouseClick(named<QPushButton>("dryMatterFormRecord"), Qt::LeftButton);
    EXPECT_TRUE(running("dryMatterForm").contains(u"not dry yet"));
    type("sampleDry", "86");
    EXPECT_TRUE(running("dryMatterForm").contains(u"30 s"));
    type("sampleDry", "87.5");
    EXPECT_TRUE(running("dryMatterForm").startsWith(u"Not recorded:")) << "it gains no weight while it dries";
    type("sampleDry", "85.4");
    EXPECT_TRUE(running("dryMatterForm").contains(u"Dry: 35.4 %")) << running("dryMatterForm").toStdString();
    QTest::mouseClick(named<QPushButton>("dryMatterFormRecord"), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().samples.size() == 1; }));
    EXPECT_EQ(today().samples[0].reading.method, entries::DryMatterMethod::microwave);
    EXPECT_NEAR(today().samples[0].reading.dryMatter.percent(), 35.4, 1e-9);
}

TEST_F(SamplesWindow, AMeterShowsItsBiasAndTheFactStaysAsRead) {
    openSamples();
    named<QComboBox>("sampleWay")->setCurrentIndex(2);
    EXPECT_TRUE(running("dryMatterForm").contains(u"No dish was taken"));
    type("sampleReading", "37");
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().samples.size() == 1; }));
    named<QComboBox>("sampleWay")->setCurrentIndex(0);
    type("sampleDish", "0");
    typeOn("100");
    typeOn("34");
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().samples.size() == 2; }));
    named<QComboBox>("sampleWay")->setCurrentIndex(2);
    EXPECT_TRUE(QTest::qWaitFor([&] { return running("dryMatterForm").contains(u"by 1 dish beside it"); }));
    EXPECT_NEAR(today().samples[0].reading.dryMatter.percent(), 37, 1e-9);
}

TEST_F(SamplesWindow, GoesDownTheSievesWithARunningSum) {
    openSamples();
    showTab(1);
    type("sieveBefore", "202");
    typeOn("10");
    typeOn("116");
    EXPECT_TRUE(running("sieveForm").contains(u"Together 126.0 g")) << running("sieveForm").toStdString();
    typeOn("54");
    typeOn("20");
    typeOn("0");
    ASSERT_TRUE(QTest::qWaitFor([&] { return records<entries::SieveTest>().size() == 1; }));
    const entries::SieveTest& test = records<entries::SieveTest>()[0].what;
    ASSERT_EQ(test.masses.size(), 4u);
    EXPECT_NEAR(test.masses[1].kilograms(), 0.116, 1e-12);
    EXPECT_NEAR(test.before->kilograms(), 0.202, 1e-12);
    EXPECT_TRUE(QTest::qWaitFor([&] { return panel("chopLines").contains(u"8.4 mm"); }))
        << "5/58/27/10 % make 8.425 mm: " << panel("chopLines").toStdString();
    EXPECT_TRUE(plain(m_window->findChild<plots::SieveChart*>()->sentence()).contains(u"58 %"));
}

TEST_F(SamplesWindow, SievesThatAreEmptyLoseOrMakeNoHundredAreSaid) {
    openSamples();
    showTab(1);
    QTest::mouseClick(named<QPushButton>("sieveFormRecord"), Qt::LeftButton);
    EXPECT_TRUE(running("sieveForm").startsWith(u"Not recorded:")) << "nothing on any sieve";
    type("sieveBefore", "300");
    for (const char* mass : {"10", "116", "54", "20"}) typeOn(mass);
    EXPECT_TRUE(running("sieveForm").contains(u"missing")) << running("sieveForm").toStdString();
    named<QComboBox>("sieveWay")->setCurrentIndex(1);
    type("sievePart0", "5");
    typeOn("50");
    EXPECT_TRUE(running("sieveForm").contains(u"55 %")) << running("sieveForm").toStdString();
    QTest::mouseClick(named<QPushButton>("sieveFormRecord"), Qt::LeftButton);
    EXPECT_TRUE(running("sieveForm").startsWith(u"Not recorded:"));
    EXPECT_TRUE(records<entries::SieveTest>().empty());
}

TEST_F(SamplesWindow, KernelsSettingAndVisitAreRecorded) {
    openSamples();
    showTab(2);
    named<QSpinBox>("kernelCount")->setValue(3);
    QTest::mouseClick(named<QPushButton>("kernelFormRecord"), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return records<entries::KernelTest>().size() == 1; }));
    EXPECT_TRUE(QTest::qWaitFor([&] { return panel("kernelLines").contains(u"adequate"); }));
    named<QComboBox>("kernelWay")->setCurrentIndex(1);
    type("kernelWhole", "100");
    for (const char* text : {"32", "30", "36"}) typeOn(text);
    ASSERT_TRUE(QTest::qWaitFor([&] { return records<entries::KernelTest>().size() == 2; }));
    EXPECT_TRUE(QTest::qWaitFor([&] { return panel("kernelLines").contains(u"66 %"); }))
        << "30 g of 100 g at 36 % starch, whole 32 %, score 66.25: " << panel("kernelLines").toStdString();
    showTab(3);
    QTest::mouseClick(named<QPushButton>("settingFormRecord"), Qt::LeftButton);
    EXPECT_TRUE(running("settingForm").startsWith(u"Not recorded:"));
    type("settingLength", "17");
    typeOn("2");
    typeOn("18");
    ASSERT_TRUE(QTest::qWaitFor([&] { return records<entries::ChopSet>().size() == 1; }));
    EXPECT_TRUE(QTest::qWaitFor([&] { return panel("settingLines").contains(u"17.0 mm"); }));
    showTab(4);
    type("visitDryMatter", "31");
    typeOn("50");
    ASSERT_TRUE(QTest::qWaitFor([&] { return records<entries::FieldObserved>().size() == 1; }));
    EXPECT_TRUE(QTest::qWaitFor([&] { return panel("fieldLines").contains(u"in the goal"); }))
        << panel("fieldLines").toStdString();
}

TEST_F(SamplesWindow, AVisitNeedsItsField) {
    openSamples();
    named<QComboBox>("sampleField")->setCurrentIndex(0);
    showTab(4);
    type("visitDryMatter", "31");
    typeOn("0");
    EXPECT_TRUE(running("visitForm").contains(u"choose the field"));
    EXPECT_TRUE(records<entries::FieldObserved>().empty());
}

TEST_F(SamplesWindow, IsReachedByKeyAndFollowsLanguageUnitsAndLook) {
    openSamples();
    QTest::keyClick(m_window.get(), Qt::Key_2, Qt::AltModifier);
    EXPECT_FALSE(m_window->findChild<samples_page::SamplesPage*>()->isVisible());
    QTest::keyClick(m_window.get(), Qt::Key_4, Qt::AltModifier);
    EXPECT_TRUE(m_window->findChild<samples_page::SamplesPage*>()->isVisible());
    QTest::keyClick(m_window.get(), Qt::Key_F3);
    EXPECT_EQ(named<QTabWidget>("sampleTabs")->currentIndex(), 1);
    m_window->setLanguage(QStringLiteral("pt_BR"));
    m_window->setUnits(UnitSystem::us);
    QCoreApplication::processEvents();  // the news of a language comes by the event loop
    EXPECT_EQ(named<QPushButton>("sieveFormRecord")->text(), QStringLiteral("Registrar as peneiras"));
    for (const settings::Look look : {settings::Look::dark, settings::Look::outdoor, settings::Look::light}) {
        m_window->setLook(look);
        EXPECT_FALSE(m_window->grab().isNull());
    }
}

TEST_F(SamplesWindow, NothingIsWiderThanItsPlace) {
    for (const QSize size : {QSize{640, 400}, QSize{683, 384}, QSize{1280, 800}, QSize{1366, 768}}) {
        for (const char* language : {"en", "pt_BR"}) {
            openSamples();
            m_window->setLanguage(QLatin1String{language});
            m_window->resize(size);
            for (int tab = 0; tab < 5; ++tab) {
                showTab(tab);
                SCOPED_TRACE(testing::Message() << language << ", tab " << tab << ", " << size.width());
                EXPECT_EQ(m_window->size(), size);
                for (const QScrollArea* area : m_window->findChildren<QScrollArea*>()) {
                    if (!area->isVisible()) continue;
                    EXPECT_LE(area->widget()->minimumSizeHint().width(), area->viewport()->width())
                        << area->widget()->objectName().toStdString();
                    EXPECT_EQ(area->widget()->width(), area->viewport()->width());
                }
            }
            close();
        }
    }
}

}  // namespace
}  // namespace treadwell
