#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/review/feed_sheet.h"

#include <QWidget>
#include <vector>

class QDateEdit;
class QFormLayout;
class QLabel;

namespace treadwell::widgets {
class QuantitySpinBox;
}

namespace treadwell::face_page {

/// What is to be fed, asked and not recorded. What is left at nothing is taken from what was fed so far.
class PlanBox final : public QWidget {
    Q_OBJECT

  public:
    explicit PlanBox(const settings::Appearance& appearance, QWidget* parent = nullptr);
    [[nodiscard]] review::FeedQuestion question() const;

  signals:
    void edited();

  protected:
    void changeEvent(QEvent* event) override;

  private:
    widgets::QuantitySpinBox* addBox(const char* name, Dimension dimension, double highest);
    QDateEdit* addDate(const char* name);
    void addRow(QWidget* widget);
    void retranslate();
    void followLook();

    const settings::Appearance& m_appearance;
    QFormLayout* m_form;
    std::vector<std::pair<QLabel*, QWidget*>> m_rows;
    QDateEdit* m_from;
    widgets::QuantitySpinBox* m_perDay;
    widgets::QuantitySpinBox* m_dryMatter;
    widgets::QuantitySpinBox* m_loss;
    widgets::QuantitySpinBox* m_face;
    QDateEdit* m_week;
    QLabel* m_hint;
};

}  // namespace treadwell::face_page
