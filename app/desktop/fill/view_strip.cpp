#include "app/desktop/fill/view_strip.h"

#include "app/desktop/fill/chop_entry.h"
#include "app/desktop/fill/fill_presenter.h"
#include "app/desktop/fill/heights_entry.h"
#include "app/desktop/fill/narrow.h"
#include "app/desktop/fill/section_presenter.h"
#include "app/desktop/plots/timeline_table.h"
#include "app/desktop/widgets/caution_mark.h"

#include <QButtonGroup>
#include <QEvent>
#include <QGridLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QScrollBar>
#include <QStackedWidget>
#include <QTableView>
#include <algorithm>
#include <utility>

namespace treadwell::fill {

namespace {

using namespace std::chrono_literals;

constexpr auto kAges = 1min;
constexpr int kButtonColumns = 2;
constexpr int kNarrowButtonColumns = 3;
constexpr double kHeightMillimetres = 32.0;
constexpr double kNarrowHeightMillimetres = 50.0;
constexpr int kButtonSpacing = 1;

std::size_t placeOf(View view) {
    return static_cast<std::size_t>(view);
}

}  // namespace

ViewStrip::ViewStrip(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent},
      m_appearance{appearance},
      m_row{new QBoxLayout{QBoxLayout::LeftToRight, this}},
      m_choice{new QGridLayout},
      m_stack{new QStackedWidget},
      m_timeline{new plots::Timeline{appearance}},
      m_section{new widgets::SectionView{appearance}},
      m_rows{new plots::TimelineTable{appearance, this}},
      m_table{new QTableView},
      m_heights{new HeightsEntry{appearance}},
      m_chop{new ChopEntry{appearance}} {
    m_row->setContentsMargins(0, 0, 0, 0);
    m_choice->setSpacing(kButtonSpacing);
    auto* group = new QButtonGroup{this};
    for (const View view : kViews) {
        auto* button = new QPushButton;
        button->setCheckable(true);
        group->addButton(button);
        connect(button, &QPushButton::clicked, this, [this, view] { choose(view); });
        m_buttons[placeOf(view)] = button;
    }
    m_row->addLayout(m_choice);
    m_row->addWidget(m_stack, 1);
    place();
    m_table->setModel(m_rows);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setTabKeyNavigation(false);  // Tab leaves it; the arrows move within
    for (QWidget* view : std::initializer_list<QWidget*>{m_timeline, m_section, m_table, m_heights, m_chop})
        m_stack->addWidget(view);
    connect(m_heights, &HeightsEntry::recorded, this, &ViewStrip::recordHeights);
    connect(m_heights, &HeightsEntry::refused, this, &ViewStrip::refused);
    connect(m_chop, &ChopEntry::recorded, this,
            [this](const entries::SieveTest& test) { emit proposed(test, tr("The sieve test")); });
    connect(m_chop, &ChopEntry::refused, this, &ViewStrip::refused);
    connect(&appearance, &settings::Appearance::changed, this, &ViewStrip::fitButtons);
    m_later.setSingleShot(true);
    connect(&m_later, &QTimer::timeout, this, &ViewStrip::show);
    retranslate();
    choose(View::timeline);
}

Speech ViewStrip::speech() const {
    return {m_appearance.units(), m_season->zone()};
}

void ViewStrip::retranslate() {
    const std::array names{tr("Time"), tr("Section"), tr("Table"), tr("Heights"), tr("Chop")};
    for (std::size_t i = 0; i < names.size(); ++i) m_buttons[i]->setText(names[i]);
    m_table->setAccessibleName(tr("The day as a table"));
    setAccessibleName(tr("Views of the filling"));
    fitButtons();
}

void ViewStrip::fitButtons() {
    for (QPushButton* button : m_buttons)
        button->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    m_table->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 6);
}

