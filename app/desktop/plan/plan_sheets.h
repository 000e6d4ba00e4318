#pragma once

#include "app/desktop/fill/sheet.h"
#include "core/plan/inputs.h"

#include <functional>

class QLineEdit;

namespace treadwell::widgets {
class QuantitySpinBox;
}

namespace treadwell::plan_page {

/// One number of a plan: where it stands, in SI, and what it may be.
struct Number {
    QString name;
    Dimension dimension;
    double lowest;
    double highest;
    std::function<double(const plan::Inputs&)> get;
    std::function<void(plan::Inputs&, double)> set;
};

/// A part of a plan to be changed behind a touch: its numbers one below the other. What cannot be meant is
/// refused with its reason.
class PlanSheet final : public fill::Sheet {
    Q_OBJECT

  public:
    PlanSheet(const settings::Appearance& appearance, const QString& title, plan::Inputs inputs,
              std::vector<Number> numbers, std::function<QString(const Error&)> say, QWidget* parent);

    /// A row for the plan's own name, above the others' changes.
    void addName();

  signals:
    void changed(const treadwell::plan::Inputs& inputs);

  protected:
    void record() override;

  private:
    plan::Inputs m_inputs;
    std::vector<Number> m_numbers;
    std::function<QString(const Error&)> m_say;
    std::vector<widgets::QuantitySpinBox*> m_boxes;
    QLineEdit* m_name = nullptr;
};

[[nodiscard]] std::vector<Number> workNumbers();
[[nodiscard]] std::vector<Number> priceNumbers();
[[nodiscard]] std::vector<Number> sealingNumbers();
[[nodiscard]] std::vector<Number> feedingNumbers();
[[nodiscard]] std::vector<Number> fieldNumbers(std::size_t field);
[[nodiscard]] std::vector<Number> siloNumbers(std::size_t silo);
[[nodiscard]] std::vector<Number> tractorNumbers(std::size_t tractor);

}  // namespace treadwell::plan_page
