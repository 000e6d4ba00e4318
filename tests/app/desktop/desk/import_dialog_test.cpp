// A file of tickets or readings is looked at, asked about and taken in, in a window on real files.
#include "app/desktop/intake/import_dialog.h"

#include "tests/app/desktop/season_window.h"

#include <gmock/gmock.h>

#include <QAction>
#include <QComboBox>
#include <QFileDialog>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <fstream>

namespace treadwell {
namespace {

using intake_page::ImportDialog;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

class ImportWindow : public SeasonWindow {
  protected:
    ImportWindow() {
        qputenv("XDG_STATE_HOME", (m_folder.path() + QStringLiteral("/home")).toUtf8());
        open();
    }
    ~ImportWindow() override { qunsetenv("XDG_STATE_HOME"); }

    /// As the menu does it.
    void takeIn(const std::string& content, const char* name = "list.csv") {
        const QString file = m_folder.filePath(QLatin1String{name});
        std::ofstream{file.toStdString()} << content;
        named<QAction>("takeIn")->trigger();
        auto* chooser = m_window->findChild<QFileDialog*>();
        ASSERT_NE(chooser, nullptr);
        emit chooser->fileSelected(file);
        chooser->reject();
        ASSERT_TRUE(QTest::qWaitFor([&] { return m_window->findChild<QFileDialog*>() == nullptr; }));
    }
    ImportDialog& dialog() { return *m_window->findChild<ImportDialog*>(); }
    bool isOpen() { return m_window->findChild<ImportDialog*>() != nullptr; }
    std::string told() { return dialog().told().toStdString(); }
    QComboBox& box(const char* name) { return *dialog().findChild<QComboBox*>(QLatin1String{name}); }
    QPushButton& recordButton() { return *dialog().findChild<QPushButton*>(QStringLiteral("record")); }
    void call(int column, const char* meaning) {
        auto* columns = dialog().findChild<QTableWidget*>();
        qobject_cast<QComboBox*>(columns->cellWidget(column, 1))->setCurrentText(QLatin1String{meaning});
        QTest::qWait(1);
    }
    void record() {
        QTest::mouseClick(&recordButton(), Qt::LeftButton);
        ASSERT_TRUE(QTest::qWaitFor([&] { return !isOpen(); }));
    }
    std::size_t loads() {
        std::size_t count = 0;
        for (const auto& day : m_desk->season()->days()) count += day->loads.size();
        return count;
    }
};

TEST_F(ImportWindow, WhatAFileLeavesOpenIsAskedOnce) {
    const std::string first =
        "When;Vehicle;Weight\n15.09.2026 10:00;Amsel;12.440\n15.09.2026 10:20;Zebra;11.900\n";
    takeIn(first);
    EXPECT_THAT(told(), HasSubstr("To be answered"));
    EXPECT_FALSE(recordButton().isEnabled());
    EXPECT_TRUE(box("importDecimal").isVisible());
    EXPECT_FALSE(box("importDates").isVisible()) << "it is not asked";
    box("importDecimal").setCurrentIndex(1);
    QTest::qWait(1);
    call(2, "Net weight");
    call(0, "Time");
    box("importUnit").setCurrentText(QStringLiteral("t"));
    QTest::qWait(1);
    EXPECT_THAT(told(), AllOf(HasSubstr("2 rows in the file"), HasSubstr("1 entry would be recorded"),
                              HasSubstr("1 row cannot be used"), HasSubstr("Zebra")));
    EXPECT_EQ(loads(), 0u) << "nothing before somebody has agreed";
    record();
    EXPECT_EQ(loads(), 1u);
    // Remembered by the header; the same rows add nothing.
    takeIn(first);
    EXPECT_THAT(told(), AllOf(HasSubstr("0 entries would be recorded"), HasSubstr("there already")));
    EXPECT_FALSE(recordButton().isEnabled());
    dialog().reject();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !isOpen(); }));
    takeIn("When;Vehicle;Weight\n16.09.2026 10:00;Amsel;12.440\n");
    EXPECT_THAT(told(), HasSubstr("1 entry would be recorded"));
    dialog().reject();
}

TEST_F(ImportWindow, ATicketWeighsTheLoadThatWasTappedIn) {
    const farm::TruckId truck = m_desk->season()->farm().trucks.begin()->first;
    entries::Load load = testing_support::someLoad(12.4);
    load.truck = truck;
    load.source = entries::MassSource::usual;
    m_desk->propose(load);
    ASSERT_TRUE(QTest::qWaitFor([&] { return loads() == 1; }));
    const std::string at = toIso8601(m_clock.time + std::chrono::minutes{2});
    takeIn("ticket,time,truck,net kg\n1," + at + ",Amsel,12980\n");
    EXPECT_EQ(box("importKind").currentText(), QStringLiteral("Tickets of a scale"));
    EXPECT_THAT(told(), HasSubstr("the load tapped in with 12.4"));
    record();
    EXPECT_EQ(loads(), 1u);
    EXPECT_NEAR(today().loads.front().load.mass.tonnes(), 12.98, 1e-9);
}

TEST_F(ImportWindow, AnyListOfTheFarmIsKnownByItsColumns) {
    takeIn("date,low C,high C\n2026-09-10,9.5,24\n2026-09-11,10,25.5\n");
    EXPECT_EQ(box("importKind").currentText(), QStringLiteral("Daily temperatures"));
    EXPECT_THAT(told(), AllOf(HasSubstr("2 rows in the file"), HasSubstr("1 entry would be recorded")));
    record();
    // Taken for something else it says what it lacks.
    takeIn("date,low C,high C\n2026-09-12,9.5,24\n");
    box("importKind").setCurrentText(QStringLiteral("Heights of the silo"));
    EXPECT_THAT(told(), HasSubstr("To be answered"));
    EXPECT_FALSE(recordButton().isEnabled());
    dialog().reject();
}

TEST_F(ImportWindow, AFileThatCannotBeReadIsSaidOnThePage) {
    named<QAction>("takeIn")->trigger();
    auto* chooser = m_window->findChild<QFileDialog*>();
    emit chooser->fileSelected(m_folder.filePath(QStringLiteral("nothing.csv")));
    chooser->reject();
    EXPECT_FALSE(isOpen());
    const auto labels = m_window->findChildren<QLabel*>();
    EXPECT_TRUE(std::ranges::any_of(
        labels, [](const QLabel* label) { return label->text().contains(QStringLiteral("nothing.csv")); }));
}

}  // namespace
}  // namespace treadwell
