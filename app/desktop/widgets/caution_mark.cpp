#include "app/desktop/widgets/caution_mark.h"

#include <QPainter>
#include <QPixmap>
#include <QPixmapCache>

namespace treadwell::widgets {

QIcon cautionMark(const settings::Theme& theme) {
    const QString key = QStringLiteral("caution %1 %2").arg(theme.caution.name(), theme.panel.name());
    QPixmap pixmap;
    if (QPixmapCache::find(key, &pixmap)) return QIcon{pixmap};
    constexpr int kSide = 64;  // more than any place needs, so that it stays sharp at every scale
    pixmap = QPixmap{kSide, kSide};
    pixmap.fill(Qt::transparent);
    QPainter painter{&pixmap};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{theme.caution, 5.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
    painter.setBrush(theme.panel);
    painter.drawPolygon(QPolygonF{{32.0, 6.0}, {60.0, 58.0}, {4.0, 58.0}});
    painter.setPen(QPen{theme.caution, 7.0, Qt::SolidLine, Qt::RoundCap});
    painter.drawLine(QPointF{32.0, 24.0}, QPointF{32.0, 40.0});
    painter.drawPoint(QPointF{32.0, 50.0});
    painter.end();
    QPixmapCache::insert(key, pixmap);
    return QIcon{pixmap};
}

}  // namespace treadwell::widgets
