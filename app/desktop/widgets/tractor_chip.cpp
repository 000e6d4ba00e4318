#include "app/desktop/widgets/tractor_chip.h"

#include <QApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolButton>
#include <array>
#include <cmath>

namespace treadwell::widgets {

namespace {

constexpr std::array kShareSteps{0.25, 0.50, 0.75, 1.0};
constexpr double kSameShare = 0.01;  // shares nearer than a percent are one
constexpr double kChipMillimetres = 40.0;
constexpr double kEdgeMillimetres = 1.5;

}  // namespace

TractorChip::TractorChip(const settings::Appearance& appearance, QWidget* pad)
    : QWidget{pad}, m_appearance{appearance}, m_less{new QToolButton{this}}, m_more{new QToolButton{this}} {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::OpenHandCursor);
    m_less->setText(QString{u'−'});
    m_more->setText(QString{u'+'});
    for (QToolButton* button : {m_less, m_more}) {
        button->setFocusPolicy(Qt::NoFocus);  // the chip's own keys step the share
        button->setCursor(Qt::ArrowCursor);
    }
    connect(m_less, &QToolButton::clicked, this, [this] { stepShare(-1); });
    connect(m_more, &QToolButton::clicked, this, [this] { stepShare(+1); });
}

QSize TractorChip::sizeIn(const settings::Appearance& appearance, Zone zone) {
    const QFontMetrics metrics{QApplication::font()};
    const int edge = appearance.pixels(kEdgeMillimetres);
    const int rows = 2 * metrics.height() + 3 * edge;
    const int stepper = appearance.pixels(settings::kControlMillimetres) + edge;
    const int height = std::max(rows, appearance.pixels(settings::kControlMillimetres));
    return {appearance.pixels(kChipMillimetres), zone == Zone::packing ? height + stepper : height};
}

void TractorChip::setTractor(const TractorView& tractor) {
    m_tractor = tractor;
    setAccessibleName(tractor.name);
    const QString where = zoneName(tractor.zone);
    setAccessibleDescription(
        tractor.zone == Zone::packing
            ? tr("%1 at %2, %3").arg(where, m_appearance.units().text(tractor.share), facts())
            : tr("%1, %2").arg(where, facts()));
    setToolTip(tr("Drag to another zone, or click and then click the zone; arrow keys move too"));
    m_less->setAccessibleName(tr("Less of its time packing: %1").arg(tractor.name));
    m_more->setAccessibleName(tr("More of its time packing: %1").arg(tractor.name));
    resize(sizeIn(m_appearance, tractor.zone));
    placeStepper();
    update();
}

void TractorChip::placeStepper() {
    const bool packs = m_tractor.zone == Zone::packing;
    const int edge = m_appearance.pixels(kEdgeMillimetres);
    const int side = m_appearance.pixels(settings::kControlMillimetres);
    m_less->setGeometry(edge, height() - edge - side, side, side);
    m_more->setGeometry(width() - edge - side, height() - edge - side, side, side);
    m_less->setVisible(packs);
    m_more->setVisible(packs);
    m_less->setEnabled(m_tractor.share.fraction() > kShareSteps.front() + kSameShare);
    m_more->setEnabled(m_tractor.share.fraction() < kShareSteps.back() - kSameShare);
}

void TractorChip::setPicked(bool picked) {
    m_picked = picked;
    update();
}

QString TractorChip::facts() const {
    const settings::DisplayUnits& units = m_appearance.units();
    return tr("%1 · %2", "mass and time in the zone")
        .arg(units.text(m_tractor.mass), units.text({Dimension::duration, m_tractor.running.count()}));
}

void TractorChip::stepShare(int direction) {
    if (m_tractor.zone != Zone::packing) return;
    const double now = m_tractor.share.fraction();
    // The next step beyond the present share, which need not be one of the steps.
    double next = now;
    if (direction > 0) {
        const auto* step = std::find_if(kShareSteps.begin(), kShareSteps.end(),
                                        [now](double share) { return share > now + kSameShare; });
        if (step != kShareSteps.end()) next = *step;
    } else {
        for (const double step : kShareSteps) {
            if (step < now - kSameShare) next = step;
        }
    }
    if (next != now) emit shareAsked(Share::fromFraction(next));
}

void TractorChip::paintEvent(QPaintEvent*) {
    const settings::Theme& theme = m_appearance.theme();
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const double line = theme.lineWidth + (hasFocus() || m_picked ? 2.0 : 0.0);
    const QColor edgeColour = hasFocus() || m_picked ? theme.accent : theme.outline;
    painter.setPen(QPen{edgeColour, line, m_tractor.pending ? Qt::DashLine : Qt::SolidLine});
    painter.setBrush(m_picked ? theme.accent : theme.panel);
    const double half = line / 2.0;
    painter.drawRoundedRect(QRectF{rect()}.adjusted(half, half, -half, -half), 8.0, 8.0);

    const int edge = m_appearance.pixels(kEdgeMillimetres);
    const int row = fontMetrics().height();
    const int inside = width() - 4 * edge;
    painter.setPen(m_picked ? theme.onAccent : theme.ink);
    QFont nameFont = font();
    nameFont.setBold(true);
    painter.setFont(nameFont);
    const QString name =
        m_tractor.pending ? tr("%1 …", "a move that is being saved").arg(m_tractor.name) : m_tractor.name;
    painter.drawText(2 * edge, edge, inside, row, Qt::AlignVCenter,
                     QFontMetrics{nameFont}.elidedText(name, Qt::ElideMiddle, inside));
    painter.setFont(font());
    painter.drawText(2 * edge, edge + row, inside, row, Qt::AlignVCenter,
                     fontMetrics().elidedText(facts(), Qt::ElideRight, inside));
    if (m_tractor.zone != Zone::packing) return;
    const QRect between{m_less->geometry().right(), m_less->y(), m_more->x() - m_less->geometry().right(),
                        m_less->height()};
    painter.drawText(between, Qt::AlignCenter, m_appearance.units().text(m_tractor.share));
}

void TractorChip::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    m_grip = event->position().toPoint();
    m_dragged = false;
}

void TractorChip::mouseMoveEvent(QMouseEvent* event) {
    if (!(event->buttons() & Qt::LeftButton)) return;
    const QPoint by = event->position().toPoint() - m_grip;
    if (!m_dragged && by.manhattanLength() < QApplication::startDragDistance()) return;
    if (!m_dragged) {
        m_dragged = true;
        raise();
        emit dragging();
    }
    move(pos() + by);
}

void TractorChip::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    if (m_dragged) {
        m_dragged = false;
        emit dropped(mapToParent(event->position().toPoint()));
    } else {
        emit clicked();
    }
}

void TractorChip::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Left:
            emit zoneAsked(-1);
            return;
        case Qt::Key_Right:
            emit zoneAsked(+1);
            return;
        case Qt::Key_Up:
        case Qt::Key_Plus:
            stepShare(+1);
            return;
        case Qt::Key_Down:
        case Qt::Key_Minus:
            stepShare(-1);
            return;
        case Qt::Key_Space:
        case Qt::Key_Return:
        case Qt::Key_Enter:
            emit clicked();
            return;
        default:
            QWidget::keyPressEvent(event);
    }
}

void TractorChip::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void TractorChip::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

}  // namespace treadwell::widgets
