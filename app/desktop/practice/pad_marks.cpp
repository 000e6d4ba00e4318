#include "app/desktop/practice/pad_marks.h"

#include <QPainter>

namespace treadwell::practice_page {

void paintMarks(QPainter& painter, const settings::Theme& theme, std::span<const PadMark> marks,
                const std::function<QRectF(const passes::Patch&)>& placeOf) {
    QFont bold = painter.font();
    bold.setBold(true);
    painter.setFont(bold);
    painter.setBrush(Qt::NoBrush);
    for (const PadMark& mark : marks) {
        const QRectF place = placeOf(mark.place);
        // Light and dark, so that it is seen upon any colour of the ramp.
        painter.setPen(QPen{QColor{Qt::white}, 5.0});
        painter.drawRect(place);
        painter.setPen(QPen{QColor{Qt::black}, 2.0, Qt::DashLine});
        painter.drawRect(place);
    }
    const double side = 1.4 * painter.fontMetrics().height();
    for (const PadMark& mark : marks) {
        const QPointF middle = placeOf(mark.place).center();
        // Beside each other where several marks share a place.
        const QRectF number{middle.x() - side / 2.0 + (mark.number - 1) * 1.2 * side, middle.y() - side / 2.0,
                            side, side};
        painter.setPen(QPen{theme.ink, theme.lineWidth});
        painter.setBrush(theme.panel);
        painter.drawEllipse(number);
        painter.drawText(number, Qt::AlignCenter, QString::number(mark.number));
    }
}

}  // namespace treadwell::practice_page
