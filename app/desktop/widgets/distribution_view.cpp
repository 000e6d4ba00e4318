#include "app/desktop/widgets/distribution_view.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <utility>

namespace treadwell::widgets {

namespace {

constexpr int kMarkRows = 3;       // target, porosity, saturation: a row each, so that none covers another
constexpr double kBracket = 16.0;  // height of the band's row
constexpr double kTailShown = 0.004;
// Of what lies at the limit; its height makes the area right, and it is wide enough not to flatten the curve.
constexpr double kNarrowestAtom = 8.0;
constexpr double kWidestAtom = 24.0;
constexpr int kMostTicks = 7;

// 1, 2 or 5 times a power of ten, so that the span has at most kMostTicks of it.
double tickStep(double span) {
    const double raw = span / kMostTicks;
    const double power = std::pow(10.0, std::floor(std::log10(raw)));
    for (const double factor : {1.0, 2.0, 5.0}) {
        if (raw <= factor * power) return factor * power;
    }
    return 10.0 * power;
}

double shownOf(const settings::Appearance& appearance, DryDensity density) {
    return appearance.units().shown(density.amount());
}

DryDensity densityAt(const settings::Appearance& appearance, double shown) {
    return DryDensity::fromSi(appearance.units().fromShown(Dimension::dryDensity, shown).si);
}

}  // namespace

DistributionView::DistributionView(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent}, m_appearance{appearance} {
    static const bool kInstalled = [] {
        QAccessible::installFactory(&AccessibleDistribution::make);
        return true;
    }();
    Q_UNUSED(kInstalled);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&appearance, &settings::Appearance::changed, this, qOverload<>(&QWidget::update));
}

void DistributionView::setView(const GaugeView& view) {
    m_view = view;
    if (QAccessible::isActive() && density() != nullptr) {
        QAccessibleValueChangeEvent event{this, shownOf(m_appearance, density()->density.median())};
        QAccessible::updateAccessibility(&event);
    }
    update();
}

QSize DistributionView::minimumSizeHint() const {
    return {320, fontMetrics().height() * (kMarkRows + 1) + 60};
}

DensityAxis DistributionView::axis() const {
    const double row = fontMetrics().height();
    DensityAxis axis;
    axis.area = QRectF{rect()}.adjusted(row, row * kMarkRows, -row, -(row + kBracket));
    // The usual span of silage; it widens for what lies outside, so that it seldom moves.
    DryDensity low = DryDensity::fromKilogramsPerCubicMetre(100);
    DryDensity high = DryDensity::fromKilogramsPerCubicMetre(300);
    if (const GaugeDensity* shown = density()) {
        low = std::min(low, shown->density.quantile(kTailShown));
        high = std::max({high, shown->density.quantile(1.0 - kTailShown), shown->target,
                         shown->atPorosity.value_or(high), shown->density.limit()});
    }
    const double first = shownOf(m_appearance, low);
    const double last = shownOf(m_appearance, high);
    const double step = tickStep(last - first);
    axis.low = std::floor(first / step) * step;
    axis.high = std::ceil((last + 0.25 * step) / step) * step;
    return axis;
}

std::vector<double> DistributionView::ticks() const {
    const DensityAxis axis = this->axis();
    const double step = tickStep(axis.high - axis.low);
    std::vector<double> ticks;
    for (double n = std::ceil(axis.low / step - 1e-9); n * step <= axis.high + 1e-9 * step; n += 1.0)
        ticks.push_back(n * step);
    return ticks;
}

void DistributionView::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), m_appearance.theme().panel);
    const GaugeDensity* shown = density();
    if (shown == nullptr) {
        painter.setPen(m_appearance.theme().ink);
        const int margin = m_appearance.pixels(settings::kGapMillimetres);
        painter.drawText(rect().adjusted(margin, margin, -margin, -margin),
                         Qt::AlignCenter | Qt::TextWordWrap, std::get<QString>(m_view));
        return;
    }
    paintLimit(painter, *shown);
    paintCurve(painter, *shown);
    paintAxis(painter);
    paintBand(painter, *shown);
    paintMarks(painter, *shown);
}

