#pragma once

#include "app/desktop/samples/lines_panel.h"
#include "app/desktop/samples/samples_page.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "tests/app/desktop/season_window.h"

#include <QLabel>
#include <QTabWidget>

namespace treadwell {

using namespace std::chrono_literals;

/// Types on the Samples page, in a window on a real season file with a field and a load of an hour ago.
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

}  // namespace treadwell
