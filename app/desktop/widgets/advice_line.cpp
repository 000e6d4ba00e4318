#include "app/desktop/widgets/advice_line.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace treadwell::widgets {

AdviceLine::AdviceLine(const settings::Appearance& appearance, QWidget* parent)
    : QFrame{parent},
      m_appearance{appearance},
      m_sentence{new QLabel},
      m_accept{new QPushButton},
      m_decline{new QPushButton} {
    setProperty("edged", true);
    auto* layout = new QHBoxLayout{this};
    layout->addWidget(m_sentence, 1);
    layout->addWidget(m_accept);
    layout->addWidget(m_decline);
    m_sentence->setTextFormat(Qt::PlainText);
    m_sentence->setWordWrap(true);
    connect(m_accept, &QPushButton::clicked, this, &AdviceLine::accepted);
    connect(m_decline, &QPushButton::clicked, this, &AdviceLine::declined);
    connect(&appearance, &settings::Appearance::changed, this, &AdviceLine::refresh);
    refresh();
}

void AdviceLine::setAdvice(const QString& sentence) {
    m_text = sentence;
    m_toDecide = true;
    refresh();
}

void AdviceLine::setSilent(const std::optional<QString>& why) {
    m_text = why;
    m_toDecide = false;
    refresh();
}

void AdviceLine::refresh() {
    m_sentence->setText(m_text.value_or(tr("No advice now.")));
    m_accept->setText(tr("Do it"));
    m_accept->setAccessibleDescription(tr("Record that the advice is followed"));
    m_decline->setText(tr("Not now"));
    m_decline->setAccessibleDescription(tr("Record that the advice is declined"));
    const int gap = m_appearance.pixels(settings::kGapMillimetres);
    layout()->setSpacing(gap);
    for (QPushButton* button : {m_accept, m_decline}) {
        button->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
        // Kept in place while hidden, so that the sentence does not reflow when advice comes.
        QSizePolicy policy = button->sizePolicy();
        policy.setRetainSizeWhenHidden(true);
        button->setSizePolicy(policy);
        button->setVisible(m_toDecide);
    }
    setAccessibleName(tr("Advice"));
    setAccessibleDescription(m_sentence->text());
}

void AdviceLine::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) refresh();
}

}  // namespace treadwell::widgets
