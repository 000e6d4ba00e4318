// Drives the Day page on a real season file with clicks and keys, and looks at what came into it.
#include "app/desktop/day/day_page.h"

#include "app/desktop/day/sheet_view.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "app/words/document.h"
#include "app/words/document_table.h"
#include "core/base/atomic_file.h"
#include "tests/app/desktop/season_window.h"

#include <gmock/gmock.h>

#include <QAbstractTextDocumentLayout>
#include <QClipboard>
#include <QComboBox>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTextBlock>
#include <QTextLayout>
#include <QTextTable>
#include <QTimeEdit>

namespace treadwell {
namespace {

using namespace std::chrono_literals;

class DayWindow : public SeasonWindow {
  protected:
    DayWindow() {
        auto session = session::Session::open(m_files, m_clock);
        EXPECT_TRUE(session);
        for (const entries::Body& body :
             {entries::Body{testing_support::someLoad(12)},
              entries::Body{testing_support::someWork(1, farm::Activity::packing)},
              entries::Body{entries::DryMatterSample{DryMatter::fromPercent(35), {}, {}, {}, {}}}})
            EXPECT_TRUE(session->propose(body, m_clock.time, {}));
        m_clock.time += 1h;
    }

    void openDay() {
        open();
        m_window->showPage(Page::day);
        QCoreApplication::processEvents();
    }
    /// As it stands in the file now.
    [[nodiscard]] review::Document sheet() const {
        const auto season = m_desk->season();
        const season::Day& day = *season->days().back();
        return review::daySheet(*season, day.date, m_clock.time, m_desk->originOf(day)).value();
    }
    [[nodiscard]] words::Style style() const {
        words::Style style;
        style.zone = m_desk->season()->zone();
        return style;
    }
    /// The first of the steps whose question says this; null where none does.
    QWidget* step(const char* says) {
        for (QPushButton* leave : m_window->findChildren<QPushButton*>(QStringLiteral("leaveOpen"))) {
            if (!leave->isVisible()) continue;
            if (leave->accessibleDescription().contains(QLatin1String{says})) return leave->parentWidget();
        }
        return nullptr;
    }
    void click(QPushButton* button) {
        ASSERT_NE(button, nullptr);
        for (QScrollArea* area : m_window->findChildren<QScrollArea*>()) {
            if (area->isAncestorOf(button)) area->ensureWidgetVisible(button);
        }
        QTest::mouseClick(button, Qt::LeftButton);
        QCoreApplication::processEvents();
    }
    QPushButton* nextToLeave() {
        for (QPushButton* leave : m_window->findChildren<QPushButton*>(QStringLiteral("leaveOpen"))) {
            if (leave->isVisible() && !leave->isChecked()) return leave;
        }
        return nullptr;
    }
    /// Looked for anew after each click: a row that is answered goes at any turn of the event loop.
    void leaveAllOpen() {
        while (QPushButton* leave = nextToLeave()) click(leave);
    }
    QString messages() {
        return m_window->findChild<day_page::DayPage*>()->findChild<widgets::MessageBar*>()->shownText();
    }
    void saveBy(const char* button, const QString& path) {
        click(named<QPushButton>(button));
        auto* dialog = m_window->findChild<QFileDialog*>();
        ASSERT_NE(dialog, nullptr);
        dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"))->setText(path);
        QMetaObject::invokeMethod(dialog, "accept");
        QCoreApplication::processEvents();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        ASSERT_TRUE(QFile::exists(path)) << messages().toStdString();
    }
};

/// The page's tables, cell by cell, below their heads.
std::vector<std::vector<std::vector<std::string>>> tablesOn(const QTextDocument& page) {
    std::vector<std::vector<std::vector<std::string>>> tables;
    for (QTextFrame* frame : page.rootFrame()->childFrames()) {
        const auto* grid = qobject_cast<QTextTable*>(frame);
        if (grid == nullptr) continue;
        auto& rows = tables.emplace_back();
        for (int row = 1; row < grid->rows(); ++row) {
            auto& cells = rows.emplace_back();
            for (int column = 0; column < grid->columns(); ++column)
                cells.push_back(grid->cellAt(row, column).firstCursorPosition().block().text().toStdString());
        }
    }
    return tables;
}

// The page joins the comparison of the sheet's outputs: what stands in its tables is what words::inWords
// gives, as the paper, the text, CSV and JSON have it.
TEST_F(DayWindow, ThePageHoldsEveryCellOfTheSheet) {
    openDay();
    const review::Document document = sheet();
    auto* view = named<day_page::SheetView>("sheet");
    const auto shown = tablesOn(*view->document());
    const std::string text = view->toPlainText().toStdString();
    std::size_t next = 0, cells = 0, charts = 0;
    for (const review::Section& section : document.sections) {
        EXPECT_THAT(text, testing::HasSubstr(words::inWords(Message{section.title, {}}, style())));
        for (const review::Block& block : section.blocks) {
            if (const auto* message = std::get_if<Message>(&block)) {
                EXPECT_THAT(text, testing::HasSubstr(words::inWords(*message, style())));
            } else if (const auto* table = std::get_if<review::Table>(&block)) {
                ASSERT_LT(next, shown.size());
                EXPECT_EQ(shown[next], words::inWords(*table, style()).rows) << table->key;
                for (const auto& row : shown[next++]) cells += row.size();
            } else {
                ++charts;
            }
        }
    }
    EXPECT_EQ(next, shown.size());
    EXPECT_GT(cells, 40u);
    EXPECT_EQ(charts, 1u);
    EXPECT_FALSE(
        view->document()->resource(QTextDocument::ImageResource, QUrl{QStringLiteral("chart:0")}).isNull());
}

TEST_F(DayWindow, TheSheetIsLaidOutAsAWhole) {
    openDay();
    auto* view = named<day_page::SheetView>("sheet");
    const QSignalSpy layouts{view->document()->documentLayout(),
                             &QAbstractTextDocumentLayout::documentSizeChanged};
    m_window->setUnits(UnitSystem::us);
    QCoreApplication::processEvents();
    EXPECT_GE(layouts.size(), 1);
    EXPECT_LE(layouts.size(), 20) << "and not once for every cell";
}

TEST_F(DayWindow, WalksThroughWhatIsMissingAndCloses) {
    openDay();
    auto* close = named<QPushButton>("closeDay");
    EXPECT_FALSE(close->isEnabled()) << "there are points to see to";
    ASSERT_NE(step("is still at work"), nullptr);
    step("is still at work")->findChild<QTimeEdit*>()->setTime(QTime{12, 30});
    click(step("is still at work")->findChild<QPushButton*>(QStringLiteral("stepRecord")));
    ASSERT_TRUE(QTest::qWaitFor([&] { return step("is still at work") == nullptr; }));
    EXPECT_EQ(today().work.back().end, testing_support::at("2026-09-15T15:30:00Z")) << "12:30 in Sao Paulo";
    leaveAllOpen();
    EXPECT_FALSE(close->isEnabled()) << "nobody is said to close it";
    auto* by = named<QComboBox>("closesBy");
    by->setFocus();
    QTest::keyClicks(by, QStringLiteral("Anna Lind"));
    EXPECT_TRUE(close->isEnabled());
    click(close);
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().closed.has_value(); }));
    EXPECT_EQ(m_desk->originOf(today()).closedBy, "Anna Lind");
    EXPECT_TRUE(QTest::qWaitFor([&] { return !named<QLabel>("copies")->text().isEmpty(); }))
        << "how the copies stand is said";
    EXPECT_FALSE(named<QPushButton>("closeDay")->isVisible());
    EXPECT_TRUE(named<day_page::SheetView>("sheet")->toPlainText().contains(u"Closed by Anna Lind"));
}

