#include "app/desktop/practice/pad_view.h"

#include "app/desktop/practice/pad_marks.h"
#include "app/desktop/practice/walls.h"
#include "app/desktop/widgets/density_ramp.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace treadwell::practice_page {

namespace {

/// Of a tractor, for the drawing only.
constexpr double kMachine_m = 4.5;
/// A key changes the track by this, about half a tyre.
constexpr double kSidestep_m = 0.35;

}  // namespace

PadView::PadView(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent}, m_appearance{appearance} {
    setFocusPolicy(Qt::StrongFocus);
    setObjectName(QStringLiteral("practicePad"));
    connect(&appearance, &settings::Appearance::changed, this, [this] {
        drawCrop();
        update();
    });
}

void PadView::setScene(const PadScene& scene) {
    m_scene = scene;
    setAccessibleDescription(sentence());
    drawCrop();
    update();
}

void PadView::clear() {
    m_scene.reset();
    update();
}

QString PadView::sentence() const {
    if (!m_scene) return tr("No lesson is chosen.");
    QStringList parts;
    for (const PadMachine& machine : m_scene->machines) {
        const auto metres = [this](double m) { return m_appearance.units().text(Length::fromMetres(m)); };
        parts << tr("%1 is %2 from the back wall and %3 from the left wall.", "tractor and distances")
                     .arg(machine.name, metres(machine.place.x_m), metres(machine.place.y_m));
    }
    return parts.isEmpty() ? tr("No tractor is on the pad.") : parts.join(u' ');
}

QSize PadView::minimumSizeHint() const {
    return kLeastPlan;
}

QRectF PadView::floorArea() const {
    if (!m_scene) return {};
    const double length_m = m_scene->picture.shape.length.si(), width_m = m_scene->picture.shape.width.si();
    const double scale = std::min((width() - kWall - 2.0) / length_m, (height() - 2.0 * kWall) / width_m);
    const double top = kWall + 0.5 * (height() - 2.0 * kWall - scale * width_m);
    return {double(kWall), top, scale * length_m, scale * width_m};
}

QPointF PadView::pixelOf(const passes::GroundPoint& point) const {
    const QRectF area = floorArea();
    const double scale = area.width() / m_scene->picture.shape.length.si();
    return {area.left() + point.x_m * scale, area.top() + point.y_m * scale};
}

passes::GroundPoint PadView::pointAt(QPointF pixel) const {
    const QRectF area = floorArea();
    const double scale = area.width() / m_scene->picture.shape.length.si();
    return {(pixel.x() - area.left()) / scale, (pixel.y() - area.top()) / scale};
}

void PadView::drawCrop() {
    if (!m_scene) return;
    const passes::PadPicture& picture = m_scene->picture;
    const widgets::DensityRamp ramp{m_appearance.theme().look};
    m_crop = QImage{static_cast<int>(picture.along), static_cast<int>(picture.across),
                    QImage::Format_ARGB32_Premultiplied};
    m_crop.fill(Qt::transparent);
    for (std::size_t i = 0; i < picture.columns.size(); ++i) {
        const passes::ColumnPicture& column = picture.columns[i];
        if (column.height <= Length{}) continue;
        m_crop.setPixelColor(static_cast<int>(i % picture.along), static_cast<int>(i / picture.along),
                             ramp.colour(column.topDensity));
    }
}

void PadView::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const settings::Theme& theme = m_appearance.theme();
    painter.fillRect(rect(), theme.ground);
    if (m_scene) {
        const QRectF area = floorArea();
        painter.fillRect(area, theme.panel);
        painter.drawImage(area, m_crop);
        paintWalls(painter);
        paintMarks(painter, theme, m_scene->marks, [this](const passes::Patch& place) {
            return QRectF{pixelOf({place.x0_m, place.y0_m}), pixelOf({place.x1_m, place.y1_m})};
        });
        paintGoal(painter);
        for (const PadMachine& machine : m_scene->machines) paintMachine(painter, machine);
    }
    if (!hasFocus()) return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen{theme.accent, 3.0});
    painter.drawRect(rect().adjusted(1, 1, -2, -2));
}

