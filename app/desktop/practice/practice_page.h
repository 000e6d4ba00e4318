#pragma once

#include "app/desktop/desk/season_desk.h"
#include "app/desktop/practice/practice_presenter.h"
#include "app/desktop/settings/appearance.h"

#include <QTimer>
#include <QWidget>

class QComboBox;
class QLabel;
class QListWidget;
class QPushButton;
class QStackedWidget;

namespace treadwell::samples_page {
class LinesPanel;
}
namespace treadwell::widgets {
class DistributionView;
class MessageBar;
}  // namespace treadwell::widgets

namespace treadwell::practice_page {

class CutView;
class PadView;
class PlanForm;
class RealDayView;
class TraineeBar;

/// Where the next driver learns: lessons on a simulated pad, driven by hand or by a plan that is watched, and
/// afterwards what went wrong where and why. Nothing of that touches the season. Beside the lessons a day of
/// the season's own is looked back on.
class PracticePage final : public QWidget {
    Q_OBJECT

  public:
    /// `folder` is where this machine keeps what belongs to no season.
    PracticePage(desk::SeasonDesk& desk, const settings::Appearance& look,
                 const std::filesystem::path& folder, QWidget* parent = nullptr);

    /// Lets the lesson run on as the clock on the page does: by `real` time at the chosen pace, in slices.
    void pass(std::chrono::milliseconds real);
    /// A lesson of a trainer's own is added to the list and chosen.
    void openLesson(const QString& file);
    void saveCertificate(const QString& file);

  protected:
    void changeEvent(QEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void layOut();
    [[nodiscard]] QWidget* makeChoices();
    [[nodiscard]] QWidget* makeLessons();
    [[nodiscard]] QWidget* makePad();
    [[nodiscard]] QWidget* makePlan();
    [[nodiscard]] fill::Speech speech() const;
    [[nodiscard]] const practice::Lesson& lesson() const;
    void connectAll();
    void showRealDay(bool real);
    void fillLessons();
    void begin();
    void run(bool on);
    void steer(passes::GroundPoint goal);
    void applyPlan();
    void call();
    void finish();
    void draw();
    void tellResult();
    void fitSide();
    void retranslate();
    void askLesson();
    void askCertificate();
    void tell(const Error& error);

    desk::SeasonDesk& m_desk;
    const settings::Appearance& m_appearance;
    std::vector<practice::Lesson> m_lessons;
    std::optional<practice::LessonRun> m_run;
    std::optional<practice::Debrief> m_debrief;  ///< once the lesson is over
    QTimer m_tick;
    Seconds m_due{0.0};  ///< of the lesson, not yet run
    int m_ticks = 0;

    widgets::MessageBar* m_messages;
    QPushButton* m_lessonsTab;
    QPushButton* m_realTab;
    QStackedWidget* m_choices;
    QStackedWidget* m_views;
    RealDayView* m_real;
    TraineeBar* m_trainee;
    QListWidget* m_list;
    QLabel* m_story;
    QPushButton* m_open;
    QPushButton* m_certificate;
    QLabel* m_clock;
    QLabel* m_next;
    PadView* m_pad;
    CutView* m_cut;
    QPushButton* m_go;
    QPushButton* m_again;
    QComboBox* m_pace;
    QLabel* m_hint;
    PlanForm* m_plan;
    widgets::DistributionView* m_density;
    samples_page::LinesPanel* m_parts;
    samples_page::LinesPanel* m_wrong;
    samples_page::LinesPanel* m_cautions;
};

/// The keys of the Practice page and what they do, for the list in the menu.
[[nodiscard]] std::vector<std::pair<QString, QString>> practiceKeys();

}  // namespace treadwell::practice_page
