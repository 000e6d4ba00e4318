// Where the parts of the Practice page stand.
#include "app/desktop/practice/cut_view.h"
#include "app/desktop/practice/pad_view.h"
#include "app/desktop/practice/plan_form.h"
#include "app/desktop/practice/practice_page.h"
#include "app/desktop/practice/real_day_view.h"
#include "app/desktop/practice/trainee_bar.h"
#include "app/desktop/samples/lines_panel.h"
#include "app/desktop/widgets/choice_box.h"
#include "app/desktop/widgets/distribution_view.h"
#include "app/desktop/widgets/message_bar.h"
#include "app/desktop/widgets/page_change.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace treadwell::practice_page {

namespace {

constexpr std::array kPaces{1, 10, 30, 100, 1000};
constexpr int kUsualPace = 2;
constexpr int kLessonsWidth = 300;
constexpr int kPlanWidth = 340;

}  // namespace

void PracticePage::layOut() {
    auto* layout = new QVBoxLayout{this};
    auto* columns = new QHBoxLayout;
    layout->addWidget(m_messages);
    layout->addLayout(columns, 1);
    columns->addWidget(makeChoices());
    columns->addWidget(m_views, 1);
    auto* lesson = new QWidget;
    auto* both = new QHBoxLayout{lesson};
    both->setContentsMargins(0, 0, 0, 0);
    both->addWidget(makePad(), 1);
    both->addWidget(makePlan());
    m_views->addWidget(lesson);
    m_views->addWidget(m_real);
}

QWidget* PracticePage::makeChoices() {
    auto* side = new QWidget;
    auto* layout = new QVBoxLayout{side};
    layout->setContentsMargins(0, 0, 0, 0);
    auto* row = new QHBoxLayout;
    m_lessonsTab->setObjectName(QStringLiteral("practiceLessonsTab"));
    m_realTab->setObjectName(QStringLiteral("practiceRealTab"));
    for (QPushButton* tab : {m_lessonsTab, m_realTab}) {
        tab->setCheckable(true);
        tab->setAutoExclusive(true);
        tab->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
        row->addWidget(tab, 1);
    }
    m_lessonsTab->setChecked(true);
    m_choices->addWidget(makeLessons());
    m_choices->addWidget(m_real->choices());
    layout->addLayout(row);
    layout->addWidget(m_choices, 1);
    side->setFixedWidth(kLessonsWidth);
    return side;
}

QWidget* PracticePage::makeLessons() {
    auto* side = new QWidget;
    auto* layout = new QVBoxLayout{side};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_trainee);
    layout->addWidget(m_list, 1);
    layout->addWidget(m_story);
    auto* row = new QHBoxLayout;
    row->addWidget(m_open);
    row->addWidget(m_certificate);
    layout->addLayout(row);
    m_list->setObjectName(QStringLiteral("practiceLessons"));
    m_list->setWordWrap(true);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_story->setWordWrap(true);
    m_story->setTextFormat(Qt::PlainText);
    m_story->setObjectName(QStringLiteral("practiceStory"));
    m_open->setObjectName(QStringLiteral("practiceOpen"));
    m_certificate->setObjectName(QStringLiteral("practiceCertificate"));
    for (QPushButton* button : {m_open, m_certificate})
        button->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    return side;
}

QWidget* PracticePage::makePad() {
    auto* middle = new QWidget;
    auto* layout = new QVBoxLayout{middle};
    layout->setContentsMargins(0, 0, 0, 0);
    auto* head = new QHBoxLayout;
    head->addWidget(m_clock);
    head->addWidget(m_next, 1);
    auto* foot = new QHBoxLayout;
    foot->addWidget(m_go, 1);
    foot->addWidget(m_again);
    foot->addWidget(m_pace);
    layout->addLayout(head);
    layout->addWidget(m_pad, 3);
    layout->addWidget(m_cut, 2);
    layout->addWidget(m_hint);
    layout->addLayout(foot);
    m_clock->setObjectName(QStringLiteral("practiceClock"));
    m_next->setObjectName(QStringLiteral("practiceNext"));
    m_next->setWordWrap(true);
    m_hint->setWordWrap(true);
    m_go->setObjectName(QStringLiteral("practiceGo"));
    m_again->setObjectName(QStringLiteral("practiceAgain"));
    m_pace->setObjectName(QStringLiteral("practicePace"));
    m_go->setMinimumHeight(m_appearance.pixels(settings::kYardButtonMillimetres));
    for (QWidget* widget : {static_cast<QWidget*>(m_again), static_cast<QWidget*>(m_pace)})
        widget->setMinimumHeight(m_appearance.pixels(settings::kYardButtonMillimetres));
    for (const int pace : kPaces) m_pace->addItem(QString{}, pace);
    m_pace->setCurrentIndex(kUsualPace);
    return middle;
}

QWidget* PracticePage::makePlan() {
    auto* inner = new QWidget;
    auto* layout = new QVBoxLayout{inner};
    layout->setContentsMargins(0, 0, 4, 0);
    layout->addWidget(m_wrong);
    layout->addWidget(m_plan);
    layout->addWidget(m_density);
    layout->addWidget(m_parts);
    layout->addWidget(m_cautions);
    layout->addStretch(1);
    m_density->setMinimumHeight(m_density->minimumSizeHint().height());
    auto* side = widgets::scrolled(inner);
    side->setFixedWidth(kPlanWidth);
    return side;
}

}  // namespace treadwell::practice_page
