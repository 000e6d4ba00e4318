#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/samples/harvest_order.h"
#include "core/season/season.h"

#include <QFrame>
#include <vector>

class QGridLayout;
class QLabel;
class QSpinBox;

namespace treadwell::widgets {
class QuantitySpinBox;
class StepField;
}  // namespace treadwell::widgets

namespace treadwell::samples_page {

class LinesPanel;

/// In which order the standing fields are best cut. What is cut in a day and what each field will yield are
/// asked here and recorded nowhere; the days of each field follow at once.
class OrderPanel final : public QFrame {
    Q_OBJECT

  public:
    explicit OrderPanel(const settings::Appearance& appearance, QWidget* parent = nullptr);

    /// Asks for the fields of which whole plants were sampled; what was typed for them stays.
    void follow(const season::Season& season, Instant now);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    struct Row {
        farm::FieldId field;
        QString name;
        samples::FieldToCut toCut;  ///< but for its mass
        QLabel* title;
        widgets::QuantitySpinBox* mass;
    };

    widgets::QuantitySpinBox* addBox();
    widgets::StepField* addDays(QSpinBox* days, const char* name);
    void place();
    void retranslate();
    void reckon();

    const settings::Appearance& m_appearance;
    samples::HarvestPlan m_plan;
    std::vector<Row> m_rows;
    QGridLayout* m_grid;
    widgets::QuantitySpinBox* m_capacity;
    QSpinBox* m_change;
    QSpinBox* m_rain;
    widgets::StepField* m_changeField;
    widgets::StepField* m_rainField;
    std::vector<QLabel*> m_titles;  ///< of the three
    LinesPanel* m_says;
};

}  // namespace treadwell::samples_page
