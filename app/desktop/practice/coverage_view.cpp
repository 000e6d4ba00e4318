#include "app/desktop/practice/coverage_view.h"

#include "app/desktop/practice/pad_marks.h"
#include "app/desktop/practice/walls.h"

#include <QEvent>
#include <QPainter>
#include <algorithm>

namespace treadwell::practice_page {

namespace {

constexpr double kGap = 8.0;
constexpr std::array kLegend{Certainty::enough, Certainty::unclear, Certainty::tooFew, Certainty::noTyre};

}  // namespace

CoverageView::CoverageView(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent}, m_appearance{appearance} {
    setObjectName(QStringLiteral("coverageMap"));
    connect(&appearance, &settings::Appearance::changed, this, qOverload<>(&QWidget::update));
    tell();
}

void CoverageView::setMap(const CoverageMap& map) {
    m_map = map;
    tell();
    update();
}

void CoverageView::clear() {
    m_map.reset();
    tell();
    update();
}

QString CoverageView::sentence() const {
    return m_map ? sentenceOf(*m_map) : tr("No track is laid.");
}

void CoverageView::tell() {
    setAccessibleName(tr("Passes over the layer"));
    setAccessibleDescription(sentence());
}

QSize CoverageView::minimumSizeHint() const {
    return kLeastPlan;
}

int CoverageView::legendHeight() const {
    return 2 * fontMetrics().height() + 12;
}

QRectF CoverageView::floorArea() const {
    const double length_m = m_map->shape.length.si(), width_m = m_map->shape.width.si();
    const double high = height() - 2.0 * kWall - legendHeight();
    const double scale = std::min((width() - kWall - 2.0) / length_m, high / width_m);
    return {double(kWall), kWall + 0.5 * (high - scale * width_m), scale * length_m, scale * width_m};
}

void CoverageView::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.fillRect(rect(), m_appearance.theme().ground);
    if (m_map) {
        paintColumns(painter);
        paintMarks(painter, m_appearance.theme(), m_map->marks, [this](const passes::Patch& place) {
            const QRectF area = floorArea();
            const double scale = area.width() / m_map->shape.length.si();
            return QRectF{area.left() + place.x0_m * scale, area.top() + place.y0_m * scale,
                          (place.x1_m - place.x0_m) * scale, (place.y1_m - place.y0_m) * scale};
        });
    }
    paintLegend(painter);
}

/// Shade and pattern both tell, so that it reads the same in grey: full, hatched, pale, empty with a dot.
void CoverageView::paintCell(QPainter& painter, const QRectF& place, Certainty certainty) const {
    const settings::Theme& theme = m_appearance.theme();
    QColor pale = theme.density;
    pale.setAlphaF(0.30F);
    painter.setPen(Qt::NoPen);
    switch (certainty) {
        case Certainty::absent:
            return;
        case Certainty::enough:
            return painter.fillRect(place, theme.density);
        case Certainty::unclear:
            painter.fillRect(place, theme.panel);
            return painter.fillRect(place, QBrush{theme.density, Qt::BDiagPattern});
        case Certainty::tooFew:
            return painter.fillRect(place, theme.bold ? QColor{QRgb{0xd0d0d0U}} : pale);
        case Certainty::noTyre:
            painter.fillRect(place, theme.panel);
            painter.setBrush(theme.ink);
            painter.drawEllipse(place.center(), 0.9, 0.9);
    }
}

void CoverageView::paintColumns(QPainter& painter) const {
    const settings::Theme& theme = m_appearance.theme();
    const QRectF area = floorArea();
    painter.fillRect(area, theme.ground);
    const std::size_t along = m_map->shape.along(), across = m_map->shape.across();
    const double wide = area.width() / static_cast<double>(along);
    const double high = area.height() / static_cast<double>(across);
    for (std::size_t row = 0; row < across; ++row) {
        // Neighbours that are the same are one rectangle, so that no seams show.
        for (std::size_t first = 0; first < along;) {
            const Certainty certainty = m_map->columns[row * along + first];
            std::size_t end = first + 1;
            const bool dotted = certainty == Certainty::noTyre;
            while (!dotted && end < along && m_map->columns[row * along + end] == certainty) ++end;
            const QRectF place{area.left() + static_cast<double>(first) * wide,
                               area.top() + static_cast<double>(row) * high,
                               static_cast<double>(end - first) * wide, high};
            const bool skipped = dotted && (row + first) % 2 == 1;
            if (skipped) {
                painter.fillRect(place, theme.panel);
            } else {
                paintCell(painter, place, certainty);
            }
            first = end;
        }
    }
    drawWalls(painter, area, theme);
}

/// In two rows of two.
void CoverageView::paintLegend(QPainter& painter) const {
    const settings::Theme& theme = m_appearance.theme();
    const double row = fontMetrics().height();
    const std::array names{tr("three passes or more, for certain"), tr("the positions do not tell"),
                           tr("fewer than three, for certain"), tr("no tyre")};
    for (std::size_t i = 0; i < kLegend.size(); ++i) {
        const double left = kWall + static_cast<double>(i % 2) * (width() - kWall) / 2.0;
        const double top = height() - legendHeight() + 6.0 + static_cast<double>(i / 2) * (row + 3.0);
        const QRectF box{left, top + 1.0, 1.6 * row, row - 2.0};
        paintCell(painter, box, kLegend[i]);
        painter.setPen(QPen{theme.outline, 1.0});
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(box);
        const QRectF text{box.right() + kGap, top, (width() - kWall) / 2.0 - box.width() - 2.0 * kGap, row};
        painter.setPen(theme.ink);
        painter.drawText(text, Qt::AlignLeft | Qt::AlignVCenter,
                         fontMetrics().elidedText(names[i], Qt::ElideRight, static_cast<int>(text.width())));
    }
}

void CoverageView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) tell();
}

}  // namespace treadwell::practice_page