void DistributionView::paintCurve(QPainter& painter, const GaugeDensity& shown) const {
    const settings::Theme& theme = m_appearance.theme();
    const DensityAxis axis = this->axis();
    const double limit = axis.x(shownOf(m_appearance, shown.density.limit()));
    const double perPixel = (axis.high - axis.low) / axis.area.width();
    const auto chanceFrom = [&](double x) {
        const double at = axis.low + (x - axis.area.left()) * perPixel;
        return shown.density.chanceOfAtLeast(densityAt(m_appearance, at)).fraction();
    };
    std::vector<double> heights;  // chance a pixel
    for (double x = axis.area.left(); x + 1.0 <= std::min(limit, axis.area.right()); x += 1.0) {
        heights.push_back(chanceFrom(x) - chanceFrom(x + 1.0));
    }
    const double highest = heights.empty() ? 0.0 : *std::max_element(heights.begin(), heights.end());
    const double cut = shown.density.chanceOfAtLeast(shown.density.limit()).fraction();
    const double atomWidth = std::clamp(cut / std::max(highest, 1e-9), kNarrowestAtom, kWidestAtom);
    const double atLimit = cut / atomWidth;
    const double scale = axis.area.height() / std::max({highest, atLimit, 1e-9});

    QPainterPath curve{axis.area.bottomLeft()};
    for (std::size_t i = 0; i < heights.size(); ++i) {
        curve.lineTo(axis.area.left() + static_cast<double>(i) + 0.5,
                     axis.area.bottom() - heights[i] * scale);
    }
    curve.lineTo(std::min(limit, axis.area.right()), axis.area.bottom());
    curve.closeSubpath();
    if (atLimit * scale >= 1.0) {
        curve.addRect(limit - atomWidth, axis.area.bottom() - atLimit * scale, atomWidth, atLimit * scale);
        curve.setFillRule(Qt::WindingFill);
    }
    const double target = axis.x(shownOf(m_appearance, shown.target));
    painter.setPen(QPen{theme.density, theme.lineWidth});
    painter.setBrush(theme.densityFill);
    painter.drawPath(curve);
    painter.save();
    painter.setClipRect(QRectF{target, 0.0, width() - target, axis.area.bottom()});
    painter.setBrush(theme.density);
    painter.drawPath(curve);
    painter.restore();
}

void DistributionView::paintLimit(QPainter& painter, const GaugeDensity& shown) const {
    const settings::Theme& theme = m_appearance.theme();
    const DensityAxis axis = this->axis();
    const double limit = axis.x(shownOf(m_appearance, shown.density.limit()));
    if (limit >= axis.area.right()) return;
    const QRectF beyond{limit, axis.area.top(), axis.area.right() - limit, axis.area.height()};
    painter.fillRect(beyond, QBrush{theme.outline, Qt::BDiagPattern});
    painter.setPen(QPen{theme.saturation, theme.lineWidth});
    painter.drawLine(beyond.topLeft(), beyond.bottomLeft());
}

void DistributionView::paintAxis(QPainter& painter) const {
    const settings::Theme& theme = m_appearance.theme();
    const DensityAxis axis = this->axis();
    const double row = fontMetrics().height();
    const double top = axis.area.bottom() + kBracket;
    const std::vector<double> ticks = this->ticks();
    const bool whole = ticks.size() < 2 || ticks[1] - ticks[0] >= 1.0;
    const QLocale& locale = m_appearance.units().locale();
    painter.setPen(QPen{theme.outline, theme.lineWidth});
    painter.drawLine(axis.area.bottomLeft(), axis.area.bottomRight());
    for (const double value : ticks) {
        const double x = axis.x(value);
        painter.setPen(QPen{theme.outline, theme.lineWidth});
        painter.drawLine(QPointF{x, axis.area.bottom()}, QPointF{x, axis.area.bottom() + 4.0});
        painter.setPen(theme.quietInk);
        painter.drawText(QRectF{x - 40.0, top, 80.0, row}, Qt::AlignCenter,
                         locale.toString(value, 'f', whole ? 0 : 1));
    }
}

