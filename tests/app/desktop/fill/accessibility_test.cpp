// What a screen reader can say: every control of the page and of every sheet has a name, and what holds a
// value tells it.
#include "app/desktop/fill/day_loads.h"
#include "app/desktop/fill/view_strip.h"
#include "app/desktop/plots/dry_matter_chart.h"
#include "app/desktop/plots/sieve_chart.h"
#include "app/desktop/plots/timeline.h"
#include "app/desktop/samples/lines_panel.h"
#include "app/desktop/widgets/distribution_view.h"
#include "app/desktop/widgets/section_view.h"
#include "tests/app/desktop/fill/fill_window.h"

#include <QAbstractSpinBox>
#include <QAccessible>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QPlainTextEdit>
#include <QTabWidget>
#include <QTableView>
#include <QToolButton>

namespace treadwell {
namespace {

using testing_support::idOf;

QString spokenAs(QWidget* widget, QAccessible::Text which) {
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(widget);
    return spoken == nullptr ? QString{} : spoken->text(which);
}

std::string nameOf(const QWidget* widget) {
    return std::string{widget->metaObject()->className()} + ' ' + widget->objectName().toStdString();
}

/// Of what a person can work with in a window; how many that were.
int expectSpoken(QWidget& root) {
    int found = 0;
    for (QWidget* widget : root.findChildren<QWidget*>()) {
        if (!widget->isVisible() || widget->objectName().startsWith(u"qt_")) continue;
        if (qobject_cast<const QLabel*>(widget) != nullptr) continue;  // its text is its name
        const bool isButton = qobject_cast<const QAbstractButton*>(widget) != nullptr;
        if (widget->focusPolicy() == Qt::NoFocus && !isButton) continue;
        const QWidget* within = widget->parentWidget();  // speaks for its line of text
        if (qobject_cast<const QAbstractSpinBox*>(within) || qobject_cast<const QComboBox*>(within)) continue;
        ++found;
        EXPECT_FALSE(spokenAs(widget, QAccessible::Name).isEmpty()) << nameOf(widget);
        if (qobject_cast<const QAbstractSpinBox*>(widget) || qobject_cast<const QComboBox*>(widget)) {
            EXPECT_FALSE(spokenAs(widget, QAccessible::Value).isEmpty()) << nameOf(widget);
        }
        if (const auto* button = qobject_cast<const QAbstractButton*>(widget);
            button && button->isCheckable()) {
            EXPECT_EQ(bool(QAccessible::queryAccessibleInterface(widget)->state().checked),
                      button->isChecked())
                << nameOf(widget);
        }
    }
    return found;
}

/// What is painted and not written has its content in words.
template <class Painted>
void expectTold(QWidget& root) {
    int found = 0;
    for (auto* widget : root.findChildren<Painted*>()) {
        if (!widget->isVisible()) continue;
        ++found;
        EXPECT_FALSE(spokenAs(widget, QAccessible::Name).isEmpty()) << nameOf(widget);
        EXPECT_FALSE(spokenAs(widget, QAccessible::Description).isEmpty()) << nameOf(widget);
    }
    EXPECT_GT(found, 0) << Painted::staticMetaObject.className();
}

class Spoken : public FillWindow {
  protected:
    Spoken() {
        auto session = session::Session::open(m_files, m_clock);
        EXPECT_TRUE(session);
        std::vector<session::Proposal> entries;
        const Instant begin = m_clock.time;
        for (std::uint8_t i = 1; i <= 2; ++i) {
            farm::Field field;
            field.id = idOf<farm::FieldTag>(i);
            field.name = i == 1 ? "Long field" : "Mill field";
            entries.push_back({entries::FieldDefined{field}, begin, {}});
        }
        entries.push_back({entries::SiloDefined{testing_support::someSilo(2)}, begin, {}});
        entries.push_back({entries::TractorDefined{testing_support::someTractor(2, 9)}, begin, {}});
        entries.push_back({testing_support::someWork(1, farm::Activity::packing), begin, {}});
        for (int i = 0; i < 12; ++i)
            entries.push_back({testing_support::someLoad(12.4), begin + i * 7min, {}});
        EXPECT_TRUE(session->importAll(entries, {}));
        m_clock.time = begin + 90min;
    }

