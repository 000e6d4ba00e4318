#include "app/desktop/plots/timeline_plot.h"

#include "app/desktop/plots/axis_look.h"
#include "app/desktop/plots/thinned_curve.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace treadwell::plots {

namespace {

constexpr double kMissing = std::numeric_limits<double>::quiet_NaN();
constexpr double kDeliveryRow = 0.03;  // of the height: marks at the foot, samples at the head
constexpr double kSampleRow = 0.95;
constexpr double kAdviceRow = 0.86;
constexpr int kLegendIcon = 48;  // pixels of a legend's entry beside its text
constexpr QSize kLegendMark{22, 14};
constexpr int kNarrowWrap = 4;
constexpr int kRowsBesideTheCurves = 3;  // legend, labels of the time axis
constexpr int kMostRowTicks = 6;
constexpr double kMarksApart = 2.0;  // pixels: nearer ones cover each other
constexpr std::size_t kCrowd = 400;
constexpr double kHeadroom = 1.25;  // above the highest value, so that no curve runs into the samples

/// A quantity of one dimension as it is shown, where an infinity would stretch the axis without end.
class Shown final {
  public:
    Shown(const settings::DisplayUnits& units, Dimension dimension)
        : m_zero{units.shown({dimension, 0.0})}, m_slope{units.shown({dimension, 1.0}) - m_zero} {}

    template <class Q>
    [[nodiscard]] double operator()(Q quantity) const {
        return m_zero + m_slope * quantity.si();
    }
    template <class Q>
    [[nodiscard]] double operator()(const std::optional<Q>& quantity) const {
        return quantity ? (*this)(*quantity) : kMissing;
    }

  private:
    double m_zero;
    double m_slope;
};

double higher(double most, double value) {
    return std::isfinite(value) && value > most ? value : most;
}

double lower(double least, double value) {
    return std::isfinite(value) && value < least ? value : least;
}

QPen penOf(const QColor& colour, double width, Qt::PenStyle style) {
    return QPen{colour, width, style, Qt::RoundCap, Qt::RoundJoin};
}

}  // namespace

TimelinePlot::TimelinePlot(QCustomPlot& plot)
    : m_plot{plot},
      m_ticker{QSharedPointer<WallClockTicker>::create()},
      m_markAxis{plot.axisRect()->addAxis(QCPAxis::atLeft)},
      m_delivered{plot.addGraph(plot.xAxis, plot.yAxis)},
      m_capacity{plot.addGraph(plot.xAxis, plot.yAxis)},
      m_median{plot.addGraph(plot.xAxis, plot.yAxis2)},
      m_low{plot.addGraph(plot.xAxis, plot.yAxis2)},
      m_high{plot.addGraph(plot.xAxis, plot.yAxis2)},
      m_target{plot.addGraph(plot.xAxis, plot.yAxis2)},
      m_deliveries{plot.addGraph(plot.xAxis, m_markAxis)},
      m_samples{plot.addGraph(plot.xAxis, m_markAxis)},
      m_advice{plot.addGraph(plot.xAxis, m_markAxis)},
      m_cursor{new QCPItemStraightLine{&plot}},
      m_cursorText{new QCPItemText{&plot}} {
    m_plot.setPlottingHint(QCP::phFastPolylines);
    m_plot.setNoAntialiasingOnDrag(true);
    m_plot.xAxis->setTicker(m_ticker);
    m_plot.yAxis2->setVisible(true);
    m_markAxis->setVisible(false);
    m_markAxis->setRange(0.0, 1.0);
    m_capacity->setLineStyle(QCPGraph::lsStepLeft);  // it changes when a tractor comes or goes
    for (QCPGraph* marks : {m_deliveries, m_samples, m_advice}) marks->setLineStyle(QCPGraph::lsNone);
    makeLegend();
    makeCursor();
}

void TimelinePlot::makeLegend() {
    legendAbove(m_plot);
    m_plot.legend->setColumnSpacing(12);
    m_plot.legend->setIconSize(kLegendMark);
    m_high->removeFromLegend();  // one entry names both ends of the band
}

