#include "app/desktop/widgets/step_field.h"

#include <QHBoxLayout>
#include <QToolButton>

namespace treadwell::widgets {

namespace {

constexpr int kStepSeconds = 5 * 60;

QToolButton* stepButton(const settings::Appearance& look, QChar sign) {
    auto* button = new QToolButton;
    button->setText(QString{sign});
    button->setAutoRepeat(true);
    const int side = look.pixels(settings::kControlMillimetres);
    button->setFixedSize(side, side);
    return button;
}

}  // namespace

StepField::StepField(const settings::Appearance& look, QAbstractSpinBox* box, QWidget* parent)
    : QWidget{parent}, m_box{box} {
    auto* less = stepButton(look, u'−');
    auto* more = stepButton(look, u'+');
    m_less = less;
    m_more = more;
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(less);
    row->addWidget(box, 1);
    row->addWidget(more);
    box->setButtonSymbols(QAbstractSpinBox::NoButtons);
    box->setMinimumHeight(look.pixels(settings::kControlMillimetres));
    connect(less, &QToolButton::clicked, box, &QAbstractSpinBox::stepDown);
    connect(more, &QToolButton::clicked, box, &QAbstractSpinBox::stepUp);
}

void StepField::setName(const QString& name) {
    m_box->setAccessibleName(name);
    m_less->setAccessibleName(tr("%1: less").arg(name));
    m_more->setAccessibleName(tr("%1: more").arg(name));
}

ClockEdit::ClockEdit(const QTime& time, QWidget* parent) : QTimeEdit{time, parent} {
    setDisplayFormat(QStringLiteral("HH:mm"));
}

void ClockEdit::stepBy(int steps) {
    setTime(time().addSecs(steps * kStepSeconds));
}

DayEdit::DayEdit(QWidget* parent) : QDateEdit{parent} {
    setDisplayFormat(QStringLiteral("ddd d MMM yyyy"));
}

void DayEdit::stepBy(int steps) {
    setDate(date().addDays(steps));
}

}  // namespace treadwell::widgets
