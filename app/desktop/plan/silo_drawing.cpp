#include "app/desktop/plan/silo_drawing.h"

#include "app/desktop/widgets/caution_mark.h"

#include <QAccessible>
#include <QEvent>
#include <QPainter>
#include <algorithm>

namespace treadwell::plan_page {

namespace {

constexpr double kMargin = 8.0;      // pixels
constexpr double kAlongPart = 0.64;  // of the width, for the views along the silo
constexpr int kMark = 18;            // pixels

/// Metres of the views.
struct Measures {
    double width, length, height, wall, ramp, crown;
    int ends;
    bool pile;

    explicit Measures(const farm::Shape& shape)
        : width{shape.width.metres()},
          length{shape.length.metres()},
          height{shape.height.metres()},
          wall{std::min(shape.height, shape.wallHeight).metres()},
          ramp{height * shape.rampSlope.runPerRise()},
          crown{std::max(0.0, height - wall)},
          ends{shape.rampEnds},
          pile{shape.kind == farm::ShapeKind::pile} {}
    /// Where the crop's sides reach its top, across.
    [[nodiscard]] double side() const { return pile ? ramp : crown * farm::kCrownSide.runPerRise(); }
};

}  // namespace

SiloDrawing::SiloDrawing(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent}, m_appearance{appearance} {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&appearance, &settings::Appearance::changed, this, &SiloDrawing::tell);
}

void SiloDrawing::setPicture(const SiloPicture& picture) {
    m_picture = picture;
    tell();
}

QSize SiloDrawing::minimumSizeHint() const {
    return {360, 200 + 2 * fontMetrics().height()};
}

QSize SiloDrawing::sizeHint() const {
    return minimumSizeHint();
}

QString SiloDrawing::sentence() const {
    const settings::DisplayUnits& units = m_appearance.units();
    const farm::Shape& shape = m_picture.shape;
    QString text;
    if (shape.kind == farm::ShapeKind::pile) {
        text =
            tr("%1, a pile of %2 by %3 and %4 high; all its sides rise 1:%5.",
               "name, width, length, height, run")
                .arg(m_picture.name, units.text(shape.width), units.text(shape.length),
                     units.text(shape.height), units.locale().toString(shape.rampSlope.runPerRise(), 'f', 1));
    } else {
        text = tr("%1, %2 wide and %3 long, walls %4, %5 high in the middle; %n ramp(s) of 1:%6.",
                  "name, width, length, height, height, run", shape.rampEnds)
                   .arg(m_picture.name, units.text(shape.width), units.text(shape.length),
                        units.text(shape.wallHeight), units.text(shape.height),
                        units.locale().toString(shape.rampSlope.runPerRise(), 'f', 1));
    }
    for (const QString& caution : m_picture.cautions) text += u' ' + tr("Caution: %1").arg(caution) + u'.';
    return text;
}

void SiloDrawing::tell() {
    setAccessibleName(tr("Drawing of the silo"));
    setAccessibleDescription(sentence());
    if (QAccessible::isActive()) {
        QAccessibleEvent event{this, QAccessible::DescriptionChanged};
        QAccessible::updateAccessibility(&event);
    }
    update();
}

void SiloDrawing::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) tell();
}

QRectF SiloDrawing::alongArea() const {
    const double row = fontMetrics().height();
    const double top = row + kMargin + kMark / 2.0;  // a mark on the highest line stays clear of the words
    return QRectF{kMargin, top, width() * kAlongPart - 2.0 * kMargin, height() - top - row - kMargin};
}

QRectF SiloDrawing::acrossArea() const {
    const double row = fontMetrics().height();
    const double left = width() * kAlongPart + 2.0 * kMargin;
    return QRectF{left, row + kMargin, width() - left - kMargin - kMark,
                  height() - 2.0 * row - 2.0 * kMargin};
}

double SiloDrawing::scaleAlong() const {
    const Measures of{m_picture.shape};
    const QRectF area = alongArea();
    return std::min(area.width() / of.length, (area.height() - 2.0 * kMargin) / (of.height * 1.2 + of.width));
}

double SiloDrawing::scaleAcross() const {
    const Measures of{m_picture.shape};
    const QRectF area = acrossArea();
    return std::min(area.width() / of.width, area.height() / (of.height * 1.3));
}

void SiloDrawing::paintCrop(QPainter& painter, const QPolygonF& crop, bool hatched) const {
    const settings::Theme& theme = m_appearance.theme();
    painter.setPen(QPen{theme.ink, theme.lineWidth});
    painter.setBrush(theme.bold ? QColor{Qt::white} : theme.densityFill);
    painter.drawPolygon(crop);
    if (!hatched) return;
    painter.setPen(Qt::NoPen);
    painter.setBrush(QBrush{theme.caution, Qt::BDiagPattern});
    painter.drawPolygon(crop);
}

void SiloDrawing::paintMark(QPainter& painter, QPointF place) const {
    const QPixmap mark =
        widgets::cautionMark(m_appearance.theme()).pixmap(QSize{kMark, kMark}, devicePixelRatioF());
    painter.drawPixmap(QPointF{std::clamp(place.x() - kMark / 2.0, 0.0, double(width() - kMark)),
                               std::max(0.0, place.y() - kMark)},
                       mark);
}

