#include "app/desktop/fill/sheet.h"

#include "app/desktop/widgets/step_field.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>

namespace treadwell::fill {

Sheet::Sheet(const settings::Appearance& look, const QString& title, QWidget* parent)
    : QDialog{parent}, m_look{look}, m_form{new QFormLayout{this}}, m_refusal{new QLabel} {
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(title);
    m_refusal->setTextFormat(Qt::PlainText);
    m_refusal->setWordWrap(true);
    m_refusal->setObjectName(QStringLiteral("refusal"));
}

void Sheet::addRow(const QString& name, QWidget* widget) {
    widget->setMinimumHeight(m_look.pixels(settings::kControlMillimetres));
    if (widget->accessibleName().isEmpty()) widget->setAccessibleName(name);
    m_form->addRow(name, widget);
}

void Sheet::showRow(QWidget* widget, bool shown) {
    m_form->setRowVisible(widget, shown);
}

void Sheet::addStepRow(const QString& name, QAbstractSpinBox* box) {
    auto* field = new widgets::StepField{m_look, box};
    field->setName(name);
    addRow(name, field);
}

QPushButton* Sheet::addDecision(const QString& text) {
    m_form->addRow(m_refusal);
    auto* buttons = new QDialogButtonBox;
    QPushButton* record = buttons->addButton(text, QDialogButtonBox::AcceptRole);
    QPushButton* leave = buttons->addButton(tr("Leave it"), QDialogButtonBox::RejectRole);
    record->setObjectName(QStringLiteral("record"));
    for (QPushButton* button : {record, leave})
        button->setMinimumHeight(m_look.pixels(settings::kControlMillimetres));
    m_form->addRow(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, [this] { this->record(); });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    return record;
}

void Sheet::refuse(const QString& why) {
    m_refusal->setText(why);
    m_refusal->setAccessibleName(why);
}

QTime wallTime(const FarmZone& zone, Instant at) {
    const WallTime wall = zone.localTime(at);
    const auto ofDay = wall - std::chrono::floor<std::chrono::days>(wall);
    return QTime::fromMSecsSinceStartOfDay(
        static_cast<int>(std::chrono::duration_cast<std::chrono::milliseconds>(ofDay).count()));
}

Instant instantAt(const FarmZone& zone, Instant on, const QTime& time) {
    const auto day = std::chrono::floor<std::chrono::days>(zone.localTime(on));
    return zone.instantOf(day + std::chrono::milliseconds{time.msecsSinceStartOfDay()}).at;
}

}  // namespace treadwell::fill
