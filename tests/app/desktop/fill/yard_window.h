#pragma once

#include "app/desktop/fill/day_loads.h"
#include "tests/app/desktop/fill/fill_window.h"

#include <QToolButton>

namespace treadwell {

/// The yard's side of the Fill page.
class Yard : public FillWindow {
  protected:
    /// That of a row in the list of loads, the newest first.
    QToolButton* tool(const char* name, int row) {
        QList<QToolButton*> found;
        for (auto* button : m_window->findChild<fill::DayLoads*>()->findChildren<QToolButton*>()) {
            if (button->accessibleName().startsWith(QLatin1String{name})) found << button;
        }
        return found.value(row);
    }
    widgets::TruckFace* face() { return m_window->findChild<widgets::TruckFace*>(); }
    /// Logs a load and waits until it lies on the disk.
    void load() {
        const std::size_t before = today().loads.size();
        QTest::mouseClick(face(), Qt::LeftButton);
        ASSERT_TRUE(QTest::qWaitFor([&] { return today().loads.size() == before + 1; }));
    }
    QPushButton* choice(const char* row, const char* startsWith) {
        for (auto* button : named<QWidget>(row)->findChildren<QPushButton*>()) {
            if (button->text().startsWith(QLatin1String{startsWith})) return button;
        }
        return nullptr;
    }
    void record(const entries::Body& body) {
        auto session = session::Session::open(m_files, m_clock);
        ASSERT_TRUE(session);
        ASSERT_TRUE(session->propose(body, m_clock.time, {}));
        *session =
            *session::Session::open(m_files, m_clock, session::Purpose::reading);  // lets go of the file
    }
    /// The entry of the day's only load, as it lies in the file.
    entries::EntryId recordedLoad() {
        const auto session = session::Session::open(m_files, m_clock, session::Purpose::reading);
        return session->snapshot()->days().back()->loads.front().entry;
    }
    QString holder() { return named<QPushButton>("tablet")->text().section(u'\n', 0, 0); }
};

}  // namespace treadwell
