#include "app/desktop/report/pieces.h"
#include "core/base/farm_zone.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>

namespace treadwell::report {

namespace {

constexpr double kBars_pt = 90.0;

struct Bar {
    QString hour;
    QString amount;
    double part;  ///< of the highest
};

}  // namespace

/// Bars by the hour in black lines and grey, each with its number, so that no colour is needed.
std::vector<Piece> Press::chart(const review::Series& series) const {
    std::vector<Piece> pieces;
    double highest = 0.0;
    for (const auto& [at, si] : series.points) highest = std::max(highest, si);
    if (!(highest > 0.0)) return pieces;
    std::vector<Bar> bars;
    QString unit;
    for (const auto& [at, si] : series.points) {
        const QString amount = QString::fromStdString(words::inWords(Amount{series.dimension, si}, m_style));
        unit = amount.section(u' ', 1);
        bars.push_back(
            {QString::fromStdString(clockText(m_style.zone, at)), amount.section(u' ', 0, 0), si / highest});
    }
    const QString name = QString::fromStdString(words::inWords(Message{series.name, {}}, m_style)) +
                         QStringLiteral(", ") + unit;
    pieces.push_back(paragraph(name, Voice::tableHead, 6, true));
    const double line = QFontMetricsF{font(Voice::table), &m_device}.height();
    pieces.push_back(
        {2 * line + points(kBars_pt + 4), false, {}, [this, bars, line](QPainter& painter, double top) {
             painter.setFont(font(Voice::table));
             painter.setPen(QPen{m_ink.line, points(0.6)});
             const double foot = top + line + points(kBars_pt);
             const double step = std::min(m_width / static_cast<double>(bars.size()), points(42));
             for (std::size_t i = 0; i < bars.size(); ++i) {
                 const double left = static_cast<double>(i) * step, height = bars[i].part * points(kBars_pt);
                 const QRectF bar{left + 0.15 * step, foot - height, 0.7 * step, height};
                 painter.setBrush(m_ink.fill);
                 painter.drawRect(bar);
                 painter.drawText(QRectF{left, foot - height - line, step, line},
                                  Qt::AlignHCenter | Qt::AlignBottom, bars[i].amount);
                 painter.drawText(QRectF{left, foot + points(2), step, line}, Qt::AlignHCenter | Qt::AlignTop,
                                  bars[i].hour);
             }
             painter.drawLine(QPointF{0, foot}, QPointF{step * static_cast<double>(bars.size()), foot});
         }});
    return pieces;
}

}  // namespace treadwell::report
