#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/practice/run.h"

#include <QWidget>

class QComboBox;
class QGridLayout;
class QLabel;
class QPushButton;

namespace treadwell::widgets {
class QuantitySpinBox;
class StepField;
}  // namespace treadwell::widgets

namespace treadwell::practice_page {

/// How the trainee packs: what may be chosen before the lesson and changed while it runs. What the lesson is
/// not about, such as lights by day, is not asked.
class PlanForm final : public QWidget {
    Q_OBJECT

  public:
    explicit PlanForm(const settings::Appearance& appearance, QWidget* parent = nullptr);

    /// Begins anew with the usual plan.
    void setLesson(const practice::Lesson& lesson);
    /// The tractors that wait are on their way, or none wait.
    void setCalled(std::optional<Seconds> at);
    [[nodiscard]] practice::Plan plan() const;

  signals:
    void edited();
    void callAsked();

  protected:
    void changeEvent(QEvent* event) override;

  private:
    widgets::QuantitySpinBox* addBox(const char* name, Dimension dimension, double lowest, double highest);
    QPushButton* addSwitch(const char* name);
    void retranslate();
    void followUnits();
    void tellCalled();

    const settings::Appearance& m_appearance;
    std::optional<Seconds> m_called;
    QGridLayout* m_grid;
    std::vector<QLabel*> m_titles;
    widgets::QuantitySpinBox* m_layer;
    QLabel* m_patternTitle;
    QComboBox* m_pattern;
    widgets::QuantitySpinBox* m_speed;
    widgets::QuantitySpinBox* m_nearWall;
    widgets::QuantitySpinBox* m_ramp;
    QPushButton* m_oneWay;
    QPushButton* m_stopForPeople;
    QPushButton* m_lights;
    QPushButton* m_call;
};

}  // namespace treadwell::practice_page
