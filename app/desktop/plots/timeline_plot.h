#pragma once

#include "app/desktop/plots/timeline.h"
#include "app/desktop/plots/wall_clock_ticker.h"

namespace treadwell::plots {

/// The curves and marks of a timeline within a plot, which owns all that is made here.
class TimelinePlot final {
  public:
    explicit TimelinePlot(QCustomPlot& plot);

    void fill(const TimelineView& view, const settings::DisplayUnits& units);
    void style(const settings::Theme& theme, const QFont& font);
    /// What can be told apart of curves and marks in the span of time that is shown: again after each zoom.
    void fillShown(const TimelineView& view, const settings::DisplayUnits& units);
    /// Lays out legend and ticks for a plot of this size.
    void fit(QSize size, const QFont& font);
    /// A line at a moment with what was then beside it; drawn alone, the curves stay as they are.
    void showCursor(double seconds, const QString& text);

  private:
    void makeLegend();
    void makeCursor();
    void nameAll(const settings::DisplayUnits& units);
    void fitValues(const TimelineView& view, const settings::DisplayUnits& units);
    void fillMarks(const TimelineView& view);
    void fillPauses(const TimelineView& view);
    void styleDashes();
    void styleAxes(const settings::Theme& theme, const QFont& font);
    void styleCurves(const settings::Theme& theme);

    QCustomPlot& m_plot;
    QSharedPointer<WallClockTicker> m_ticker;
    QCPAxis* m_markAxis;
    QCPGraph* m_delivered;
    QCPGraph* m_capacity;
    QCPGraph* m_median;
    QCPGraph* m_low;
    QCPGraph* m_high;
    QCPGraph* m_target;
    QCPGraph* m_deliveries;
    QCPGraph* m_samples;
    QCPGraph* m_advice;
    QCPItemStraightLine* m_cursor;
    QCPItemText* m_cursorText;
    QVector<QCPItemRect*> m_pauses;
    QBrush m_pauseBrush;
    double m_lineWidth = 1.0;
    int m_columns = 1;       ///< of pixels, at most
    bool m_crowded = false;  ///< more points than wide dashes can be drawn through in time
};

}  // namespace treadwell::plots
