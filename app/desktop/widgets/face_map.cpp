#include "app/desktop/widgets/face_map.h"

#include "app/desktop/widgets/density_ramp.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace treadwell::widgets {

namespace {

constexpr int kStep = 3;  // pixels that share one reading
constexpr double kGap = 14.0;
constexpr double kCoreRadius = 4.0;

}  // namespace

FaceMapView::FaceMapView(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent}, m_appearance{appearance} {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setObjectName(QStringLiteral("faceMap"));
    connect(&appearance, &settings::Appearance::changed, this, &FaceMapView::tell);
    m_picture.reason = tr("No core yet.");
    tell();
}

void FaceMapView::setPicture(FacePicture picture) {
    m_picture = std::move(picture);
    if (m_piece && *m_piece >= m_picture.pieces.size()) m_piece.reset();
    tell();
}

QSize FaceMapView::minimumSizeHint() const {
    return {540, fontMetrics().height() * 12};
}

QRectF FaceMapView::area(Shown shown) const {
    const double row = fontMetrics().height();
    const double wide = (width() - 4 * kGap) / 3.0;
    const double left = kGap + static_cast<double>(shown) * (wide + kGap);
    return {left, 2.6 * row, wide, std::max(10.0, height() - 4.2 * row)};
}

QPointF FaceMapView::pixelOf(Length across, Length up, const QRectF& area) const {
    return {area.left() + across / m_picture.width * area.width(),
            area.bottom() - up / m_picture.height * area.height()};
}

QPointF FaceMapView::pixelOf(std::size_t piece) const {
    const FacePiece& at = m_picture.pieces[piece];
    return pixelOf(at.across, at.up, area(Shown::measured));
}

std::optional<DryDensity> FaceMapView::valueAt(Shown shown, double across, double up) const {
    const auto columns = static_cast<double>(m_picture.columns);
    const double rows = static_cast<double>(m_picture.pieces.size()) / columns;
    const double x = std::clamp(across * columns - 0.5, 0.0, columns - 1.0);
    const double y = std::clamp(up * rows - 0.5, 0.0, rows - 1.0);
    double sum = 0.0, weight = 0.0;
    for (const double dx : {0.0, 1.0}) {
        for (const double dy : {0.0, 1.0}) {
            const double column = std::min(std::floor(x) + dx, columns - 1.0);
            const double row = std::min(std::floor(y) + dy, rows - 1.0);
            const double w = (dx > 0.0 ? x - std::floor(x) : 1.0 - (x - std::floor(x))) *
                             (dy > 0.0 ? y - std::floor(y) : 1.0 - (y - std::floor(y)));
            const FacePiece& piece = m_picture.pieces[static_cast<std::size_t>(row * columns + column)];
            if (shown == Shown::predicted && !piece.predicted) continue;
            const density::Distribution& density =
                shown == Shown::predicted ? *piece.predicted : piece.measured;
            sum += w * density.median().si();
            weight += w;
        }
    }
    if (!(weight > 0.0)) return std::nullopt;
    return DryDensity::fromSi(sum / weight);
}

void FaceMapView::pointAt(std::size_t piece) {
    if (m_picture.pieces.empty()) return;
    m_piece = std::min(piece, m_picture.pieces.size() - 1);
    tell();
}

QString FaceMapView::sentence() const {
    const settings::DisplayUnits& units = m_appearance.units();
    if (m_picture.pieces.empty()) return m_picture.reason;
    if (!m_piece)
        return tr("The face at %1 from the back wall, %n core(s). Point at a place.", "",
                  static_cast<int>(m_picture.cores.size()))
            .arg(units.text(m_picture.along));
    const FacePiece& piece = m_picture.pieces[*m_piece];
    const auto said = [&](const density::Distribution& density) {
        return tr("%1, 80 % band %2")
            .arg(units.text(density.median()),
                 units.rangeText(density.low80().amount(), density.high80().amount()));
    };
    const QString where =
        tr("%1 from the left wall, %2 up").arg(units.text(piece.across), units.text(piece.up));
    return tr("%1: by the cores %2; predicted %3")
        .arg(where, said(piece.measured), piece.predicted ? said(*piece.predicted) : tr("nothing"));
}