void PadView::paintWalls(QPainter& painter) const {
    const settings::Theme& theme = m_appearance.theme();
    const QRectF area = floorArea();
    const passes::PadPicture& picture = m_scene->picture;
    // Dots where the newest layer has felt no tyre.
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor{QRgb{theme.bold ? 0x000000U : 0x3c3830U}});
    const double along = area.width() / static_cast<double>(picture.along);
    const double across = area.height() / static_cast<double>(picture.across);
    for (std::size_t i = 0; i < picture.columns.size(); ++i) {
        const passes::ColumnPicture& column = picture.columns[i];
        const std::size_t row = i / picture.along;
        if (column.height <= Length{} || column.passes > 0 || (row + i % picture.along) % 2 == 1) continue;
        const double x = area.left() + (static_cast<double>(i % picture.along) + 0.5) * along;
        const double y = area.top() + (static_cast<double>(row) + 0.5) * across;
        painter.drawEllipse(QPointF{x, y}, 1.0, 1.0);
    }
    drawWalls(painter, area, theme);
    const double cut = pixelOf({m_scene->across.si(), 0.0}).x();
    painter.setPen(QPen{theme.ink, theme.lineWidth, Qt::DashLine});
    painter.drawLine(QPointF{cut, area.top()}, QPointF{cut, area.bottom()});
}

void PadView::paintGoal(QPainter& painter) const {
    if (!m_scene->goal) return;
    const auto hand = std::find_if(m_scene->machines.begin(), m_scene->machines.end(),
                                   [](const PadMachine& machine) { return machine.byHand; });
    const QPointF goal = pixelOf(*m_scene->goal);
    const bool there = hand != m_scene->machines.end() && hand->place.x_m == m_scene->goal->x_m &&
                       hand->place.y_m == m_scene->goal->y_m;
    if (there) return;
    for (const auto& [colour, wide] :
         {std::pair{QColor{Qt::white}, 4.0}, std::pair{QColor{Qt::black}, 1.5}}) {
        painter.setPen(QPen{colour, wide, Qt::DotLine});
        if (hand != m_scene->machines.end()) painter.drawLine(pixelOf(hand->place), goal);
        painter.setPen(QPen{colour, wide});
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(goal, 8.0, 8.0);
    }
}

void PadView::paintMachine(QPainter& painter, const PadMachine& machine) const {
    const settings::Theme& theme = m_appearance.theme();
    const double scale = floorArea().width() / m_scene->picture.shape.length.si();
    const QPointF middle = pixelOf(machine.place);
    const QSizeF size{kMachine_m * scale, machine.width.si() * scale};
    QRectF body{QPointF{}, size};
    body.moveCenter(middle);
    body.moveLeft(std::clamp(body.left(), 0.0, std::max(0.0, width() - body.width())));
    painter.setPen(QPen{machine.byHand ? theme.onAccent : theme.ink, theme.lineWidth + 0.5});
    painter.setBrush(machine.byHand ? theme.accent : theme.panel);
    painter.drawRoundedRect(body, 6.0, 6.0);
    painter.drawText(
        body, Qt::AlignCenter,
        fontMetrics().elidedText(machine.name, Qt::ElideRight, static_cast<int>(body.width()) - 4));
}

void PadView::mousePressEvent(QMouseEvent* event) {
    if (m_scene && event->button() == Qt::LeftButton) emit goalAsked(pointAt(event->position()));
}

void PadView::mouseMoveEvent(QMouseEvent* event) {
    if (m_scene && (event->buttons() & Qt::LeftButton)) emit goalAsked(pointAt(event->position()));
}

/// Where the hand goes, or stands; where nobody has taken it yet the first tractor, or the mouth.
passes::GroundPoint PadView::heading() const {
    if (m_scene->goal) return *m_scene->goal;
    if (!m_scene->machines.empty()) return m_scene->machines.front().place;
    return {m_scene->picture.shape.length.si(), 0.5 * m_scene->picture.shape.width.si()};
}

void PadView::keyPressEvent(QKeyEvent* event) {
    if (!m_scene) return QWidget::keyPressEvent(event);
    const passes::GroundPoint now = heading();
    switch (event->key()) {
        case Qt::Key_Left:
            return emit goalAsked({0.0, now.y_m});
        case Qt::Key_Right:
            return emit goalAsked({m_scene->picture.shape.length.si(), now.y_m});
        case Qt::Key_Up:
            return emit goalAsked({now.x_m, now.y_m - kSidestep_m});
        case Qt::Key_Down:
            return emit goalAsked({now.x_m, now.y_m + kSidestep_m});
        case Qt::Key_Space:
            return emit haltAsked();
        default:
            QWidget::keyPressEvent(event);
    }
}

}  // namespace treadwell::practice_page
