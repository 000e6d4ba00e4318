#pragma once

#include "app/desktop/samples/lines_panel.h"
#include "app/desktop/samples/samples_page.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "tests/app/desktop/form_window.h"

#include <QLabel>
#include <QTabWidget>

namespace treadwell {

using namespace std::chrono_literals;

/// Types on the Samples page, in a window on a real season file with a field and a load of an hour ago.
class SamplesWindow : public FormWindow {
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
    void showTab(int tab) {
        named<QTabWidget>("sampleTabs")->setCurrentIndex(tab);
        QCoreApplication::processEvents();
    }
    QString panel(const char* name) { return plain(named<samples_page::LinesPanel>(name)->text()); }
    template <class Kind>
    const std::vector<season::Dated<Kind>>& records() {
        return today().records.template of<Kind>();
    }
};

}  // namespace treadwell
