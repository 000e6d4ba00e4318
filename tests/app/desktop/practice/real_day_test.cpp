#include "app/desktop/practice/bands_view.h"
#include "app/desktop/practice/coverage_view.h"
#include "app/desktop/practice/practice_page.h"
#include "app/desktop/practice/real_day_view.h"
#include "app/desktop/samples/lines_panel.h"
#include "app/desktop/widgets/message_bar.h"
#include "core/base/number_text.h"
#include "tests/app/desktop/season_window.h"

#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTableWidget>
#include <fstream>

namespace treadwell::practice_page {
namespace {

using namespace std::chrono_literals;
using namespace testing_support;

constexpr double kNorth_m = 111103.0, kEast_m = 80850.0;  // a degree at 43.52 N (derived)
const Instant kFirst = at("2026-09-15T15:00:00Z");

/// Out and back over a silo that runs north from 43.52 N, 89.51 W, a metre a second, from wall to wall or
/// over and over in one lane. GGA with quality `quality`; the date comes with an RMC.
std::string driven(int seconds, bool wholeWidth, int quality = 4, Instant from = kFirst) {
    const auto sentence = [](const std::string& body) {
        unsigned sum = 0;
        for (const char c : body) sum ^= static_cast<unsigned char>(c);
        constexpr const char* kDigits = "0123456789ABCDEF";
        return '$' + body + '*' + kDigits[sum / 16] + kDigits[sum % 16] + "\r\n";
    };
    const auto minutes = [](double degrees, int wide) {
        const std::string whole = std::to_string(static_cast<int>(degrees));
        const std::string rest = fixedText((degrees - static_cast<int>(degrees)) * 60.0, 7);
        return std::string(static_cast<std::size_t>(wide) - whole.size(), '0') + whole +
               std::string(10 - rest.size(), '0') + rest;
    };
    std::string text;
    double x_m = 0.0, y_m = 1.6, step_m = 1.0;
    for (int i = 0; i < seconds; ++i) {
        const auto clock = toIso8601(from + std::chrono::seconds{i});  // 2026-09-15T15:00:00Z
        const std::string time = clock.substr(11, 2) + clock.substr(14, 2) + clock.substr(17, 2) + ".00";
        const std::string place =
            minutes(43.52 + x_m / kNorth_m, 2) + ",N," + minutes(89.51 - y_m / kEast_m, 3) + ",W,";
        if (i == 0) text += sentence("GNRMC," + time + ",A," + place + "2.0,0.0,150926,,,R");
        text += sentence("GNGGA," + time + ',' + place + std::to_string(quality) +
                         ",17,0.6,281.4,M,-34.1,M,1.0,0000");
        x_m += step_m;
        if (x_m > 60.0 || x_m < 0.0) {
            step_m = -step_m;
            if (wholeWidth) y_m = y_m > 11.8 ? 1.6 : y_m + 0.7;
        }
    }
    return text;
}

class RealDay : public SeasonWindow {
  protected:
    RealDay() {
        {
            auto session = session::Session::open(m_files, m_clock).value();
            std::vector<session::Proposal> day{{entries::SiloDefined{someLifts()}, m_clock.time, {}},
                                               {someWork(1, farm::Activity::packing), kFirst, {}}};
            for (int i = 0; i < 30; ++i) day.push_back({someLoad(14), kFirst + i * 10min, {}});
            EXPECT_TRUE(session.importAll(day, {}));
        }
        m_clock.time = testing_support::at("2026-09-15T22:00:00Z");
        open();
        // As the window sets it: dates and numbers of the words' language, whatever the machine's.
        look.setUnits(settings::DisplayUnits{UnitSystem::metric, QLocale{QStringLiteral("en")}});
        page = std::make_unique<PracticePage>(*m_desk, look, m_folder.path().toStdString());
        page->resize(1280, 740);
        page->show();
        QCoreApplication::processEvents();
        press("practiceRealTab");
    }
    ~RealDay() override { page.reset(); }

