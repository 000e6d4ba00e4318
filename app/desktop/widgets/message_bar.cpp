#include "app/desktop/widgets/message_bar.h"

#include "app/desktop/widgets/caution_mark.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <algorithm>

namespace treadwell::widgets {

MessageBar::MessageBar(const settings::Appearance& appearance, QWidget* parent)
    : QFrame{parent},
      m_appearance{appearance},
      m_mark{new QLabel},
      m_text{new QLabel},
      m_rest{new QLabel},
      m_putAway{new QPushButton} {
    setProperty("edged", true);
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(8, 0, 0, 0);
    layout->addWidget(m_mark);
    layout->addWidget(m_text, 1);
    layout->addWidget(m_rest);
    layout->addWidget(m_putAway);
    m_text->setTextFormat(Qt::PlainText);
    m_text->setWordWrap(true);
    m_text->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    connect(m_putAway, &QPushButton::clicked, this, &MessageBar::putAway);
    connect(&appearance, &settings::Appearance::changed, this, &MessageBar::refresh);
    refresh();
}

void MessageBar::post(Weight weight, const QString& text) {
    const auto same = std::find_if(m_messages.begin(), m_messages.end(), [&](const Message& message) {
        return message.weight == weight && message.text == text;
    });
    Message message{weight, text, 1};
    if (same != m_messages.end()) {
        message.count = same->count + 1;
        m_messages.erase(same);
    }
    const auto behind = std::find_if(m_messages.begin(), m_messages.end(),
                                     [&](const Message& other) { return other.weight > weight; });
    m_messages.insert(behind, std::move(message));
    refresh();
}

QString MessageBar::shownText() const {
    return m_messages.empty() ? QString{} : m_text->text();
}

void MessageBar::putAway() {
    if (!m_messages.empty()) m_messages.pop_back();
    refresh();
}

void MessageBar::refresh() {
    m_putAway->setText(tr("Put away"));
    m_putAway->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    setAccessibleName(tr("Messages"));
    setVisible(!m_messages.empty());
    if (m_messages.empty()) return;
    const Message& shown = m_messages.back();
    const int side = fontMetrics().height() * 3 / 2;
    m_mark->setPixmap(cautionMark(m_appearance.theme()).pixmap(QSize{side, side}, devicePixelRatioF()));
    m_mark->setFixedSize(side, side);
    m_mark->setVisible(shown.weight != Weight::note);
    QString text = shown.text;
    if (shown.weight == Weight::error) text = tr("Error: %1").arg(text);
    if (shown.count > 1) text = tr("%1 (%n times)", "how often a message came", shown.count).arg(text);
    m_text->setText(text);
    const int behind = waiting() - 1;
    m_rest->setText(behind > 0 ? tr("%n more", "messages waiting behind the one shown", behind) : QString{});
    setAccessibleDescription(text);
}

void MessageBar::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) refresh();
}

}  // namespace treadwell::widgets
