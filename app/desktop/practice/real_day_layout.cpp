// Where the parts of a day that is looked back on stand.
#include "app/desktop/practice/bands_view.h"
#include "app/desktop/practice/coverage_view.h"
#include "app/desktop/practice/place_form.h"
#include "app/desktop/practice/real_day_view.h"
#include "app/desktop/samples/lines_panel.h"
#include "app/desktop/widgets/page_change.h"

#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QTableWidget>
#include <QVBoxLayout>

namespace treadwell::practice_page {

namespace {

constexpr int kSideWidth = 340;
constexpr int kLayerRows = 4;

}  // namespace

void RealDayView::makeChoices() {
    auto* layout = new QVBoxLayout{m_choices};
    layout->setContentsMargins(0, 0, 0, 0);
    m_silo->setObjectName(QStringLiteral("daySilo"));
    m_day->setObjectName(QStringLiteral("dayChoice"));
    m_list->setObjectName(QStringLiteral("dayTracks"));
    m_tractor->setObjectName(QStringLiteral("dayTractor"));
    m_attach->setObjectName(QStringLiteral("dayAttach"));
    m_lesson->setObjectName(QStringLiteral("dayLesson"));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    for (QComboBox* box : {m_silo, m_day, m_tractor})
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    for (QWidget* widget : std::initializer_list<QWidget*>{m_silo, m_day, m_tractor, m_attach, m_lesson})
        widget->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    for (QWidget* widget :
         std::initializer_list<QWidget*>{m_silo, m_day, m_list, m_tractor, m_attach, m_place, m_lesson})
        layout->addWidget(widget, widget == m_list ? 1 : 0);
}

QWidget* RealDayView::makeMiddle() {
    auto* middle = new QWidget;
    auto* layout = new QVBoxLayout{middle};
    layout->setContentsMargins(0, 0, 0, 0);
    m_state->setObjectName(QStringLiteral("dayState"));
    m_state->setWordWrap(true);
    m_layers->setObjectName(QStringLiteral("dayLayers"));
    m_layers->setColumnCount(5);
    m_layers->verticalHeader()->hide();
    m_layers->verticalHeader()->setDefaultSectionSize(m_appearance.pixels(settings::kControlMillimetres));
    m_layers->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_layers->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_layers->setSelectionMode(QAbstractItemView::SingleSelection);
    m_layers->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_layers->setMinimumHeight(kLayerRows * m_layers->verticalHeader()->defaultSectionSize());
    layout->addWidget(m_state);
    layout->addWidget(m_map, 3);
    layout->addWidget(m_layers, 2);
    return middle;
}

QWidget* RealDayView::makeSide() {
    auto* inner = new QWidget;
    auto* layout = new QVBoxLayout{inner};
    layout->setContentsMargins(0, 0, 4, 0);
    m_opinionText->setObjectName(QStringLiteral("dayOpinion"));
    for (QLabel* label : {m_opinionTitle, m_opinionText}) label->setWordWrap(true);
    for (QWidget* widget :
         std::initializer_list<QWidget*>{m_wrong, m_files, m_opinionTitle, m_bands, m_opinionText})
        layout->addWidget(widget);
    layout->addStretch(1);
    auto* side = widgets::scrolled(inner);
    side->setFixedWidth(kSideWidth);
    return side;
}

}  // namespace treadwell::practice_page
