#include "app/desktop/plan/chain_band.h"

#include <QAccessible>
#include <QEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

namespace treadwell::plan_page {

namespace {

constexpr double kBandMargin = 8.0;      // pixels
constexpr double kChannelHeight = 92.0;  // pixels
constexpr double kWidest = 2.5;          // times the narrowest; what is wider is drawn so
constexpr int kLabelRows = 3;

}  // namespace

ChainBand::ChainBand(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent}, m_appearance{appearance} {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&appearance, &settings::Appearance::changed, this, &ChainBand::tell);
}

void ChainBand::setPicture(const ChainPicture& picture) {
    m_picture = picture;
    tell();
}

QSize ChainBand::minimumSizeHint() const {
    return {360,
            static_cast<int>(kChannelHeight + 2.0 * kBandMargin) + (kLabelRows + 1) * fontMetrics().height()};
}

QSize ChainBand::sizeHint() const {
    return minimumSizeHint();
}

QString ChainBand::sentence() const {
    const settings::DisplayUnits& units = m_appearance.units();
    QStringList parts;
    for (std::size_t i = 0; i < plan::kLinks; ++i)
        parts << QStringLiteral("%1 %2").arg(linkName(plan::Link(i)), units.text(m_picture.chain.rates[i]));
    return tr("%1: each link alone could carry: %2. The slowest is %3; %4 come in with fixed times.",
              "field, links, link, rate")
        .arg(m_picture.field, parts.join(QStringLiteral(", ")), linkName(m_picture.chain.slowest),
             units.text(m_picture.chain.delivery));
}

void ChainBand::tell() {
    setAccessibleName(tr("The chain from the field to the silo"));
    setAccessibleDescription(sentence());
    if (QAccessible::isActive()) {
        QAccessibleEvent event{this, QAccessible::DescriptionChanged};
        QAccessible::updateAccessibility(&event);
    }
    update();
}

void ChainBand::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) tell();
}

QRectF ChainBand::channel() const {
    return QRectF{kBandMargin, fontMetrics().height() + kBandMargin, width() - 2.0 * kBandMargin,
                  kChannelHeight};
}

AsFedRate ChainBand::widest() const {
    const AsFedRate slowest = m_picture.chain.rate(m_picture.chain.slowest);
    return std::min(*std::max_element(m_picture.chain.rates.begin(), m_picture.chain.rates.end()),
                    slowest * kWidest);
}

double ChainBand::halfHeight(plan::Link link) const {
    const AsFedRate widest = this->widest();
    if (!(widest > AsFedRate{})) return 0.0;
    return kChannelHeight / 2.0 * (std::min(m_picture.chain.rate(link), widest) / widest);
}

void ChainBand::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const settings::Theme& theme = m_appearance.theme();
    painter.fillRect(rect(), theme.panel);
    if (!(widest() > AsFedRate{})) return;
    const QRectF area = channel();
    const double middle = area.center().y(), link = area.width() / plan::kLinks;
    // The channel, its walls slanting from link to link.
    QPolygonF above, below;
    for (std::size_t i = 0; i < plan::kLinks; ++i) {
        const double half = halfHeight(plan::Link(i));
        for (const double part : {0.12, 0.88}) {
            const double x = area.left() + (static_cast<double>(i) + part) * link;
            above << QPointF{x, middle - half};
            below.prepend(QPointF{x, middle + half});
        }
    }
    painter.setPen(QPen{theme.ink, theme.lineWidth});
    painter.setBrush(theme.bold ? QColor{Qt::white} : theme.ground);
    painter.drawPolygon(above + below);
    // The crop: no wider than the narrowest link. Packing holds no crop up, so a slow one stays beneath it.
    const double crop = kChannelHeight / 2.0 * std::min(1.0, m_picture.chain.delivery / widest());
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.bold ? QBrush{Qt::black, Qt::Dense5Pattern} : QBrush{theme.delivery});
    const QRectF flow{above.first().x(), middle - crop, above.last().x() - above.first().x(), 2.0 * crop};
    painter.drawRect(flow);
    const auto slowest = static_cast<double>(m_picture.chain.slowest);
    const double half = halfHeight(m_picture.chain.slowest);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen{theme.caution, theme.lineWidth + 3.0});
    painter.drawRect(QRectF{area.left() + (slowest + 0.12) * link, middle - half, 0.76 * link, 2.0 * half});
    paintLabels(painter);
}

void ChainBand::paintLabels(QPainter& painter) const {
    const settings::Theme& theme = m_appearance.theme();
    const settings::DisplayUnits& units = m_appearance.units();
    const QRectF area = channel();
    const double row = fontMetrics().height(), link = area.width() / plan::kLinks;
    painter.setPen(theme.ink);
    const QString title =
        tr("%1: the channel is as wide as each link could carry; the crop fills it").arg(m_picture.field);
    painter.drawText(QRectF{kBandMargin, 2.0, area.width(), row}, Qt::AlignLeft | Qt::AlignVCenter,
                     fontMetrics().elidedText(title, Qt::ElideRight, static_cast<int>(area.width())));
    for (std::size_t i = 0; i < plan::kLinks; ++i) {
        const bool slowest = plan::Link(i) == m_picture.chain.slowest;
        QFont font = this->font();
        font.setBold(font.bold() || slowest);
        painter.setFont(font);
        const std::array lines{linkName(plan::Link(i)), units.text(m_picture.chain.rates[i]),
                               slowest ? tr("slowest") : QString{}};
        for (std::size_t line = 0; line < lines.size(); ++line) {
            const QRectF place{area.left() + static_cast<double>(i) * link,
                               area.bottom() + kBandMargin / 2.0 + static_cast<double>(line) * row, link,
                               row};
            painter.setPen(line == 1 && !slowest ? theme.quietInk : theme.ink);
            painter.drawText(
                place, Qt::AlignCenter,
                QFontMetrics{font}.elidedText(lines[line], Qt::ElideRight, static_cast<int>(link)));
        }
    }
}

}  // namespace treadwell::plan_page