void FaceMapView::tell() {
    setAccessibleName(tr("The opened face"));
    setAccessibleDescription(sentence());
    if (QAccessible::isActive()) {
        QAccessibleEvent event{this, QAccessible::DescriptionChanged};
        QAccessible::updateAccessibility(&event);
    }
    update();
}

void FaceMapView::paintField(QPainter& painter, Shown shown) const {
    const QRectF area = this->area(shown);
    const DensityRamp ramp{m_appearance.theme().look};
    for (double y = 0.0; y < area.height(); y += kStep) {
        for (double x = 0.0; x < area.width(); x += kStep) {
            const auto density =
                valueAt(shown, (x + 0.5 * kStep) / area.width(), 1.0 - (y + 0.5 * kStep) / area.height());
            const QRectF dot{area.left() + x, area.top() + y, std::min<double>(kStep, area.width() - x),
                             std::min<double>(kStep, area.height() - y)};
            if (density) painter.fillRect(dot, ramp.colour(*density));
        }
    }
}

/// The half of the 80 % band in numbers, so that nothing is said by colour alone.
void FaceMapView::paintDoubt(QPainter& painter) const {
    const settings::Theme& theme = m_appearance.theme();
    const QRectF area = this->area(Shown::doubt);
    const auto columns = static_cast<double>(m_picture.columns);
    const double rows = static_cast<double>(m_picture.pieces.size()) / columns;
    const double wide = area.width() / columns, high = area.height() / rows;
    painter.setPen(theme.ink);
    const bool every = wide >= fontMetrics().horizontalAdvance(QStringLiteral("±000 "));
    for (std::size_t i = 0; i < m_picture.pieces.size(); ++i) {
        const std::size_t column = i % m_picture.columns;
        if (!every && column % 2 == 1) continue;
        const FacePiece& piece = m_picture.pieces[i];
        const DryDensity half = (piece.measured.high80() - piece.measured.low80()) * 0.5;
        const QPointF middle = pixelOf(piece.across, piece.up, area);
        const QRectF box{middle.x() - (every ? 0.5 : 1.0) * wide, middle.y() - 0.5 * high,
                         (every ? 1.0 : 2.0) * wide, high};
        painter.drawText(box, Qt::AlignCenter, u'±' + m_appearance.units().numberText(half.amount()));
    }
}

void FaceMapView::paintTitle(QPainter& painter, Shown shown) const {
    const QRectF area = this->area(shown);
    const settings::DisplayUnits& units = m_appearance.units();
    const QString symbol = units.symbol(Dimension::dryDensity);
    const QString title = shown == Shown::measured ? tr("By the cores")
                          : shown == Shown::doubt  ? tr("Half of its band, %1").arg(symbol)
                                                   : tr("Predicted");
    const double row = fontMetrics().height();
    painter.setPen(m_appearance.theme().ink);
    painter.drawText(QRectF{area.left(), area.top() - 1.3 * row, area.width(), row},
                     Qt::AlignLeft | Qt::AlignVCenter, title);
    painter.setPen(QPen{m_appearance.theme().outline, m_appearance.theme().lineWidth});
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(area);
    if (shown == Shown::doubt) return;
    painter.setPen(m_appearance.theme().quietInk);
    const QRectF foot{area.left(), area.bottom() + 2.0, area.width(), row};
    const auto [loosest, densest] =
        std::pair{units.numberText(DensityRamp::kLoosest.amount()), units.text(DensityRamp::kDensest)};
    const DensityRamp ramp{m_appearance.theme().look};
    const double text = fontMetrics().horizontalAdvance(densest) + 6.0;
    const double bar = area.width() - text - fontMetrics().horizontalAdvance(loosest) - 8.0;
    const double left = area.left() + fontMetrics().horizontalAdvance(loosest) + 4.0;
    constexpr int kRampSteps = 40;
    for (int i = 0; i < kRampSteps; ++i) {
        const double part = (i + 0.5) / kRampSteps;
        painter.fillRect(
            QRectF{left + bar * i / kRampSteps, foot.top() + 0.25 * row, bar / kRampSteps + 0.5, 0.5 * row},
            ramp.colour(DensityRamp::kLoosest + (DensityRamp::kDensest - DensityRamp::kLoosest) * part));
    }
    painter.drawText(foot, Qt::AlignLeft | Qt::AlignVCenter, loosest);
    painter.drawText(foot, Qt::AlignRight | Qt::AlignVCenter, densest);
}

