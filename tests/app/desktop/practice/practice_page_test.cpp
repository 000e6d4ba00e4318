#include "app/desktop/practice/practice_page.h"

#include "app/desktop/practice/pad_view.h"
#include "app/desktop/practice/trainee_bar.h"
#include "app/desktop/samples/lines_panel.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "core/base/atomic_file.h"
#include "core/practice/progress.h"
#include "core/practice/shipped.h"
#include "tests/app/desktop/finger.h"
#include "tests/app/desktop/season_window.h"

#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QMessageBox>
#include <QProcess>
#include <QPushButton>
#include <QSignalSpy>

namespace treadwell::practice_page {
namespace {

using namespace std::chrono_literals;

class Practising : public SeasonWindow {
  protected:
    Practising() {
        open();
        page = std::make_unique<PracticePage>(*m_desk, look, folder());
        page->resize(1280, 740);
        page->show();
        QCoreApplication::processEvents();
    }
    ~Practising() override { page.reset(); }

    [[nodiscard]] std::filesystem::path folder() const { return m_folder.path().toStdString(); }

    template <class Widget>
    Widget* at(const char* name) {
        return page->findChild<Widget*>(QLatin1String{name});
    }
    void press(const char* name) { QTest::mouseClick(at<QPushButton>(name), Qt::LeftButton); }
    void choose(const char* lesson) {
        auto* list = at<QListWidget>("practiceLessons");
        for (int row = 0; row < list->count(); ++row) {
            if (list->item(row)->data(Qt::UserRole).toString() == QLatin1String{lesson})
                list->setCurrentRow(row);
        }
    }
    void setPace(int pace) {
        auto* paces = at<QComboBox>("practicePace");
        paces->setCurrentIndex(paces->findData(pace));
    }
    [[nodiscard]] bool isOver() { return !at<QWidget>("practiceWrong")->isHidden(); }
    /// Ticks as the page's timer does, so that no test waits.
    void runToTheEnd() {
        for (int i = 0; i < 200'000 && !isOver(); ++i) page->pass(40ms);
        ASSERT_TRUE(isOver());
    }
    [[nodiscard]] QString wrong() { return at<samples_page::LinesPanel>("practiceWrong")->text(); }
    [[nodiscard]] QString parts() { return at<samples_page::LinesPanel>("practiceParts")->text(); }
    /// As the title of the result says it.
    [[nodiscard]] int score() {
        for (const QLabel* label : at<samples_page::LinesPanel>("practiceParts")->findChildren<QLabel*>()) {
            if (label->text().startsWith(u"Result: ")) return label->text().section(u' ', 1, 1).toInt();
        }
        return -1;
    }
    PadView* pad() { return at<PadView>("practicePad"); }
    void type(Qt::Key key, int times = 1) {
        for (int i = 0; i < times; ++i) QTest::keyClick(pad(), key);
    }
    /// A finger on a place of the floor.
    void touch(double x_m, double y_m) {
        const QPoint place = pad()->pixelOf({x_m, y_m}).toPoint();
        QTest::touchEvent(pad(), testing_support::finger()).press(0, place, pad());
        QTest::touchEvent(pad(), testing_support::finger()).release(0, place, pad());
        QCoreApplication::processEvents();
    }

    settings::Appearance look;
    std::unique_ptr<PracticePage> page;
};

TEST_F(Practising, EveryLessonIsThereWithItsGoalAndWhatIsDone) {
    auto* list = at<QListWidget>("practiceLessons");
    ASSERT_EQ(list->count(), static_cast<int>(practice::shippedLessons().size()));
    EXPECT_TRUE(list->item(0)->text().contains(u"not run yet"));
    choose("wall");
    const practice::LessonText& text = practice::shippedLessons()[2].text("en");
    EXPECT_TRUE(at<QLabel>("practiceStory")->text().contains(QString::fromStdString(text.goal)));
    EXPECT_TRUE(at<QPushButton>("practiceLights")->isHidden());
    choose("night");
    EXPECT_FALSE(at<QPushButton>("practiceLights")->isHidden());
}

TEST_F(Practising, APlanIsWatchedToTheEndAndDebriefed) {
    choose("wall");
    setPace(1000);
    at<widgets::QuantitySpinBox>("practiceNearWall")->setSi(1.2);
    emit at<widgets::QuantitySpinBox>("practiceNearWall")->siEdited(1.2);
    runToTheEnd();
    EXPECT_TRUE(wrong().contains(u"left wall"));
    const int bad = score();
    press("practiceAgain");
    EXPECT_FALSE(isOver());
    runToTheEnd();
    EXPECT_FALSE(wrong().contains(u"left wall"));
    EXPECT_GT(score(), bad + 3);
}

// A good driver by keys, who steps over by the width of a tyre after each drive out and back, and a bad one
// who stays in one track: the scores are apart for what the bad one is told.
TEST_F(Practising, AGoodDriverByKeysBeatsABadOneForTheRightReason) {
    const auto drive = [&](bool stepsOver) {
        choose("whole-width");
        setPace(100);
        int up = 14, direction = -1;
        type(Qt::Key_Up, stepsOver ? up : 0);
        for (int i = 0; i < 2000 && !isOver(); ++i) {
            type(i % 2 == 0 ? Qt::Key_Left : Qt::Key_Right);
            if (stepsOver && i % 2 == 1) {
                if (up + direction * 2 < -14 || up + direction * 2 > 14) direction = -direction;
                up += direction * 2;
                type(direction > 0 ? Qt::Key_Up : Qt::Key_Down, 2);
            }
            for (int tick = 0; tick < 8 && !isOver(); ++tick) page->pass(40ms);
        }
        ASSERT_TRUE(isOver());
    };
    drive(true);
    const int good = score();
    EXPECT_FALSE(wrong().contains(u"no tyre")) << wrong().toStdString();
    press("practiceAgain");
    drive(false);
    EXPECT_TRUE(wrong().contains(u"no tyre"));
    EXPECT_GT(good, score() + 20);
    EXPECT_GT(good, 70);
}

TEST_F(Practising, AFingerSendsTheTractorAndTheSpaceBarHaltsIt) {
    choose("layer");
    setPace(10);
    page->pass(2s);
    touch(5, 3);
    for (int i = 0; i < 10; ++i) page->pass(40ms);
    const QString driving = pad()->sentence();
    EXPECT_TRUE(driving.contains(u"Bison"));
    for (int i = 0; i < 10; ++i) page->pass(40ms);
    EXPECT_NE(pad()->sentence(), driving);
    type(Qt::Key_Space);
    const QString standing = pad()->sentence();
    for (int i = 0; i < 10; ++i) page->pass(40ms);
    EXPECT_EQ(pad()->sentence(), standing);
}

TEST_F(Practising, AThousandTimesAsFastKeepsThePageFree) {
    choose("rate-rises");
    setPace(1000);
    for (int i = 0; i < 5; ++i) page->pass(40ms);
    // One tick is never more of the lesson than the pace gives, however long the page was busy elsewhere.
    page->pass(10min);
    EXPECT_TRUE(at<QLabel>("practiceClock")->text().startsWith(u"0:0"))
        << at<QLabel>("practiceClock")->text().toStdString();
}

TEST_F(Practising, ProgressIsKeptForANameAndDeleted) {
    auto* bar = page->findChild<TraineeBar*>();
    bar->choose(QStringLiteral("Ida Testname"));
    choose("layer");
    setPace(1000);
    runToTheEnd();
    EXPECT_TRUE(at<QListWidget>("practiceLessons")->item(0)->text().contains(u"1 run"));
    page.reset();  // waits for what is being written
    page = std::make_unique<PracticePage>(*m_desk, look, folder());
    const auto kept = practice::readProgress(folder() / practice::kProgressFile).value();
    ASSERT_NE(kept.called("Ida Testname"), nullptr);
    EXPECT_EQ(kept.called("Ida Testname")->of("layer")->runs, 1);
    bar = page->findChild<TraineeBar*>();
    bar->choose(QStringLiteral("Ida Testname"));
    EXPECT_TRUE(at<QListWidget>("practiceLessons")->item(0)->text().contains(u"1 run"));
    press("practiceForget");
    auto* question = bar->findChild<QMessageBox*>();
    ASSERT_NE(question, nullptr);
    EXPECT_TRUE(question->text().contains(u"Ida Testname"));
    for (QAbstractButton* button : question->buttons()) {
        if (question->buttonRole(button) == QMessageBox::DestructiveRole)
            QTest::mouseClick(button, Qt::LeftButton);
    }
    EXPECT_TRUE(at<QListWidget>("practiceLessons")->item(0)->text().contains(u"not run yet"));
    page.reset();
    EXPECT_TRUE(practice::readProgress(folder() / practice::kProgressFile).value().trainees.empty());
}

TEST_F(Practising, ABrokenFileOfProgressIsToldAndStays) {
    const auto file = folder() / practice::kProgressFile;
    page.reset();
    ASSERT_TRUE(writeFileAtomically(file, "{"));
    page = std::make_unique<PracticePage>(*m_desk, look, folder());
    QSignalSpy told{page->findChild<TraineeBar*>(), &TraineeBar::failed};
    QCoreApplication::processEvents();
    EXPECT_EQ(told.count(), 1);
    page->findChild<TraineeBar*>()->choose(QStringLiteral("Ida"));
    page.reset();
    EXPECT_EQ(readFile(file).value(), "{");
}

TEST_F(Practising, ACertificateSaysThatItIsNoLicence) {
    page->findChild<TraineeBar*>()->choose(QStringLiteral("Ida Testname"));
    choose("layer");
    setPace(1000);
    runToTheEnd();
    const QString pdf = m_folder.filePath(QStringLiteral("paper.pdf"));
    page->saveCertificate(pdf);
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-raw"), pdf, QStringLiteral("-")});
    ASSERT_TRUE(reader.waitForFinished(20'000));
    const QString text = QString::fromUtf8(reader.readAllStandardOutput()).simplified();
    EXPECT_TRUE(text.contains(u"not a licence, gives no permission")) << text.toStdString();
    EXPECT_TRUE(text.contains(u"Ida Testname"));
    EXPECT_TRUE(text.contains(u"How thick a layer"));
}

TEST_F(Practising, ATrainersOwnLessonIsOpened) {
    practice::Lesson own = practice::shippedLessons().front();
    own.id = "own";
    own.texts = {{"en", "Tuesday as it was", "", ""}};
    const auto file = folder() / "own.json";
    ASSERT_TRUE(writeFileAtomically(file, practice::toJson(own)));
    page->openLesson(QString::fromStdString(file.string()));
    auto* list = at<QListWidget>("practiceLessons");
    EXPECT_TRUE(list->currentItem()->text().startsWith(u"Tuesday as it was"));
    page->openLesson(QStringLiteral("/nowhere.json"));
    EXPECT_EQ(list->count(), static_cast<int>(practice::shippedLessons().size()) + 1);
}

}  // namespace
}  // namespace treadwell::practice_page
