#include "app/desktop/fill/entry_panel.h"

#include "app/desktop/widgets/caution_mark.h"
#include "app/desktop/widgets/quantity_spin_box.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace treadwell::fill {

EntryPanel::EntryPanel(const settings::Appearance& appearance, QWidget* parent)
    : QFrame{parent},
      m_appearance{appearance},
      m_title{new QLabel},
      m_mark{new QLabel},
      m_last{new QLabel},
      m_fields{new QVBoxLayout},
      m_record{new QPushButton} {
    setProperty("edged", true);
    auto* layout = new QVBoxLayout{this};
    auto* last = new QHBoxLayout;
    last->addWidget(m_mark, 0, Qt::AlignTop);
    last->addWidget(m_last, 1);
    layout->addWidget(m_title);
    layout->addLayout(last);
    layout->addLayout(m_fields);
    layout->addWidget(m_record);
    layout->setSpacing(4);
    m_fields->setSpacing(4);
    m_last->setTextFormat(Qt::PlainText);
    m_last->setWordWrap(true);
    m_mark->hide();
    m_record->setEnabled(false);
    connect(m_record, &QPushButton::clicked, this, &EntryPanel::tryToRecord);
    connect(&appearance, &settings::Appearance::changed, this, &EntryPanel::follow);
    follow();
}

void EntryPanel::follow() {
    QFont bold = font();
    bold.setBold(true);
    m_title->setFont(bold);
    const int side = fontMetrics().height();
    m_mark->setPixmap(
        widgets::cautionMark(m_appearance.theme()).pixmap(QSize{side, side}, devicePixelRatioF()));
    m_record->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
}

void EntryPanel::setLast(const QString& text, bool overdue) {
    m_last->setText(text);
    m_mark->setVisible(overdue);
    setAccessibleDescription(text);
}

void EntryPanel::setWords(const QString& title, const QString& button) {
    m_title->setText(title);
    m_record->setText(button);
    setAccessibleName(title);
}

bool EntryPanel::isEdited() const {
    return m_record->isEnabled();
}

void EntryPanel::watch(widgets::QuantityField* field) {
    widgets::QuantitySpinBox* box = &field->box();
    m_boxes.push_back(box);
    const auto wake = [this] { m_record->setEnabled(true); };
    connect(box, &widgets::QuantitySpinBox::siEdited, this, wake);
    connect(box->findChild<QLineEdit*>(), &QLineEdit::textEdited, this, wake);
    connect(box->findChild<QLineEdit*>(), &QLineEdit::returnPressed, this, [this] {
        if (m_record->isEnabled()) tryToRecord();
    });
}

void EntryPanel::suggest(widgets::QuantityField* field, Amount amount) {
    if (!isEdited()) field->box().setSi(m_appearance.units().rounded(amount).si);
}

void EntryPanel::tryToRecord() {
    for (const widgets::QuantitySpinBox* box : m_boxes) {
        if (!box->isVisible() || !box->isWrong()) continue;
        emit refused(tr("%1 is not recorded: %2").arg(box->accessibleName(), box->echo()));
        return;
    }
    m_record->setEnabled(false);
    record();
}

void EntryPanel::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

}  // namespace treadwell::fill
