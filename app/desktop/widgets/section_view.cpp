#include "app/desktop/widgets/section_view.h"

#include "app/desktop/widgets/density_ramp.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace treadwell::widgets {

namespace {

constexpr int kCell = 2;                // pixels of the picture that share one reading
constexpr int kHatchEvery = 12;         // pixels between the lines over what is too loose
constexpr std::size_t kMostEdges = 40;  // more would darken the picture
constexpr int kRampSteps = 60;
constexpr double kRoomAbove = 1.12;
constexpr double kStepAlong = 1.0 / 60.0;
constexpr double kStepUp = 1.0 / 20.0;

}  // namespace

SectionView::SectionView(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent}, m_appearance{appearance} {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&appearance, &settings::Appearance::changed, this, [this] {
        m_crop = {};
        tell();
    });
    m_section.reason = tr("No load yet.");
    tell();
}

void SectionView::setSection(Section section) {
    m_section = std::move(section);
    m_crop = {};
    tell();
}

QSize SectionView::minimumSizeHint() const {
    return {300, fontMetrics().height() * 3 + 60};
}

Length SectionView::highest() const {
    Length high = std::max(m_section.wall, m_section.planned);
    if (m_section.field) high = std::max(high, m_section.field->whole().high.up);
    return high * kRoomAbove;
}

QRectF SectionView::area() const {
    const double row = fontMetrics().height();
    const double left = fontMetrics().horizontalAdvance(QStringLiteral("00.0 ")) + 8.0;
    const double right = fontMetrics().horizontalAdvance(QStringLiteral("000 kg DM/m³")) + 34.0;
    return QRectF{rect()}.adjusted(left, row * 1.4, -right, -row * 1.4);
}

QPointF SectionView::pixelOf(Length along, Length up) const {
    const QRectF area = this->area();
    return {area.left() + along / m_section.length * area.width(),
            area.bottom() - up / highest() * area.height()};
}

SectionView::Spot SectionView::spotAt(QPointF pixel) const {
    const QRectF area = this->area();
    const double along = std::clamp((pixel.x() - area.left()) / area.width(), 0.0, 1.0);
    const double up = std::clamp((area.bottom() - pixel.y()) / area.height(), 0.0, 1.0);
    return {m_section.length * along, highest() * up};
}

std::optional<density::FieldPoint> SectionView::placeAt(Spot spot) const {
    if (!m_section.field) return std::nullopt;
    return m_section.field->at({spot.along, spot.up, m_section.width * 0.5});
}

void SectionView::pointAt(Length along, Length up) {
    m_spot = Spot{std::clamp(along, Length{}, m_section.length), std::clamp(up, Length{}, highest())};
    tell();
}

QString SectionView::sentence() const {
    const settings::DisplayUnits& units = m_appearance.units();
    if (!m_section.field) return tr("No section. %1").arg(m_section.reason);
    if (!m_spot)
        return tr("The crop as it lies, %n layer(s). Point at a place.", "",
                  static_cast<int>(m_section.layers.size()));
    const QString where =
        tr("%1 from the back wall, %2 up").arg(units.text(m_spot->along), units.text(m_spot->up));
    const auto found = placeAt(*m_spot);
    if (!found || found->layer >= m_section.layers.size()) return tr("%1: no crop").arg(where);
    const SectionLayer& layer = m_section.layers[found->layer];
    return tr("%1: layer %2, %3: %4, 80 % band %5")
        .arg(where, QString::number(layer.number), layer.when, units.text(found->density.median()),
             units.rangeText(found->density.low80().amount(), found->density.high80().amount()));
}

void SectionView::tell() {
    setAccessibleName(tr("Section of the silo"));
    setAccessibleDescription(sentence());
    if (QAccessible::isActive()) {
        QAccessibleEvent event{this, QAccessible::DescriptionChanged};
        QAccessible::updateAccessibility(&event);
    }
    update();
}

std::size_t SectionView::bandOf(std::size_t layer) const {
    const bool each = m_section.layers.size() <= kMostEdges || layer >= m_section.layers.size();
    return each ? layer : static_cast<std::size_t>(m_section.layers[layer].day);
}