TEST_F(DayWindow, HeightsLayerSampleMassAndCostAreAnsweredOnThePage) {
    openDay();
    QWidget* layer = step("No layer was seen");
    ASSERT_NE(layer, nullptr);
    click(layer->findChild<QPushButton*>(QStringLiteral("stepUnfold")));
    auto* thickness = layer->findChild<widgets::QuantitySpinBox*>(QStringLiteral("layerThickness"));
    thickness->setFocus();
    thickness->selectAll();
    QTest::keyClicks(thickness, QStringLiteral("14"));
    QTest::keyClick(thickness, Qt::Key_Return);
    ASSERT_TRUE(QTest::qWaitFor([&] { return today().layers.size() == 1; }));
    EXPECT_NEAR(today().layers[0].what.thickness.centimetres(), 14, 1e-9);
    ASSERT_TRUE(QTest::qWaitFor([&] { return step("No layer was seen") == nullptr; }));
    QWidget* cost = step("has no cost an hour");
    ASSERT_NE(cost, nullptr);
    auto* amount = cost->findChild<widgets::QuantitySpinBox*>(QStringLiteral("stepAmount"));
    amount->setFocus();
    amount->selectAll();
    QTest::keyClicks(amount, QStringLiteral("85"));
    click(cost->findChild<QPushButton*>(QStringLiteral("stepRecord")));
    ASSERT_TRUE(QTest::qWaitFor([&] { return step("has no cost an hour") == nullptr; }));
    EXPECT_NEAR(today().farm().tractors.begin()->second.hourlyCost->perHour(), 85, 1e-9);
    QWidget* heights = step("heights of");
    ASSERT_NE(heights, nullptr);
    click(heights->findChild<QPushButton*>(QStringLiteral("stepUnfold")));
    EXPECT_FALSE(heights->findChildren<widgets::QuantitySpinBox*>().isEmpty());
}

