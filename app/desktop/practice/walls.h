#pragma once

#include "app/desktop/settings/theme.h"

#include <QPainter>
#include <QRectF>
#include <QSize>

namespace treadwell::practice_page {

inline constexpr int kWall = 10;              // pixels
inline constexpr QSize kLeastPlan{420, 190};  // of a pad with its walls

/// The two side walls and the back wall around `area`, seen from above.
inline void drawWalls(QPainter& painter, const QRectF& area, const settings::Theme& theme) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(QBrush{theme.outline, theme.bold ? Qt::SolidPattern : Qt::Dense3Pattern});
    painter.drawRect(QRectF{0.0, area.top() - kWall, area.right(), kWall});
    painter.drawRect(QRectF{0.0, area.bottom(), area.right(), kWall});
    painter.drawRect(QRectF{0.0, area.top(), kWall, area.height()});
}

}  // namespace treadwell::practice_page