    /// Opens a sheet, listens to it, and leaves it.
    template <class Open>
    void expectSheet(const char* what, Open open) {
        open();
        auto* sheet = m_window->findChild<QDialog*>();
        ASSERT_NE(sheet, nullptr) << what;
        EXPECT_FALSE(sheet->windowTitle().isEmpty()) << what;
        EXPECT_GT(expectSpoken(*sheet), 0) << what;
        sheet->reject();
        ASSERT_TRUE(QTest::qWaitFor([&] { return m_window->findChild<QDialog*>() == nullptr; })) << what;
    }
    void click(QWidget* widget) { QTest::mouseClick(widget, Qt::LeftButton); }
    void ctrl(Qt::Key key) {
        QApplication::setActiveWindow(m_window.get());  // no window manager gives it back
        QTest::keyClick(m_window.get(), key, Qt::ControlModifier);
    }
};

TEST_F(Spoken, EveryControlOfThePageAndItsSheetsHasANameAndItsValue) {
    open();
    for (const char* language : {"en", "pt_BR"}) {
        SCOPED_TRACE(language);
        m_window->setLanguage(QString::fromLatin1(language));
        QTest::qWait(5);
        QWidget& page = *m_window->centralWidget();
        for (const fill::View view : fill::kViews) {
            m_window->findChild<fill::ViewStrip*>()->choose(view);
            QTest::qWait(5);
            EXPECT_GT(expectSpoken(page), 20);
            if (view == fill::View::timeline) expectTold<plots::Timeline>(page);
            if (view == fill::View::section) expectTold<widgets::SectionView>(page);
        }
        expectTold<widgets::TruckFace>(page);
        expectTold<widgets::TractorChip>(page);
        expectTold<widgets::PadPlan>(page);
        press("dayLoads");
        expectSpoken(page);
        expectSheet("a load put right",
                    [&] { click(m_window->findChild<fill::DayLoads*>()->findChild<QPushButton*>()); });
        press("dayLoads");
        for (const char* opens : {"catchUp", "hire", "incident", "tablet"})
            expectSheet(opens, [&] { press(opens); });
        expectSheet("details of a load",
                    [&] { click(m_window->findChild<widgets::TruckButton*>()->findChild<QToolButton*>()); });
        expectSheet("mass",
                    [&] { QTest::keyClick(m_window->findChild<widgets::TractorChip*>(), Qt::Key_M); });
        expectSheet("working", [&] { ctrl(Qt::Key_W); });
        m_window->showPage(Page::samples);
        QTest::qWait(5);
        auto* tabs = named<QTabWidget>("sampleTabs");
        for (int tab = 0; tab < tabs->count(); ++tab) {
            tabs->setCurrentIndex(tab);
            EXPECT_FALSE(tabs->tabText(tab).isEmpty());
            EXPECT_GT(expectSpoken(*tabs->currentWidget()), 2) << tab;
        }
        expectSpoken(page);
        expectTold<plots::DryMatterChart>(page);
        expectTold<plots::SieveChart>(page);
        expectTold<samples_page::LinesPanel>(page);
        expectSheet("scale", [&] { press("scaleChoose"); });
        tabs->setCurrentIndex(1);
        expectSheet("ranges of the chop", [&] { press("sieveRanges"); });
        m_window->showPage(Page::fill);
    }
    m_window->setLanguage(QStringLiteral("en"));
}

TEST_F(Spoken, TheGaugeTellsItsNumberAsAValue) {
    open();
    QTest::qWait(5);
    auto* gauge = m_window->findChild<widgets::DistributionView*>();
    ASSERT_NE(gauge, nullptr);
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(gauge);
    ASSERT_NE(spoken->valueInterface(), nullptr);
    EXPECT_GT(spoken->valueInterface()->currentValue().toDouble(), 100.0);
    EXPECT_TRUE(spoken->text(QAccessible::Value).contains(QStringLiteral("kg DM/m³")));
}

}  // namespace
}  // namespace treadwell