void TimelinePlot::makeCursor() {
    m_plot.addLayer(QStringLiteral("cursor"), m_plot.layer(QStringLiteral("main")), QCustomPlot::limAbove);
    QCPLayer* layer = m_plot.layer(QStringLiteral("cursor"));
    layer->setMode(QCPLayer::lmBuffered);
    for (QCPAbstractItem* item :
         {static_cast<QCPAbstractItem*>(m_cursor), static_cast<QCPAbstractItem*>(m_cursorText)}) {
        item->setLayer(layer);
        item->setVisible(false);
    }
    m_cursorText->position->setTypeX(QCPItemPosition::ptAxisRectRatio);
    m_cursorText->position->setTypeY(QCPItemPosition::ptAxisRectRatio);
    m_cursorText->setPadding(QMargins{4, 1, 4, 1});
}

void TimelinePlot::showCursor(double seconds, const QString& text) {
    for (QCPItemPosition* point : {m_cursor->point1, m_cursor->point2})
        point->setTypeY(QCPItemPosition::ptAxisRectRatio);
    m_cursor->point1->setCoords(seconds, 0.0);
    m_cursor->point2->setCoords(seconds, 1.0);
    // Beside the line on its roomier side would hide the curves there: along the foot there are only loads.
    m_cursorText->position->setCoords(0.5, 1.0);
    m_cursorText->setPositionAlignment(Qt::AlignHCenter | Qt::AlignBottom);
    m_cursorText->setText(text);
    m_cursor->setVisible(true);
    m_cursorText->setVisible(true);
    m_plot.layer(QStringLiteral("cursor"))->replot();
}

void TimelinePlot::fill(const TimelineView& view, const settings::DisplayUnits& units) {
    m_plot.setLocale(units.locale());
    m_ticker->setZone(view.zone);
    nameAll(units);
    fitValues(view, units);
    fillShown(view, units);
    fillPauses(view);
    if (const bool crowded = view.rates.size() > kCrowd; crowded != m_crowded) {
        m_crowded = crowded;
        styleDashes();
    }
}

void TimelinePlot::nameAll(const settings::DisplayUnits& units) {
    m_delivered->setName(Timeline::tr("delivery, 60 min"));
    m_capacity->setName(Timeline::tr("capacity"));
    m_median->setName(Timeline::tr("density"));
    m_low->setName(Timeline::tr("80 % band"));
    m_target->setName(Timeline::tr("target"));
    m_deliveries->setName(Timeline::tr("load"));
    m_samples->setName(Timeline::tr("dry matter"));
    m_advice->setName(Timeline::tr("advice"));
    // The curves name themselves in the legend; a longer label would not fit a low plot.
    m_plot.yAxis->setLabel(units.symbol(Dimension::asFedRate));
    m_plot.yAxis2->setLabel(units.symbol(Dimension::dryDensity));
}

void TimelinePlot::fit(QSize size, const QFont& font) {
    m_columns = std::max(1, size.width());
    const QFontMetrics metrics{font};
    int legend = 0, widest = 1;
    for (int i = 0; i < m_plot.legend->itemCount(); ++i) {
        auto* item = qobject_cast<QCPPlottableLegendItem*>(m_plot.legend->item(i));
        if (item == nullptr) continue;
        const int wide = metrics.horizontalAdvance(item->plottable()->name()) + kLegendIcon;
        legend += wide;
        widest = std::max(widest, wide);
    }
    const int wrap = std::clamp(size.width() / widest, 1, kNarrowWrap);
    m_plot.legend->setWrap(legend <= size.width() ? m_plot.legend->itemCount() : wrap);
    m_plot.legend->setFillOrder(QCPLegend::foColumnsFirst, true);  // the wrap alone moves nothing
    const int rows = size.height() / metrics.height() - kRowsBesideTheCurves;
    const int ticks = std::clamp(rows / 2, 2, kMostRowTicks);
    for (QCPAxis* axis : {m_plot.yAxis, m_plot.yAxis2}) axis->ticker()->setTickCount(ticks);
}

