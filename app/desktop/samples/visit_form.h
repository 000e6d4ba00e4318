#pragma once

#include "app/desktop/samples/form.h"

class QDateEdit;
class QSpinBox;

namespace treadwell::widgets {
class StepField;
}

namespace treadwell::samples_page {

/// What was seen of a standing field: its dates, hybrid, milk line and the dry matter of whole plants. What
/// is left at nothing stays as it was seen before.
class VisitForm final : public Form {
    Q_OBJECT

  public:
    explicit VisitForm(const settings::Appearance& appearance, QWidget* parent = nullptr);

  protected:
    [[nodiscard]] Result<entries::Body> body() const override;
    [[nodiscard]] std::optional<QString> notYet() const override;
    [[nodiscard]] QString running() const override;
    void clear() override;
    void retranslate() override;

  private:
    widgets::QuantitySpinBox* m_dryMatter;
    widgets::QuantitySpinBox* m_milkLine;
    QDateEdit* m_planted;
    QDateEdit* m_silked;
    QSpinBox* m_hybridDays;
    widgets::StepField* m_hybridField;
};

}  // namespace treadwell::samples_page
