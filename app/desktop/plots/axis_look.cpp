#include "app/desktop/plots/axis_look.h"

namespace treadwell::plots {

void legendAbove(QCustomPlot& plot) {
    QCPLegend* legend = plot.legend;
    plot.plotLayout()->insertRow(0);
    plot.plotLayout()->addElement(0, 0, legend);
    plot.plotLayout()->setRowStretchFactor(0, 0.001);
    plot.plotLayout()->setRowSpacing(0);
    legend->setFillOrder(QCPLegend::foColumnsFirst);
    legend->setMargins(QMargins{2, 2, 2, 2});
    legend->setRowSpacing(0);
    legend->setBorderPen(Qt::NoPen);
    legend->setVisible(true);
}

void styleAxes(QCustomPlot& plot, const settings::Theme& theme, const QFont& font) {
    plot.legend->setBrush(Qt::NoBrush);
    plot.legend->setFont(font);
    plot.legend->setTextColor(theme.ink);
    plot.setBackground(theme.ground);
    plot.axisRect()->setBackground(theme.panel);
    const QPen line{theme.outline, theme.lineWidth};
    for (QCPAxis* axis : {plot.xAxis, plot.yAxis}) {
        axis->setBasePen(line);
        axis->setTickPen(line);
        axis->setSubTicks(false);
        axis->setTickLabelFont(font);
        axis->setLabelFont(font);
        axis->setTickLabelColor(theme.ink);
        axis->setLabelColor(theme.ink);
        axis->grid()->setPen(QPen{theme.outline, 0.0, Qt::DotLine});
        axis->grid()->setZeroLinePen(Qt::NoPen);
        axis->grid()->setVisible(!theme.bold);
    }
    const QFontMetrics metrics{font};
    const int left = metrics.height() * 2 + metrics.horizontalAdvance(QStringLiteral("00.00"));
    plot.axisRect()->setAutoMargins(QCP::msNone);
    plot.axisRect()->setMargins(
        QMargins{left, 8, metrics.horizontalAdvance(QStringLiteral("000")), metrics.height() * 3 / 2 + 4});
}

}  // namespace treadwell::plots