void TimelinePlot::fitValues(const TimelineView& view, const settings::DisplayUnits& units) {
    const Shown rate{units, Dimension::asFedRate};
    double fastest = rate(AsFedRate::fromTonnesPerHour(40));
    for (const RatePoint& point : view.rates)
        fastest = higher(higher(fastest, rate(point.delivered)), rate(point.capacity));
    m_plot.yAxis->setRange(0.0, kHeadroom * fastest);
    const Shown density{units, Dimension::dryDensity};
    double foot = density(DryDensity::fromKilogramsPerCubicMetre(100));
    double head = higher(density(DryDensity::fromKilogramsPerCubicMetre(240)), density(view.target));
    for (const DensityPoint& point : view.densities) {
        foot = lower(foot, density(point.low80));
        head = higher(head, density(point.high80));
    }
    m_plot.yAxis2->setRange(foot, kHeadroom * head);
}

void TimelinePlot::fillShown(const TimelineView& view, const settings::DisplayUnits& units) {
    const QCPRange shown = m_plot.xAxis->range();
    const double column = shown.size() / m_columns;
    // What is in sight, and one point on either side, to which the curves run out.
    const auto fill = [&](const auto& points, auto... curves) {
        auto first = std::partition_point(points.begin(), points.end(), [&](const auto& point) {
            return secondsOf(point.at) < shown.lower;
        });
        if (first != points.begin()) --first;
        std::array<ThinnedCurve, sizeof...(curves)> thinned{
            ((void)curves, ThinnedCurve{shown.lower, column})...};
        for (auto point = first; point != points.end(); ++point) {
            const double at = secondsOf(point->at);
            std::size_t place = 0;
            (thinned[place++].add(at, curves.second(*point)), ...);
            if (at > shown.upper) break;
        }
        std::size_t place = 0;
        ((thinned[place].finish(),
          curves.first->setData(thinned[place].times(), thinned[place].values(), true), ++place),
         ...);
    };
    const Shown rate{units, Dimension::asFedRate};
    fill(view.rates, std::pair{m_delivered, [&](const RatePoint& point) { return rate(point.delivered); }},
         std::pair{m_capacity, [&](const RatePoint& point) { return rate(point.capacity); }});
    const Shown density{units, Dimension::dryDensity};
    fill(view.densities,
         std::pair{m_median, [&](const DensityPoint& point) { return density(point.median); }},
         std::pair{m_low, [&](const DensityPoint& point) { return density(point.low80); }},
         std::pair{m_high, [&](const DensityPoint& point) { return density(point.high80); }});
    const double target = density(view.target);
    m_target->setData({secondsOf(view.from), secondsOf(view.to)}, {target, target}, true);
    fillMarks(view);
}

void TimelinePlot::fillMarks(const TimelineView& view) {
    const QCPRange shown = m_plot.xAxis->range();
    const double apart = kMarksApart * shown.size() / m_columns;
    const auto fill = [&](QCPGraph& graph, const auto& marks, double row) {
        QVector<double> times;
        double last = -std::numeric_limits<double>::infinity();
        for (const auto& mark : marks) {
            const double at = secondsOf(mark.at);
            if (at < shown.lower || at > shown.upper || at - last < apart) continue;
            last = at;
            times.append(at);
        }
        graph.setData(times, QVector<double>(times.size(), row), true);
    };
    fill(*m_deliveries, view.deliveries, kDeliveryRow);
    fill(*m_samples, view.samples, kSampleRow);
    fill(*m_advice, view.advice, kAdviceRow);
}

void TimelinePlot::fillPauses(const TimelineView& view) {
    for (QCPItemRect* pause : m_pauses) m_plot.removeItem(pause);
    m_pauses.clear();
    for (const Pause& pause : view.pauses) {
        auto* shade = new QCPItemRect{&m_plot};
        shade->topLeft->setTypeY(QCPItemPosition::ptAxisRectRatio);
        shade->bottomRight->setTypeY(QCPItemPosition::ptAxisRectRatio);
        shade->topLeft->setCoords(secondsOf(pause.from), 0.0);
        shade->bottomRight->setCoords(secondsOf(pause.to), 1.0);
        shade->setPen(Qt::NoPen);
        shade->setBrush(m_pauseBrush);
        shade->setLayer(QStringLiteral("grid"));
        m_pauses.append(shade);
    }
}

