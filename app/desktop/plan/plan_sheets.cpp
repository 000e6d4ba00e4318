#include "app/desktop/plan/plan_sheets.h"

#include "app/desktop/widgets/quantity_spin_box.h"

#include <QLineEdit>
#include <QPushButton>

namespace treadwell::plan_page {

PlanSheet::PlanSheet(const settings::Appearance& appearance, const QString& title, plan::Inputs inputs,
                     std::vector<Number> numbers, std::function<QString(const Error&)> say, QWidget* parent)
    : Sheet{appearance, title, parent},
      m_inputs{std::move(inputs)},
      m_numbers{std::move(numbers)},
      m_say{std::move(say)} {
    for (const Number& number : m_numbers) {
        auto* box = new widgets::QuantitySpinBox{appearance, number.dimension};
        box->setSiRange(number.lowest, number.highest);
        box->setSi(number.get(m_inputs));
        box->setObjectName(QStringLiteral("planNumber%1").arg(m_boxes.size()));
        addRow(number.name, box);
        m_boxes.push_back(box);
    }
    addDecision(tr("Take it over"));
}

void PlanSheet::addName() {
    m_name = new QLineEdit{QString::fromStdString(m_inputs.name)};
    m_name->setObjectName(QStringLiteral("planName"));
    addRow(tr("Name of the plan"), m_name);
}

void PlanSheet::record() {
    plan::Inputs inputs = m_inputs;
    for (std::size_t i = 0; i < m_boxes.size(); ++i) {
        m_boxes[i]->interpretText();
        if (m_boxes[i]->isWrong()) return refuse(m_boxes[i]->echo());
        m_numbers[i].set(inputs, m_boxes[i]->si());
    }
    if (m_name != nullptr) {
        if (m_name->text().trimmed().isEmpty()) return refuse(tr("A plan has a name."));
        inputs.name = m_name->text().trimmed().toStdString();
    }
    if (const auto valid = plan::validate(inputs); !valid) return refuse(m_say(valid.error()));
    emit changed(inputs);
    accept();
}

}  // namespace treadwell::plan_page
