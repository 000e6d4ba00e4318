#pragma once

#include "app/desktop/fill/fill_page.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "app/desktop/widgets/tractor_chip.h"
#include "app/desktop/widgets/truck_button.h"
#include "tests/app/desktop/season_window.h"

#include <QPushButton>

namespace treadwell {

using namespace std::chrono_literals;
using testing_support::at;

/// Touches and types on the Fill page, in a window on a real season file.
class FillWindow : public SeasonWindow {
  protected:
    /// Enter records, in a panel as in a sheet.
    void type(widgets::QuantitySpinBox* box, const char* text) {
        write(box, text);
        QTest::keyClick(box, Qt::Key_Return);
    }
    void write(widgets::QuantitySpinBox* box, const char* text) {
        box->setFocus();
        box->selectAll();
        QTest::keyClicks(box, QLatin1String{text});
    }
    /// A touch on the button of this object name.
    void press(const char* name) { QTest::mouseClick(named<QAbstractButton>(name), Qt::LeftButton); }
};

}  // namespace treadwell