void SiloDrawing::paintSide(QPainter& painter, QPointF foot) const {
    const settings::Theme& theme = m_appearance.theme();
    const Measures of{m_picture.shape};
    const double scale = scaleAlong();
    const auto at = [&](double along, double up) {
        return QPointF{foot.x() + along * scale, foot.y() - up * scale};
    };
    const double left = of.ends == 2 ? of.ramp : 0.0;
    paintCrop(painter,
              QPolygonF{at(0, 0), at(left, of.height), at(of.length - of.ramp, of.height), at(of.length, 0)},
              m_picture.steepRamp);
    painter.setPen(QPen{theme.outline, theme.lineWidth + 1.0});
    painter.drawLine(at(0, 0), at(of.length, 0));
    if (!of.pile) {
        painter.setPen(QPen{theme.outline, theme.lineWidth + 1.0, Qt::DashLine});
        painter.drawLine(at(0, of.wall), at(of.length, of.wall));
        painter.setPen(QPen{theme.outline, theme.lineWidth + 2.0});
        if (of.ends == 1) painter.drawLine(at(0, 0), at(0, of.wall));
    }
    if (m_picture.steepRamp) paintMark(painter, at(of.length - of.ramp / 2.0, of.height));
    if (m_picture.aboveWall) paintMark(painter, at(of.length / 3.0, of.height));
}

void SiloDrawing::paintAbove(QPainter& painter, QPointF corner) const {
    const settings::Theme& theme = m_appearance.theme();
    const Measures of{m_picture.shape};
    const double scale = scaleAlong();
    const auto at = [&](double along, double across) {
        return QPointF{corner.x() + along * scale, corner.y() + across * scale};
    };
    painter.setPen(QPen{theme.ink, theme.lineWidth});
    painter.setBrush(theme.bold ? QColor{Qt::white} : theme.densityFill);
    painter.drawRect(QRectF{at(0, 0), at(of.length, of.width)});
    // The level top, and the edges that lead down from it.
    const double left = of.ends == 2 ? of.ramp : 0.0;
    const QRectF top{at(left, of.side()), at(of.length - of.ramp, of.width - of.side())};
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen{theme.ink, theme.lineWidth, Qt::DotLine});
    painter.drawRect(top);
    painter.drawLine(top.topRight(), at(of.length, 0));
    painter.drawLine(top.bottomRight(), at(of.length, of.width));
    if (of.ends == 2) {
        painter.drawLine(top.topLeft(), at(0, 0));
        painter.drawLine(top.bottomLeft(), at(0, of.width));
    }
    if (of.pile) return;
    painter.setPen(QPen{theme.outline, theme.lineWidth + 2.0});
    painter.drawLine(at(0, 0), at(of.length, 0));
    painter.drawLine(at(0, of.width), at(of.length, of.width));
    if (of.ends == 1) painter.drawLine(at(0, 0), at(0, of.width));
}

void SiloDrawing::paintAcross(QPainter& painter, QPointF foot) const {
    const settings::Theme& theme = m_appearance.theme();
    const Measures of{m_picture.shape};
    const double scale = scaleAcross();
    const auto at = [&](double across, double up) {
        return QPointF{foot.x() + across * scale, foot.y() - up * scale};
    };
    const double base = of.pile ? 0.0 : of.wall;
    paintCrop(painter,
              QPolygonF{at(0, 0), at(0, base), at(of.side(), of.height), at(of.width - of.side(), of.height),
                        at(of.width, base), at(of.width, 0)},
              m_picture.aboveWall || m_picture.steepCrown);
    painter.setPen(QPen{theme.outline, theme.lineWidth + 1.0});
    painter.drawLine(at(0, 0), at(of.width, 0));
    if (!of.pile) {
        painter.setPen(QPen{theme.outline, theme.lineWidth + 3.0});
        painter.drawLine(at(0, 0), at(0, m_picture.shape.wallHeight.metres()));
        painter.drawLine(at(of.width, 0), at(of.width, m_picture.shape.wallHeight.metres()));
    }
    if (m_picture.steepCrown) paintMark(painter, at(of.side() / 2.0, (base + of.height) / 2.0));
    if (m_picture.narrowTop) paintMark(painter, at(of.width / 2.0, of.height));
}

void SiloDrawing::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const settings::Theme& theme = m_appearance.theme();
    const settings::DisplayUnits& units = m_appearance.units();
    painter.fillRect(rect(), theme.panel);
    const Measures of{m_picture.shape};
    if (!(of.length > 0.0)) return;
    const double row = fontMetrics().height();
    const QRectF along = alongArea(), across = acrossArea();
    const double sideFoot = along.top() + of.height * 1.2 * scaleAlong();
    paintSide(painter, {along.left(), sideFoot});
    paintAbove(painter, {along.left(), sideFoot + 2.0 * kMargin});
    const double acrossLeft = across.left() + (across.width() - of.width * scaleAcross()) / 2.0;
    paintAcross(painter, {acrossLeft, across.bottom()});
    painter.setPen(theme.quietInk);
    const auto write = [&](const QRectF& area, const QString& text) {
        painter.drawText(area, Qt::AlignCenter,
                         fontMetrics().elidedText(text, Qt::ElideRight, static_cast<int>(area.width())));
    };
    write({along.left(), 2.0, along.width(), row},
          tr("from the side and from above, to scale; ramp 1:%1", "its run")
              .arg(units.locale().toString(m_picture.shape.rampSlope.runPerRise(), 'f', 1)));
    write({across.left() - kMargin, 2.0, across.width() + kMargin, row}, tr("across, larger"));
    write({along.left(), height() - row - 2.0, along.width(), row},
          tr("%1 long").arg(units.text(m_picture.shape.length)));
    write({across.left() - kMargin, height() - row - 2.0, across.width() + kMargin, row},
          tr("%1 wide, %2 high").arg(units.text(m_picture.shape.width), units.text(m_picture.shape.height)));
}

}  // namespace treadwell::plan_page