    template <class Widget>
    Widget* at(const char* name) {
        return page->findChild<Widget*>(QLatin1String{name});
    }
    void press(const char* name) { QTest::mouseClick(at<QPushButton>(name), Qt::LeftButton); }
    QString write(const char* name, const std::string& content) {
        const QString file = m_folder.filePath(QLatin1String{name});
        std::ofstream{file.toStdString(), std::ios::binary} << content;
        return file;
    }
    void place() {
        const std::array texts{std::pair{"placeLatitude", "43.52"}, std::pair{"placeLongitude", "-89,51"},
                               std::pair{"placeBearing", "0"}};
        for (const auto& [name, text] : texts) {
            at<QLineEdit>(name)->clear();
            QTest::keyClicks(at<QLineEdit>(name), QLatin1String{text});
        }
        press("placeRecord");
        ASSERT_TRUE(QTest::qWaitFor([this] {
            return at<QLineEdit>("placeLatitude")->isHidden() || !at<QLineEdit>("placeLatitude")->isVisible();
        }));
    }
    /// Through the button and the dialog, as a hand does it.
    void attach(const QString& file) {
        press("dayAttach");
        auto* dialog = page->findChild<QFileDialog*>();
        ASSERT_NE(dialog, nullptr);
        auto* name = dialog->findChild<QLineEdit*>();
        ASSERT_NE(name, nullptr);
        name->setText(file);
        QTest::keyClick(name, Qt::Key_Return);
    }
    [[nodiscard]] QString state() { return at<QLabel>("dayState")->text(); }
    QTableWidget* layers() { return at<QTableWidget>("dayLayers"); }
    [[nodiscard]] bool waitForLayers() {
        return QTest::qWaitFor([this] { return layers()->rowCount() > 0; }, 30'000);
    }
    [[nodiscard]] bool waitForState(QStringView part) {
        return QTest::qWaitFor([&] { return state().contains(part); }, 30'000);
    }
    void toggle(int track) {
        auto* item = at<QListWidget>("dayTracks")->item(track);
        item->setCheckState(item->checkState() == Qt::Checked ? Qt::Unchecked : Qt::Checked);
    }
    [[nodiscard]] QString told() { return page->findChild<widgets::MessageBar*>()->shownText(); }

    settings::Appearance look;
    std::unique_ptr<PracticePage> page;
};

TEST_F(RealDay, ATrackIsAttachedLaidAndDebriefedAsALessonIs) {
    EXPECT_TRUE(state().contains(u"No track of this day is attached")) << state().toStdString();
    attach(write("drive.nmea", driven(3600, false)));
    ASSERT_TRUE(waitForState(u"once it is recorded where the silo lies")) << state().toStdString();
    EXPECT_EQ(at<QListWidget>("dayTracks")->count(), 1);
    EXPECT_TRUE(at<QListWidget>("dayTracks")->item(0)->text().contains(u"12:00\u201312:59"))
        << "on the farm's clock";
    place();
    ASSERT_TRUE(waitForLayers()) << state().toStdString();
    EXPECT_TRUE(state().startsWith(u"Layer ")) << state().toStdString();
    EXPECT_TRUE(at<CoverageView>("coverageMap")->sentence().contains(u"Three passes or more for certain on"));
    // One lane of a wide floor: most of it has no tyre, wherever the errors put them.
    const QString wrong = at<samples_page::LinesPanel>("dayWrong")->text();
    EXPECT_TRUE(wrong.contains(u"touched by no tyre")) << wrong.toStdString();
    EXPECT_EQ(layers()->item(layers()->rowCount() - 1, 4)->text(), u"too few");
    EXPECT_TRUE(at<samples_page::LinesPanel>("dayFiles")->text().contains(u"3600 positions, 3600 of them"));
}

TEST_F(RealDay, WholeWidthIsNotToldAsWrongAndCoarsePositionsSayLittle) {
    place();
    attach(write("whole.nmea", driven(5 * 3600, true)));
    ASSERT_TRUE(waitForLayers()) << state().toStdString();
    EXPECT_FALSE(at<samples_page::LinesPanel>("dayWrong")->text().contains(u"touched by no tyre"));
    toggle(0);
    ASSERT_TRUE(waitForState(u"No track is chosen")) << state().toStdString();
    attach(write("coarse.nmea", driven(3600, true, 1, kFirst + 1s)));
    ASSERT_TRUE(waitForLayers()) << state().toStdString();
    EXPECT_TRUE(at<samples_page::LinesPanel>("dayWrong")->text().contains(u"RTK"));
    const QString map = at<CoverageView>("coverageMap")->sentence();
    EXPECT_TRUE(map.startsWith(u"Three passes or more for certain on 0 %")) << map.toStdString();
}

TEST_F(RealDay, AFileThatIsGoneOrChangedIsToldAndAttachedAgainFromWhereItLies) {
    place();
    const std::string track = driven(1200, true);
    const QString file = write("drive.nmea", track);
    attach(file);
    ASSERT_TRUE(waitForLayers()) << state().toStdString();
    const QString elsewhere = m_folder.filePath(QStringLiteral("moved.nmea"));
    ASSERT_TRUE(QFile::rename(file, elsewhere));
    toggle(0);
    toggle(0);
    ASSERT_TRUE(waitForState(u"drive.nmea no longer lies in")) << state().toStdString();
    EXPECT_EQ(layers()->rowCount(), 0);
    EXPECT_EQ(at<CoverageView>("coverageMap")->sentence(), u"No track is laid.");

    attach(elsewhere);
    ASSERT_TRUE(waitForLayers()) << state().toStdString();
    EXPECT_EQ(at<QListWidget>("dayTracks")->count(), 1) << "one track, not two";

    write("moved.nmea", track + "\r\n");
    toggle(0);
    toggle(0);
    ASSERT_TRUE(waitForState(u"its content has changed")) << state().toStdString();
}

TEST_F(RealDay, WhatIsNoTrackIsRefusedInASentence) {
    attach(write("notes.txt", "mown on Tuesday\n"));
    ASSERT_TRUE(QTest::qWaitFor([this] { return told().contains(u"no position with a time"); }, 30'000));
    EXPECT_EQ(at<QListWidget>("dayTracks")->count(), 0);
    press("placeRecord");
    EXPECT_TRUE(told().contains(u"latitude")) << told().toStdString();
    const QString file = write("drive.nmea", driven(60, true));
    attach(file);
    ASSERT_TRUE(QTest::qWaitFor([this] { return at<QListWidget>("dayTracks")->count() == 1; }, 30'000));
    attach(file);
    EXPECT_TRUE(QTest::qWaitFor([this] { return told().contains(u"attached already"); }, 30'000));
}

// The page has asked and goes on at once; what was asked before is dropped in the middle of its file.
TEST_F(RealDay, ALongTrackIsReadBesideThePage) {
    place();
    std::string longOne = driven(3 * 3600, true);
    const std::string again = longOne;
    while (longOne.size() < 20'000'000) longOne += again;
    attach(write("long.nmea", longOne));
    ASSERT_TRUE(waitForLayers()) << state().toStdString();
    toggle(0);
    toggle(0);
    EXPECT_TRUE(state().startsWith(u"Reading the tracks")) << "asked, not waited for";
    EXPECT_EQ(layers()->rowCount(), 0);
    toggle(0);
    EXPECT_EQ(state(), u"No track is chosen.");
    ASSERT_TRUE(QTest::qWaitFor([this] { return !at<BandsView>("dayBands")->sentence().isEmpty(); }, 30'000));
    EXPECT_EQ(layers()->rowCount(), 0) << "the older question was dropped";
    toggle(0);
    page.reset();  // in the middle of the file
}

TEST_F(RealDay, TheSimulationStandsBesideTheRegressionWithItsBand) {
    const auto* bands = at<BandsView>("dayBands");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !bands->sentence().isEmpty(); }, 30'000));
    const QStringList lines = bands->sentence().split(u'\n');
    static const QRegularExpression kSilo{QStringLiteral("^Silo, simulation: \\d+ \\(\\d+\u2013\\d+\\)$")};
    EXPECT_TRUE(kSilo.match(lines[0]).hasMatch()) << lines[0].toStdString();
    EXPECT_TRUE(lines[1].startsWith(u"Silo, regression: ")) << lines[1].toStdString();
    static const QRegularExpression kTop{QStringLiteral("^Layer \\d+, under way, simulation: ")};
    EXPECT_TRUE(kTop.match(lines[2]).hasMatch()) << lines[2].toStdString();
    EXPECT_TRUE(at<QLabel>("dayOpinion")->text().contains(u"no second measurement"));
}

TEST_F(RealDay, ALessonIsMadeOfItsDeliveriesAndOpened) {
    const int shipped = at<QListWidget>("practiceLessons")->count();
    press("dayLesson");
    auto* dialog = page->findChild<QFileDialog*>();
    ASSERT_NE(dialog, nullptr);
    auto* name = dialog->findChild<QLineEdit*>();
    name->setText(m_folder.filePath(QStringLiteral("tuesday.json")));
    QTest::keyClick(name, Qt::Key_Return);
    auto* list = at<QListWidget>("practiceLessons");
    ASSERT_EQ(list->count(), shipped + 1);
    EXPECT_TRUE(list->currentItem()->text().startsWith(u"As it was: Tue 15 Sep, 30 loads"))
        << list->currentItem()->text().toStdString();
    EXPECT_TRUE(at<QPushButton>("practiceLessonsTab")->isChecked());
    EXPECT_TRUE(list->isVisible());
}

}  // namespace
}  // namespace treadwell::practice_page
