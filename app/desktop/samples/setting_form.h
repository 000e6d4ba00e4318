#pragma once

#include "app/desktop/samples/form.h"

namespace treadwell::samples_page {

/// How the harvester cuts from now on; what is left at nothing stays as it was.
class SettingForm final : public Form {
    Q_OBJECT

  public:
    explicit SettingForm(const settings::Appearance& appearance, QWidget* parent = nullptr);

  protected:
    [[nodiscard]] Result<entries::Body> body() const override;
    [[nodiscard]] std::optional<QString> notYet() const override;
    [[nodiscard]] QString running() const override;
    void retranslate() override;

  private:
    widgets::QuantitySpinBox* m_length;
    widgets::QuantitySpinBox* m_gap;
    widgets::QuantitySpinBox* m_height;
    QComboBox* m_processor;
};

}  // namespace treadwell::samples_page
