// A scale on a wire weighs for the forms of the Samples page.
#include "tests/app/desktop/samples/samples_window.h"
#include "tests/support/wire.h"

#include <QComboBox>
#include <QDialog>
#include <QPushButton>

namespace treadwell {
namespace {

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

}  // namespace
}  // namespace treadwell
