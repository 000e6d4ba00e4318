#pragma once

#include "app/desktop/widgets/quantity_spin_box.h"
#include "tests/app/desktop/season_window.h"

#include <QApplication>
#include <QLabel>

namespace treadwell {

/// The window with pages on which forms are filled in.
class FormWindow : public SeasonWindow {
  protected:
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
    QString running(const char* form) {
        return plain(named<QLabel>((std::string{form} + "Running").c_str())->text());
    }
    /// With plain spaces: a number and its unit are held together by one that does not break.
    static QString plain(QString text) { return text.replace(QChar::Nbsp, u' '); }
};

}  // namespace treadwell
