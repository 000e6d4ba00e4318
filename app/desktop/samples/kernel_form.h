#pragma once

#include "app/desktop/samples/form.h"

class QSpinBox;

namespace treadwell::widgets {
class StepField;
}

namespace treadwell::samples_page {

/// Kernels of one load: counted in a cup, or the processing score by the screen of 4.75 mm and starch.
class KernelForm final : public Form {
    Q_OBJECT

  public:
    explicit KernelForm(const settings::Appearance& appearance, QWidget* parent = nullptr);

  protected:
    [[nodiscard]] Result<entries::Body> body() const override;
    [[nodiscard]] QString running() const override;
    void retranslate() override;

  private:
    [[nodiscard]] bool byScore() const;
    [[nodiscard]] entries::KernelTest test() const;
    void showWay();

    QComboBox* m_way;
    QComboBox* m_material;
    QSpinBox* m_count;
    widgets::StepField* m_countField;
    widgets::QuantitySpinBox* m_whole;
    widgets::QuantitySpinBox* m_coarse;
    widgets::QuantitySpinBox* m_wholeStarch;
    widgets::QuantitySpinBox* m_coarseStarch;
};

}  // namespace treadwell::samples_page
