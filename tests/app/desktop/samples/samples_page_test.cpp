// Drives the Samples page on a real season file with clicks and keys, and looks at what came into it.
#include "tests/app/desktop/samples/samples_window.h"

#include <QComboBox>
#include <QDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QSpinBox>

namespace treadwell {
namespace {

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

// Two samples of the field, one of them named by its load alone.
TEST_F(SamplesWindow, SaysTheMeansAndHowManyMoreSamplesAreNeeded) {
    openSamples();
    for (const char* dry : {"84", "88"}) {
        named<QComboBox>("sampleLoad")->setCurrentIndex(dry[1] == '8' ? 1 : 0);
        type("sampleDish", "50");
        typeOn("150");
        typeOn(dry);
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().samples.size() == 2; }));
    entries::DryMatterSample ofLoad;
    ofLoad.dryMatter = DryMatter::fromPercent(37);
    ofLoad.load = today().loads[0].entry;
    m_desk->propose(ofLoad);
    ASSERT_TRUE(QTest::qWaitFor([&] { return panel("dryMatterLines").contains(u"3 samples today"); }))
        << panel("dryMatterLines").toStdString();
    const QString lines = panel("dryMatterLines");
    EXPECT_TRUE(lines.contains(u"3 samples today: 36.3 % +-")) << "34, 38 and 37 %: " << lines.toStdString();
    EXPECT_TRUE(lines.contains(u"more give it to a point"));
    for (const char* mean : {"Came in today: 37", "Lurrenbreite: 37", "In Bunker 1: 37"})
        EXPECT_TRUE(lines.contains(QLatin1String{mean})) << mean << ": " << lines.toStdString();
}

TEST_F(SamplesWindow, AFiveScreenStandardAndSievesOfOnesOwn) {
    openSamples();
    showTab(1);
    named<QComboBox>("sieveStack")->setCurrentIndex(2);
    type("sieveBefore", "0");
    for (const char* mass : {"4", "30", "40", "16", "6", "4"}) typeOn(mass);
    typeOn("0");
    ASSERT_TRUE(QTest::qWaitFor([&] { return records<entries::SieveTest>().size() == 1; }));
    EXPECT_EQ(records<entries::SieveTest>()[0].what.openings.size(), 5u);
    EXPECT_TRUE(QTest::qWaitFor([&] { return panel("chopLines").contains(u"one screen"); }))
        << panel("chopLines").toStdString();
    named<QComboBox>("sieveStack")->setCurrentIndex(3);
    QTest::keyClicks(named<QLineEdit>("sieveOwn"), QStringLiteral("20 6,3"));
    named<QComboBox>("sieveWay")->setCurrentIndex(1);
    type("sievePart0", "10");
    typeOn("60");
    typeOn("30");
    QTest::mouseClick(named<QPushButton>("sieveFormRecord"), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return records<entries::SieveTest>().size() == 2; }))
        << running("sieveForm").toStdString();
    const entries::SieveTest& own = records<entries::SieveTest>()[1].what;
    ASSERT_EQ(own.openings.size(), 2u);
    EXPECT_NEAR(own.openings[1].millimetres(), 6.3, 1e-9);
    EXPECT_NEAR(own.parts[2].fraction(), 0.3, 1e-9);
}

TEST_F(SamplesWindow, FreshAndFermentedKernelsStayApart) {
    openSamples();
    showTab(2);
    for (const int material : {0, 1}) {
        named<QComboBox>("kernelMaterial")->setCurrentIndex(material);
        named<QSpinBox>("kernelCount")->setValue(material == 0 ? 9 : 1);
        QTest::mouseClick(named<QPushButton>("kernelFormRecord"), Qt::LeftButton);
        ASSERT_TRUE(QTest::qWaitFor(
            [&] { return records<entries::KernelTest>().size() == static_cast<std::size_t>(material) + 1; }));
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return panel("kernelLines").contains(u"fermented"); }));
    EXPECT_TRUE(panel("kernelLines").contains(u"fresh: inadequate")) << panel("kernelLines").toStdString();
    EXPECT_TRUE(panel("kernelLines").contains(u"fermented: well processed"));
    EXPECT_TRUE(panel("kernelLines").contains(u"rolls")) << "what to do about it";
}

