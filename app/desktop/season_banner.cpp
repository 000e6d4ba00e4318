#include "app/desktop/season_banner.h"

#include "app/desktop/fill/say.h"
#include "app/desktop/fill/sheet.h"
#include "app/desktop/settings/dates.h"
#include "app/desktop/widgets/caution_mark.h"
#include "app/desktop/widgets/step_field.h"
#include "core/journal/codes.h"

#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace treadwell {

SeasonBanner::SeasonBanner(desk::SeasonDesk& desk, const settings::Appearance& appearance, QWidget* parent)
    : QFrame{parent},
      m_desk{desk},
      m_appearance{appearance},
      m_takeOver{new QPushButton},
      m_clockIsRight{new QPushButton},
      m_day{new widgets::DayEdit},
      m_time{new widgets::ClockEdit{QTime{}}},
      m_daySteps{new widgets::StepField{appearance, m_day}},
      m_timeSteps{new widgets::StepField{appearance, m_time}},
      m_timeIsThis{new QPushButton},
      m_rightTime{makeTime()} {
    setProperty("edged", true);
    auto* grid = new QGridLayout{this};
    grid->setContentsMargins(8, 4, 4, 4);
    grid->setColumnStretch(1, 1);
    int row = 0;
    for (Line& line : m_lines) {
        line = {new QLabel, new QLabel};
        line.text->setTextFormat(Qt::PlainText);
        line.text->setWordWrap(true);
        line.text->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
        grid->addWidget(line.mark, row, 0);
        grid->addWidget(line.text, row, 1);
        ++row;
    }
    grid->addWidget(m_takeOver, 0, 2);
    grid->addWidget(m_clockIsRight, row - 1, 2);
    grid->addWidget(m_rightTime, row, 1, 1, 2);
    setTabOrder(m_timeIsThis, m_clockIsRight);  // no blank of a keyboard answers by chance
    m_takeOver->setObjectName(QStringLiteral("takeOver"));
    connect(m_takeOver, &QPushButton::clicked, this, [this] {
        m_refusal.reset();
        m_asked = m_desk.takeOver();
        refresh();
    });
    connect(&desk, &desk::SeasonDesk::failed, this, [this](desk::Ticket ticket, const Error& error) {
        if (ticket != m_asked) return;
        m_refusal = error;
        refresh();
    });
    m_clockIsRight->setObjectName(QStringLiteral("clockIsRight"));
    connect(m_clockIsRight, &QPushButton::clicked, &desk, [&desk] { desk.clockIsRight(); });
    connect(m_timeIsThis, &QPushButton::clicked, this, &SeasonBanner::tellTime);
    connect(&desk, &desk::SeasonDesk::changed, this, &SeasonBanner::refresh);
    connect(&appearance, &settings::Appearance::changed, this, &SeasonBanner::refresh);
    refresh();
}

QWidget* SeasonBanner::makeTime() {
    m_day->setObjectName(QStringLiteral("rightDay"));
    m_time->setObjectName(QStringLiteral("rightTime"));
    m_timeIsThis->setObjectName(QStringLiteral("timeIsThis"));
    auto* made = new QWidget;
    auto* layout = new QHBoxLayout{made};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addStretch(1);
    layout->addWidget(m_daySteps);
    layout->addWidget(m_timeSteps);
    layout->addWidget(m_timeIsThis);
    return made;
}

/// By the farm's wall clock, which is what a watch shows there.
void SeasonBanner::tellTime() {
    const FarmZone& zone = m_desk.season()->zone();
    const Instant midnight = zone.startOf(settings::localDayOf(m_day->date()));
    m_desk.clockIsRight(fill::instantAt(zone, midnight, m_time->time()));
}

void SeasonBanner::refreshClock() {
    const auto& question = m_desk.standing().clockQuestion;
    if (question && !m_clockIsAsked) {
        // It is not earlier than the last entry, most likely, and not much later.
        const FarmZone& zone = m_desk.season()->zone();
        const auto* last = std::get_if<Instant>(&question->arguments.back());
        const Instant from = last == nullptr ? m_desk.now() : *last;
        m_day->setDate(settings::dateOf(zone.dayOf(from)));
        m_time->setTime(fill::wallTime(zone, from));
    }
    m_clockIsAsked = question.has_value();
    m_rightTime->setVisible(m_clockIsAsked);
    setButton(m_clockIsRight, tr("The clock is right"), m_clockIsAsked);
    setButton(m_timeIsThis, tr("It is this time"), m_clockIsAsked);
    m_day->setLocale(m_appearance.units().locale());
    m_daySteps->setName(tr("The right day"));
    m_timeSteps->setName(tr("The right time"));
}

QStringList SeasonBanner::lines() const {
    QStringList shown;
    for (const Line& line : m_lines) {
        if (!line.text->text().isEmpty()) shown += line.text->text();
    }
    return shown;
}

void SeasonBanner::show(const Line& line, const QString& text) {
    const int side = fontMetrics().height();
    line.mark->setPixmap(
        widgets::cautionMark(m_appearance.theme()).pixmap(QSize{side, side}, devicePixelRatioF()));
    line.text->setText(text);
    line.mark->setVisible(!text.isEmpty());
    line.text->setVisible(!text.isEmpty());
}

void SeasonBanner::setButton(QPushButton* button, const QString& text, bool needed) {
    button->setText(text);
    button->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    button->setVisible(needed);
}

void SeasonBanner::refresh() {
    const session::Standing& standing = m_desk.standing();
    const fill::Speech speech{m_appearance.units(), m_desk.season()->zone()};
    const auto said = [&speech](const std::optional<Message>& message) {
        return message ? speech.say(*message) : QString{};
    };
    const bool waits = standing.unsaved > 0;
    const bool isFree = standing.readOnlyReason && standing.readOnlyReason->code == code::journalLeft;
    if (!isFree) m_refusal.reset();
    const QString reason = m_refusal ? speech.say(*m_refusal) : said(standing.readOnlyReason);
    // While entries wait, why they do says why the file cannot be written too.
    show(m_lines[0], waits ? QString{} : reason);
    show(m_lines[1], waits ? tr("%n waiting. %1", "entries that could not be recorded, and why",
                                static_cast<int>(standing.unsaved))
                                 .arg(said(standing.unsavedReason))
                           : QString{});
    show(m_lines[2], said(standing.clockQuestion));
    setButton(m_takeOver, tr("Write here from now on"), isFree && !waits);
    refreshClock();
    const QStringList all = lines();
    setVisible(!all.isEmpty());
    setAccessibleName(tr("How the season's file stands"));
    setAccessibleDescription(all.join(u'\n'));
}

void SeasonBanner::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) refresh();
}

}  // namespace treadwell
