#include "app/desktop/widgets/advice_line.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <utility>

namespace treadwell::widgets {

AdviceLine::AdviceLine(const settings::Appearance& appearance, QWidget* parent)
    : QFrame{parent},
      m_appearance{appearance},
      m_sentence{new QLabel},
      m_grid{new QGridLayout{this}},
      m_try{new QPushButton},
      m_accept{new QPushButton},
      m_decline{new QPushButton} {
    setProperty("edged", true);
    m_grid->setColumnStretch(0, 1);
    placeButtons();
    m_sentence->setTextFormat(Qt::PlainText);
    m_sentence->setWordWrap(true);
    m_try->setObjectName(QStringLiteral("whatIf"));
    m_accept->setObjectName(QStringLiteral("doIt"));
    m_decline->setObjectName(QStringLiteral("notNow"));
    m_try->setCheckable(true);
    connect(m_try, &QPushButton::clicked, this, &AdviceLine::trialAsked);
    connect(m_accept, &QPushButton::clicked, this, &AdviceLine::accepted);
    connect(m_decline, &QPushButton::clicked, this, &AdviceLine::declined);
    connect(&appearance, &settings::Appearance::changed, this, &AdviceLine::refresh);
    refresh();
}

void AdviceLine::setAdvice(const QString& sentence) {
    m_text = sentence;
    m_toDecide = true;
    m_trying = false;
    refresh();
}

void AdviceLine::setTrial(const QString& sentence, bool ready) {
    m_text = sentence;
    m_toDecide = ready;
    m_trying = true;
    refresh();
}

void AdviceLine::setSilent(const std::optional<QString>& why) {
    m_text = why;
    m_toDecide = false;
    m_trying = false;
    refresh();
}

void AdviceLine::refresh() {
    m_sentence->setText(m_text.value_or(tr("No advice now.")));
    m_try->setText(tr("What if"));
    m_try->setAccessibleDescription(tr("Tractors and layer are tried, and nothing is recorded"));
    m_try->setChecked(m_trying);
    m_accept->setText(tr("Do it"));
    m_accept->setAccessibleDescription(tr("Move the tractors so, and record the decision"));
    m_decline->setText(tr("Not now"));
    m_decline->setAccessibleDescription(tr("Record that the advice is declined"));
    const int gap = m_appearance.pixels(settings::kGapMillimetres);
    m_grid->setSpacing(gap);
    m_try->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    for (QPushButton* button : {m_accept, m_decline}) {
        button->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
        // Kept in place while hidden, so that the sentence does not reflow when advice comes.
        QSizePolicy policy = button->sizePolicy();
        policy.setRetainSizeWhenHidden(true);
        button->setSizePolicy(policy);
        button->setVisible(m_toDecide && (button == m_accept || !m_trying));
    }
    setAccessibleName(tr("Advice"));
    setAccessibleDescription(m_sentence->text());
}

void AdviceLine::placeButtons() {
    constexpr int kSentenceParts = 2;  // the sentence needs as much again as the buttons
    int wide = 0;
    for (const QPushButton* button : {m_try, m_accept, m_decline})
        wide += button->sizeHint().width() + m_appearance.pixels(settings::kGapMillimetres);
    const bool below = width() < kSentenceParts * wide;
    if (std::exchange(m_below, below) == below) return;
    while (QLayoutItem* item = m_grid->takeAt(0)) delete item;
    m_grid->addWidget(m_sentence, 0, 0, 1, below ? 4 : 1);
    int column = 1;
    for (QPushButton* button : {m_try, m_accept, m_decline})
        m_grid->addWidget(button, below ? 1 : 0, column++);
}

void AdviceLine::resizeEvent(QResizeEvent* event) {
    QFrame::resizeEvent(event);
    placeButtons();
}

void AdviceLine::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) refresh();
}

}  // namespace treadwell::widgets