// Two fields and 800 t a day: the drier one comes first; a day of rain and a change of hybrid put it off.
TEST_F(SamplesWindow, OrdersTheFieldsByWhatIsCutInADay) {
    {
        auto session = session::Session::open(m_files, m_clock);
        ASSERT_TRUE(session);
        farm::Field other;
        other.id = testing_support::idOf<farm::FieldTag>(4);
        other.name = "Quornstieg";
        ASSERT_TRUE(session->propose(entries::FieldDefined{other}, m_clock.time, {}));
        for (const auto& [field, percent] : {std::pair{3, 33.5}, std::pair{4, 35.0}}) {
            entries::FieldObserved seen;
            seen.field = testing_support::idOf<farm::FieldTag>(static_cast<std::uint8_t>(field));
            seen.dryMatter = DryMatter::fromPercent(percent);
            ASSERT_TRUE(session->propose(seen, m_clock.time, {}));
        }
    }
    openSamples();
    QTest::keyClick(m_window.get(), Qt::Key_F7);
    EXPECT_TRUE(panel("orderLines").contains(u"Give what is cut")) << panel("orderLines").toStdString();
    type("orderCapacity", "800");
    typeOn("800");
    typeOn("800");
    const QString order = panel("orderLines");
    EXPECT_TRUE(order.startsWith(u"1. Quornstieg: 9/15/26 to 9/15/26, 35")) << order.toStdString();
    EXPECT_TRUE(order.contains(u"2. Lurrenbreite: 9/16/26 to 9/16/26, 3")) << order.toStdString();
    EXPECT_TRUE(order.contains(u"At the silo"));
    named<QSpinBox>("orderRain")->setValue(1);
    EXPECT_TRUE(panel("orderLines").startsWith(u"1. Quornstieg: 9/16/26"))
        << panel("orderLines").toStdString();
    named<QSpinBox>("orderChange")->setValue(2);
    EXPECT_TRUE(panel("orderLines").contains(u"2. Lurrenbreite: 9/19/26"))
        << panel("orderLines").toStdString();
}

// The ranges in force stand in a sheet; the farm's own are held against from then on.
TEST_F(SamplesWindow, TheFarmSetsWhatItsChopShouldBe) {
    openSamples();
    showTab(1);
    const auto ask = [this] {
        QTest::mouseClick(named<QPushButton>("sieveRanges"), Qt::LeftButton);
        return box("range1high") != nullptr;
    };
    ASSERT_TRUE(ask());
    EXPECT_NEAR(box("range1high")->si(), 0.65, 1e-9) << "maize behind rolls, as is usual";
    named<QComboBox>("rangesProcessor")->setCurrentIndex(2);
    EXPECT_NEAR(box("range0high")->si(), 0.30, 1e-9) << "and cut long";
    named<QComboBox>("rangesProcessor")->setCurrentIndex(1);
    const auto write = [this](const char* name, const char* percent) {
        box(name)->setFocus();
        box(name)->selectAll();
        QTest::keyClicks(box(name), QLatin1String{percent});
    };
    write("range1low", "70");
    QTest::mouseClick(named<QPushButton>("record"), Qt::LeftButton);
    EXPECT_FALSE(named<QLabel>("refusal")->text().isEmpty()) << "at least 70, at most 65 %";
    write("range1low", "40");
    QTest::mouseClick(named<QPushButton>("record"), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return records<entries::ChopRangesSet>().size() == 1; }));
    const samples::ChopRanges& set = records<entries::ChopRangesSet>()[0].what.ranges;
    EXPECT_NEAR(set.on8.low.fraction(), 0.40, 1e-9);
    EXPECT_EQ(set.on19, samples::usualRanges(crop::Crop::maize, samples::Processor::rolls).on19);
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_window->findChild<QDialog*>() == nullptr; }));
    ASSERT_TRUE(ask());
    EXPECT_NEAR(box("range1low")->si(), 0.40, 1e-9) << "they are in force";
}

TEST_F(SamplesWindow, ListsEveryKeyItAnswersTo) {
    openSamples();
    QString listed;
    for (const auto& [keys, what] : samples_page::samplesKeys()) {
        EXPECT_FALSE(what.isEmpty());
        listed += keys + u' ';
    }
    EXPECT_TRUE(listed.contains(u"F2 … F7"));
    const auto* page = m_window->findChild<samples_page::SamplesPage*>();
    for (const QShortcut* shortcut : page->findChildren<QShortcut*>()) {
        const int key = shortcut->key()[0].key();
        if (key >= Qt::Key_F2 && key <= Qt::Key_F7) continue;  // in one line
        EXPECT_TRUE(listed.contains(shortcut->key().toString(QKeySequence::PortableText)));
    }
    for (int tab = 0; tab < named<QTabWidget>("sampleTabs")->count(); ++tab) {
        QTest::keyClick(m_window.get(), static_cast<Qt::Key>(Qt::Key_F2 + tab));
        EXPECT_EQ(named<QTabWidget>("sampleTabs")->currentIndex(), tab);
    }
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
    for (const QSize size : {QSize{640, 400}, QSize{1280, 800}}) {
        for (const auto& [language, look] : {std::pair{"en", settings::Look::light},
                                             {"pt_BR", settings::Look::dark},
                                             {"pt_BR", settings::Look::outdoor}}) {
            openSamples();
            m_window->setLook(look);
            m_window->setLanguage(QLatin1String{language});
            m_window->resize(size);
            for (int tab = 0; tab < 6; ++tab) {
                showTab(tab);
                SCOPED_TRACE(testing::Message()
                             << language << ' ' << enumText(look) << ", tab " << tab << ", " << size.width());
                QTest::qWait(5);
                EXPECT_EQ(m_window->size(), size);
                for (const QScrollArea* area : m_window->findChildren<QScrollArea*>()) {
                    if (!area->isVisible()) continue;
                    EXPECT_LE(area->widget()->minimumSizeHint().width(), area->viewport()->width())
                        << area->widget()->objectName().toStdString();
                    EXPECT_EQ(area->widget()->width(), area->viewport()->width());
                }
            }
            m_window->setLook(settings::Look::light);
            close();
        }
    }
}

}  // namespace
}  // namespace treadwell
