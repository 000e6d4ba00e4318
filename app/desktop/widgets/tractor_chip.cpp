#include "app/desktop/widgets/tractor_chip.h"

#include "app/desktop/widgets/long_press.h"

#include <QApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolButton>
#include <array>
#include <chrono>
#include <cmath>

namespace treadwell::widgets {

namespace {

constexpr std::array kShareSteps{0.25, 0.50, 0.75, 1.0};
constexpr double kSameShare = 0.01;  // shares nearer than a percent are one
constexpr double kTextMillimetres = 34.0;
constexpr double kShareMillimetres = 14.0;
constexpr double kEdgeMillimetres = 1.5;

}  // namespace

TractorChip::TractorChip(const settings::Appearance& appearance, QWidget* pad)
    : QWidget{pad}, m_appearance{appearance}, m_share{new QToolButton{this}} {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::OpenHandCursor);
    m_share->setFocusPolicy(Qt::NoFocus);  // the chip's own keys step the share
    m_share->setCursor(Qt::ArrowCursor);
    m_share->setStyleSheet(QStringLiteral("padding: 0px"));  // of the look, too wide for three digits
    m_held.setSingleShot(true);
    m_held.setInterval(kLongPress);
    connect(&m_held, &QTimer::timeout, this, [this] {
        m_pressed = false;  // the release is no touch any more
        emit massAsked();
    });
    connect(m_share, &QToolButton::clicked, this, &TractorChip::turnShare);
}

QSize TractorChip::sizeIn(const settings::Appearance& appearance, Zone zone) {
    const int edge = appearance.pixels(kEdgeMillimetres);
    const int button = appearance.pixels(settings::kControlMillimetres) + 2 * edge;
    const int height = std::max(3 * QFontMetrics{QApplication::font()}.height() + edge, button);
    const int text = appearance.pixels(kTextMillimetres);
    return {zone == Zone::packing ? text + appearance.pixels(kShareMillimetres) + edge : text, height};
}

void TractorChip::setTractor(const TractorView& tractor) {
    m_tractor = tractor;
    setAccessibleName(tractor.name);
    const QString where = zoneName(tractor.zone);
    setAccessibleDescription(
        tractor.zone == Zone::packing
            ? tr("%1 at %2, %3").arg(where, m_appearance.units().text(tractor.share), facts())
            : tr("%1, %2").arg(where, facts()));
    setToolTip(
        tr("Drag to another zone, or click and then click the zone; arrow keys move too; hold for its mass"));
    m_share->setText(m_appearance.units().text(tractor.share));
    m_share->setAccessibleName(tr("Share of its time that %1 packs").arg(tractor.name));
    m_share->setToolTip(m_share->accessibleName());
    resize(sizeIn(m_appearance, tractor.zone));
    placeShare();
    update();
}

void TractorChip::placeShare() {
    const int edge = m_appearance.pixels(kEdgeMillimetres);
    const int wide = m_appearance.pixels(kShareMillimetres);
    m_share->setGeometry(width() - edge - wide, edge, wide, height() - 2 * edge);
    m_share->setVisible(m_tractor.zone == Zone::packing);
}

QRect TractorChip::textRect(int lines) const {
    const int edge = m_appearance.pixels(kEdgeMillimetres);
    const int right = m_tractor.zone == Zone::packing ? m_share->x() : width() - edge;
    const int rows = std::min(lines * fontMetrics().height(), height() - edge);
    return {2 * edge, (height() - rows) / 2, right - 3 * edge, rows};
}

void TractorChip::setPicked(bool picked) {
    m_picked = picked;
    update();
}

QString TractorChip::facts() const {
    if (runningText().isEmpty()) return massText();
    return tr("%1 · %2", "mass and time in the zone").arg(massText(), runningText());
}

QString TractorChip::runningText() const {
    if (m_tractor.running <= Seconds{0}) return {};  // away since nobody knows when
    return m_appearance.units().text({Dimension::duration, m_tractor.running.count()});
}

QString TractorChip::massText() const {
    const QString mass = m_appearance.units().text(m_tractor.mass);
    return m_tractor.massKnown ? mass : tr("about %1", "a mass known by its class alone").arg(mass);
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

void TractorChip::turnShare() {
    if (m_tractor.share.fraction() > kShareSteps.front() + kSameShare) {
        stepShare(-1);
    } else {
        emit shareAsked(Share::fromFraction(kShareSteps.back()));
    }
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

    const bool fits = fontMetrics().horizontalAdvance(facts()) <= textRect(1).width();
    const bool apart = !fits && !runningText().isEmpty();  // mass and time in a line each
    const QRect text = textRect(apart ? 3 : 2);
    painter.setPen(m_picked ? theme.onAccent : theme.ink);
    QFont nameFont = font();
    nameFont.setBold(true);
    painter.setFont(nameFont);
    const QString name =
        m_tractor.pending ? tr("%1 …", "a move that is being saved").arg(m_tractor.name) : m_tractor.name;
    painter.drawText(text, Qt::AlignTop,
                     QFontMetrics{nameFont}.elidedText(name, Qt::ElideMiddle, text.width()));
    painter.setFont(font());
    const auto draw = [&](Qt::Alignment where, const QString& shown) {
        painter.drawText(text, static_cast<int>(where),
                         fontMetrics().elidedText(shown, Qt::ElideRight, text.width()));
    };
    if (!apart) return draw(Qt::AlignBottom, facts());
    draw(Qt::AlignVCenter, massText());
    draw(Qt::AlignBottom, runningText());
}

void TractorChip::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    m_grip = event->position().toPoint();
    m_dragged = false;
    m_pressed = true;
    m_held.start();
}

void TractorChip::mouseMoveEvent(QMouseEvent* event) {
    if (!(event->buttons() & Qt::LeftButton)) return;
    const QPoint by = event->position().toPoint() - m_grip;
    if (!m_dragged && by.manhattanLength() < QApplication::startDragDistance()) return;
    if (!m_pressed) return;
    if (!m_dragged) {
        m_held.stop();
        m_dragged = true;
        raise();
        emit dragging();
    }
    move(pos() + by);
}

void TractorChip::mouseReleaseEvent(QMouseEvent* event) {
    m_held.stop();
    if (event->button() != Qt::LeftButton || !m_pressed) return;
    m_pressed = false;
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
        case Qt::Key_M:
            emit massAsked();
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
