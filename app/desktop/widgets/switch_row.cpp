#include "app/desktop/widgets/switch_row.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QToolButton>
#include <algorithm>

namespace treadwell::widgets {

namespace {

constexpr std::size_t kMostShown = 3;

QString plain(QString name) {
    return name.replace(QStringLiteral("&"), QStringLiteral("&&"));  // else it marks a shortcut
}

QString faceOf(const SwitchChoice& choice) {
    return plain(choice.detail.isEmpty() ? choice.name : choice.name + u'\n' + choice.detail);
}

}  // namespace

SwitchRow::SwitchRow(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent},
      m_appearance{appearance},
      m_row{new QHBoxLayout{this}},
      m_title{new QLabel},
      m_more{new QToolButton} {
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->addWidget(m_title);
    m_row->addWidget(m_more);
    m_more->setText(QString{u'▾'});
    m_more->setMenu(new QMenu{m_more});
    m_more->setPopupMode(QToolButton::InstantPopup);
    connect(&appearance, &settings::Appearance::changed, this, &SwitchRow::refresh);
    refresh();
}

void SwitchRow::setTitle(const QString& title) {
    m_title->setText(title);
    setAccessibleName(title);
    refresh();
}

void SwitchRow::setChoices(const std::vector<SwitchChoice>& choices) {
    if (choices == m_choices) return;  // a rebuilt row would lose the focus
    m_choices = choices;
    refresh();
}

void SwitchRow::select(const QString& key) {
    if (key == m_key) return;
    m_key = key;
    refresh();
}

void SwitchRow::selectNext() {
    if (m_choices.empty()) return;
    const auto at = std::find_if(m_choices.begin(), m_choices.end(),
                                 [this](const SwitchChoice& choice) { return choice.key == m_key; });
    const bool wraps = at == m_choices.end() || std::next(at) == m_choices.end();
    choose(QString{(wraps ? m_choices.begin() : std::next(at))->key});
}

void SwitchRow::choose(const QString& key) {
    select(key);
    emit chosen(m_key);
}

std::vector<const SwitchChoice*> SwitchRow::shown() const {
    std::vector<const SwitchChoice*> shown;
    for (const SwitchChoice& choice : m_choices) {
        if (shown.size() < kMostShown) {
            shown.push_back(&choice);
        } else if (choice.key == m_key) {
            shown.back() = &choice;
        }
    }
    return shown;
}

void SwitchRow::refresh() {
    const auto faces = shown();
    while (m_buttons.size() > faces.size()) {
        m_buttons.back()->deleteLater();
        m_buttons.back()->hide();
        m_buttons.pop_back();
    }
    while (m_buttons.size() < faces.size()) {
        auto* button = new QPushButton;
        button->setCheckable(true);
        m_row->insertWidget(m_row->count() - 1, button);
        connect(button, &QPushButton::clicked, this,
                [this, button] { choose(QString{button->property("key").toString()}); });
        m_buttons.push_back(button);
    }
    const int height = m_appearance.pixels(settings::kControlMillimetres);
    for (std::size_t i = 0; i < faces.size(); ++i) {
        m_buttons[i]->setText(faceOf(*faces[i]));
        m_buttons[i]->setProperty("key", faces[i]->key);
        m_buttons[i]->setChecked(faces[i]->key == m_key);
        m_buttons[i]->setMinimumHeight(height);
        m_buttons[i]->setAccessibleName(
            tr("%1: %2", "what is switched and to what").arg(m_title->text(), faces[i]->name));
    }
    m_more->menu()->clear();
    for (const SwitchChoice& choice : m_choices) {
        if (std::find(faces.begin(), faces.end(), &choice) != faces.end()) continue;
        QAction* action = m_more->menu()->addAction(plain(choice.name));
        connect(action, &QAction::triggered, this, [this, key = choice.key] { choose(key); });
    }
    QWidget* before = nullptr;
    for (QPushButton* button : m_buttons) {
        if (before != nullptr) setTabOrder(before, button);
        before = button;
    }
    if (before != nullptr) setTabOrder(before, m_more);
    m_more->setVisible(!m_more->menu()->isEmpty());
    m_more->setMinimumSize(height, height);
    m_more->setAccessibleName(tr("%1: more", "what is switched").arg(m_title->text()));
    m_row->setSpacing(m_appearance.pixels(1.0));
}

void SwitchRow::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) refresh();
}

}  // namespace treadwell::widgets