/// The buttons beside the view, or with little room, above it.
void ViewStrip::place() {
    const bool narrow = isNarrow(*this, m_appearance);
    if (std::exchange(m_narrow, narrow) == narrow) return;
    while (QLayoutItem* item = m_choice->takeAt(0)) delete item;
    const int columns = narrow ? kNarrowButtonColumns : kButtonColumns;
    int place = 0;
    for (QPushButton* button : m_buttons) {
        m_choice->addWidget(button, place / columns, place % columns);
        ++place;
    }
    m_choice->setRowStretch(static_cast<int>(kViews.size()) / kButtonColumns + 1, narrow ? 0 : 1);
    // The legend takes more lines there.
    m_timeline->setMinimumHeight(m_appearance.pixels(narrow ? kNarrowHeightMillimetres : kHeightMillimetres));
    m_row->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

QSize ViewStrip::minimumSizeHint() const {
    int widest = 0;
    for (const QPushButton* button : m_buttons) widest = std::max(widest, button->minimumSizeHint().width());
    return {std::max(kNarrowButtonColumns * (widest + kButtonSpacing), m_stack->minimumSizeHint().width()),
            m_row->totalMinimumSize().height()};
}

void ViewStrip::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    place();
}

void ViewStrip::choose(View view) {
    m_chosen = view;
    m_buttons[placeOf(view)]->setChecked(true);
    m_stack->setCurrentIndex(static_cast<int>(placeOf(view)));
    // Only what is in sight asks for room.
    for (int i = 0; i < m_stack->count(); ++i) {
        const auto policy = i == m_stack->currentIndex() ? QSizePolicy::Expanding : QSizePolicy::Ignored;
        m_stack->widget(i)->setSizePolicy(policy, policy);
    }
    if (view == View::heights) m_heights->takeFocus();
    m_shownSeason.reset();
    show();
}

void ViewStrip::startAnew() {
    m_shownSeason.reset();
    m_trace = {};
    m_timeline->showAll();
}

void ViewStrip::follow(const SeasonPointer& season, const density::Readings& readings) {
    m_season = season;
    m_readings = readings;
    const bool overdue = chopIsOverdue(*season, readings.rolling.at);
    QPushButton* chop = m_buttons[placeOf(View::chop)];
    chop->setIcon(overdue ? widgets::cautionMark(m_appearance.theme()) : QIcon{});
    chop->setAccessibleDescription(overdue ? tr("none sieved today") : QString{});
    // What is beside the page's numbers waits until those have been painted.
    if (isVisible()) m_later.start(0);
}

void ViewStrip::show() {
    if (!m_season || !isVisible()) return;
    const Instant now = m_readings.rolling.at;
    const bool young = now >= m_shownAt && now - m_shownAt < kAges;
    if (m_shownSeason == m_season && young) return;
    m_shownSeason = m_season;
    m_shownAt = now;
    const auto silo = m_season->farm().silos.find(m_readings.rolling.silo);
    switch (m_chosen) {
        case View::timeline:
        case View::table:
            return showDay();
        case View::section:
            return m_section->setSection(sectionAt(*m_season, m_readings, speech()));
        case View::heights:
            if (silo != m_season->farm().silos.end()) m_heights->setSilo(silo->second, *m_season, now);
            return;
        case View::chop:
            return m_chop->follow(*m_season, now);
    }
}

void ViewStrip::showDay() {
    const Instant now = m_readings.rolling.at;
    m_trace = traceAt(*m_season, m_readings.rolling.silo, now, m_trace);
    const plots::TimelineView view = timelineAt(m_trace, now);
    if (m_chosen == View::timeline) return m_timeline->setView(view);
    const QScrollBar* bar = m_table->verticalScrollBar();
    const bool live = bar->value() == bar->maximum();
    m_rows->setView(view);
    if (live) m_table->scrollToBottom();
}

void ViewStrip::recordHeights(std::vector<entries::HeightReading> readings) {
    if (!m_season) return;
    emit proposed(entries::HeightSurvey{m_readings.rolling.silo, std::move(readings)}, tr("The heights"));
}

void ViewStrip::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    m_later.start(0);
}

void ViewStrip::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::LanguageChange) return;
    retranslate();
    m_shownSeason.reset();
    m_later.start(0);
}

}  // namespace treadwell::fill
