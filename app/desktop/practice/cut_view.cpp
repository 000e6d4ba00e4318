#include "app/desktop/practice/cut_view.h"

#include "app/desktop/widgets/density_ramp.h"

#include <QPainter>
#include <algorithm>

namespace treadwell::practice_page {

namespace {

constexpr double kLeastHeight_m = 0.30;  // so that the first layer does not fill the drawing
constexpr int kScaleSteps = 24;
constexpr QSize kLeastCut{420, 150};

}  // namespace

CutView::CutView(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent}, m_appearance{appearance} {
    setObjectName(QStringLiteral("practiceCut"));
    connect(&appearance, &settings::Appearance::changed, this, qOverload<>(&QWidget::update));
}

void CutView::setCut(const PadCut& cut, DryDensity wanted) {
    m_cut = cut;
    m_wanted = wanted;
    setAccessibleDescription(sentence());
    update();
}

void CutView::clear() {
    m_cut.reset();
    update();
}

QString CutView::sentence() const {
    if (!m_cut) return {};
    return tr("Cut %1 from the back wall, up to %2 high")
        .arg(m_appearance.units().text(m_cut->at),
             m_appearance.units().text(Length::fromMetres(highest_m())));
}

QSize CutView::minimumSizeHint() const {
    return kLeastCut;
}

double CutView::highest_m() const {
    double highest = 0.0;
    for (const auto& column : m_cut->columns) {
        if (!column.empty()) highest = std::max(highest, column.back().upper_m);
    }
    return highest;
}

QRectF CutView::area() const {
    const double row = fontMetrics().height();
    const settings::DisplayUnits& units = m_appearance.units();
    const double left =
        22.0 + fontMetrics().horizontalAdvance(units.text(Length::fromMetres(kLeastHeight_m)));
    const double right = 42.0 + fontMetrics().horizontalAdvance(units.text(widgets::DensityRamp::kDensest));
    return QRectF{left, row + 6.0, width() - left - right, height() - 2.0 * row - 16.0};
}

void CutView::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const settings::Theme& theme = m_appearance.theme();
    painter.fillRect(rect(), theme.panel);
    if (!m_cut) return;
    painter.setPen(theme.ink);
    painter.drawText(QRect{8, 2, width() - 16, fontMetrics().height()}, Qt::AlignLeft | Qt::AlignVCenter,
                     sentence());
    paintCrop(painter);
    paintAxes(painter);
    paintScale(painter);
}

void CutView::paintCrop(QPainter& painter) const {
    const QRectF area = this->area();
    const settings::Theme& theme = m_appearance.theme();
    const widgets::DensityRamp ramp{theme.look};
    const double perMetre = area.height() / std::max(kLeastHeight_m, 1.1 * highest_m());
    const double wide = area.width() / static_cast<double>(m_cut->columns.size());
    for (std::size_t i = 0; i < m_cut->columns.size(); ++i) {
        for (const passes::CellAtRest& cell : m_cut->columns[i]) {
            if (cell.density_kg_m3 <= 0.0) continue;
            const QRectF place{area.left() + static_cast<double>(i) * wide,
                               area.bottom() - cell.upper_m * perMetre, wide,
                               (cell.upper_m - cell.lower_m) * perMetre};
            const DryDensity density = DryDensity::fromSi(cell.density_kg_m3);
            painter.fillRect(place.adjusted(0, 0, 0.5, 0.5), ramp.colour(density));
            painter.setPen(QPen{QColor{QRgb{theme.bold ? 0x000000U : 0x3c3830U}}, 0.7});
            painter.drawLine(place.topLeft(), place.topRight());
        }
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(QBrush{theme.outline, theme.bold ? Qt::SolidPattern : Qt::Dense3Pattern});
    painter.drawRect(QRectF{area.left() - 8.0, area.top(), 8.0, area.height()});
    painter.drawRect(QRectF{area.right(), area.top(), 8.0, area.height()});
    painter.setPen(QPen{theme.outline, theme.lineWidth + 1.0});
    painter.drawLine(area.bottomLeft(), area.bottomRight());
}

void CutView::paintAxes(QPainter& painter) const {
    const settings::DisplayUnits& units = m_appearance.units();
    const QRectF area = this->area();
    const double row = fontMetrics().height();
    painter.setPen(m_appearance.theme().quietInk);
    constexpr int kTicks = 4;
    for (int i = 0; i <= kTicks; ++i) {
        const Length across = m_cut->width * (static_cast<double>(i) / kTicks);
        const double x = area.left() + area.width() * i / kTicks;
        painter.drawLine(QPointF{x, area.bottom()}, QPointF{x, area.bottom() + 4.0});
        painter.drawText(QRectF{x - 50.0, area.bottom() + 4.0, 100.0, row}, Qt::AlignCenter,
                         i == kTicks ? units.text(across) : units.numberText(across.amount()));
    }
    const Length top = Length::fromMetres(std::max(kLeastHeight_m, 1.1 * highest_m()));
    painter.drawText(QRectF{0.0, area.top(), area.left() - 14.0, row}, Qt::AlignRight | Qt::AlignVCenter,
                     units.text(top));
}

void CutView::paintScale(QPainter& painter) const {
    using widgets::DensityRamp;
    const settings::DisplayUnits& units = m_appearance.units();
    const settings::Theme& theme = m_appearance.theme();
    const QRectF area = this->area();
    const QRectF bar{area.right() + 18.0, area.top(), 12.0, area.height()};
    const DensityRamp ramp{theme.look};
    const double step = bar.height() / kScaleSteps;
    const auto densityAt = [](double part) {
        return DensityRamp::kLoosest + (DensityRamp::kDensest - DensityRamp::kLoosest) * part;
    };
    for (int i = 0; i < kScaleSteps; ++i) {
        painter.fillRect(QRectF{bar.left(), bar.bottom() - (i + 1) * step, bar.width(), step + 0.5},
                         ramp.colour(densityAt((i + 0.5) / kScaleSteps)));
    }
    const double row = fontMetrics().height();
    const auto label = [&](double y, const QString& text) {
        painter.drawText(QRectF{bar.right() + 8.0, y - row / 2.0, width() - bar.right() - 8.0, row},
                         Qt::AlignLeft | Qt::AlignVCenter, text);
    };
    painter.setPen(theme.ink);
    label(bar.top(), units.text(DensityRamp::kDensest));
    label(bar.bottom(), units.numberText(DensityRamp::kLoosest.amount()));
    const double part = (m_wanted - DensityRamp::kLoosest) / (DensityRamp::kDensest - DensityRamp::kLoosest);
    const double y = bar.bottom() - std::clamp(part, 0.0, 1.0) * bar.height();
    painter.setPen(QPen{theme.target, theme.lineWidth + 1.0});
    painter.drawLine(QPointF{bar.left() - 3.0, y}, QPointF{bar.right() + 3.0, y});
    if (y - bar.top() > row && bar.bottom() - y > row)
        label(y, tr("goal %1").arg(units.numberText(m_wanted.amount())));
}

}  // namespace treadwell::practice_page
