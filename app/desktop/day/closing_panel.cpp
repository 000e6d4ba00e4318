#include "app/desktop/day/closing_panel.h"

#include "app/desktop/day/step_row.h"
#include "app/desktop/widgets/choice_box.h"
#include "core/review/codes.h"

#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

namespace treadwell::day_page {

namespace {

constexpr int kLinesOfWords = 3;

QLabel* wrapping() {
    auto* label = new QLabel;
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

}  // namespace

ClosingPanel::ClosingPanel(const settings::Appearance& look, QWidget* parent)
    : QWidget{parent},
      m_appearance{look},
      m_title{new QLabel},
      m_reason{wrapping()},
      m_open{nullptr},
      m_rows{new QVBoxLayout},
      m_handTitle{new QLabel},
      m_words{new QPlainTextEdit},
      m_nextTitle{new QLabel},
      m_next{new widgets::ChoiceBox{look}},
      m_hand{new QPushButton},
      m_byTitle{new QLabel},
      m_by{new widgets::ChoiceBox{look}},
      m_hint{wrapping()},
      m_close{new QPushButton},
      m_closed{nullptr},
      m_copies{wrapping()},
      m_whyTitle{wrapping()},
      m_why{new QLineEdit},
      m_reopen{new QPushButton} {
    auto* layout = new QVBoxLayout{this};
    layout->addWidget(m_title);
    layout->addWidget(m_reason);
    layout->addWidget(m_open = makeOpen());
    layout->addWidget(m_closed = makeClosed());
    layout->addStretch(1);
    m_reason->setObjectName(QStringLiteral("closingReason"));
    m_open->hide();
    m_closed->hide();
    connect(m_hand, &QPushButton::clicked, this, &ClosingPanel::handOver);
    connect(m_close, &QPushButton::clicked, this, &ClosingPanel::close);
    connect(m_reopen, &QPushButton::clicked, this, &ClosingPanel::reopen);
    connect(m_why, &QLineEdit::returnPressed, this, &ClosingPanel::reopen);
    connect(m_words, &QPlainTextEdit::textChanged, this, &ClosingPanel::follow);
    connect(m_by, &QComboBox::currentTextChanged, this, &ClosingPanel::follow);
    connect(&look, &settings::Appearance::changed, this, &ClosingPanel::followLook);
    followLook();
    retranslate();
}

QWidget* ClosingPanel::makeOpen() {
    auto* open = new QWidget;
    auto* layout = new QVBoxLayout{open};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(m_rows);
    m_words->setObjectName(QStringLiteral("handOverWords"));
    m_words->setTabChangesFocus(true);
    m_words->setFixedHeight(fontMetrics().lineSpacing() * kLinesOfWords + 16);
    m_handTitle->setBuddy(m_words);
    layout->addWidget(m_handTitle);
    layout->addWidget(m_words);
    const auto addBox = [layout](QLabel* title, QComboBox* box, const char* name) {
        box->setEditable(true);
        box->setObjectName(QLatin1String{name});
        box->setInsertPolicy(QComboBox::NoInsert);
        title->setBuddy(box);
        auto* row = new QHBoxLayout;
        row->addWidget(title);
        row->addWidget(box, 1);
        layout->addLayout(row);
    };
    addBox(m_nextTitle, m_next, "nextHolder");
    m_hand->setObjectName(QStringLiteral("handOver"));
    layout->addWidget(m_hand);
    addBox(m_byTitle, m_by, "closesBy");
    m_hint->setObjectName(QStringLiteral("closingHint"));
    layout->addWidget(m_hint);
    m_close->setObjectName(QStringLiteral("closeDay"));
    layout->addWidget(m_close);
    return open;
}

QWidget* ClosingPanel::makeClosed() {
    auto* closed = new QWidget;
    auto* layout = new QVBoxLayout{closed};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_copies);
    layout->addWidget(m_whyTitle);
    m_copies->setObjectName(QStringLiteral("copies"));
    m_why->setObjectName(QStringLiteral("reopenReason"));
    m_whyTitle->setBuddy(m_why);
    layout->addWidget(m_why);
    m_reopen->setObjectName(QStringLiteral("reopenDay"));
    layout->addWidget(m_reopen);
    return closed;
}

void ClosingPanel::setDay(const desk::SeasonDesk& desk, LocalDay date) {
    if (m_day != date) {
        m_day = date;
        dropSteps();
        clearTexts();
    }
    m_now = desk.now();
    fillPeople(desk);
    const auto closing = review::closingOf(*desk.season(), date, m_now);
    const season::Day* day = desk.season()->day(date);
    const bool closed = day != nullptr && day->closed;
    // A close writes times, and asks about times of this clock.
    const bool asks = desk.standing().clockQuestion.has_value();
    m_open->setVisible(closing && !asks);
    m_closed->setVisible(closed && !asks);
    m_open->setEnabled(desk.standing().writable);
    m_closed->setEnabled(desk.standing().writable);
    m_reason->setVisible(!closing || asks);
    if (asks) {
        dropSteps();
        return m_reason->setText(tr("Say first, at the top, whether the clock is right."));
    }
    if (closing) return showOpen(desk, *closing);
    m_reason->setText(fill::Speech{m_appearance.units(), desk.season()->zone()}.say(closing.error().message));
    if (closed) m_closedBy = day->closed->entry;
}

void ClosingPanel::showOpen(const desk::SeasonDesk& desk, const review::Closing& closing) {
    m_closing = closing;
    const season::Season& season = *desk.season();
    const fill::Speech speech{m_appearance.units(), season.zone()};
    setSteps(stepsOf(season, closing, desk.people(), speech),
             {season, *season.day(closing.entry.day), closing.happened});
    follow();
}

void ClosingPanel::setCopies(const QString& text) {
    m_copies->setText(text);
}

void ClosingPanel::dropSteps() {
    for (StepRow* row : std::exchange(m_steps, {})) {
        row->hide();
        row->deleteLater();
    }
}

/// Rows of points that are still there stay, and with them what was typed.
void ClosingPanel::setSteps(std::vector<Step> steps, const StepContext& context) {
    std::vector<StepRow*> rows;
    for (Step& step : steps) {
        const auto same = std::ranges::find_if(m_steps, [&](const StepRow* row) {
            return row != nullptr && row->step().key == step.key &&
                   row->step().rows.size() == step.rows.size();
        });
        if (same != m_steps.end()) {
            (*same)->setQuestion(step.question);
            rows.push_back(std::exchange(*same, nullptr));
            continue;
        }
        auto* row = new StepRow{m_appearance, std::move(step), context};
        connect(row, &StepRow::answered, this, &ClosingPanel::answered);
        connect(row, &StepRow::refused, this, &ClosingPanel::refused);
        connect(row, &StepRow::leftOpen, this, &ClosingPanel::follow);
        rows.push_back(row);
    }
    for (StepRow* gone : m_steps) {
        if (gone == nullptr) continue;
        gone->hide();
        gone->deleteLater();
    }
    m_steps = std::move(rows);
    while (QLayoutItem* item = m_rows->takeAt(0)) delete item;
    for (StepRow* row : m_steps) m_rows->addWidget(row);
}

void ClosingPanel::fillPeople(const desk::SeasonDesk& desk) {
    const auto fill = [&](QComboBox* box, const QString& chosen) {
        box->clear();
        for (const auto& [id, name] : desk.people()) box->addItem(QString::fromStdString(name));
        box->setCurrentIndex(-1);
        box->setEditText(chosen);
    };
    if (m_people == desk.people() && m_by->count() > 0) return;
    m_people = desk.people();
    fill(m_next, m_next->currentText());
    const QString by = m_by->currentText();
    fill(m_by, by.isEmpty() ? QString::fromStdString(desk.holder().value_or("")) : by);
}

void ClosingPanel::clearTexts() {
    m_words->clear();
    m_next->setEditText({});
    m_why->clear();
}

void ClosingPanel::follow() {
    const auto open = std::ranges::count_if(m_steps, [](const StepRow* row) { return !row->isLeftOpen(); });
    const bool named = !m_by->currentText().trimmed().isEmpty();
    m_hand->setEnabled(!m_words->toPlainText().trimmed().isEmpty());
    m_close->setEnabled(open == 0 && named);
    if (open > 0) {
        m_hint->setText(
            tr("%n point(s) to see to: answer each, or leave it open.", "", static_cast<int>(open)));
    } else {
        m_hint->setText(named ? tr("What is left open stands on the sheet.") : tr("Say who closes the day."));
    }
}

void ClosingPanel::handOver() {
    const QString words = m_words->toPlainText().trimmed();
    emit handedOver({entries::HandOver{words.toStdString()}, m_closing.happened, {}},
                    m_next->currentText().trimmed());
}

/// Words that were not handed over yet go with the day.
void ClosingPanel::close() {
    std::vector<session::Proposal> proposals;
    const QString words = m_words->toPlainText().trimmed();
    if (!words.isEmpty())
        proposals.push_back({entries::HandOver{words.toStdString()}, m_closing.happened, {}});
    proposals.push_back({m_closing.entry, m_closing.happened, {}});
    emit closed(proposals, m_by->currentText().trimmed());
}

void ClosingPanel::reopen() {
    const QString why = m_why->text().trimmed();
    if (why.isEmpty()) {
        emit refused(tr("Say why the day is opened again: it is a correction and stands in the history."));
        return;
    }
    if (m_closedBy) emit reopened({entries::VoidEntry{why.toStdString()}, m_now, m_closedBy});
}

void ClosingPanel::retranslate() {
    m_title->setText(tr("The day's close"));
    m_handTitle->setText(tr("For the next shift"));
    m_words->setAccessibleName(m_handTitle->text());
    m_nextTitle->setText(tr("Takes over"));
    m_next->setAccessibleName(m_nextTitle->text());
    m_hand->setText(tr("Hand over"));
    m_byTitle->setText(tr("Closes it"));
    m_by->setAccessibleName(m_byTitle->text());
    m_close->setText(tr("Close the day"));
    m_whyTitle->setText(tr("A closed day is changed by a correction alone. Why is it opened again?"));
    m_why->setAccessibleName(m_whyTitle->text());
    m_reopen->setText(tr("Open it again"));
    // Answers are made in the language of the moment.
    dropSteps();
    follow();
}

void ClosingPanel::followLook() {
    QFont bold = font();
    bold.setBold(true);
    for (QLabel* title : {m_title, m_handTitle}) title->setFont(bold);
    for (QWidget* control : std::initializer_list<QWidget*>{m_next, m_hand, m_by, m_why, m_reopen})
        control->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    m_close->setMinimumHeight(m_appearance.pixels(settings::kYardButtonMillimetres));
}

void ClosingPanel::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

}  // namespace treadwell::day_page