void TimelinePlot::style(const settings::Theme& theme, const QFont& font) {
    m_plot.setBackground(theme.ground);
    m_plot.axisRect()->setBackground(theme.panel);
    m_plot.legend->setBrush(Qt::NoBrush);
    m_plot.legend->setFont(font);
    m_cursorText->setFont(font);
    m_plot.legend->setTextColor(theme.ink);
    m_pauseBrush = QBrush{theme.outline, Qt::BDiagPattern};
    for (QCPItemRect* pause : m_pauses) pause->setBrush(m_pauseBrush);
    styleAxes(theme, font);
    styleCurves(theme);
}

void TimelinePlot::styleAxes(const settings::Theme& theme, const QFont& font) {
    const QPen line{theme.outline, theme.lineWidth};
    for (QCPAxis* axis : {m_plot.xAxis, m_plot.yAxis, m_plot.yAxis2}) {
        axis->setBasePen(line);
        axis->setTickPen(line);
        axis->setSubTicks(false);
        axis->setTickLabelFont(font);
        axis->setLabelFont(font);
        axis->setTickLabelColor(theme.ink);
        axis->setLabelColor(theme.ink);
        axis->grid()->setPen(QPen{theme.outline, 0.0, Qt::DotLine});
        axis->grid()->setZeroLinePen(Qt::NoPen);
    }
    m_plot.xAxis->grid()->setVisible(!theme.bold);
    m_plot.yAxis->grid()->setVisible(!theme.bold);
    // Fixed margins: a longer label must not make the whole plot jump.
    const QFontMetrics metrics{font};
    const int side = metrics.height() * 2 + metrics.horizontalAdvance(QStringLiteral("000,0")) + 4;
    m_plot.axisRect()->setAutoMargins(QCP::msNone);
    m_plot.axisRect()->setMargins(QMargins{side, 6, side, metrics.height() * 3 / 2 + 4});
}

void TimelinePlot::styleCurves(const settings::Theme& theme) {
    const double width = theme.lineWidth;
    m_delivered->setPen(penOf(theme.delivery, width, Qt::SolidLine));
    m_median->setPen(penOf(theme.density, width + 1.5, Qt::SolidLine));
    m_lineWidth = width;
    m_capacity->setPen(penOf(theme.capacity, width, Qt::DashLine));
    for (QCPGraph* end : {m_low, m_high}) end->setPen(penOf(theme.density, width, Qt::DotLine));
    m_target->setPen(penOf(theme.target, width, Qt::DashDotLine));
    styleDashes();
    const QPen mark{theme.delivery, width};
    m_deliveries->setPen(mark);
    m_deliveries->setScatterStyle(QCPScatterStyle{QCPScatterStyle::ssTriangle, mark, theme.panel, 9.0});
    const QPen sample{theme.porosity, width};
    m_samples->setPen(sample);
    m_samples->setScatterStyle(QCPScatterStyle{QCPScatterStyle::ssDiamond, sample, theme.panel, 11.0});
    const QPen advice{theme.accent, width};
    m_advice->setPen(advice);
    m_advice->setScatterStyle(QCPScatterStyle{QCPScatterStyle::ssStar, advice, theme.panel, 10.0});
    m_cursor->setPen(QPen{theme.ink, width});
    m_cursorText->setColor(theme.ink);
    m_cursorText->setBrush(theme.panel);
    m_cursorText->setPen(QPen{theme.outline, 1.0});
}

void TimelinePlot::styleDashes() {
    // Wider than a pixel a dash is an outline to be filled, which takes a hundred times as long.
    for (QCPGraph* dashed : {m_capacity, m_low, m_high, m_target}) {
        QPen pen = dashed->pen();
        pen.setWidthF(m_crowded ? 1.0 : m_lineWidth);
        dashed->setPen(pen);
    }
}

}  // namespace treadwell::plots