TEST_F(DayWindow, AClosedDayIsOpenedByACorrectionWithItsReason) {
    openDay();
    leaveAllOpen();
    QTest::keyClicks(named<QComboBox>("closesBy"), QStringLiteral("Anna Lind"));
    click(named<QPushButton>("closeDay"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return named<QPushButton>("reopenDay")->isVisible(); }));
    click(named<QPushButton>("reopenDay"));
    EXPECT_TRUE(messages().contains(u"correction")) << messages().toStdString();
    EXPECT_TRUE(today().closed.has_value()) << "without a reason nothing happens";
    auto* why = named<QLineEdit>("reopenReason");
    QTest::keyClicks(why, QStringLiteral("a load was missing"));
    QTest::keyClick(why, Qt::Key_Return);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !today().closed; }));
    EXPECT_TRUE(QTest::qWaitFor([&] { return named<QPushButton>("closeDay")->isVisible(); }));
}

TEST_F(DayWindow, HandsOverToTheNextShift) {
    openDay();
    QTest::keyClicks(named<QPlainTextEdit>("handOverWords"), QStringLiteral("Mind the left wall"));
    QTest::keyClicks(named<QComboBox>("nextHolder"), QStringLiteral("Bo Ek"));
    click(named<QPushButton>("handOver"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_desk->holder() == "Bo Ek"; }));
    ASSERT_EQ(today().records.of<entries::HandOver>().size(), 1u);
    EXPECT_EQ(today().records.of<entries::HandOver>()[0].what.text, "Mind the left wall");
    EXPECT_TRUE(named<QPlainTextEdit>("handOverWords")->toPlainText().isEmpty());
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return named<day_page::SheetView>("sheet")->toPlainText().contains(u"Mind the left wall"); }));
}

