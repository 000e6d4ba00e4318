#include "app/desktop/fill/columns.h"

#include "app/desktop/widgets/pad_plan.h"

#include <QGridLayout>
#include <algorithm>
#include <utility>

namespace treadwell::fill {

namespace {

constexpr int kSpacing = 4;
constexpr double kSideMillimetres = 66;
constexpr double kStackedSideMillimetres = 130;  // of height: the entries, and some lines below them
constexpr double kFootMillimetres = 32;          // axis, labels and a curve that can still be read

}  // namespace

Columns::Columns(const settings::Appearance& appearance, QWidget* middle, QWidget* side, QWidget* foot)
    : m_appearance{appearance}, m_middle{middle}, m_side{side}, m_foot{foot} {
    setObjectName(QStringLiteral("rest"));
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setWidgetResizable(true);
    auto* page = new QWidget;
    m_grid = new QGridLayout{page};
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setSpacing(kSpacing);
    m_grid->setColumnStretch(0, 1);
    setWidget(page);
    connect(&appearance, &settings::Appearance::changed, this, &Columns::place);
    place();
}

void Columns::place() {
    const int side = m_appearance.pixels(kSideMillimetres);
    // Room for the plan of the pad as it lies: upright it would push the pictures out of sight.
    const int middle =
        std::max(m_middle->minimumSizeHint().width(), widgets::PadPlan::lyingWidth(m_appearance));
    const int room = viewport()->width() - kSpacing - middle;
    const bool stacked = room < side;
    m_side->setMinimumWidth(stacked ? 0 : side);
    m_side->setMaximumWidth(stacked ? QWIDGETSIZE_MAX : side);
    m_side->setMinimumHeight(stacked ? m_appearance.pixels(kStackedSideMillimetres) : 0);
    m_foot->setMinimumHeight(stacked ? 0 : m_appearance.pixels(kFootMillimetres));
    if (std::exchange(m_stacked, stacked) == stacked) return;
    for (QWidget* widget : {m_middle, m_side, m_foot}) m_grid->removeWidget(widget);
    m_grid->addWidget(m_middle, 0, 0);
    m_grid->addWidget(m_side, stacked ? 1 : 0, stacked ? 0 : 1);
    m_grid->addWidget(m_foot, stacked ? 2 : 1, 0, 1, stacked ? 1 : 2);
    m_grid->setRowStretch(0, 3);
    m_grid->setRowStretch(1, stacked ? 0 : 1);
    m_grid->setRowStretch(2, stacked ? 1 : 0);
}

void Columns::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    place();
}

}  // namespace treadwell::fill
