#include "app/desktop/practice/bands_view.h"

#include <QEvent>
#include <QPainter>
#include <algorithm>

namespace treadwell::practice_page {

namespace {

constexpr int kWidth = 300;
constexpr double kBar = 10.0;

}  // namespace

BandsView::BandsView(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent}, m_appearance{appearance} {
    setObjectName(QStringLiteral("dayBands"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&appearance, &settings::Appearance::changed, this, [this] {
        tell();
        update();
    });
}

void BandsView::setBands(std::vector<Band> bands, DryDensity target) {
    m_bands = std::move(bands);
    m_target = target;
    tell();
    updateGeometry();
    update();
}

void BandsView::tell() {
    setAccessibleName(tr("Simulation and regression"));
    setAccessibleDescription(sentence());
}

QString BandsView::lineOf(const Band& band) const {
    const settings::DisplayUnits& units = m_appearance.units();
    return QStringLiteral("%1, %2: %3 (%4–%5)")
        .arg(band.name, band.simulated ? tr("simulation") : tr("regression"),
             units.numberText(band.density.median().amount()),
             units.numberText(band.density.low80().amount()),
             units.numberText(band.density.high80().amount()));
}

QString BandsView::sentence() const {
    QStringList parts;
    for (const Band& band : m_bands) parts << lineOf(band);
    return parts.join(u'\n');
}

int BandsView::rowHeight() const {
    return fontMetrics().height() + static_cast<int>(kBar) + 8;
}

QSize BandsView::sizeHint() const {
    return {kWidth, static_cast<int>(m_bands.size()) * rowHeight() + 4};
}

void BandsView::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_bands.empty()) return;
    double low = m_target.si(), high = low;
    for (const Band& band : m_bands) {
        low = std::min(low, band.density.low80().si());
        high = std::max(high, band.density.high80().si());
    }
    const double room = 0.05 * (high - low) + 1.0;
    low -= room;
    high += room;
    const settings::Theme& theme = m_appearance.theme();
    const double target = (m_target.si() - low) / (high - low) * width();
    painter.setPen(QPen{theme.target, theme.lineWidth, Qt::DashLine});
    painter.drawLine(QPointF{target, 0.0}, QPointF{target, double(height())});
    for (std::size_t i = 0; i < m_bands.size(); ++i) {
        const QRectF row{0.0, static_cast<double>(i) * rowHeight(), double(width()), double(rowHeight())};
        paintBand(painter, m_bands[i], row, low, high);
    }
}

/// The simulation's bar is hatched, the regression's full.
void BandsView::paintBand(QPainter& painter, const Band& band, const QRectF& row, double low,
                          double high) const {
    const settings::Theme& theme = m_appearance.theme();
    const auto x = [&](DryDensity density) { return (density.si() - low) / (high - low) * row.width(); };
    const QRectF text{row.left(), row.top(), row.width(), double(fontMetrics().height())};
    painter.fillRect(text, theme.ground);  // over the line of the target
    painter.setPen(theme.ink);
    painter.drawText(text, Qt::AlignLeft | Qt::AlignVCenter,
                     fontMetrics().elidedText(lineOf(band), Qt::ElideRight, static_cast<int>(text.width())));
    const QRectF bar{x(band.density.low80()), text.bottom() + 2.0,
                     x(band.density.high80()) - x(band.density.low80()), kBar};
    painter.setPen(QPen{theme.density, theme.lineWidth});
    painter.setBrush(band.simulated ? QBrush{theme.density, Qt::BDiagPattern} : QBrush{theme.densityFill});
    painter.drawRect(bar);
    painter.setPen(QPen{theme.ink, theme.lineWidth + 1.5});
    const double median = x(band.density.median());
    painter.drawLine(QPointF{median, bar.top() - 1.0}, QPointF{median, bar.bottom() + 1.0});
}

void BandsView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        tell();
        update();
    }
}

}  // namespace treadwell::practice_page
