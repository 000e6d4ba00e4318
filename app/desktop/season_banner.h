#pragma once

#include "app/desktop/desk/season_desk.h"
#include "app/desktop/settings/appearance.h"

#include <QFrame>
#include <array>

class QLabel;
class QPushButton;

namespace treadwell::widgets {
class ClockEdit;
class DayEdit;
class StepField;
}  // namespace treadwell::widgets

namespace treadwell {

/// What stands over every page for as long as it holds: who else writes the season or why it cannot be
/// written, what waits to be recorded, and whether the clock is right or what time it is. It stops nobody;
/// hidden while there is nothing.
class SeasonBanner final : public QFrame {
    Q_OBJECT

  public:
    SeasonBanner(desk::SeasonDesk& desk, const settings::Appearance& appearance, QWidget* parent = nullptr);

    /// One under the other, as shown.
    [[nodiscard]] QStringList lines() const;

  protected:
    void changeEvent(QEvent* event) override;

  private:
    struct Line {
        QLabel* mark;
        QLabel* text;
    };
    void refresh();
    void refreshClock();
    void tellTime();
    [[nodiscard]] QWidget* makeTime();
    void setButton(QPushButton* button, const QString& text, bool needed);
    void show(const Line& line, const QString& text);

    desk::SeasonDesk& m_desk;
    const settings::Appearance& m_appearance;
    std::array<Line, 3> m_lines;
    QPushButton* m_takeOver;
    QPushButton* m_clockIsRight;
    widgets::DayEdit* m_day;
    widgets::ClockEdit* m_time;
    widgets::StepField* m_daySteps;
    widgets::StepField* m_timeSteps;
    QPushButton* m_timeIsThis;
    QWidget* m_rightTime;  ///< holds these
    bool m_clockIsAsked = false;
    desk::Ticket m_asked = 0;        ///< for the right to write
    std::optional<Error> m_refusal;  ///< of it
};

}  // namespace treadwell
