// Choosing, using and forgetting the second place, in a window on real files.
#include "app/desktop/copies_dialog.h"

#include "core/session/copies.h"
#include "tests/app/desktop/season_window.h"

#include <gmock/gmock.h>

#include <QAction>
#include <QFileDialog>
#include <QPushButton>
#include <algorithm>

namespace treadwell {
namespace {

using namespace std::chrono_literals;
using testing::HasSubstr;

class CopiesWindow : public SeasonWindow {
  protected:
    CopiesDialog& dialog() {
        if (auto* open = m_window->findChild<CopiesDialog*>()) return *open;
        named<QAction>("copies")->trigger();
        return *m_window->findChild<CopiesDialog*>();
    }
    std::string said() { return dialog().said().toStdString(); }
    bool says(const char* text) {
        return QTest::qWaitFor([&] { return said().find(text) != std::string::npos; });
    }
    void press(const char* name) {
        auto* button = dialog().findChild<QPushButton*>(QLatin1String{name});
        ASSERT_TRUE(QTest::qWaitFor([&] { return button->isEnabled(); }));
        QTest::mouseClick(button, Qt::LeftButton);
    }
    void choose(const std::filesystem::path& folder) {
        press("choosePlace");
        auto* chooser = dialog().findChild<QFileDialog*>();
        ASSERT_NE(chooser, nullptr);
        emit chooser->fileSelected(QString::fromStdString(folder.string()));
        chooser->reject();
        QTest::qWait(1);
    }
    void closeTheDay() {
        m_desk->propose(
            entries::DayClosed{*dayFromIso8601("2026-09-15"), m_clock.time - 12h, m_clock.time + 12h});
    }
    /// A copy grows beside its place and has its name when it is whole.
    static std::ptrdiff_t filesIn(const std::filesystem::path& folder) {
        return std::ranges::count_if(std::filesystem::directory_iterator{folder}, [](const auto& file) {
            return file.path().extension() == ".treadwell";
        });
    }

    std::filesystem::path m_stick = std::filesystem::path{m_folder.path().toStdString()} / "stick";
};

TEST_F(CopiesWindow, APlaceIsChosenUsedChangedAndForgotten) {
    std::filesystem::create_directory(m_stick);
    open();
    ASSERT_TRUE(says("No copy is made"));
    EXPECT_FALSE(dialog().findChild<QPushButton*>(QStringLiteral("copyNow"))->isEnabled());
    choose(m_stick);
    ASSERT_TRUE(says("none of this season lies there yet")) << said();
    EXPECT_EQ(session::secondPlace(m_files.stateFolder), m_stick);
    press("leave");
    closeTheDay();
    ASSERT_TRUE(QTest::qWaitFor([&] { return filesIn(m_stick) == 1; }));
    ASSERT_TRUE(says("the newest there was made")) << said();
    m_clock.time += 1min;
    press("copyNow");
    ASSERT_TRUE(QTest::qWaitFor([&] { return filesIn(m_stick) == 2; }));
    for (const auto& copy : std::filesystem::directory_iterator{m_stick}) {
        auto session =
            session::Session::open({copy.path(), m_files.stateFolder}, m_clock, session::Purpose::reading);
        ASSERT_TRUE(session);
        EXPECT_EQ(session->check(), std::nullopt);
    }
    const auto other = m_stick / "inner";
    std::filesystem::create_directory(other);
    choose(other);
    ASSERT_TRUE(says("inner; none of this season")) << said();
    press("forgetPlace");
    ASSERT_TRUE(says("No copy is made"));
    EXPECT_EQ(session::secondPlace(m_files.stateFolder), std::nullopt);
}

TEST_F(CopiesWindow, SaysThatAStickIsNotThereAndWhyNoCopyCouldBeMade) {
    ASSERT_TRUE(session::chooseSecondPlace(m_files.stateFolder, m_stick));
    open();
    ASSERT_TRUE(says("is not there now")) << said();
    press("copyNow");
    ASSERT_TRUE(says("could not be put into")) << said();
    EXPECT_THAT(said(), HasSubstr(m_stick.string()));
    std::filesystem::create_directory(m_stick);
    press("copyNow");
    ASSERT_TRUE(says("the newest there was made")) << said();
    EXPECT_THAT(said(), testing::Not(HasSubstr("could not be put")));
}

TEST_F(CopiesWindow, ButtonsAreForGlovesAndNamed) {
    open();
    for (const auto* button : dialog().findChildren<QPushButton*>()) {
        EXPECT_GE(button->height(), 44) << button->objectName().toStdString();
        EXPECT_FALSE(button->text().isEmpty()) << button->objectName().toStdString();
    }
}

}  // namespace
}  // namespace treadwell