void DistributionView::paintBand(QPainter& painter, const GaugeDensity& shown) const {
    const settings::Theme& theme = m_appearance.theme();
    const DensityAxis axis = this->axis();
    const double low = axis.x(shownOf(m_appearance, shown.density.low80()));
    const double high = axis.x(shownOf(m_appearance, shown.density.high80()));
    const double median = axis.x(shownOf(m_appearance, shown.density.median()));
    const double y = axis.area.bottom() + 0.6 * kBracket;
    painter.setPen(QPen{theme.ink, theme.lineWidth + 0.5});
    painter.drawLine(QPointF{low, y}, QPointF{high, y});
    for (const double end : {low, high}) painter.drawLine(QPointF{end, y - 5.0}, QPointF{end, y + 5.0});
    painter.setBrush(theme.ink);
    painter.drawPolygon(
        QPolygonF{{median, y - 6.0}, {median + 5.0, y}, {median, y + 6.0}, {median - 5.0, y}});
}

void DistributionView::paintMarks(QPainter& painter, const GaugeDensity& shown) const {
    struct Mark {
        DryDensity at;
        QString text;
        QColor colour;
        Qt::PenStyle style;
        int row;
    };
    const settings::Theme& theme = m_appearance.theme();
    const settings::DisplayUnits& units = m_appearance.units();
    std::vector<Mark> marks{{shown.target, tr("target %1").arg(units.numberText(shown.target.amount())),
                             theme.target, Qt::SolidLine, 0}};
    if (shown.atPorosity) {
        marks.push_back({*shown.atPorosity,
                         tr("porosity asked %1").arg(units.numberText(shown.atPorosity->amount())),
                         theme.porosity, Qt::DashLine, 1});
    }
    marks.push_back({shown.density.limit(),
                     tr("saturated %1").arg(units.numberText(shown.density.limit().amount())),
                     theme.saturation, Qt::DotLine, 2});
    const DensityAxis axis = this->axis();
    const double row = fontMetrics().height();
    for (const Mark& mark : marks) {
        const double x = axis.x(shownOf(m_appearance, mark.at));
        const QLineF line{x, row * mark.row, x, axis.area.bottom()};
        painter.setPen(QPen{theme.panel, theme.lineWidth + 3.5});  // so that it stands out from the curve too
        painter.drawLine(line);
        painter.setPen(QPen{mark.colour, theme.lineWidth + 0.5, mark.style});
        painter.drawLine(line);
    }
    for (const Mark& mark : marks) {
        const double x = axis.x(shownOf(m_appearance, mark.at));
        const double textWidth = fontMetrics().horizontalAdvance(mark.text) + 8.0;
        const double left = x + textWidth + 2.0 <= width() ? x + 2.0 : x - 2.0 - textWidth;
        const QRectF place{left, row * mark.row, textWidth, row};
        painter.fillRect(place, theme.panel);
        painter.setPen(mark.colour);
        painter.drawText(place, Qt::AlignCenter, mark.text);
        if (mark.row == kMarkRows - 1) paintTitle(painter, left);
    }
}

/// On the left of the row of the saturation limit, which is always far to the right, and over the lines that
/// cross it; the unit alone where there is no room for more.
void DistributionView::paintTitle(QPainter& painter, double end) const {
    const settings::Theme& theme = m_appearance.theme();
    const double row = fontMetrics().height();
    const QString unit = m_appearance.units().symbol(Dimension::dryDensity);
    QString title = tr("dry-matter density, %1").arg(unit);
    if (row + fontMetrics().horizontalAdvance(title) + row > end) title = unit;
    const QRectF place{row, (kMarkRows - 1) * row, fontMetrics().horizontalAdvance(title) + 4.0, row};
    painter.fillRect(place, theme.panel);
    painter.setPen(theme.quietInk);
    painter.drawText(place, Qt::AlignLeft | Qt::AlignVCenter, title);
}

}  // namespace treadwell::widgets