/// Light and dark, so that a mark is seen upon any colour of the ramp.
void FaceMapView::paintMarks(QPainter& painter, Shown shown) const {
    const QRectF area = this->area(shown);
    painter.setBrush(Qt::NoBrush);
    const auto ring = [&](QPointF place, double radius) {
        for (const auto& [colour, wide] :
             {std::pair{QColor{Qt::white}, 4.0}, std::pair{QColor{Qt::black}, 1.6}}) {
            painter.setPen(QPen{colour, wide});
            painter.drawEllipse(place, radius, radius);
        }
    };
    if (shown != Shown::predicted) {
        for (const FaceSpot& core : m_picture.cores) ring(pixelOf(core.across, core.up, area), kCoreRadius);
    }
    if (!m_piece) return;
    const FacePiece& piece = m_picture.pieces[*m_piece];
    ring(pixelOf(piece.across, piece.up, area), 2.2 * kCoreRadius);
}

void FaceMapView::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const settings::Theme& theme = m_appearance.theme();
    painter.fillRect(rect(), theme.panel);
    const int row = fontMetrics().height();
    painter.setPen(theme.ink);
    if (m_picture.pieces.empty()) {
        painter.drawText(rect().adjusted(row, 0, -row, 0), Qt::AlignCenter | Qt::TextWordWrap,
                         m_picture.reason);
    } else {
        painter.drawText(QRect{8, 2, width() - 16, row}, Qt::AlignLeft | Qt::AlignVCenter, sentence());
        painter.setRenderHint(QPainter::Antialiasing);
        for (const Shown shown : {Shown::measured, Shown::doubt, Shown::predicted}) {
            if (shown == Shown::doubt) {
                paintDoubt(painter);
            } else {
                paintField(painter, shown);
                paintMarks(painter, shown);
            }
            paintTitle(painter, shown);
        }
    }
    if (!hasFocus()) return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen{theme.accent, 3.0});
    painter.drawRect(rect().adjusted(1, 1, -2, -2));
}

void FaceMapView::mousePressEvent(QMouseEvent* event) {
    if (m_picture.pieces.empty()) return;
    for (const Shown shown : {Shown::measured, Shown::doubt, Shown::predicted}) {
        const QRectF area = this->area(shown);
        if (!area.contains(event->position())) continue;
        const auto columns = static_cast<double>(m_picture.columns);
        const double rows = static_cast<double>(m_picture.pieces.size()) / columns;
        const double column = std::floor((event->position().x() - area.left()) / area.width() * columns);
        const double line = std::floor((area.bottom() - event->position().y()) / area.height() * rows);
        pointAt(static_cast<std::size_t>(std::clamp(line, 0.0, rows - 1.0) * columns +
                                         std::clamp(column, 0.0, columns - 1.0)));
    }
}

void FaceMapView::keyPressEvent(QKeyEvent* event) {
    const auto columns = static_cast<std::ptrdiff_t>(m_picture.columns);
    const auto count = static_cast<std::ptrdiff_t>(m_picture.pieces.size());
    const std::ptrdiff_t at = m_piece ? static_cast<std::ptrdiff_t>(*m_piece) : 0;
    std::ptrdiff_t next = at;
    switch (event->key()) {
        case Qt::Key_Left:
            next = at - 1;
            break;
        case Qt::Key_Right:
            next = at + 1;
            break;
        case Qt::Key_Up:
            next = at + columns;
            break;
        case Qt::Key_Down:
            next = at - columns;
            break;
        default:
            QWidget::keyPressEvent(event);
            return;
    }
    if (count == 0) return;
    pointAt(static_cast<std::size_t>(m_piece ? std::clamp<std::ptrdiff_t>(next, 0, count - 1) : 0));
}

void FaceMapView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) tell();
}

void FaceMapView::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    tell();
}

}  // namespace treadwell::widgets