void SectionView::drawCrop() {
    const QRectF area = this->area();
    const int columns = static_cast<int>(area.width()) / kCell,
              rows = static_cast<int>(area.height()) / kCell;
    if (columns <= 0 || rows <= 0 || !m_section.field) return;
    const DensityRamp ramp{m_appearance.theme().look};
    m_crop = QImage{columns * kCell, rows * kCell, QImage::Format_ARGB32_Premultiplied};
    m_crop.fill(Qt::transparent);
    const QRgb edge = m_appearance.theme().bold ? qRgb(0, 0, 0) : qRgb(60, 56, 48);
    std::vector<std::optional<std::size_t>> before(static_cast<std::size_t>(rows));
    for (int column = 0; column < columns; ++column) {
        std::optional<std::size_t> above;
        for (int row = 0; row < rows; ++row) {
            const QPointF middle{area.left() + (column + 0.5) * kCell, area.top() + (row + 0.5) * kCell};
            const auto found = placeAt(spotAt(middle));
            const auto layer = found ? std::optional{bandOf(found->layer)} : std::nullopt;
            std::optional<std::size_t>& left = before[static_cast<std::size_t>(row)];
            const bool atEdge = (row > 0 && above != layer) || (column > 0 && left != layer);
            above = left = layer;
            if (!found) continue;
            const DryDensity median = found->density.median();
            const QRgb colour = ramp.colour(median).rgb();
            for (int i = 0; i < kCell * kCell; ++i) {
                const int x = column * kCell + i % kCell, y = row * kCell + i / kCell;
                const bool hatched = median < m_section.target && (x + y) % kHatchEvery == 0;
                m_crop.setPixel(x, y, (atEdge && i == 0) || hatched ? edge : colour);
            }
        }
    }
}

void SectionView::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const settings::Theme& theme = m_appearance.theme();
    painter.fillRect(rect(), theme.panel);
    painter.setPen(theme.ink);
    const int row = fontMetrics().height();
    if (!m_section.field) {
        painter.drawText(rect().adjusted(row, 0, -row, 0), Qt::AlignCenter | Qt::TextWordWrap,
                         m_section.reason);
    } else {
        if (m_crop.isNull() || m_crop.width() / kCell != static_cast<int>(area().width()) / kCell ||
            m_crop.height() / kCell != static_cast<int>(area().height()) / kCell)
            drawCrop();
        painter.drawImage(area().topLeft(), m_crop);
        paintOutline(painter);
        paintAxes(painter);
        paintRamp(painter);
        paintSpot(painter);
        painter.setPen(theme.ink);
        painter.drawText(QRect{8, 2, width() - 16, row}, Qt::AlignLeft | Qt::AlignVCenter, sentence());
    }
    if (!hasFocus()) return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen{theme.accent, 3.0});
    painter.drawRect(rect().adjusted(1, 1, -2, -2));
}

void SectionView::paintOutline(QPainter& painter) const {
    const settings::Theme& theme = m_appearance.theme();
    const QRectF area = this->area();
    painter.setPen(QPen{theme.outline, theme.lineWidth + 1.0});
    painter.drawLine(area.bottomLeft(), area.bottomRight());
    painter.drawLine(area.bottomLeft(), pixelOf(Length{}, std::max(m_section.wall, m_section.planned)));
    painter.setPen(QPen{theme.outline, theme.lineWidth, Qt::DashLine});
    painter.drawLine(pixelOf(Length{}, m_section.wall), pixelOf(m_section.length, m_section.wall));
}

void SectionView::paintAxes(QPainter& painter) const {
    const settings::DisplayUnits& units = m_appearance.units();
    const QRectF area = this->area();
    const double row = fontMetrics().height();
    painter.setPen(m_appearance.theme().quietInk);
    constexpr int kTicks = 6;
    for (int i = 0; i <= kTicks; ++i) {
        const Length along = m_section.length * (static_cast<double>(i) / kTicks);
        const double x = pixelOf(along, Length{}).x();
        painter.drawLine(QPointF{x, area.bottom()}, QPointF{x, area.bottom() + 4.0});
        const QString text = i == kTicks ? units.text(along) : units.numberText(along.amount());
        painter.drawText(QRectF{x - 50.0, area.bottom() + 4.0, 100.0, row}, Qt::AlignCenter, text);
    }
    for (const Length height : {Length{}, m_section.wall}) {
        const double y = pixelOf(Length{}, height).y();
        painter.drawText(QRectF{0.0, y - row / 2.0, area.left() - 6.0, row},
                         Qt::AlignRight | Qt::AlignVCenter, units.numberText(height.amount()));
    }
}