// What leaves the program is what the command line gives of the same season.
TEST_F(DayWindow, SavesAndCopiesTheSheet) {
    openDay();
    const QTemporaryDir folder;
    saveBy("save_csv", folder.filePath(QStringLiteral("sheet.csv")));
    EXPECT_EQ(readFile(folder.filePath(QStringLiteral("sheet.csv")).toStdString()).value(),
              words::csvText(sheet(), style()));
    saveBy("save_json", folder.filePath(QStringLiteral("sheet.json")));
    EXPECT_THAT(readFile(folder.filePath(QStringLiteral("sheet.json")).toStdString()).value(),
                testing::StartsWith("{\n  \"document\": \"daySheet\""));
    saveBy("save_pdf", folder.filePath(QStringLiteral("sheet.pdf")));
    EXPECT_THAT(readFile(folder.filePath(QStringLiteral("sheet.pdf")).toStdString()).value(),
                testing::StartsWith("%PDF-"));
    click(named<QPushButton>("copyMessage"));
    EXPECT_EQ(QGuiApplication::clipboard()->text().toStdString(), words::messageText(sheet(), style()));
}

TEST_F(DayWindow, ShowsTheSeasonsDaysSideBySide) {
    openDay();
    auto* day = named<QComboBox>("day");
    day->setCurrentIndex(day->count() - 1);
    QCoreApplication::processEvents();
    const QString text = named<day_page::SheetView>("sheet")->toPlainText();
    EXPECT_TRUE(text.contains(u"2026-09-15")) << text.toStdString();
    EXPECT_TRUE(text.contains(u"Shifts side by side"));
    EXPECT_FALSE(named<QPushButton>("closeDay")->isVisible()) << "a season is not closed";
    QTest::keyClick(m_window.get(), Qt::Key_Right, Qt::AltModifier);
    QCoreApplication::processEvents();
    EXPECT_EQ(day->currentIndex(), day->count() - 2);
}

TEST_F(DayWindow, FollowsLanguageUnitsAndLook) {
    openDay();
    m_window->setLanguage(QStringLiteral("pt_BR"));
    m_window->setUnits(UnitSystem::us);
    QCoreApplication::processEvents();
    EXPECT_EQ(named<QPushButton>("closeDay")->text(), QStringLiteral("Fechar o dia"));
    EXPECT_TRUE(named<day_page::SheetView>("sheet")->toPlainText().contains(u"lb"));
    for (const settings::Look look : {settings::Look::dark, settings::Look::outdoor, settings::Look::light}) {
        m_window->setLook(look);
        EXPECT_FALSE(m_window->grab().isNull());
    }
}

// Columns that do not fit stand below the others, with the names of their rows.
TEST_F(DayWindow, NoWordOfTheSheetIsBrokenInTheWidestLook) {
    openDay();
    m_window->setLanguage(QStringLiteral("pt_BR"));
    m_window->setUnits(UnitSystem::us);
    m_window->setLook(settings::Look::outdoor);
    auto* view = named<day_page::SheetView>("sheet");
    QCoreApplication::processEvents();
    EXPECT_EQ(view->horizontalScrollBar()->maximum(), 0);
    int lines = 0;
    for (QTextBlock block = view->document()->begin(); block.isValid(); block = block.next()) {
        for (int i = 0; i + 1 < block.layout()->lineCount(); ++i) {
            const QTextLine line = block.layout()->lineAt(i);
            const QChar last = block.text().at(line.textStart() + line.textLength() - 1);
            EXPECT_TRUE(last.isSpace() || last == u'/' || last == u'-') << block.text().toStdString();
            ++lines;
        }
    }
    EXPECT_GT(lines, 0);
}

TEST_F(DayWindow, NothingOfTheWalkIsWiderThanItsPlace) {
    for (const char* language : {"en", "pt_BR"}) {
        openDay();
        m_window->setLanguage(QLatin1String{language});
        QCoreApplication::processEvents();
        for (const QScrollArea* area : m_window->findChildren<QScrollArea*>()) {
            if (!area->isVisible()) continue;
            EXPECT_LE(area->widget()->minimumSizeHint().width(), area->viewport()->width()) << language;
        }
        close();
    }
}

}  // namespace
}  // namespace treadwell