void SectionView::paintRamp(QPainter& painter) const {
    const settings::DisplayUnits& units = m_appearance.units();
    const settings::Theme& theme = m_appearance.theme();
    const QRectF area = this->area();
    const QRectF bar{area.right() + 12.0, area.top(), 14.0, area.height()};
    const DensityRamp ramp{theme.look};
    const auto yOf = [&bar](DryDensity density) {
        const double part =
            (density - DensityRamp::kLoosest) / (DensityRamp::kDensest - DensityRamp::kLoosest);
        return bar.bottom() - std::clamp(part, 0.0, 1.0) * bar.height();
    };
    for (int i = 0; i < kRampSteps; ++i) {
        const DryDensity density = DensityRamp::kLoosest +
                                   (DensityRamp::kDensest - DensityRamp::kLoosest) * ((i + 0.5) / kRampSteps);
        const double step = bar.height() / kRampSteps;
        painter.fillRect(QRectF{bar.left(), bar.bottom() - (i + 1) * step, bar.width(), step + 0.5},
                         ramp.colour(density));
    }
    const double row = fontMetrics().height();
    const double left = bar.right() + 4.0;
    const auto label = [&](double y, const QColor& colour, const QString& text) {
        painter.setPen(colour);
        painter.drawText(QRectF{left, y - row / 2.0, width() - left, row}, Qt::AlignLeft | Qt::AlignVCenter,
                         text);
    };
    label(bar.top(), theme.ink, units.text(DensityRamp::kDensest));
    label(bar.bottom(), theme.ink, units.numberText(DensityRamp::kLoosest.amount()));
    const double y = yOf(m_section.target);
    painter.setPen(QPen{theme.target, theme.lineWidth + 1.0});
    painter.drawLine(QPointF{bar.left() - 3.0, y}, QPointF{bar.right() + 3.0, y});
    if (y - bar.top() > row && bar.bottom() - y > row)
        label(y, theme.target, tr("target %1").arg(units.numberText(m_section.target.amount())));
}

void SectionView::paintSpot(QPainter& painter) const {
    if (!m_spot) return;
    const QPointF place = pixelOf(m_spot->along, m_spot->up);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    // Light and dark, so that it is seen upon any colour of the ramp.
    for (const auto& [colour, wide] :
         {std::pair{QColor{Qt::white}, 5.0}, std::pair{QColor{Qt::black}, 2.0}}) {
        painter.setPen(QPen{colour, wide});
        painter.drawEllipse(place, 7.0, 7.0);
    }
}

void SectionView::mousePressEvent(QMouseEvent* event) {
    const Spot spot = spotAt(event->position());
    pointAt(spot.along, spot.up);
}

void SectionView::mouseMoveEvent(QMouseEvent* event) {
    const Spot spot = spotAt(event->position());
    pointAt(spot.along, spot.up);
}

void SectionView::keyPressEvent(QKeyEvent* event) {
    const Length along = m_section.length * kStepAlong;
    const Length up = highest() * kStepUp;
    const Spot spot = m_spot.value_or(Spot{m_section.length * 0.5, highest() * 0.5});
    switch (event->key()) {
        case Qt::Key_Left:
            return pointAt(spot.along - along, spot.up);
        case Qt::Key_Right:
            return pointAt(spot.along + along, spot.up);
        case Qt::Key_Up:
            return pointAt(spot.along, spot.up + up);
        case Qt::Key_Down:
            return pointAt(spot.along, spot.up - up);
        case Qt::Key_Home:
            return pointAt(Length{}, spot.up);
        case Qt::Key_End:
            return pointAt(m_section.length, spot.up);
        default:
            QWidget::keyPressEvent(event);
    }
}

void SectionView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) tell();
}

void SectionView::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    tell();
}

}  // namespace treadwell::widgets
